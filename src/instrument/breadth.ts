/** How wide a neck is for its strings: by itself, since few drawings need it. */
import { acrossOf, type Placed } from './courses.ts';

/** From the first string to the last, counted in ways from course to course: one string more, by itself, lies one way further. */
export function breadthOf(strings: readonly Placed[]): number {
  const share = acrossOf([...strings, {}]).at(-2) ?? 0;
  return share / (1 - share);
}
