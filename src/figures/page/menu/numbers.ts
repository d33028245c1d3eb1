/** Marks what a room shall guess before it is shown: numbers and verdicts of a figure, as they come and go while it is dragged. */

const NOTE = /^[A-G][♯♭#b]?\d$/;
/** What the felt band says of a difference */
const SAYS = /hands? would|guessing|breaks/;
const isNumber = (text: string): boolean =>
  SAYS.test(text) || (/\d/.test(text) && !NOTE.test(text.trim()));

/** Whether an element, which has no other in it, tells what the room shall guess. */
export function isTold(element: Element): boolean {
  if (element.closest('.verdict, table')) return true;
  if (element instanceof HTMLInputElement) return element.matches('.field');
  return isNumber(element.textContent ?? '');
}

function mark(body: Element): void {
  for (const element of body.querySelectorAll('text, tspan, input, .verdict, :not(svg *)')) {
    const isLeaf = element.childElementCount === 0 || element.matches('text, .verdict');
    // A handle stays: it is what is dragged.
    if (!isLeaf || element.closest('[role="slider"], title, style, script')) continue;
    element.toggleAttribute('data-told', isTold(element));
  }
}

/** Begins to mark; returns what ends it. */
export function coverNumbers(figure: HTMLElement): () => void {
  const body = figure.querySelector('.figure-body');
  if (!body) return () => undefined;
  const watch = new MutationObserver(() => mark(body));
  watch.observe(body, { subtree: true, childList: true, characterData: true });
  mark(body);
  return () => {
    watch.disconnect();
    for (const each of body.querySelectorAll('[data-told]')) each.removeAttribute('data-told');
  };
}
