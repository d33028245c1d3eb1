/** Tells a figure with a narrow and a wide sheet which of them there is room for. Paper takes the wide one, and so must the figure's style; the whole screen takes the one with the larger letters. */
import { flushSync } from 'svelte';

/** Calls `choose` now and whenever the answer changes, until what it returns is called. */
export function watchRoom(query: string, choose: (wide: boolean) => void): () => void {
  const room = window.matchMedia(`screen and ${query}`);
  const sheet = window.matchMedia('print');
  let printing = false;
  const look = (): void =>
    choose(
      printing ||
        sheet.matches ||
        (room.matches && document.documentElement.dataset.projecting !== 'narrow'),
    );
  const projected = (): void => flushSync(look);
  // A browser counts a print's pages before it reports their width, and turns back to the screen in between: the wide
  // sheet must stand from the first to the last.
  const paper = (): void => {
    printing = true;
    flushSync(look);
  };
  const screen = (): void => {
    printing = false;
    look();
  };
  look();
  const watched = new AbortController();
  for (const [where, type, heed] of [
    [room, 'change', look],
    [sheet, 'change', look],
    [window, 'beforeprint', paper],
    [window, 'afterprint', screen],
    [window, 'projecting', projected],
  ] as const)
    where.addEventListener(type, heed, watched);
  return () => {
    watched.abort();
  };
}
