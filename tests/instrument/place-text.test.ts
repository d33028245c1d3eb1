/** What is typed of where strings lie is read, or answered by what is allowed; what is shown is read back as the same. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

import { courseCounts, withCourses } from '../../src/instrument/courses.ts';
import {
  capoText,
  coursesText,
  fromText,
  parseCapo,
  parseCourses,
  parseFrom,
  parseTuning,
  placesText,
  withFrom,
} from '../../src/instrument/place-text.ts';
import { moreInstrument } from '../../src/instrument/more-instruments.ts';
import { workshopInstrument } from '../../src/instrument/workshop.ts';
import { anyInstrument } from './any-state.ts';

const six = workshopInstrument('redshank');
const valueOf = <T>(read: { ok: boolean; value?: T }): T | undefined =>
  read.ok ? read.value : undefined;

describe('where strings lie', () => {
  it('reads back as it is shown, for any instrument', () => {
    fc.assert(
      fc.property(anyInstrument, (mine) => {
        expect(valueOf(parseCourses(coursesText(mine), mine))).toEqual(courseCounts(mine.strings));
        expect(valueOf(parseFrom(fromText(mine), mine))).toEqual(
          mine.strings.map(({ from }) => from),
        );
        expect(parseCapo(capoText(mine))).toEqual({ ok: true, value: mine.capo });
        const notes = mine.strings.map(({ note }) => note);
        expect(valueOf(parseTuning(notes.join(' ')))).toEqual(notes);
      }),
    );
  });

  it.each(['', '3 2', '2 2 2 2', 'a b', '-1 7', '1.5 4.5', 'pears'])(
    'says what courses may be for “%s” on six strings',
    (text) => {
      const read = parseCourses(text, six);
      if (text === '') expect(valueOf(read)).toEqual([1, 1, 1, 1, 1, 1]);
      else
        expect(read).toMatchObject({
          ok: false,
          message: expect.stringContaining('add up to 6') as string,
        });
    },
  );

  it('knows pairs and triples by name', () => {
    expect(valueOf(parseCourses('pairs', six))).toEqual([2, 2, 2]);
    expect(valueOf(parseCourses('Triples', six))).toEqual([3, 3]);
    const five = { ...six, strings: six.strings.slice(0, 5) };
    expect(parseCourses('pairs', five).ok).toBe(false);
  });

  it.each(['5', '0 0 0 0 0 13', '0 0 0 0 0 x', '0 0 0 0 0 0 0'])(
    'takes no frets from “%s” on six strings',
    (text) =>
      expect(parseFrom(text, six)).toMatchObject({
        ok: false,
        message: expect.stringContaining('6 strings') as string,
      }),
  );

  it.each(['13', 'two', '-1'])('takes no capo from “%s”', (text) =>
    expect(parseCapo(text).ok).toBe(false),
  );

  it('is told in a few words, and in none where strings are single ones from one nut', () => {
    expect(placesText(six, false)).toBe('');
    expect(placesText(moreInstrument('knot'), false)).toBe('courses of 2 2 2 2');
    expect(placesText(moreInstrument('plover'), true)).toBe('string 5 from fret 5, left-handed');
    expect(placesText({ ...moreInstrument('phalarope'), capo: 2 }, false)).toBe(
      'capo at fret 2, no frets, bowed',
    );
  });

  it('changes only what it names', () => {
    const frets = [undefined, 3, undefined, undefined, undefined, 5];
    const next = withFrom(six, frets);
    expect(next.strings.map(({ from }) => from)).toEqual(frets);
    expect(withFrom(next, [])).toEqual(six);
    expect(withCourses(withCourses(six.strings, [2, 2, 2]), [])).toEqual(six.strings);
  });
});
