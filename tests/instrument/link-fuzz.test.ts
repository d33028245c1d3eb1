import fc from 'fast-check';
import { expect, it } from 'vitest';

import { encode } from '../../src/instrument/link.ts';
import { decode } from '../../src/instrument/link-read.ts';
import { isState } from '../../src/instrument/schema.ts';
import { initialState } from '../../src/instrument/workshop.ts';
import { anyState } from './any-state.ts';

// Thousands of texts take their time on a busy machine.
const PATIENCE = 60_000;

function holds(text: string): boolean {
  const { state, notes } = decode(text, initialState);
  return (state === undefined || isState(state)) && notes.every((note) => note.endsWith('.'));
}

const anything = fc.string({ unit: 'binary', maxLength: 300 });
const field = fc.oneof(
  fc.string({ unit: fc.constantFrom(...'v1nlautsfmkpwxeb0123456789.-'), maxLength: 14 }),
  fc.constantFrom('to', 'n-', 'l-', 'a-', 'e4-p', 'e4-w46x', 'tl-', 'tb-650-', 'tg-p', 'f-', 'ts-'),
  fc.constantFrom('l-1e999', 'l--5', 'a-0x1b8', 'f-NaN', 'e4-p9e9', 'n-.110000.', 'n-.d800.'),
  fc.constantFrom('l-Infinity', 'a-1e400', 'f-1e308', 'e4-w999x99999999', 'ts-1e9', 'tn-h9'),
);
const nearly = fc.array(field, { maxLength: 40 }).map((fields) => ['v1', ...fields].join('/'));
const damaged = fc
  .tuple(anyState, fc.nat(), fc.nat({ max: 12 }), anything)
  .map(([state, at, length, piece]) => {
    const link = encode(state);
    const from = at % link.length;
    return link.slice(0, from) + piece.slice(0, 12) + link.slice(from + length);
  });

it(
  'reads any text as a valid state or as none',
  () => {
    fc.assert(fc.property(anything, holds), { numRuns: 8000 });
  },
  PATIENCE,
);

it(
  'reads any fields as a valid state or as none',
  () => {
    fc.assert(fc.property(nearly, holds), { numRuns: 8000 });
  },
  PATIENCE,
);

it(
  'reads any damaged link as a valid state or as none',
  () => {
    fc.assert(fc.property(damaged, holds), { numRuns: 4000 });
  },
  PATIENCE,
);

it('reads a text of a million characters by its beginning', () => {
  const link = encode(initialState);
  const tail = `/${'e4-p10/'.repeat(150_000)}`;
  const { state } = decode(link + tail, initialState);
  expect(state?.mine).toEqual(initialState.mine);
  for (const unit of ['v1/', 'n-.41.', '%E2%80%94', '1', ' ', '/', '%', 'e4-p1']) {
    expect(holds(`v1/${unit.repeat(Math.ceil(1_000_000 / unit.length))}`)).toBe(true);
    expect(holds(unit.repeat(Math.ceil(1_000_000 / unit.length)))).toBe(true);
  }
});
