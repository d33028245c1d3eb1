import { describe, expect, test } from 'vitest';

import { workshopInstrument, initialState } from '../../src/instrument/workshop.ts';
import { pullsOf } from '../../src/instrument/pulls.ts';
import { noteNumber, strengthShare } from '../../src/physics/index.ts';
import {
  describe as say,
  highestNoteBelow,
  shareText,
} from '../../src/figures/consequences/the-cliff/describe.ts';
import {
  aboveOf,
  alongAt,
  betweenOf,
  frameOf,
  heightAt,
  lineOf,
  numberOf,
  phone,
  postsOf,
  wide,
  type Frame,
} from '../../src/figures/consequences/the-cliff/frame.ts';
import { groundOf } from '../../src/figures/consequences/the-cliff/ground.ts';
import { noteOn, put } from '../../src/figures/consequences/the-cliff/hands.ts';
import { edgeOf, marginOf, semitonesTo } from '../../src/figures/kit/margin.ts';
import { lengthMarks, noteMarks } from '../../src/figures/consequences/the-cliff/rules.ts';
import { triedOf, withTrial } from '../../src/figures/trial.ts';

const with_ = (id: string) => ({ ...initialState, mine: workshopInstrument(id) });
const instruments = ['redshank', 'avocet', 'godwit', 'lapwing', 'sanderling', 'turnstone'];

describe('the margin', () => {
  test('of a plain string is the share that the physics works out, and the semitones that are left', () => {
    const [top] = pullsOf(initialState.mine);
    if (!top) throw new Error('no string');
    const margin = marginOf(top);
    expect(margin.share?.high).toBeCloseTo(
      strengthShare({ construction: top.construction, tension: top.tension }) ?? NaN,
      12,
    );
    // By hand: a ten holds 387 ksi, E4 at 25.5 in asks 7850 (2 · 0.6477 · 329.63)² = 1.431 GPa of it.
    expect(margin.share?.high).toBeCloseTo(1.4313e9 / (387 * 6.894757e6), 3);
    expect(margin.toEdge).toBeCloseTo(5.39, 1);
  });

  test('an octave quarters the share', () => {
    expect(semitonesTo(1 / 4)).toBeCloseTo(12, 12);
  });

  test('of nylon is a range and has no fence, and of a weighed string is unknown', () => {
    const [plain, , , wound] = pullsOf(workshopInstrument('turnstone')).map(marginOf);
    expect(plain?.share?.low).toBeLessThan(plain?.share?.high ?? 0);
    expect(plain?.toFence).toBeUndefined();
    expect(wound?.strain).toBe('unknown');
    expect(wound && shareText(wound)).toBe('not known');
  });

  test('is never a number beyond the edge', () => {
    const state = withTrial(initialState, { note: 'E5' });
    expect(shareText(marginOf(triedOf(state).tried))).toBe('breaks');
    expect(say(state)).toMatch(/E 5 at .* Over the edge/);
  });
});

test('the edge of a plain ten is half of sqrt(strength / density)', () => {
  const edge = edgeOf({ kind: 'plain', diameter: 0.254e-3, material: 'musicWire' });
  expect(edge?.low).toBeCloseTo(Math.sqrt((387 * 6.894757293e6) / 7850) / 2, 3);
});

test('gauge moves the steel edge by a semitone and a half from a plain eight to a plain 26', () => {
  const { edge, by } = groundOf(initialState.mine);
  expect(by).toBe('diameter');
  expect(12 * Math.log2(edge.high / edge.low)).toBeCloseTo(6 * Math.log2(399 / 337), 9);
});

describe.each(instruments)('the sheet of %s', (id) => {
  const state = with_(id);
  test.each([phone, wide])('holds every string ($name)', (plan) => {
    const frame = frameOf(plan, state.mine, state);
    for (const { note, speakingLength } of pullsOf(state.mine)) {
      const [x, y] = [alongAt(frame, speakingLength), heightAt(frame, noteNumber(note))];
      expect(x).toBeGreaterThan(frame.left);
      expect(x).toBeLessThan(frame.right);
      expect(y).toBeGreaterThan(frame.top);
      expect(y).toBeLessThan(frame.bottom);
    }
  });

  test('reaches beyond the edge of the string in hand', () => {
    const frame = frameOf(phone, state.mine, state);
    const { own } = triedOf(state);
    const edge = edgeOf(own.construction);
    if (!edge) return;
    expect(noteOn(frame, state).max).toBeGreaterThan(
      numberOf(edge.high / own.speakingLength, state.mine.a4),
    );
  });

  test('names notes and lengths with room between them', () => {
    const frame = frameOf(phone, state.mine, state);
    const ys = noteMarks(frame, state.mine).flatMap((m) => (m.name ? [m.y] : []));
    ys.sort((a, b) => a - b).forEach((y, i) => {
      expect(y - (ys[i - 1] ?? -99)).toBeGreaterThanOrEqual(frame.size - 1e-9);
    });
    expect(lengthMarks(frame, 'in-lb').filter((m) => m.name).length).toBeGreaterThan(2);
    expect(lengthMarks(frame, 'mm-N').filter((m) => m.name).length).toBeGreaterThan(2);
  });
});

/** Length times pitch at each point of a path, m/s, read back through the sheet's two rules; and how high the point lies. */
const productsOn = (frame: Frame, path: string): { product: number; y: number }[] =>
  [...path.matchAll(/[ML]([-\d.]+),([-\d.]+)/g)].map(([, along, up]) => {
    const [x, y] = [Number(along), Number(up)];
    const length = frame.lengths.min + (x - frame.left) / frame.perMetre;
    const number = frame.notes.min + (frame.bottom - y) / frame.perSemitone;
    return { product: length * frame.a4 * 2 ** ((number - 69) / 12), y };
  });

describe.each(instruments)('the drawn edge of %s', (id) => {
  const state = with_(id);
  const { high, low } = groundOf(state.mine).edge;

  test.each([phone, wide])(
    'is one product of length and pitch, and what it bounds is whole ($name)',
    (plan) => {
      const frame = frameOf(plan, state.mine, state);
      // A path is rounded to a tenth of a unit, along and up.
      const rounded =
        0.05 / (frame.perMetre * frame.lengths.min) + (Math.LN2 * 0.05) / frame.perSemitone / 12;
      const lies = (product: number, on: number) =>
        expect(Math.abs(product / on - 1)).toBeLessThan(1.01 * rounded);

      const line = productsOn(frame, lineOf(frame, high));
      expect(line.length).toBeGreaterThan(10);
      for (const { product } of line) lies(product, high);

      const band = productsOn(frame, betweenOf(frame, high, low));
      expect(band).toHaveLength(2 * line.length);
      band.forEach(({ product }, i) => lies(product, i < line.length ? high : low));

      const above = productsOn(frame, aboveOf(frame, high));
      expect(above.slice(0, line.length)).toEqual(line);
      expect(above.slice(line.length).map(({ y }) => y)).toEqual(line.map(() => frame.top));

      const posts = [...postsOf(frame, high, 7).matchAll(/M([-\d.]+) ([-\d.]+)v10\.5/g)];
      expect(posts.length).toBeGreaterThan(5);
      // Two thirds of a post stand above the line.
      const feet = posts.map(([, x = '', y]) => `M${x},${Number(y) + 7}`).join('');
      for (const { product } of productsOn(frame, feet)) lies(product, high);
    },
  );
});

test('what is put beyond the sheet is held on it, and what is put back is no trial', () => {
  const frame = frameOf(phone, initialState.mine, initialState);
  const far = put(frame, initialState, 9, 999);
  expect(triedOf(far).tried.speakingLength).toBeCloseTo(frame.lengths.max, 2);
  expect(put(frame, far, 0.6477, 64).trial).toEqual({
    string: 0,
    length: undefined,
    note: undefined,
  });
});

test.each([
  [440, 'A4'],
  [439, 'G#4'],
  [466, 'A4'],
])('the highest note up to %s Hz is %s', (frequency, note) => {
  expect(highestNoteBelow(frequency, 440)).toBe(note);
});
