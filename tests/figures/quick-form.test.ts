/** What the short form says of an instrument beside the one that was shown: by how much its strings differ, and whether a hand would notice. */
import { expect, it } from 'vitest';

import { besideText } from '../../src/figures/kit/quick-form/beside.ts';
import { withNotes } from '../../src/instrument/edit.ts';
import { formatShare } from '../../src/instrument/format.ts';
import type { Instrument } from '../../src/instrument/schema.ts';
import { withSet } from '../../src/instrument/set-on.ts';
import { initialState, workshopInstrument } from '../../src/instrument/workshop.ts';
import { fromInches } from '../../src/physics/index.ts';

const { mine } = initialState;
const on = (inches: number, of: Instrument = mine): Instrument => ({
  ...of,
  scale: { treble: fromInches(inches), bass: fromInches(inches) },
});
const say = (now: Instrument, before: Instrument = mine) => besideText(now, before, 'in-lb');

it.each([
  [25, 'You’d probably not notice.'],
  [24.5, 'Some hands would notice.'],
  [22.5, 'Nearly any hand would notice.'],
])('the same set on %s in pulls less by the square, and %s', (inches, verdict) => {
  const less = formatShare(1 - (inches / 25.5) ** 2);
  expect(say(on(inches))).toBe(
    `Each string pulls ${less} less than on ${mine.name}, 25.5\u00a0in. ${verdict}`,
  );
});

it('gives the least and the most where strings differ by unlike shares', () => {
  const lighter = withSet(mine, 'nines');
  expect(lighter.strings.map((s) => s.gauge)).not.toEqual(mine.strings.map((s) => s.gauge));
  expect(say(lighter)).toMatch(
    /^Each string pulls \d+ to \d+\s% less than on .* hand would notice\.$/,
  );
  const dropped = withNotes(mine, ['E4', 'B3', 'G3', 'D3', 'A2', 'D2']);
  expect(say(dropped)).toMatch(/^Each string pulls up to 21\s% less than on /);
  const mixed = withNotes(on(25), ['F4', 'C4', 'G#3', 'D3', 'A2', 'E2']);
  expect(say(mixed)).toMatch(/^Each string pulls from \d+\s% less to \d+\s% more than on /);
});

it('says nothing where nothing differs, or the two can’t be compared', () => {
  expect(say(mine)).toBe('');
  expect(say(workshopInstrument('godwit'))).toBe('');
  expect(say(workshopInstrument('turnstone'))).toBe('');
  expect(say(on(40))).toBe('');
});
