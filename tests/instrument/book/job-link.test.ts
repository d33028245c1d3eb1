import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

import { readJobTail, writeJobTail } from '../../../src/instrument/book/job-link.ts';
import { frozenPicks } from '../../../src/instrument/book/job.ts';
import type { Measured } from '../../../src/instrument/book/schema.ts';
import { jobId, jobTail } from '../../../src/instrument/job-tail.ts';
import { encode } from '../../../src/instrument/link.ts';
import { decode } from '../../../src/instrument/link-read.ts';
import { initialState } from '../../../src/instrument/workshop.ts';
import { anyState } from '../any-state.ts';

/** What people write: several lines, any script, no halves of pairs. */
const anyWords = fc
  .string({ unit: 'grapheme', maxLength: 40 })
  .map((text) => text.replace(/[\u0000-\u0009\u000b-\u001f\u007f]/g, '').trim());
const someWords = anyWords.filter((text) => text !== '');
const anyPlaces = fc.array(someWords, { minLength: 1, maxLength: 12 });
const anyMeasured: fc.Arbitrary<Measured> = fc.record(
  { action: anyPlaces, relief: someWords, intonation: anyPlaces, words: someWords },
  { requiredKeys: [] },
);
const anyJob = fc.record({
  name: someWords,
  note: fc.option(someWords, { nil: undefined }),
  before: anyMeasured,
  after: anyMeasured,
  picked: fc.integer({ min: 1, max: 4e12 }),
});
const notEmpty = (measured: Measured) => (Object.keys(measured).length > 0 ? measured : undefined);

describe('a job in a link', () => {
  it('is the job, in any words, after any state, which stays what it is', () => {
    fc.assert(
      fc.property(anyState, anyJob, (state, job) => {
        const picks = frozenPicks(state);
        const { tail, whole } = writeJobTail({ ...job, picks });
        expect(whole).toBe(true);
        const link = `${encode(state)}${tail}`;
        const { state: read } = decode(link, initialState);
        expect(encode(read ?? initialState)).toBe(encode(state));
        const found = readJobTail(
          jobTail(link),
          state.other.strings.map((s) => s.note),
        );
        expect(found.name).toBe(job.name);
        expect(found.note).toBe(job.note);
        expect(found.picked).toBe(job.picked);
        expect([found.before, found.after]).toEqual([notEmpty(job.before), notEmpty(job.after)]);
        expect(found.picks.map((p) => p.note)).toEqual(picks.map((p) => p.note));
        for (const [i, pick] of picks.entries()) {
          expect(found.picks[i]?.gauge?.kind).toBe(pick.gauge?.kind);
          expect(found.picks[i]?.pull ?? 0).toBeCloseTo(pick.gauge ? (pick.pull ?? 0) : 0, 2);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('comes whole through a messenger that breaks it, escapes it and puts a full stop after it', () => {
    const job = {
      name: 'Whimbrel, ticket 12',
      note: 'Buzzes.\nAt the 9th.',
      picks: frozenPicks(initialState),
    };
    const { tail } = writeJobTail({ ...job, before: { relief: '0.3 mm' } });
    const link = `#${encode(initialState)}${tail}.`;
    const mangled = encodeURI(link.replace(/(.{70})/g, '$1\n'));
    const read = readJobTail(jobTail(mangled), []);
    expect(read).toMatchObject({ name: job.name, note: job.note, before: { relief: '0.3 mm' } });
  });

  it('never has the owner’s reference in it', () => {
    const job = { name: 'Whimbrel', reference: 'Ticket777', picks: [] };
    expect(writeJobTail(job).tail).not.toContain('777');
  });

  it('says when the words were too long for it, and keeps what fits', () => {
    const { tail, whole } = writeJobTail({ name: 'Whimbrel', note: 'ä'.repeat(4000), picks: [] });
    expect(whole).toBe(false);
    expect(tail.length).toBeLessThan(7000);
    expect(readJobTail(tail, []).name).toBe('Whimbrel');
  });

  it('never throws, whatever stands there', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: 'binary' }),
        fc.constantFrom('jn', 'jp', 'jba1', 'jd', 'jar99'),
        (text, key) => {
          const tail = jobTail(`v1/l-650/${key}-${text}`);
          expect(readJobTail(tail, ['E4']).name).toBeTypeOf('string');
        },
      ),
    );
  });

  it('of this device is named by its id alone', () => {
    expect(jobId(jobTail('#v1/l-650/to/e4/j-12-ab-9'))).toBe('12-ab-9');
    expect(jobId(jobTail('#v1/l-650/to/e4/jn-Whimbrel'))).toBeUndefined();
    expect(jobTail('#v1/l-650/to/n-Jay/e4')).toBe('');
  });
});
