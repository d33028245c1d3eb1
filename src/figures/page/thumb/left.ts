/** What counts as leaving a sentence by a marked word: a word that points to a figure, or a note's mark that leads down the page. */
const MARKED = '.points-to, main a[href^="#"]';

export const isWordLeft = (target: EventTarget | null): target is Element =>
  target instanceof Element && target.closest(MARKED) !== null;

/** Whether any of it is on the screen. */
export function seen(element: Element): boolean {
  const { top, bottom } = element.getBoundingClientRect();
  return bottom > 0 && top < window.innerHeight;
}
