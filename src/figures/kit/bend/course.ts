/** A finger bends all strings of a course by the same travel, and holds what they push back with together. */
import { coursesOf, type Placed } from '../../../instrument/courses.ts';
import type { Pull } from '../../../instrument/pulls.ts';
import { pushedBy, pushedTo, type Pushed, type Tuned } from '../../../instrument/pushed.ts';

/** A string that lies in the course of the one in hand. */
export interface Beside {
  readonly index: number;
  readonly pull: Pull;
  /** Frets from where it begins to sound, more than of the string in hand */
  readonly further: number;
}

/** The other strings of a course, by their index. */
export const othersOf = (strings: readonly Placed[], index: number): readonly number[] =>
  (coursesOf(strings).find((course) => course.includes(index)) ?? []).filter((i) => i !== index);

/** What a bend needs to know of a string beside the one in hand. */
type Along = Pick<Beside, 'further'> & { readonly pull: Tuned };

/** A string beside the one in hand, pushed as far at the same place of the neck; undefined where its stretch is not known. */
export const besidePushed = (
  { pull, further }: Along,
  fret: number,
  travel: number,
): Pushed | undefined => pushedBy(pull, Math.max(1, fret + further), travel);

/** `pushedTo` of a string, with what the finger holds of its whole course. Undefined where the stretch of any of them is not known. */
export function courseTo(
  pull: Tuned,
  beside: readonly Along[],
  fret: number,
  rise: number,
  room?: number,
): Pushed | undefined {
  let all = pushedTo(pull, fret, rise, room);
  for (const each of beside) {
    const its: Pushed | undefined = all && besidePushed(each, fret, all.travel);
    all = all && its && { ...all, push: all.push + its.push, strain: worse(all, its) };
  }
  return all;
}

const worse = (one: Pushed, other: Pushed): Pushed['strain'] =>
  (['broken', 'caution', 'unknown'] as const).find((strain) =>
    [one.strain, other.strain].includes(strain),
  ) ?? 'sound';
