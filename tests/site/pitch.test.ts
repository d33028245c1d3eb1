import { expect, test } from 'vitest';

import { actionOf, padBehind } from '../../src/figures/pull/the-capo/capo.ts';
import { formatForce, formatFrequency, formatLength } from '../../src/instrument/format.ts';
import { pullsOf } from '../../src/instrument/pulls.ts';
import { workshopInstrument } from '../../src/instrument/workshop.ts';
import * as physics from '../../src/physics/index.ts';
import { pressKey, sliderValue } from './kit.ts';
import { chapterOnce, drags, toldBy, refused, typed } from './one-chapter.ts';

const page = chapterOnce('pitch');
const octave = () => page().locator('#the-octave');
const point = () => octave().locator('[data-handle="step"]:visible');
const capo = () => page().locator('#the-capo');
const clamp = () => capo().locator('[data-handle="capo"]');

const [string] = pullsOf(workshopInstrument('redshank'));
if (!string) throw new Error('The workshop’s first instrument has no strings.');
const E4 = physics.noteNumber('E4');
const at = (note: number): number => {
  const frequency = physics.noteFrequency(physics.noteName(note));
  return physics.tension({ ...string, frequency });
};

/** The pull and its factor as they are told, and the step's height in units of the drawing. */
async function step() {
  const [pull, factor] = await octave().locator('text.pencil:visible').allTextContents();
  const grown = await octave().locator('rect.column:visible').getAttribute('transform');
  return { pull, factor, height: Number(/scale\(1 ([\d.]+)\)/.exec(grown ?? '')?.[1]) };
}

test.each(drags)('the stair climbed with %s gives the module’s pull', async (_, drag) => {
  await typed(octave(), 'Pitch', 'E4');
  const rest = await step();
  const box = await octave().locator('.stage:visible').boundingBox();
  // Two of nineteen steps; each is 47 of 960 units wide.
  await drag(point(), { x: ((2 * 47) / 960) * (box?.width ?? 0) });
  const { now, text } = await sliderValue(point());
  expect(now).toBe(E4 + 2);
  expect(text).toContain('2 semitones up');
  const { pull, factor, height } = await step();
  expect(pull).toBe(formatForce(at(now), 'in-lb'));
  expect(factor).toBe(`×${(at(now) / string.tension).toFixed(3)}`);
  expect(height / rest.height).toBeCloseTo(at(now) / string.tension, 3);
});

test('a step that is pressed is climbed to', async () => {
  await typed(octave(), 'Pitch', 'E4');
  const stage = octave().locator('.stage:visible');
  const { width = 0, height = 0 } = (await stage.boundingBox()) ?? {};
  // Five steps down from the own note's, the thirteenth; low enough to lie on the step itself.
  await octave()
    .locator('.treads:visible')
    .click({ position: { x: ((6 + 7.5 * 47) / 960) * width, y: 0.76 * height } });
  expect((await sliderValue(point())).now).toBe(E4 - 5);
  expect((await step()).pull).toBe(formatForce(at(E4 - 5), 'in-lb'));
});

test('keys go by semitones, tones and to both ends, where a quarter is left or the string breaks', async () => {
  await typed(octave(), 'Pitch', 'E4');
  await pressKey(point(), 'ArrowLeft');
  expect((await sliderValue(point())).now).toBe(E4 - 1);
  await pressKey(point(), 'PageDown');
  expect((await sliderValue(point())).now).toBe(E4 - 3);
  expect((await step()).pull).toBe(formatForce(at(E4 - 3), 'in-lb'));
  await pressKey(point(), 'Home');
  expect((await step()).factor).toBe('×0.250');
  await pressKey(point(), 'End');
  expect((await sliderValue(point())).now).toBe(E4 + 6);
  expect((await step()).pull).toBe('breaks');
});

test('a typed note climbs the stair; what is no note of the drawing is kept and answered', async () => {
  await typed(octave(), 'Pitch', 'd4');
  expect((await sliderValue(point())).now).toBe(E4 - 2);
  expect((await step()).pull).toBe(formatForce(at(E4 - 2), 'in-lb'));
  await refused(octave(), 'Pitch', 'H4', /note/i);
  await refused(octave(), 'Pitch', 'C2', /from E3 to A♯4/);
});

/** Length, frequency and pull with the capo behind a fret, from the module. */
function clamped(fret: number) {
  const action = {
    ...actionOf(string!),
    fret,
    fingerBehind: padBehind(string!.speakingLength, fret),
  };
  const stretch = physics.axialStiffness(string!.construction) / string!.tension;
  const { total } = physics.fretError({ ...action, response: { stretch, endLength: 0 } });
  return [
    formatLength(physics.stoppedLength({ scaleLength: string!.speakingLength, fret }), 'in-lb'),
    formatFrequency(string!.frequency * 2 ** ((fret * 100 + total) / 1200)),
    formatForce(string!.tension * (1 + stretch * physics.frettedPath(action).strain), 'in-lb'),
  ];
}

test.each(drags)(
  'the capo dragged with %s stops at a fret and leaves the pull',
  async (_, drag) => {
    await typed(capo(), 'Capo at fret', '2');
    await drag(clamp(), { x: 90 });
    const fret = Number(/fret (\d+)/.exec((await sliderValue(clamp())).text)?.[1]);
    expect(fret).toBeGreaterThan(2);
    expect(await toldBy(capo())).toEqual(expect.arrayContaining(clamped(fret)));
  },
);

test('keys and the field set the capo too; there is no thirteenth fret for it', async () => {
  await typed(capo(), 'Capo at fret', '5');
  expect(await toldBy(capo())).toEqual(expect.arrayContaining(clamped(5)));
  await pressKey(clamp(), 'ArrowRight');
  expect(await toldBy(capo())).toEqual(expect.arrayContaining(clamped(6)));
  await pressKey(clamp(), 'Home');
  expect((await sliderValue(clamp())).text).toBe('no capo');
  await refused(capo(), 'Capo at fret', '13', /from 0 for none to 12/);
});
