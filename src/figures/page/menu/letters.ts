/** Letters that a room can read: how large those of a figure are, and no smaller than the room needs. */

/** Least height of letters, as a share of the picture's width: 26 px of 1280, which is 4 cm of 2 m. */
const LEAST = 26 / 1280;
const grown = 'data-grown';
const left = 'data-left-out';

const drawn = (figure: HTMLElement, what = 'text'): SVGTextElement[] =>
  [...figure.querySelectorAll<SVGTextElement>(`.figure-body svg :is(${what})`)].filter((text) =>
    text.checkVisibility(),
  );

/** px of the screen for one unit of the drawing that holds it */
const scaleOf = (text: SVGTextElement): number => {
  const { c = 0, d = 1 } = text.getScreenCTM() ?? {};
  return Math.hypot(c, d) || 1;
};
const heightOf = (text: SVGTextElement): number =>
  Number.parseFloat(getComputedStyle(text).fontSize) * scaleOf(text);

const overlap = (a: DOMRect, b: DOMRect): boolean =>
  Math.min(a.right, b.right) - Math.max(a.left, b.left) > 1 &&
  Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > 0.3 * Math.min(a.height, b.height);

/** Whether two marks of one scale stand too close to be read apart. */
const joins = (a: SVGTextElement, b: SVGTextElement, one: DOMRect, two: DOMRect): boolean =>
  a.getAttribute('class') === b.getAttribute('class') &&
  Math.abs(one.top - two.top) < 2 &&
  Math.max(one.left, two.left) - Math.min(one.right, two.right) < 0.25 * one.height;

/** How many letters lie over others, or out of what holds them: a count of pairs. */
export function crowding(figure: HTMLElement): number {
  const room = figure.querySelector('.figure-body')?.getBoundingClientRect();
  const boxes = drawn(figure).map((text) => text.getBoundingClientRect());
  let count = 0;
  for (const [i, a] of boxes.entries()) {
    if (room && (a.left < room.left || a.right > room.right)) count += 1;
    count += boxes.slice(i + 1).filter((b) => overlap(a, b)).length;
  }
  return count;
}

/** Leaves out a mark of a scale, or what is said beside the point, where a stronger or an earlier letter has its place. */
export function thin(figure: HTMLElement): void {
  const weightOf = (text: SVGTextElement): number => Number(getComputedStyle(text).fontWeight);
  const letters = drawn(figure)
    .map((text) => ({ text, weight: weightOf(text), box: text.getBoundingClientRect() }))
    .sort((a, b) => b.weight - a.weight);
  const kept: typeof letters = [];
  for (const letter of letters) {
    const { text, weight, box } = letter;
    const gives =
      weight <= 500 &&
      kept.some((other) => overlap(other.box, box) || joins(other.text, text, other.box, box));
    text.toggleAttribute(left, gives);
    if (!gives) kept.push(letter);
  }
}

export function shrinkBack(figure: HTMLElement): void {
  for (const text of figure.querySelectorAll<SVGTextElement | HTMLElement>(`[${grown}]`)) {
    text.style.removeProperty('font-size');
    text.removeAttribute(grown);
  }
  for (const text of figure.querySelectorAll(`[${left}]`)) text.removeAttribute(left);
}

/** Makes what is too small as large as a room needs. */
export function enlarge(figure: HTMLElement): void {
  shrinkBack(figure);
  const least = LEAST * window.innerWidth;
  const wanting = drawn(figure, 'text, tspan').flatMap((text) =>
    heightOf(text) < least ? text : [],
  );
  const sizes = wanting.map((text) => least / scaleOf(text));
  // What a drawing letters beside itself, too.
  const beside = [
    ...figure.querySelectorAll<HTMLElement>('.figure-body :is(p, span, li, b, td, th, dt, dd)'),
  ].filter(
    (each) =>
      Number.parseFloat(getComputedStyle(each).fontSize) < least - 0.05 &&
      each.checkVisibility() &&
      !each.closest('.unseen, .katex'),
  );
  for (const [i, text] of wanting.entries()) {
    text.style.setProperty('font-size', `${sizes[i]?.toFixed(2) ?? 0}px`, 'important');
    text.setAttribute(grown, '');
  }
  for (const each of beside) {
    each.style.setProperty('font-size', `${least.toFixed(2)}px`, 'important');
    each.setAttribute(grown, '');
  }
}
