/**
 * A link read back is the state that it was made of, field by field, to the digits that a link has. It is read on top of a state
 * that differs in everything, so that nothing can come from there.
 */
import fc from 'fast-check';
import { expect, test } from 'vitest';

import { encode } from '../../src/instrument/link.ts';
import { decode } from '../../src/instrument/link-read.ts';
import type { State } from '../../src/instrument/schema.ts';
import { anyState } from './any-state.ts';

/** What no state of the property is likely to share. */
const elsewhere: State = {
  mine: {
    name: 'Elsewhere',
    scale: { treble: 0.31415, bass: 0.32717 },
    a4: 401.37,
    capo: 11,
    fretless: true,
    bowed: true,
    strings: ['Gb3', 'Db3', 'Ab2', 'Eb2'].map((note) => ({
      note,
      from: 7,
      course: 1,
      kind: 'plain',
      gauge: 33,
    })),
  },
  other: {
    name: 'Elsewhere too',
    scale: { treble: 0.91415, bass: 0.92717 },
    a4: 402.73,
    capo: 12,
    fretless: true,
    bowed: true,
    family: 'classical, fluorocarbon',
    builtFor: 'nylon',
    bridge: 'standing',
    beyond: { nut: 0.0333, saddle: 0.0444 },
    strings: ['Gb3', 'Db3', 'Ab2', 'Eb2'].map((note) => ({
      note,
      from: 9,
      course: 1,
      pick: { kind: 'plain', gauge: 33 },
      on: { note: 'Gb2', kind: 'plain', gauge: 33 },
    })),
  },
  units: 'mm-N',
  hand: 'left',
  trial: {
    string: 3,
    length: 0.27183,
    note: 'Gb3',
    gauge: { kind: 'wound', gauge: 33 },
    board: { treble: 0.33333, bass: 0.44444, square: 13 },
    drawn: { capo: 11, jaw: 77.7, octaves: 0.777 },
  },
  aim: {
    mode: 'even',
    factor: 0.777,
    kinds: 'any',
    ceiling: 777.7,
    weights: { pull: 7, push: 8, travel: 9 },
  },
  bend: { fret: 17, rise: 333.3, shown: true },
};

/** Half of the last digit that a link has of each: m, Hz, thousandths, kg/m, a share, cents. */
const halfDigit: Readonly<Record<string, number>> = {
  treble: 5e-6,
  bass: 5e-6,
  length: 5e-6,
  nut: 5e-6,
  saddle: 5e-6,
  a4: 5e-3,
  gauge: 5e-3,
  unitWeight: 5e-8,
  factor: 5e-4,
  ceiling: 5e-2,
  rise: 5e-2,
};
const DRAWN = 5e-7;

type Leaf = string | number | boolean;

/** Every value of a state by its path; what is not given is not there, nor what stands for the same. */
function leaves(value: unknown, path = ''): [string, Leaf][] {
  if (value === undefined || (path === '/other/builtFor' && value === 'steel')) return [];
  if (typeof value !== 'object' || value === null) {
    // No one can read control characters and halves of surrogate pairs: a link leaves them out.
    const told =
      typeof value === 'string'
        ? value.replace(/[\u0000-\u001f\u007f]|\p{Surrogate}/gu, '').trim()
        : value;
    return [[path, told as Leaf]];
  }
  return Object.entries(value).flatMap(([key, each]) => leaves(each, `${path}/${key}`));
}

const digitOf = (path: string): number =>
  path.startsWith('/trial/drawn/') ? DRAWN : (halfDigit[path.split('/').at(-1) ?? ''] ?? 0);

test('is the state, to the last digit of each field, whatever it is read on top of', () => {
  fc.assert(
    fc.property(anyState, (state) => {
      const { state: read, notes } = decode(encode(state), elsewhere);
      expect(notes).toEqual([]);
      const [was, is] = [new Map(leaves(state)), new Map(leaves(read))];
      // Where only the pull counts, it doesn't matter how much.
      const { push, travel } = state.aim.weights;
      if (push + travel === 0) was.set('/aim/weights/pull', 1);
      expect([...is.keys()].sort()).toEqual([...was.keys()].sort());
      for (const [path, value] of was) {
        const found = is.get(path);
        if (typeof value !== 'number' || typeof found !== 'number') expect(found, path).toBe(value);
        else expect(Math.abs(found - value), path).toBeLessThanOrEqual(digitOf(path) * 1.001);
      }
    }),
    { numRuns: 1000 },
  );
}, 60_000);
