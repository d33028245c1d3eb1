/** Tells a figure with a narrow and a wide sheet which of them there is room for. */
import { flushSync } from 'svelte';

/** Calls `choose` now and whenever the answer changes, until what it returns is called. */
export function watchRoom(query: string, choose: (wide: boolean) => void): () => void {
  const room = window.matchMedia(query);
  const look = (): void => choose(room.matches);
  // A browser counts a print's pages before it reports their width: the narrow sheet must stand there by then.
  const paper = (): void => flushSync(() => choose(false));
  look();
  room.addEventListener('change', look);
  window.addEventListener('beforeprint', paper);
  window.addEventListener('afterprint', look);
  return () => {
    room.removeEventListener('change', look);
    window.removeEventListener('beforeprint', paper);
    window.removeEventListener('afterprint', look);
  };
}
