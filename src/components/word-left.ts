/** Where a chapter's tags leave word of what they name. It stands ready before any of them is rendered. */
export const noWordYet = (chapter: string) => ({
  chapter,
  terms: new Set<string>(),
  cited: new Set<string>(),
  parts: new Set<string>(),
});
