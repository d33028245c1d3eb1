import fc from 'fast-check';
import { expect, it } from 'vitest';

import { encode } from '../../src/instrument/link.ts';
import { decode } from '../../src/instrument/link-read.ts';
import { isState } from '../../src/instrument/schema.ts';
import { initialState } from '../../src/instrument/workshop.ts';
import { anyState } from './any-state.ts';

const ownKeys = Reflect.ownKeys(Object.prototype);

// The same five thousand at each run; `npm run soak` draws others, many more of them.
const TEXTS = Number(process.env.TEXTS ?? 5000);
// As many as the soak draws take their time on a busy machine.
const PATIENCE = 600_000;

function holds(text: string): boolean {
  const { state, notes } = decode(text, initialState);
  return (state === undefined || isState(state)) && notes.every((note) => note.endsWith('.'));
}

const anything = fc.string({ unit: 'binary', maxLength: 60 });
const field = fc.oneof(
  fc.string({ unit: fc.constantFrom(...'v1nlautsfmkpwxeb0123456789.-'), maxLength: 14 }),
  fc.constantFrom('to', 'n-', 'l-', 'a-', 'e4-p', 'e4-w46x', 'tl-', 'tb-650-', 'tg-p', 'f-', 'ts-'),
  fc.constantFrom('l-1e999', 'l--5', 'a-0x1b8', 'f-NaN', 'e4-p9e9', 'n-.110000.', 'n-.d800.'),
  fc.constantFrom('l-Infinity', 'a-1e400', 'f-1e308', 'e4-w999x99999999', 'ts-1e9', 'tn-h9'),
  fc.constantFrom(
    '__proto__',
    '__proto__-1',
    'constructor-x',
    'toString',
    'u-__proto__',
    's-valueOf',
  ),
  fc.constantFrom('n-<b>x</b>', 'n-%3Cscript%3E', '%', '%e2%80', '%c0%af', '\u0000', '\ud800'),
);
const version = fc.constantFrom('v1', 'V1', 'v2', 'v0', 'v01', 'v999999999999', 'v-1', 'v1.5', '');
const nearly = fc
  .tuple(version, fc.array(field, { maxLength: 16 }))
  .map(([first, fields]) => [first, ...fields].join('/'));

// Links of states from one end of the table to the other, drawn once: to draw one takes longer than to read it.
const links = fc.sample(anyState, { numRuns: 400, seed: 1 }).map(encode);
/** A link of which pieces are cut out, doubled, turned round, or replaced by something else. */
const damaged = fc
  .tuple(
    fc.constantFrom(...links),
    fc.array(
      fc.record({
        at: fc.nat({ max: 400 }),
        length: fc.nat({ max: 12 }),
        by: fc.oneof(anything, field, fc.constantFrom('cut', 'double', 'turn', 'case')),
      }),
      { minLength: 1, maxLength: 3 },
    ),
  )
  .map(([link, wounds]) =>
    wounds.reduce((text, { at, length, by }) => {
      const from = at % Math.max(1, text.length);
      const piece = text.slice(from, from + length);
      const put: Readonly<Record<string, string>> = {
        cut: '',
        double: piece + piece,
        turn: [...piece].reverse().join(''),
        case: piece.toUpperCase(),
      };
      const instead = Object.hasOwn(put, by) ? put[by] : by;
      return text.slice(0, from) + instead + text.slice(from + length);
    }, link),
  );

it.each([
  ['any text', anything, 0.2],
  ['any fields of any version', nearly, 0.4],
  ['any damaged link', damaged, 0.4],
] as const)(
  'reads %s as a valid state or as none',
  (_, texts, share) => {
    fc.assert(fc.property(texts, holds), { numRuns: share * TEXTS });
    expect(Reflect.ownKeys(Object.prototype)).toEqual(ownKeys);
  },
  PATIENCE,
);

it('reads nothing that stands behind the first four thousand characters', () => {
  const read = (text: string) => decode(text, initialState);
  fc.assert(
    fc.property(
      fc.constantFrom(...links),
      nearly,
      fc.constantFrom('/', '%20', ' '),
      (link, tail, gap) => {
        const long = link + gap.repeat(4000) + tail;
        expect(read(long)).toEqual(read(long.slice(0, 4000)));
      },
    ),
    { numRuns: 500 },
  );
});

it('reads a text of a million characters by its beginning', () => {
  const link = encode(initialState);
  const tail = `/${'e4-p10/'.repeat(150_000)}`;
  const { state } = decode(link + tail, initialState);
  expect(state?.mine).toEqual(initialState.mine);
  expect(holds('\ud83d\udca9'.repeat(500_000))).toBe(true);
  for (const unit of ['v1/', 'n-.41.', '%E2%80%94', '1', ' ', '/', '%', 'e4-p1']) {
    expect(holds(`v1/${unit.repeat(Math.ceil(1_000_000 / unit.length))}`)).toBe(true);
    expect(holds(unit.repeat(Math.ceil(1_000_000 / unit.length)))).toBe(true);
  }
});
