// The course as a plan shows it: its parts are strings, its chapters dots on them, one to a fret, and a line leads from
// each chapter to those that build on it.

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
  const stations = chapters.map((chapter, fret): Station => {
    const on = chapters.filter(({ id }) => chapter.needs.includes(id));
    const late = on.find(({ number }) => number >= chapter.number);
    if (late)
      throw new RangeError(`chapter ${chapter.number} needs "${late.id}"; permitted: earlier ones`);
    return { ...chapter, fret, string: names.indexOf(chapter.part), on };
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

const place = (n: number): number => Number(n.toFixed(3));

/** A line between two dots, frets along x and strings along y: ruled, or bowed past the dots of its own string. */
export function drawn({ from, to }: Line, upright: boolean): string {
  const at = (fret: number, string: number) =>
    upright
      ? `${place(string + 0.5)} ${place(fret + 0.5)}`
      : `${place(fret + 0.5)} ${place(string + 0.5)}`;
  const start = at(from.fret, from.string);
  const end = at(to.fret, to.string);
  const span = to.fret - from.fret;
  if (from.string !== to.string || span === 1) return `M${start}L${end}`;
  const bow = from.string + (upright ? -0.16 : 0.12) * Math.min(span, 3);
  return `M${start}C${at(from.fret + 0.2 * span, bow)} ${at(to.fret - 0.2 * span, bow)} ${end}`;
}
