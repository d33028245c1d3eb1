// The course as a plan shows it: its parts are strings, its chapters dots on them, one to a fret, and a line leads from
// each chapter to those that build on it. The frets stand where those of an equal division stand.
import { fretPosition } from '../physics/index.ts';

export interface Chapter {
  readonly id: string;
  readonly number: number;
  readonly title: string;
  readonly part: string;
  readonly question: string;
  readonly minutes: number;
  /** slugs of the chapters that it builds on directly */
  readonly needs: readonly string[];
}

export interface Station extends Chapter {
  /** counted from 0: the place along the strings, and the string */
  readonly fret: number;
  readonly string: number;
  /** the middle between its fret and the one before, and how far these are apart; the whole neck is as long as it has frets */
  readonly along: number;
  readonly room: number;
  /** those that it builds on and that are written */
  readonly on: readonly Chapter[];
}

export interface Part {
  readonly name: string;
  readonly stations: readonly Station[];
}

export interface Line {
  readonly from: Station;
  readonly to: Station;
}

const place = (n: number): number => Number(n.toFixed(3));

/** Where the frets of a neck stand that ends with the last of `count`; it is `count` long. */
export const fretsOf = (count: number): readonly number[] => {
  const along = (fret: number): number => fretPosition({ scaleLength: 1, fret });
  return Array.from({ length: count }, (_, i) => place((count * along(i + 1)) / along(count)));
};

/**
 * The map of the chapters that are written, in the order of their numbers. Throws RangeError where a chapter needs
 * itself or a later one: a course is read from its beginning.
 */
export function courseMap(all: readonly Chapter[]): {
  readonly parts: readonly Part[];
  readonly stations: readonly Station[];
  readonly lines: readonly Line[];
} {
  const chapters = all.toSorted((a, b) => a.number - b.number);
  const names = [...new Set(chapters.map(({ part }) => part))];
  const frets = [0, ...fretsOf(chapters.length)];
  const stations = chapters.map((chapter, fret): Station => {
    const [before = 0, at = 0] = frets.slice(fret);
    const on = chapters.filter(({ id }) => chapter.needs.includes(id));
    const late = on.find(({ number }) => number >= chapter.number);
    if (late)
      throw new RangeError(`chapter ${chapter.number} needs "${late.id}"; permitted: earlier ones`);
    const string = names.indexOf(chapter.part);
    return { ...chapter, fret, string, along: place((before + at) / 2), room: at - before, on };
  });
  // What another needed chapter builds on already is not drawn again: the plan would be all lines.
  const before = (station: Chapter): Set<string> =>
    new Set(
      (stations.find(({ id }) => id === station.id)?.on ?? []).flatMap((each) => [
        each.id,
        ...before(each),
      ]),
    );
  const isDrawn = (from: Chapter, { on }: Station): boolean =>
    on.some(({ id }) => id === from.id) && !on.some((other) => before(other).has(from.id));
  return {
    parts: names.map((name) => ({ name, stations: stations.filter((s) => s.part === name) })),
    stations,
    lines: stations.flatMap((to) =>
      stations.filter((from) => isDrawn(from, to)).map((from) => ({ from, to })),
    ),
  };
}

/** A line between two dots, the neck along x and strings along y: ruled, or bowed past the dots of its own string. */
export function drawn({ from, to }: Line, upright: boolean): string {
  const at = (along: number, string: number) =>
    upright ? `${place(string + 0.5)} ${place(along)}` : `${place(along)} ${place(string + 0.5)}`;
  const start = at(from.along, from.string);
  const end = at(to.along, to.string);
  const span = to.fret - from.fret;
  const way = to.along - from.along;
  if (from.string !== to.string || span === 1) return `M${start}L${end}`;
  const bow = from.string + (upright ? -0.16 : 0.12) * Math.min(span, 3);
  return `M${start}C${at(from.along + 0.2 * way, bow)} ${at(to.along - 0.2 * way, bow)} ${end}`;
}
