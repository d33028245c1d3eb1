/** What of a chapter is printed: all that is to be read, a worksheet of its exercises, or the key to it. */
import { encode } from '../../instrument/link.ts';
import { store } from '../../instrument/store.svelte.ts';
import { codeOf } from '../../figures/kit/code/qr.ts';

import { answersInWords } from './key.ts';

export type Paper = 'read' | 'worksheet' | 'key';

const SVG = 'http://www.w3.org/2000/svg';
/** Blank around the code that a reader of it needs, in its modules: ISO/IEC 18004 */
const QUIET = 4;

/** The address of this page with the instrument that it shows, as a code. */
function code(): SVGSVGElement {
  const address = `${window.location.href.replace(/[?#].*/, '')}#${encode(store.settled)}`;
  const { size, path } = codeOf(address);
  const svg = document.createElementNS(SVG, 'svg');
  svg.setAttribute('viewBox', `${-QUIET} ${-QUIET} ${size + 2 * QUIET} ${size + 2 * QUIET}`);
  svg.setAttribute('role', 'img');
  svg.setAttribute('aria-label', 'A code that opens this chapter with the same instrument');
  const drawn = document.createElementNS(SVG, 'path');
  drawn.setAttribute('d', path);
  svg.append(drawn);
  return svg;
}

/** Space for the working of one exercise, mm, so that `count` of them fill two pages of A4 or Letter. */
export function spaceFor(count: number): number {
  // What both papers have between their margins, less what a long question takes beyond its share; and the name line and code.
  const page = 196;
  const head = 52;
  const [first, second] = [Math.floor(count / 2), Math.ceil(count / 2)];
  return Math.min(first ? (page - head) / first : page, page / Math.max(1, second));
}

/** Each list that is to be put in order, in an order that gives nothing away, however far the reader has put it right. */
function shuffleBack(): () => void {
  const rows = [...document.querySelectorAll<HTMLElement>('.exercise .order ol')].flatMap((list) =>
    [...list.querySelectorAll('li')].sort((a, b) => labelOf(a).localeCompare(labelOf(b))),
  );
  for (const [i, row] of rows.entries()) row.style.order = String(i);
  return () => {
    for (const row of rows) row.style.removeProperty('order');
  };
}
const labelOf = (row: Element): string => row.querySelector('.label')?.textContent ?? '';

/** The right answers, each below its question. */
async function answer(chapter: string): Promise<() => void> {
  const answers = await answersInWords(chapter, store.settled);
  const lines = [...answers].flatMap(([question, words]) => {
    const line = Object.assign(document.createElement('p'), {
      className: 'in-key',
      textContent: `Answer: ${words}`,
    });
    document.getElementById(question)?.after(line);
    return line;
  });
  return () => lines.forEach((line) => line.remove());
}

/** Lays the page out for `paper`, until its print has ended. `chapter` is its slug. */
export async function layOut(paper: Paper, chapter: string): Promise<void> {
  const { documentElement: root } = document;
  const putBack =
    paper === 'key' ? await answer(chapter) : paper === 'worksheet' ? shuffleBack() : () => {};
  root.dataset.paper = paper;
  const count = document.querySelectorAll('.prose > .exercise').length;
  root.style.setProperty('--space-for-one', `${spaceFor(count).toFixed(1)}mm`);
  document.querySelector('[data-paper-code]')?.replaceChildren(code());
  window.addEventListener(
    'afterprint',
    () => {
      putBack();
      delete root.dataset.paper;
      root.style.removeProperty('--space-for-one');
    },
    { once: true },
  );
}
