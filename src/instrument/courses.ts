/**
 * Courses: strings that lie close together and are played as one, in unison or an octave apart. A string of the schema that lies by
 * itself names no course; those of one course share its number, counted from 1 over all courses.
 */
export interface Placed {
  readonly course?: number | undefined;
}

/** The strings of each course, by their index, from the treble side; a string by itself is a course of one. */
export function coursesOf(strings: readonly Placed[]): readonly (readonly number[])[] {
  const courses: number[][] = [];
  strings.forEach(({ course }, i) => {
    const last = courses.at(-1);
    if (last && course !== undefined && strings[i - 1]?.course === course) last.push(i);
    else courses.push([i]);
  });
  return courses;
}

/** How many strings each course has, from the treble side. */
export const courseCounts = (strings: readonly Placed[]): readonly number[] =>
  coursesOf(strings).map(({ length }) => length);

/** True where any two strings lie together. */
export const hasCourses = (strings: readonly Placed[]): boolean =>
  coursesOf(strings).length < strings.length;

/** The same strings in courses of so many each, from the treble side; what no count names lies by itself. */
export function withCourses<T extends Placed>(
  strings: readonly T[],
  counts: readonly number[],
): readonly T[] {
  const numbers = counts
    .filter((count) => Number.isInteger(count) && count > 0)
    .flatMap((count, i) => Array.from({ length: Math.min(count, strings.length) }, () => i + 1))
    .slice(0, strings.length);
  return strings.map((string, i): T => {
    const alone: { course?: number | undefined } = { ...string };
    delete alone.course;
    const course = numbers[i];
    const together = numbers[i - 1] === course || numbers[i + 1] === course;
    return (course !== undefined && together ? { ...alone, course } : alone) as T;
  });
}

/** How close strings of one course lie, as a share of the way from course to course (common practice, no source). */
const CLOSE = 0.3;

/** Where each string lies across the neck: 0 at the first, 1 at the last, those of a course close together; a single one in the middle. */
export function acrossOf(strings: readonly Placed[]): readonly number[] {
  const courses = coursesOf(strings);
  const steps: number[] = [];
  let at = 0;
  courses.forEach((course, c) =>
    course.forEach((_, i) => {
      if (i > 0) at += CLOSE;
      else if (c > 0) at += 1;
      steps.push(at);
    }),
  );
  return at === 0 ? steps.map(() => 0.5) : steps.map((step) => step / at);
}
