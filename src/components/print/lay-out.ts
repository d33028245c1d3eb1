/** What of a chapter is printed: all that is to be read, a worksheet of its exercises, or the key to it. */
import { encode } from '../../instrument/link.ts';
import { store } from '../../instrument/store.svelte.ts';
import { codeOf } from '../../figures/kit/code/qr.ts';

import { answersInWords } from './key.ts';
import type { Paper } from './paper.ts';

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

/** A question on paper: mm that it takes by itself, and whether it is worked out, and so wants space. */
export interface Question {
  readonly height: number;
  readonly isWorked: boolean;
}

/** mm between the margins of Letter, the lower of the two papers, less a little for what was measured; and the name line and code. */
const PAGE = 238;
const HEAD = 48;
/** More would only look empty. */
const MOST = 110;

/** Whether two pages hold them all, none of them cut, if those to be worked out get `space` each. */
function fits(questions: readonly Question[], space: number): boolean {
  let page = 1;
  let used = HEAD;
  for (const { height, isWorked } of questions) {
    const wanted = isWorked ? Math.max(height, space) : height;
    if (used + wanted > PAGE) {
      page += 1;
      used = 0;
    }
    used += wanted;
  }
  return page <= 2;
}

/** Height of each question that is to be worked out, working space included, mm, so that all of them fill two pages. */
export function spaceFor(questions: readonly Question[]): number {
  let space = MOST;
  while (space > 0 && !fits(questions, space)) space -= 1;
  return space;
}

/** In a line of print, at least; and in the lettering of one of two columns */
const MOST_LETTERS = 90;
const IN_HALF = 62;
const linesOf = (element: Element | null, letters: number): number =>
  Math.max(1, Math.ceil((element?.textContent.trim().length ?? 0) / letters));

/** Its height as it prints, mm, a little more than was measured on the sheets: the question, what stands around it, and its rows. */
function measure(exercise: Element): Question {
  const asked = 5.8 * linesOf(exercise.querySelector('.question'), MOST_LETTERS);
  const order = [...exercise.querySelectorAll('.order li')];
  if (order.length) return { height: asked + 20 + 9.9 * order.length, isWorked: false };
  const options = [...exercise.querySelectorAll('label:has(input[type="radio"])')];
  if (!options.length) return { height: asked + 24, isWorked: true };
  // Lines of a working stand one below the other, choices two in a row.
  const lines = options.filter((each) => each.closest('fieldset.sheet'));
  const row = (each: Element, letters: number) => 5 + 4.6 * linesOf(each, letters);
  if (lines.length)
    return {
      height: asked + 18 + lines.reduce((sum, each) => sum + row(each, MOST_LETTERS), 0),
      isWorked: false,
    };
  const highest = Math.max(...options.map((each) => row(each, IN_HALF)));
  return { height: asked + 18 + highest * Math.ceil(options.length / 2), isWorked: false };
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

/** Lays a chapter out for `paper`; what it returns puts it back. `chapter` is its slug. */
export async function layOut(paper: Paper, chapter: string): Promise<() => void> {
  const { style } = document.documentElement;
  const putBack =
    paper === 'key' ? await answer(chapter) : paper === 'worksheet' ? shuffleBack() : () => {};
  const questions = [...document.querySelectorAll('.prose > .exercise')].map(measure);
  style.setProperty('--space-for-one', `${spaceFor(questions)}mm`);
  document.querySelector('[data-paper-code]')?.replaceChildren(code());
  return () => {
    putBack();
    style.removeProperty('--space-for-one');
  };
}
