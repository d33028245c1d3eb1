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

/** Runs in the page. Which of these can be seen; drawings that can be, though nothing stands in them, don't count. */
const seen = (marks: readonly string[]): string[] =>
  marks.filter((mark) =>
    [...document.querySelectorAll(mark)].some(
      (each) =>
        each.checkVisibility({ visibilityProperty: true, opacityProperty: true }) &&
        each.getClientRects().length > 0,
    ),
  );

/** Numbers that stand where the page is blank until the guess is made, if they are so exact that they can't stand elsewhere by chance. */
const veiled = (id: string): string[] =>
  [...document.querySelectorAll(`[data-veil="${id}"] [data-live]`)]
    .map((each) => each.textContent.trim())
    .filter((text) => /\d\.\d|\d{3}/.test(text));

/** The same digits for something else. */
const byChance: Readonly<Record<string, readonly string[]>> = {
  // How much heavier a thicker core makes a string of the same gauge.
  'wound.carries': ['0.3\u00a0%'],
  // The rule map tries whole sets on other scales; asked are the nearest gauges on one.
  'pair.dots': ['9.5', '−2.5\u00a0%'],
};

/** What a drawing shows of the answer, by the guess that asks for it: marks that a reader sees and no number tells. */
const drawn: Readonly<Record<string, readonly string[]>> = {
  'an-inch': ['#the-square svg'],
  'bend-eleven': ['#five-gauges svg'],
  'hand-alike': ['#three-rulers svg'],
  'breaking.twelve': ['#the-buckets svg'],
  'low.thicker': [
    ...['roads-meet', 'road-lengthen', 'road-thicken'].map((part) => `[data-part="${part}"]`),
    ...['.cross', '[data-handle="point"]', '.point'].map((part) => `#three-roads ${part}`),
    '#side-by-side svg',
  ],
  'pair.dots': ['[data-part="pair-dots"]', '#two-necks .link', '#two-necks .told'],
  'stiff-bare': ['[data-part="ladder-bare"] .under'],
  'tune.staircase': ['#the-flags [data-part="flags-best"]'],
  'three.half': ['#slide-rule svg'],
};

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
      const blank = await page.evaluate(veiled, id);
      expect(
        blank.filter((number) => !byChance[id]?.includes(number) && alone(number).test(found)),
        `${id}, veiled in one place and told in another`,
      ).toEqual([]);
      const marks = drawn[id] ?? [];
      expect(await page.evaluate(seen, marks), `${id}, drawn before the guess`).toEqual([]);
      const guess = page.locator(`[data-guess="${id}"]`);
      await guess.locator('details.answer > summary').click();
      await expect.poll(() => page.locator(`[data-veil="${id}"]`).count()).toBe(0);
      const { found: after } = await page.evaluate(collect);
      expect(
        asked.filter((answer) => !alone(answer).test(after)),
        `${id}, when it is asked for`,
      ).toEqual([]);
      expect(await page.evaluate(seen, marks), `${id}, drawn after it`).toEqual(marks);
    }
  });
});

test('a guess whose drawing is looked at is one of the course', async () => {
  const visit = await open(browser, inject('origin'));
  const ids = await Promise.all(
    chapters.map(async (path) => {
      const page = await visit.page.request.get(inject('origin') + path);
      return [...(await page.text()).matchAll(/data-guess="([^"]+)"/g)].map(([, id]) => id);
    }),
  );
  await visit.close();
  expect(Object.keys(drawn).filter((id) => !ids.flat().includes(id))).toEqual([]);
});
