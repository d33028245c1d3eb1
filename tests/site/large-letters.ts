/** A page as a reader sees it whose letters are large, and the size of the letters in drawings. */
import type { Page } from 'playwright-core';

import { sideways } from './contents.ts';

/** Letters of drawings in `within` that stand lower than `least`, in px of the screen. */
export const drawnBelow = (page: Page, least: number, within = 'main') =>
  page.evaluate(
    ([size, place]) => {
      const letters = [...document.querySelectorAll<SVGTextElement>(`${place} svg text`)];
      return letters
        .filter(
          (each) => each.checkVisibility({ visibilityProperty: true }) && each.textContent.trim(),
        )
        .map((each) => {
          const { c = 0, d = 0 } = each.getScreenCTM() ?? {};
          const px = Number.parseFloat(getComputedStyle(each).fontSize) * Math.hypot(c, d);
          return { text: each.textContent, px: Math.round(px * 10) / 10 };
        })
        .filter(({ px }) => px < size - 0.05);
    },
    [least, within] as const,
  );

/**
 * The page, which is open already, with its letters at so many per cent each: what scrolls it sideways, which words are cut, which
 * controls lie over one another that don't at the usual size, and which drawings are not said in words beside them.
 */
export async function withLetters(
  page: Page,
  size: { width: number; height: number },
  percents: readonly number[],
) {
  await page.setViewportSize(size);
  const usual = await crowded(page);
  const found: Record<string, object> = {};
  for (const percent of percents) {
    await page.evaluate((share) => {
      document.documentElement.style.fontSize = `${share}%`;
    }, percent);
    const unsaid = await page.evaluate(drawnUnsaid);
    const wide = await sideways(page);
    const { cut, over } = await crowded(page);
    found[`${size.width} px, ${percent} %`] = {
      ...wide,
      cut: cut.filter((each) => !usual.cut.includes(each)),
      over: over.filter((each) => !usual.over.includes(each)),
      unsaid,
    };
  }
  await page.evaluate(() => document.documentElement.style.removeProperty('font-size'));
  return found;
}

/** Runs in the page: the drawings that are not said in words, once the script that says them has had its time. */
async function drawnUnsaid(): Promise<string[]> {
  const unsaid = () => {
    const said = [...document.querySelectorAll<HTMLElement>('.in-words')]
      .map((each) => each.innerText)
      .join(' ');
    return [...document.querySelectorAll('main .figure-body svg[role="img"][aria-label]')]
      .filter((each) => each.checkVisibility({ visibilityProperty: true }))
      .map((each) => each.getAttribute('aria-label')?.trim() ?? '')
      .filter((label) => !said.includes(label.slice(0, 30)));
  };
  await new Promise((done) => setTimeout(done, 50));
  for (let i = 0; i < 150 && unsaid().length; i += 1)
    await new Promise((done) => setTimeout(done, 20));
  return unsaid();
}

/** Words that are cut off, and controls that lie over one another. */
const crowded = (page: Page) =>
  page.evaluate(() => {
    const isSeen = (each: Element) =>
      each.checkVisibility({ visibilityProperty: true }) &&
      !each.closest('.unseen, .skip, .katex, .katex-display');
    const nameOf = (each: Element) =>
      (each.getAttribute('aria-label') ?? each.textContent).trim().slice(0, 40);
    const isCut = (each: Element) => {
      const wide = each.scrollWidth > each.clientWidth + 1;
      const high = each.scrollHeight > each.clientHeight + 2;
      // Few hold more than they show, and how something is styled takes long to ask.
      if ((!wide && !high) || each.clientWidth <= 3) return false;
      const { overflowX, overflowY } = getComputedStyle(each);
      const hides = (overflow: string) => overflow === 'hidden' || overflow === 'clip';
      return (wide && hides(overflowX)) || (high && hides(overflowY));
    };
    /** Where it can be seen: what has been moved out of a list that scrolls by itself can't. */
    const shownOf = (each: Element) => {
      let left = 0;
      let right = innerWidth;
      for (let outer = each.parentElement; outer; outer = outer.parentElement) {
        if (getComputedStyle(outer).overflowX === 'visible') continue;
        const box = outer.getBoundingClientRect();
        left = Math.max(left, box.left);
        right = Math.min(right, box.right);
      }
      return [...each.getClientRects()]
        .map(({ left: from, right: to, top, bottom }) => ({
          left: Math.max(left, from),
          right: Math.min(right, to),
          top,
          bottom,
        }))
        .filter((box) => box.right - box.left > 2 && box.bottom - box.top > 2);
    };
    const cut = [...document.querySelectorAll(':is(main, header) :not(svg, svg *, .katex *)')]
      // A drawing that shows half of a neck cuts it on purpose.
      .filter((each) => isCut(each) && !each.matches('.window') && isSeen(each))
      .map((each) => `${each.tagName} ${each.className} ${nameOf(each)}`);

    const controls = [...document.querySelectorAll('main, header, [role="region"]')].flatMap(
      (part) => [
        ...part.querySelectorAll('button, select, textarea, summary, input, a, [role="slider"]'),
      ],
    );
    const boxes = [...new Set(controls)]
      .filter((each) => isSeen(each) && !each.matches('.choices input'))
      .map((each) => ({
        each,
        // A drawing's handles may meet, and lines of text are as high as a finger: those lie beside each other as text does.
        inText: each.matches('a, .number'),
        drawn: each.closest('.stage') !== null,
        rects: shownOf(each),
      }));
    const over: string[] = [];
    for (const [i, a] of boxes.entries()) {
      for (const b of boxes.slice(i + 1)) {
        if (a.each.contains(b.each) || b.each.contains(a.each)) continue;
        if ((a.drawn && b.drawn) || (a.inText && b.inText)) continue;
        const meet = a.rects.some((one) =>
          b.rects.some(
            (two) =>
              Math.min(one.right, two.right) - Math.max(one.left, two.left) > 3 &&
              Math.min(one.bottom, two.bottom) - Math.max(one.top, two.top) > 3,
          ),
        );
        if (meet) over.push(`${nameOf(a.each)} over ${nameOf(b.each)}`);
      }
    }
    return { cut, over };
  });
