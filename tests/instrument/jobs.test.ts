import { expect, test } from 'vitest';

import { jobs } from '../../src/instrument/jobs.ts';
import { decode } from '../../src/instrument/link-read.ts';
import { encode } from '../../src/instrument/link.ts';
import { planOf } from '../../src/instrument/plan.ts';
import { isState } from '../../src/instrument/schema.ts';
import { initialState } from '../../src/instrument/workshop.ts';

test.each(jobs)(
  '“$title” is a state that its link gives back, short enough to send',
  ({ state }) => {
    expect(isState(state)).toBe(true);
    const link = encode(state);
    expect(link.length).toBeLessThan(200);
    const read = decode(link, initialState);
    expect(read.notes).toEqual([]);
    expect(encode(read.state ?? initialState)).toBe(link);
    // A field that the link leaves out is as it was.
    expect(read.state?.other.strings.map(({ note }) => note)).toEqual(
      state.other.strings.map(({ note }) => note),
    );
  },
);

test.each(jobs)('the drawer holds a string for each note of “$title”', ({ state }) => {
  const { strings } = planOf(state);
  expect(strings).toHaveLength(state.other.strings.length);
  for (const { note, pull } of strings) expect(pull, note).toBeDefined();
});

test('no two jobs are the same', () => {
  expect(new Set(jobs.map(({ state }) => encode(state))).size).toBe(jobs.length);
});
