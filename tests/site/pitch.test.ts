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
const point = () => octave().locator('[data-handle="turn"]');
const capo = () => page().locator('#the-capo');
const clamp = () => capo().locator('[data-handle="capo"]');

const [string] = pullsOf(workshopInstrument('redshank'));
if (!string) throw new Error('The workshop’s first instrument has no strings.');
const E4 = physics.noteNumber('E4');
const at = (note: number): number => {
  const frequency = physics.noteFrequency(physics.noteName(note));
  return physics.tension({ ...string, frequency });
};

/** The pull and its factor as they are told, and the arm's length in units of the drawing. */
async function arm() {
  const [pull, factor] = await octave().locator('text.pencil').allTextContents();
  const turned = await octave().locator('g.arm').getAttribute('transform');
  return { pull, factor, radius: Number(/scale\(([\d.]+)\)/.exec(turned ?? '')?.[1]) };
}

test.each(drags)('the point dragged round with %s gives the module’s pull', async (_, drag) => {
  await typed(octave(), 'Pitch', 'E4');
  const rest = await arm();
  const box = await octave().locator('.stage').first().boundingBox();
  // From the spoke of E down to that of F sharp, at the bottom.
  await drag(point(), { x: -0.2 * (box?.width ?? 0), y: 0.16 * (box?.width ?? 0) });
  const { now, text } = await sliderValue(point());
  expect(now).toBe(E4 + 2);
  expect(text).toContain('2 semitones up');
  const { pull, factor, radius } = await arm();
  expect(pull).toBe(formatForce(at(now), 'in-lb'));
  expect(factor).toBe(`×${(at(now) / string.tension).toFixed(3)}`);
  expect(radius / rest.radius).toBeCloseTo(at(now) / string.tension, 3);
});

test('keys go by semitones, tones and to both ends, where a quarter is left or the string breaks', async () => {
  await typed(octave(), 'Pitch', 'E4');
  await pressKey(point(), 'ArrowLeft');
  expect((await sliderValue(point())).now).toBe(E4 - 1);
  await pressKey(point(), 'PageDown');
  expect((await sliderValue(point())).now).toBe(E4 - 3);
  expect((await arm()).pull).toBe(formatForce(at(E4 - 3), 'in-lb'));
  await pressKey(point(), 'Home');
  expect((await arm()).factor).toBe('×0.250');
  await pressKey(point(), 'End');
  expect((await sliderValue(point())).now).toBe(E4 + 6);
  expect((await arm()).pull).toBe('breaks');
});

test('a typed note turns the arm; what is no note of the drawing is kept and answered', async () => {
  await typed(octave(), 'Pitch', 'd4');
  expect((await sliderValue(point())).now).toBe(E4 - 2);
  expect((await arm()).pull).toBe(formatForce(at(E4 - 2), 'in-lb'));
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
