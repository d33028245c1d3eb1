/** What stands on the two rules at the sheet's edges: notes up the side, lengths along the foot. */
import { formatNote } from '../../../instrument/format.ts';
import type { Instrument, Units } from '../../../instrument/schema.ts';
import { fromInches, fromMillimetres, noteName, noteNumber } from '../../../physics/index.ts';
import { alongAt, heightAt, type Frame } from './frame.ts';

export interface NoteMark {
  readonly number: number;
  readonly y: number;
  readonly natural: boolean;
  /** Named where there is room: the instrument's own notes first */
  readonly name: string | undefined;
  readonly own: boolean;
}

/** From the lowest to the highest note of the sheet. */
export function noteMarks(frame: Frame, { strings }: Instrument): readonly NoteMark[] {
  const { min, max } = frame.notes;
  const own = new Set(strings.map((s) => noteNumber(s.note)));
  const all = Array.from(
    { length: Math.floor(max) - Math.ceil(min) },
    (_, i) => i + Math.ceil(min),
  );
  const room = frame.size / frame.perSemitone;
  const named: number[] = [];
  const take = (number: number): void => {
    if (named.every((n) => Math.abs(n - number) >= room)) named.push(number);
  };
  all.filter((n) => own.has(n)).forEach(take);
  for (const pitchClass of [0, 4, 7, 9]) all.filter((n) => n % 12 === pitchClass).forEach(take);
  return all.map((number) => {
    const name = noteName(number);
    return {
      number,
      y: heightAt(frame, number),
      natural: !name.includes('#'),
      name: named.includes(number) ? formatNote(name) : undefined,
      own: own.has(number),
    };
  });
}

export interface LengthMark {
  readonly x: number;
  /** Named, long or short stroke */
  readonly name: string | undefined;
}

/** Inches or centimetres, a few of them named. */
export function lengthMarks(frame: Frame, units: Units): readonly LengthMark[] {
  const inch = units === 'in-lb';
  const metres = inch ? fromInches : fromMillimetres;
  const step = inch ? 1 : 10;
  const { min, max } = frame.lengths;
  const room = 44 / (frame.perMetre * metres(1));
  const every = (inch ? [2, 4, 6] : [20, 50, 100]).find((n) => n >= room) ?? (inch ? 6 : 100);
  const first = Math.ceil(min / metres(step) - 1e-9) * step;
  const count = Math.floor((max / metres(1) - first) / step + 1e-9) + 1;
  return Array.from({ length: count }, (_, i) => {
    const value = first + i * step;
    return {
      x: alongAt(frame, metres(value)),
      name: value % every === 0 ? String(value) : undefined,
    };
  });
}
