/** The main paths through the site in the engines that the other tests don't run in. */
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';

import { findFirefox, findWebKit } from '../../.tools/engines.mjs';
import { withGauge, withNote } from '../../src/instrument/edit.ts';
import { encode } from '../../src/instrument/link.ts';
import { planOf } from '../../src/instrument/plan.ts';
import { pullsOf } from '../../src/instrument/pulls.ts';
import type { State } from '../../src/instrument/schema.ts';
import { initialState } from '../../src/instrument/workshop.ts';
import * as physics from '../../src/physics/index.ts';
import { firefox } from './firefox.ts';
import { bring, click, drag, fill, labelled, until, type Hand } from './hand.ts';
import { webkit } from './webkit.ts';

const SCALE = physics.fromInches(25.5);

/** Pull of the first chapter's string in lb, as the module gives it. */
const pounds = (speakingLength: number): number =>
  physics.poundsForce(
    physics.tension({
      speakingLength,
      frequency: physics.noteFrequency('E4'),
      linearDensity: physics.linearDensity({
        kind: 'plain',
        diameter: physics.fromThousandths(10),
        material: 'musicWire',
      }),
    }),
  );

/** What the test types on the bench, done to a fresh reader's state. */
function typed(): State {
  const scale = { treble: physics.fromInches(26), bass: physics.fromInches(26) };
  let mine = { ...initialState.mine, name: 'Avocet', scale };
  mine = withNote(mine, 0, 'D4');
  mine = withGauge(mine, 0, { kind: 'plain', gauge: 11 });
  return { ...initialState, mine };
}

const texts = (hand: Hand, selector: string): Promise<string[]> =>
  hand.run((all) => [...document.querySelectorAll(all)].map((e) => e.textContent ?? ''), selector);

/** Problems that the page reports after it was opened; what went wrong before leaves a figure without its script. */
const watch = (hand: Hand): Promise<void> =>
  hand.run(() => {
    const problems: string[] = [];
    Object.assign(window, { problems });
    addEventListener('error', ({ message }) => problems.push(message));
    addEventListener('unhandledrejection', ({ reason }) => problems.push(String(reason)));
  });
const problems = (hand: Hand): Promise<string[]> =>
  hand.run(() => Reflect.get(window, 'problems') as string[]);

describe.each([
  { name: 'Firefox', start: firefox, installed: findFirefox() },
  { name: 'WebKit', start: webkit, installed: findWebKit() },
])('$name', ({ start, installed }) => {
  describe.skipIf(!installed)('takes the main paths', () => {
    let hand: Hand;
    beforeAll(async () => {
      hand = await start();
    });
    afterAll(() => hand?.close());

    async function open(path: string): Promise<void> {
      await hand.open(inject('origin') + path);
      await watch(hand);
    }

    test('a handle of the first chapter gives the module’s number, by mouse and by keys', async () => {
      await open('course/three-things-set-the-pull/');
      const handle = '#three-handles [data-handle="length"]';
      const length = (): Promise<number> =>
        hand.run((it) => Number(document.querySelector(it)?.getAttribute('aria-valuenow')), handle);
      const hung = async (): Promise<number> =>
        Number.parseFloat((await texts(hand, '#three-handles .stage text.pull[y]')).at(-1) ?? '');

      await drag(hand, handle, { x: -80 });
      const dragged = await length();
      expect(dragged).toBeLessThan(SCALE);
      await expect.poll(hung).toBeCloseTo(pounds(dragged), 1);

      // The mouse has left the focus where it took hold.
      await hand.key('Home');
      await hand.key('PageUp');
      const keyed = await length();
      expect(keyed).toBeLessThan(dragged);
      await expect.poll(hung).toBeCloseTo(pounds(keyed), 1);
      expect(await problems(hand)).toEqual([]);
    });

    test('an instrument typed on the bench is computed, remembered and strung', async () => {
      await open('bench/');
      const expected = typed();
      await fill(hand, await labelled(hand, '.mine', 'Name'), 'Avocet');
      await fill(hand, await labelled(hand, '.mine', 'Scale length'), '26 in');
      await click(hand, '.mine details.each > summary');
      await fill(hand, await labelled(hand, '.mine', 'Note of string 1'), 'D4');
      await fill(hand, await labelled(hand, '.mine', 'Gauge of your string 1'), '.011');

      const own = pullsOf(expected.mine).map(({ tension }) => physics.poundsForce(tension));
      const rows = async () => (await texts(hand, '.mine .neck .pull')).map(Number);
      await expect.poll(rows).toHaveLength(own.length);
      (await rows()).forEach((shown, i) => expect(shown).toBeCloseTo(own[i] ?? NaN, 1));

      const plan = planOf(expected).strings;
      await bring(hand, '.sheet-place .stringing');
      // Behind each stands how sure it is.
      const pulls = (await texts(hand, '.stringing tbody tr:has(> .gauge) > .pull')).map(
        Number.parseFloat,
      );
      expect(pulls).toHaveLength(plan.length);
      plan.forEach(({ pull }, i) =>
        expect(pulls[i]).toBeCloseTo(physics.poundsForce(pull?.tension ?? NaN), 1),
      );

      // The address carries it all, and so does the device.
      const link = await hand.run(() => location.hash);
      expect(link).toContain('Avocet');
      await open('bench/');
      const name = await labelled(hand, '.mine', 'Name');
      await bring(hand, name);
      await expect
        .poll(() => hand.run((it) => document.querySelector<HTMLInputElement>(it)?.value, name))
        .toBe('Avocet');
      expect(await problems(hand)).toEqual([]);
    });

    test('the stringing sheet is saved as a file with the plan’s gauges', async () => {
      await open(`bench/#${encode(typed())}`);
      await click(hand, '.hand-over button:last-of-type');
      const name = await until(
        hand,
        'what has been saved',
        () =>
          /Saved as (\S+\.csv)\./.exec(
            document.querySelector('.hand-over')?.textContent ?? '',
          )?.[1],
      );
      await expect.poll(hand.saved, { timeout: 20_000 }).toContain(name);
      await expect.poll(() => hand.read(name).length, { timeout: 20_000 }).toBeGreaterThan(0);
      const [, ...lines] = hand.read(name).trim().split('\r\n');
      const picked = planOf(typed()).strings.map(({ pull }) => pull?.gauge.gauge);
      // Sums and notes follow the strings.
      const gauges = lines.slice(0, picked.length).map((line) => Number(line.split(',')[3]));
      expect(gauges).toEqual(picked);
      expect(await problems(hand)).toEqual([]);
    });
  });
});
