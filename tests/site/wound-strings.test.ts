import { expect, test } from 'vitest';

import { constructionOf } from '../../src/instrument/drawer.ts';
import { formatForce, formatShare, letteredDensity } from '../../src/instrument/format.ts';
import { pullsOf } from '../../src/instrument/pulls.ts';
import { workshopInstrument } from '../../src/instrument/workshop.ts';
import * as physics from '../../src/physics/index.ts';
import { pressKey, sliderValue } from './kit.ts';
import { chapterOnce, drags, toldBy, refused, typed } from './one-chapter.ts';

const page = chapterOnce('wound-strings');
const vice = () => page().locator('#the-vice');
const free = () => vice().locator('[data-handle="free"]');
const section = () => page().locator('#the-section');
const handle = (name: 'core' | 'outer') => section().locator(`[data-handle="${name}"]`);

const string = pullsOf(workshopInstrument('redshank'))[3]!;
const wound = constructionOf({ kind: 'wound', gauge: 26 });
if (wound.kind !== 'wound') throw new Error('The drawer’s wound 26 is not wound.');
const OWN = physics.thousandths(wound.core.diameter).toFixed(1);

/** What the drawing letters of the string with this core and outer diameter, thousandths. */
function taken(core: number, outer: number): string[] {
  if (wound.kind !== 'wound') return [];
  const construction = {
    ...wound,
    diameter: physics.fromThousandths(outer),
    core: { ...wound.core, diameter: physics.fromThousandths(core) },
    wraps: wound.wraps.map(({ material }) => ({ material })),
  };
  const linearDensity = physics.linearDensity(construction);
  const tension = physics.tension({ ...string, linearDensity });
  return [
    `${core.toFixed(1)} core`,
    `${outer} over the wrap`,
    letteredDensity(linearDensity),
    formatForce(tension, 'in-lb'),
    formatShare(physics.strengthShare({ construction, tension }) ?? NaN),
  ];
}
const back = () => section().getByRole('button', { name: 'Back to the D3 string' });
async function asItIs(): Promise<void> {
  if (await back().isEnabled()) await back().click();
}

test.each(drags)('core and wrap dragged with %s weigh what the module says', async (_, drag) => {
  await asItIs();
  await drag(handle('core'), { x: -12 });
  const core = (await sliderValue(handle('core'))).now;
  expect(core).toBeLessThan(Number(OWN));
  expect(await toldBy(section())).toEqual(expect.arrayContaining(taken(core, 26)));
  await drag(handle('outer'), { x: -14 });
  const outer = (await sliderValue(handle('outer'))).now;
  expect(outer).toBeLessThan(26);
  expect(await toldBy(section())).toEqual(expect.arrayContaining(taken(core, outer)));
});

test('keys and fields make the string too, and it can be put back', async () => {
  await asItIs();
  await typed(section(), 'Core', '11.5');
  expect(await toldBy(section())).toEqual(expect.arrayContaining(taken(11.5, 26)));
  await pressKey(handle('core'), 'PageUp');
  expect(await toldBy(section())).toEqual(expect.arrayContaining(taken(12.5, 26)));
  await typed(section(), 'Over the wrap', '25');
  expect(await toldBy(section())).toEqual(expect.arrayContaining(taken(12.5, 25)));
  await refused(section(), 'Core', '30', /from [\d.]+ to [\d.]+ thousandths/);
  await back().click();
  expect(await toldBy(section())).toEqual(expect.arrayContaining(taken(Number(OWN), 26)));
  expect(await back().isDisabled()).toBe(true);
});

/** A cantilever's droop under ten grams, m, by the first two terms of its series in a = F L² / EI: L (a/3 - 4a³/105). */
function droop(c: physics.Construction, length: number): number {
  const a = (0.01 * physics.STANDARD_GRAVITY * length ** 2) / physics.bendingStiffness(c);
  return length * (a / 3 - (4 * a ** 3) / 105);
}

/** The two droops that are told, in inches: plain and wound. */
const droops = async (): Promise<number[]> =>
  (await toldBy(vice())).filter((text) => /^\d+\.\d\d.in$/.test(text)).map(Number.parseFloat);

const plain = { kind: 'plain', diameter: wound.diameter, material: 'musicWire' } as const;

test('short ends droop as a stiff bar does, and keys and field agree', async () => {
  await typed(vice(), 'Free length', '25 mm');
  const { now } = await sliderValue(free());
  expect(now).toBeCloseTo(0.025, 6);
  const [stiff = NaN, soft = NaN] = await droops();
  expect(stiff).toBeCloseTo(physics.inches(droop(plain, now)), 2);
  expect(soft).toBeCloseTo(physics.inches(droop(wound, now)), 2);
  await pressKey(free(), 'Home');
  expect((await sliderValue(free())).now).toBeCloseTo(0.02, 6);
  await refused(vice(), 'Free length', '5 in', /from 0\.79.in to 4\.72.in/);
});

test.each(drags)(
  'the free length dragged with %s lets the wound one hang lower',
  async (_, drag) => {
    await typed(vice(), 'Free length', '25 mm');
    const before = await droops();
    await drag(free(), { x: 100 });
    const { now, text } = await sliderValue(free());
    expect(now).toBeGreaterThan(0.04);
    expect(await toldBy(vice())).toContain(`${text} free`);
    const [stiff = NaN, soft = NaN] = await droops();
    expect(stiff).toBeCloseTo(physics.inches(droop(plain, now)), 2);
    expect(soft).toBeGreaterThan(before[1] ?? NaN);
    expect(soft).toBeGreaterThan(stiff);
  },
);
