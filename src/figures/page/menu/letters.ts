/** Letters that a room can read: how large those of a figure are, and no smaller than the room needs. */

/** Least height of letters, as a share of the picture's width: 26 px of 1280, which is 4 cm of 2 m. */
const LEAST = 26 / 1280;
const grown = 'data-grown';

const drawn = (figure: HTMLElement): SVGTextElement[] =>
  [...figure.querySelectorAll<SVGTextElement>('.figure-body svg text')].filter((text) =>
    text.checkVisibility(),
  );

/** px of the screen for one unit of the drawing that holds it */
const scaleOf = (text: SVGTextElement): number => {
  const { c = 0, d = 1 } = text.getScreenCTM() ?? {};
  return Math.hypot(c, d) || 1;
};
const heightOf = (text: SVGTextElement): number =>
  Number.parseFloat(getComputedStyle(text).fontSize) * scaleOf(text);

/** How many letters lie over others, or out of what holds them: a count of pairs. */
export function crowding(figure: HTMLElement): number {
  const room = figure.querySelector('.figure-body')?.getBoundingClientRect();
  const boxes = drawn(figure).map((text) => text.getBoundingClientRect());
  let count = 0;
  for (const [i, a] of boxes.entries()) {
    if (room && (a.left < room.left || a.right > room.right)) count += 1;
    for (const b of boxes.slice(i + 1)) {
      const across = Math.min(a.right, b.right) - Math.max(a.left, b.left);
      const down = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
      if (across > 1 && down > 0.3 * Math.min(a.height, b.height)) count += 1;
    }
  }
  return count;
}

export function shrinkBack(figure: HTMLElement): void {
  for (const text of figure.querySelectorAll<SVGTextElement>(`[${grown}]`)) {
    text.style.removeProperty('font-size');
    text.removeAttribute(grown);
  }
}

/** Makes what is too small as large as a room needs. */
export function enlarge(figure: HTMLElement): void {
  shrinkBack(figure);
  const least = LEAST * window.innerWidth;
  const wanting = drawn(figure).flatMap((text) => (heightOf(text) < least ? text : []));
  const sizes = wanting.map((text) => least / scaleOf(text));
  for (const [i, text] of wanting.entries()) {
    text.style.setProperty('font-size', `${sizes[i]?.toFixed(2) ?? 0}px`, 'important');
    text.setAttribute(grown, '');
  }
}
