/** What a reader has answered right, as a text to keep or to hand in. */

export interface ChapterKeys {
  readonly number: number;
  readonly title: string;
  /** Its exercises by key, in the order of the page */
  readonly keys: readonly string[];
}

/** `dayOf` is the day on which an exercise was answered right, undefined before. */
export function reportOf(
  chapters: readonly ChapterKeys[],
  dayOf: (key: string) => string | undefined,
  today: string,
): string {
  const rows = chapters.flatMap(({ number, title, keys }) => {
    const right = keys.filter((key) => dayOf(key) !== undefined).length;
    return [
      '',
      `${number}. ${title}: ${right} of ${keys.length} right`,
      ...keys.map((key, i) => {
        // The letter that marks it on the page
        const letter = String.fromCharCode(65 + i);
        return `   ${letter}  ${dayOf(key) ?? 'not yet'}`;
      }),
    ];
  });
  return [`Speaking Length: exercises answered right, as of ${today}`, ...rows, ''].join('\n');
}
