/**
 * Marks what a room shall guess before it is shown: the numbers and verdicts that follow, as they come and go while a figure is
 * dragged. What is given, or has been set, stays: the class works from it.
 */

/** A number as a drawing letters it, and the unit or the word behind it */
const NUMBER = /([+−±×]?)\s?(\d[\d.,]*)[\s ]?(lb·in|[^\s\d,:;.()→]*)/gu;
/** What is worked out and never set: a force, a share, a ratio, an interval, a weight by length, stiffness */
const FOLLOWS =
  /^(?:lb|lbf|N|kg|kgf|lb·in|N·m|%|cents?|semitones?|millionths?|g\/m|lb\/in|mm²|°)$/u;
const NOTE = /^[A-G][♯♭#b]?\d$/;
/** What the felt band says of a difference */
const SAYS = /hands? would|guessing|breaks/;

interface Said {
  readonly sign: string;
  readonly number: string;
  readonly unit: string;
}
const numbersIn = (text: string): Said[] =>
  [...text.matchAll(NUMBER)].map(([, sign = '', number = '', unit = '']) => ({
    sign,
    number: String(Number.parseFloat(number.replaceAll(',', ''))),
    unit,
  }));

/** Whether `text` tells a number that follows, where `set` is what handles and fields say. */
export function tellsAnswer(text: string, set: readonly string[]): boolean {
  if (SAYS.test(text)) return true;
  const given = set.flatMap(numbersIn);
  return numbersIn(text).some(({ sign, number, unit }) => {
    if (sign === '' && !FOLLOWS.test(unit)) return false;
    // “+1 in” says by how much something has been moved.
    if (sign !== '×' && /^(?:in|mm)$/.test(unit)) return false;
    return !given.some((one) => one.number === number && one.sign === sign && one.unit === unit);
  });
}

/** Whether an element, which has no other in it, is to be covered. */
function isTold(element: Element, set: readonly string[]): boolean {
  if (element.closest('[data-given], input, select, button, label, th')) return false;
  if (element.closest('[data-answer], .verdict, td, dd')) return true;
  const text = element.textContent?.trim() ?? '';
  return !NOTE.test(text) && tellsAnswer(text, set);
}

/** What can be set in a figure, as its handles and fields say it; behind a comma a handle says what follows. */
const setIn = (body: Element): string[] =>
  [...body.querySelectorAll('[role="slider"], input')].map((each) =>
    each instanceof HTMLInputElement
      ? each.value
      : (each.getAttribute('aria-valuetext')?.split(', ')[0] ?? ''),
  );

function mark(body: Element): void {
  const set = setIn(body);
  for (const element of body.querySelectorAll('text, tspan, .verdict, :not(svg *)')) {
    const isLeaf =
      element.childElementCount === 0 ||
      element.matches('text, .verdict, td, dd:not(:has(input, select, button))');
    // A handle stays: it is what is dragged.
    if (!isLeaf || element.closest('[role="slider"], title, style, script')) continue;
    element.toggleAttribute('data-told', isTold(element, set));
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
