/** What a guess in a drawing asks stands nowhere on its page before it is made: not in words, drawings, captions, or what is spoken. */
import { beforeAll, afterAll, describe, expect, inject, test } from 'vitest';

import { browser } from './browser.ts';
import { desktop, open, scrollThrough, type Visit } from './kit.ts';
import { pages } from './pages.ts';

const chapters = pages().filter((path) => /^course\/.+/.test(path));

/**
 * Runs in the page. For each guess that is made in a drawing, the numbers that its answer names and its question doesn't; and all
 * that is read or spoken outside of what is still folded: of exercises, derivations and teachers' notes too, which are there to
 * be opened.
 */
function collect() {
  const said = (of: Element | null): string[] =>
    [...(of?.querySelectorAll('[data-live]') ?? [])].map((each) => each.textContent.trim());
  const guesses = [...document.querySelectorAll<HTMLElement>('[data-guess]')]
    .filter((guess) => guess.querySelector('.by-hand'))
    .map((guess) => {
      const known = [...document.querySelectorAll('.title-block, main p')]
        .filter((each) => each.compareDocumentPosition(guess) & Node.DOCUMENT_POSITION_FOLLOWING)
        .concat(guess.querySelector('.question') ?? [])
        .flatMap((each) => said(each));
      return {
        id: guess.dataset['guess'] ?? '',
        answers: said(guess.querySelector('details.answer')).filter(
          (text) => /\d.*(%|cents|in|lb|times)|\d\.\d/.test(text) && !known.includes(text),
        ),
      };
    });
  const isSeen = (element: Element): boolean =>
    element.checkVisibility({ visibilityProperty: true }) &&
    !element.closest('details:not([open]) > :not(summary), .exercise, .derivation, .teacher');
  const found: string[] = [];
  const walker = document.createTreeWalker(
    document.querySelector('main') ?? document.body,
    NodeFilter.SHOW_TEXT,
  );
  for (let node = walker.nextNode(); node; node = walker.nextNode())
    if (
      node.parentElement &&
      isSeen(node.parentElement) &&
      !node.parentElement.closest('.blot[data-veil], script, style')
    )
      found.push(node.textContent ?? '');
  const attributes = ['aria-label', 'aria-valuetext', 'aria-description', 'title', 'alt'];
  for (const each of document.querySelectorAll(attributes.map((name) => `main [${name}]`).join()))
    if (isSeen(each)) found.push(...attributes.map((name) => each.getAttribute(name) ?? ''));
  return { guesses, found: found.join('\n').replace(/[ \u00a0\u202f]+/g, ' ') };
}

/** A number as it stands by itself, not within a longer one. */
const alone = (text: string): RegExp =>
  new RegExp(
    `(?<![\\d.])${text.replace(/[.*+?^$()[\]{}|\\]/g, '\\$&').replace(/[ \u00a0\u202f]+/g, ' ')}(?![\\d])`,
  );

/** What stands there all the same, since it is not what the guess asks. */
const given: Readonly<Record<string, readonly RegExp[]>> = {
  // How much an inch is of the length; asked is what it is of the pull.
  'an-inch': [/^3\.9\s%$/],
  // The travel of the ten, which the figure bends; asked is whether the eleven’s is the same.
  'bend-eleven': [/^0\.77\sin$/],
  // What the wrap weighs, and how thick the core is; asked is what it carries.
  'wound.carries': [/^67\s%$/, /thousandths$/],
  // How much harder a longer string of the same gauge pulls; asked is what differs at the same pull.
  'hand-alike': [/^12\s%$/],
};

test('every chapter is tried', () => expect(chapters).toHaveLength(14));

describe.each(chapters)('%s', (path) => {
  let visit: Visit;
  beforeAll(async () => {
    visit = await open(browser, inject('origin') + path, { viewport: desktop });
    await scrollThrough(visit.page);
  });
  afterAll(() => visit.close());

  test('says an answer once it has been asked for, and not before', async () => {
    const { page } = visit;
    const { guesses, found } = await page.evaluate(collect);
    expect(guesses.length).toBeGreaterThan(0);
    for (const { id, answers } of guesses) {
      const asked = answers.filter((answer) => !given[id]?.some((other) => other.test(answer)));
      const there = asked.filter((answer) => alone(answer).test(found));
      expect(there, `${id}, before the guess`).toEqual([]);
      const guess = page.locator(`[data-guess="${id}"]`);
      await guess.locator('details.answer > summary').click();
      await expect.poll(() => page.locator(`[data-veil="${id}"]`).count()).toBe(0);
      const { found: after } = await page.evaluate(collect);
      expect(
        asked.filter((answer) => !alone(answer).test(after)),
        `${id}, when it is asked for`,
      ).toEqual([]);
    }
  });
});
