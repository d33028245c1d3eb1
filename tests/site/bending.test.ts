import { expect, test } from 'vitest';

import { constructionOf } from '../../src/instrument/drawer.ts';
import {
  formatDifference,
  formatForce,
  forceNumber,
  travelNumber,
} from '../../src/instrument/format.ts';
import { pullsOf } from '../../src/instrument/pulls.ts';
import { workshopInstrument } from '../../src/instrument/workshop.ts';
import * as physics from '../../src/physics/index.ts';
import { lookUp, pressKey, sliderValue } from './kit.ts';
import { chapterOnce, drags, toldBy, refused, typed } from './one-chapter.ts';

const page = chapterOnce('bending');
const board = () => page().locator('#bending');
const finger = () => board().locator('[data-handle="finger"]:visible');
const fret = () => board().locator('[data-handle="fret"]:visible');
const five = () => page().locator('#five-gauges');
const whole = () => page().locator('#whole-string');

const string = pullsOf(workshopInstrument('redshank'))[0]!;
const inches = (metres: number): string => `${travelNumber(metres, 'in-lb')}\u00a0in`;

interface Asked {
  rise?: number;
  atFret?: number;
  gauge?: number;
  ends?: physics.Ends;
}
/** The bend as the module gives it, of a plain string of the same note and length. */
function bent({ rise = 200, atFret = 12, gauge = 10, ends = 'held' }: Asked = {}) {
  const construction = constructionOf({ kind: 'plain', gauge });
  const { speakingLength, frequency } = string;
  const linearDensity = physics.linearDensity(construction);
  const tension = physics.tension({ speakingLength, frequency, linearDensity });
  const at = physics.stoppedLength({ scaleLength: speakingLength, fret: atFret });
  return physics.bendTo({ construction, speakingLength, tension, at, rise, ends });
}
/** As the board's first row letters it: travel and push. */
const row = (asked: Asked): string[] => {
  const { travel, push } = bent(asked);
  return [inches(travel), formatForce(push, 'in-lb')];
};
const shown = async (): Promise<string[]> =>
  (await board().locator('text.number:visible').allTextContents()).slice(0, 2);

async function asItWas(): Promise<void> {
  await typed(board(), 'Fret', '12');
  await typed(board(), 'Rise, in cents', '200');
}

test.each(drags)(
  'the finger dragged across the board with %s bends as the module does',
  async (_, drag) => {
    await asItWas();
    expect(await shown()).toEqual(row({}));
    await drag(finger(), { y: -14 });
    const { now, text } = await sliderValue(finger());
    const rise = Number(/(\d+)\scents/.exec(text)?.[1]);
    expect(rise).toBeLessThan(195);
    expect(rise).toBeGreaterThan(30);
    expect(physics.inches(bent({ rise }).travel)).toBeCloseTo(physics.inches(now), 2);
    expect((await shown())[0]).toBe(inches(now));
  },
);

test.each(drags)(
  'dragged along the rail with %s it keeps the rise at another fret',
  async (_, drag) => {
    await asItWas();
    await drag(fret(), { x: -120 });
    const atFret = Number(/fret (\d+)/.exec((await sliderValue(fret())).text)?.[1]);
    expect(atFret).toBeLessThan(12);
    expect(await shown()).toEqual(row({ atFret }));
  },
);

test('keys and fields bend too; what lies beyond the board is kept and answered', async () => {
  await asItWas();
  await typed(board(), 'Rise, in cents', '100');
  expect(await shown()).toEqual(row({ rise: 100 }));
  await pressKey(fret(), 'PageDown');
  expect(await shown()).toEqual(row({ rise: 100, atFret: 9 }));
  await board().getByRole('button', { name: 'whole tone', exact: true }).click();
  expect(await shown()).toEqual(row({ atFret: 9 }));
  await typed(board(), 'Travel', '0.5');
  expect((await shown())[0]).toBe('0.50\u00a0in');
  await pressKey(finger(), 'End');
  expect(await shown()).toEqual(row({ rise: 400, atFret: 9 }));
  await refused(board(), 'Rise, in cents', '900', /From 25 to 400/);
  await refused(board(), 'Fret', '30', /From 1 to 24/);
});

test.each(drags)(
  'five gauges dragged with %s share the travel and not the push',
  async (_, drag) => {
    await asItWas();
    await lookUp(page());
    const line = five().locator('[data-handle="five-travel"]');
    await drag(line, { y: 20 });
    const rise = Number(
      await board().getByRole('textbox', { name: 'Rise, in cents' }).inputValue(),
    );
    expect(rise).toBeGreaterThan(210);
    const gauges = [8, 9, 10, 11, 12];
    const pushes = await five().locator('text.number').allTextContents();
    expect(pushes.map(Number)).toEqual(
      gauges.map((gauge) => {
        const { push } = bent({ gauge, rise });
        return expect.closeTo(Number(forceNumber(push, 'in-lb')), 1);
      }),
    );
    const depths = await five()
      .locator('circle.is')
      .evaluateAll((all) =>
        all.map((each) => each.getBoundingClientRect()).map(({ y, height }) => y + height / 2),
      );
    for (const depth of depths) expect(depth).toBeCloseTo(depths[0] ?? NaN, 1);
  },
);

test('lengths beyond nut and saddle lengthen the bend, unless they are held', async () => {
  await asItWas();
  await typed(whole(), 'Beyond the nut', '100 mm');
  await typed(whole(), 'Beyond the saddle', '50 mm');
  const slipping = (ends: physics.Ends): string => {
    const { travel } = bent({ ends });
    return `slipping ${inches(travel)}, ${formatDifference(travel / bent().travel - 1)}`;
  };
  expect(await toldBy(whole())).toContain(slipping({ beyondNut: 0.1, beyondSaddle: 0.05 }));
  await whole().getByRole('checkbox', { name: 'slips over the saddle' }).uncheck();
  expect(await toldBy(whole())).toContain(slipping({ beyondNut: 0.1, beyondSaddle: 0 }));
  const post = whole().locator('[data-handle="beyond-nut"]');
  await pressKey(post, 'End');
  expect(await toldBy(whole())).toContain(slipping({ beyondNut: 0.2, beyondSaddle: 0 }));
  await whole().getByRole('checkbox', { name: 'slips over the saddle' }).check();
  await refused(whole(), 'Beyond the nut', '12 in', /From 0\.00.in to 7\.87.in/);
});

test.each(drags)('the post dragged with %s takes the bend with it', async (_, drag) => {
  await asItWas();
  await typed(whole(), 'Beyond the nut', '100 mm');
  await typed(whole(), 'Beyond the saddle', '50 mm');
  const post = whole().locator('[data-handle="beyond-nut"]');
  await drag(post, { x: -20 });
  const { now } = await sliderValue(post);
  expect(now).toBeGreaterThan(0.105);
  const { travel } = bent({ ends: { beyondNut: now, beyondSaddle: 0.05 } });
  expect((await toldBy(whole())).join(' ')).toContain(`slipping ${inches(travel)}`);
});
