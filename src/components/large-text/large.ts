/** From this size of the page's letters on, those of a drawing no longer keep up, px. */
const LARGE = 20;

/** Whether the reader has made the page's letters large; the type of the whole screen, for a room, is none of theirs. */
export function isLarge(): boolean {
  const { documentElement: root } = document;
  return !('projecting' in root.dataset) && parseFloat(getComputedStyle(root).fontSize) > LARGE;
}
