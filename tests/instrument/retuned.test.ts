/** A whole tuning moves by semitones, and strings that were left out come back as they were. */
import { expect, test } from 'vitest';

import { moved, withCount, withShelf } from '../../src/instrument/edit.ts';
import { limits } from '../../src/instrument/limits.ts';
import { tuningOf, tunings } from '../../src/instrument/tunings.ts';
import { asTarget, workshop, workshopInstrument } from '../../src/instrument/workshop.ts';
import { noteNumber } from '../../src/physics/index.ts';

const numbers = (strings: readonly { readonly note: string }[]): number[] =>
  strings.map(({ note }) => noteNumber(note));

test('every string of any instrument moves by as many semitones, and keeps its gauge', () => {
  for (const { id } of workshop)
    for (const by of [-7, -1, 1, 5]) {
      const mine = workshopInstrument(id);
      const next = moved(mine, by);
      expect(numbers(next?.strings ?? [])).toEqual(numbers(mine.strings).map((n) => n + by));
      expect(next?.strings.map(({ kind, gauge }) => [kind, gauge])).toEqual(
        mine.strings.map(({ kind, gauge }) => [kind, gauge]),
      );
      const back = next && moved(next, -by);
      expect(numbers(back?.strings ?? [])).toEqual(numbers(mine.strings));
    }
});

test('a tuning that has a name is spelled as it is named', () => {
  const down = moved(asTarget(workshopInstrument('redshank')), -1);
  const named = tunings.find(({ id }) => id === 'eb-standard');
  expect(down?.strings.map(({ note }) => note)).toEqual(named?.notes);
  expect(tuningOf(['D#4', 'A#3', 'F#3', 'C#3', 'G#2', 'D#2'])?.id).toBe('eb-standard');
});

test('it stays where a note would leave what the site draws', () => {
  const mine = workshopInstrument('redshank');
  const room = limits.note.max - noteNumber('E4');
  expect(moved(mine, room)).toBeDefined();
  expect(moved(mine, room + 1)).toBeUndefined();
});

test('fewer strings and as many again are the same strings, with what was known of them', () => {
  const mine = workshopInstrument('redshank');
  const weighed = {
    ...mine,
    strings: mine.strings.map((s, i) => (i === 5 ? { ...s, gauge: 52, unitWeight: 7.9e-3 } : s)),
  };
  const four = withShelf(weighed, 4, weighed.strings);
  expect(four.next.strings).toEqual(weighed.strings.slice(0, 4));
  // What was changed meanwhile stays changed.
  const strings = four.next.strings.map((s, i) => (i === 0 ? { ...s, gauge: 9 } : s));
  const changed = { ...four.next, strings };
  const six = withShelf(changed, 6, four.shelf);
  expect(six.next.strings.slice(4)).toEqual(weighed.strings.slice(4));
  expect(six.next.strings[0]?.gauge).toBe(9);
  // Beyond what there was, one is added below.
  const seven = withCount(withShelf(six.next, 7, six.shelf).next, 7);
  expect(seven.strings).toHaveLength(7);
  expect(seven.strings.slice(0, 6)).toEqual(six.next.strings);
});
