import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';

import { browser } from './browser.ts';
import { desktop, open, type Visit } from './kit.ts';
import { pages } from './pages.ts';
import { packed, printed, type Printed } from './pdf.ts';

/** Height of A4 in CSS px between the margins of src/styles/print.css. */
const ROOM = ((297 - 2 * 16) / 25.4) * 96;

/** CSS px: two centimetres, three lines of a hand. */
const ROOM_TO_WORK = (20 / 25.4) * 96;

const sheets = pages().filter((path) => /^(course|reference)\/./.test(path));

describe.each(sheets)('/%s on paper', (path) => {
  const isChapter = path.startsWith('course/');
  let visit: Visit;
  let paper: Printed;
  let whole = '';
  beforeAll(async () => {
    visit = await open(browser, inject('origin') + path, { viewport: desktop });
    paper = await printed(visit.page);
    whole = paper.pages.join('');
  });
  afterAll(() => visit.close());

  test('takes as many pages as its words need, none of them empty', () => {
    expect(paper.pages.length).toBeLessThanOrEqual(isChapter ? 12 : 6);
    for (const [i, words] of paper.pages.entries())
      expect(words.length, `page ${i + 1}`).toBeGreaterThan(i + 1 < paper.pages.length ? 150 : 20);
  });

  test('has every heading, every figure and its caption, and what folds away on the screen', async () => {
    const wanted = await visit.page.evaluate(() => {
      // Equations are drawn, not written; a label and a button may stand elsewhere on paper.
      const texts = (selector: string) =>
        [...document.querySelectorAll(`main ${selector}`)]
          .filter((each) => !each.querySelector('.katex, button, svg'))
          .map((each) => {
            const words = each.cloneNode(true) as Element;
            // What stands in for words that wait for a guess is for the screen alone.
            for (const blank of words.querySelectorAll('.veiled')) blank.remove();
            return (words.textContent ?? '').trim().replace(/^Why\s/, '');
          });
      return [':is(h1, h2, h3)', '.figure-title', '.step p', '.teacher p', '.solution p'].flatMap(
        texts,
      );
    });
    expect(wanted.length).toBeGreaterThan(isChapter ? 10 : 0);
    const missing = wanted.filter((text) => !whole.includes(packed(text).slice(0, 24)));
    expect(missing).toEqual([]);
  });

  test('has nothing to press', async () => {
    const controls = await visit.page.evaluate(() =>
      [...document.querySelectorAll('main :is(button, .button):not(svg *)')]
        .map((each) => each.textContent?.trim() ?? '')
        .filter((text) => text.length > 12),
    );
    const shown = controls.filter((text) => whole.includes(packed(text)));
    expect(shown).toEqual([]);
    expect(whole).not.toContain('Shareorkeep');
  });

  test('has the addresses that its links lead out to', async () => {
    const addresses = await visit.page.evaluate(() =>
      [...document.querySelectorAll<HTMLAnchorElement>('main a[href^="http"]')]
        .filter((each) => each.host !== window.location.host)
        .map((each) => each.href),
    );
    // It cites a source that can be opened: on paper without any, the rest would hold of nothing.
    if (path === 'course/bending/') expect(addresses.length).toBeGreaterThan(0);
    const missing = addresses.filter((address) => !whole.includes(packed(address)));
    expect(missing).toEqual([]);
  });

  test('is tagged, with words for its drawings', () => {
    expect(paper.tags.get('H1')).toBe(1);
    expect(paper.tags.get('P')).toBeGreaterThan(0);
    if (isChapter) expect(paper.alternatives.some((alt) => alt.length > 60)).toBe(true);
    else expect((paper.tags.get('Table') ?? 0) + paper.alternatives.length).toBeGreaterThan(0);
  });

  test('tells no finger to drag', () => {
    // The first chapter leaves out the drag of the air.
    expect(whole).not.toMatch(/drag(?!oftheair)/i);
  });

  test.runIf(isChapter)(
    'has a worksheet of two pages with a code back and no answers, and a key with them all',
    async () => {
      const { page } = visit;
      await page.evaluate(() => (window.print = () => undefined));
      const press = (name: string) => page.getByRole('button', { name }).click();
      const laidOut = (paper: string) =>
        page.waitForFunction((p) => document.documentElement.dataset.paper === p, paper);
      for (const format of ['A4', 'Letter']) {
        await press('Print a worksheet');
        await laidOut('worksheet');
        const pdf = await page.pdf({ format });
        expect(pdf.toString('latin1').match(/\/Type \/Page\b(?!s)/g), format).toHaveLength(2);
      }
      await press('Print a worksheet');
      await laidOut('worksheet');
      await page.emulateMedia({ media: 'print' });
      const seen = () => page.evaluate(() => document.body.innerText);
      const sheet = await seen();
      const asked = await page.locator('.exercise:visible').count();
      expect(asked).toBeGreaterThan(3);
      // Below each answer line there is room to work in: a number is no choice.
      const rooms = await page
        .locator('.exercise:visible', { has: page.locator('.answer .field') })
        .evaluateAll((all) =>
          all.map(
            (each) =>
              each.getBoundingClientRect().bottom -
              (each.querySelector('.field')?.getBoundingClientRect().bottom ?? 0),
          ),
        );
      expect(rooms.length).toBeGreaterThan(1);
      expect(Math.min(...rooms)).toBeGreaterThan(ROOM_TO_WORK);
      expect(sheet).toMatch(/Worksheet\s+Name\s+Date/);
      expect(sheet).not.toMatch(/Worked solution|For teachers|Answer:/);
      expect(await page.locator('.solution:visible, .teacher:visible').count()).toBe(0);
      const code = page.getByLabel('A code that opens this chapter');
      expect(await code.evaluate((each) => each.getBoundingClientRect().width)).toBeGreaterThan(90);
      await page.evaluate(() => dispatchEvent(new Event('afterprint')));
      await page.emulateMedia({ media: null });

      await press('Print its key');
      await laidOut('key');
      await page.emulateMedia({ media: 'print' });
      expect((await seen()).match(/^Answer: \S/gm)).toHaveLength(asked);
      await page.evaluate(() => dispatchEvent(new Event('afterprint')));
      await page.emulateMedia({ media: null });
      expect(await page.locator('.in-key').count()).toBe(0);
    },
  );

  test('cuts no figure: each is lower than a page', async () => {
    const { page } = visit;
    await page.emulateMedia({ media: 'print' });
    await page.setViewportSize({ width: Math.round(((210 - 2 * 10) / 25.4) * 96), height: 1000 });
    const sheets = await page.evaluate(() =>
      [...document.querySelectorAll('.figure-body')].map((body) => ({
        narrow: [...body.querySelectorAll('.phone, .narrow-sheet')].filter((s) =>
          s.checkVisibility(),
        ),
        wide: [...body.querySelectorAll('div.wide, .wide-sheet')].map((s) => s.checkVisibility()),
      })),
    );
    // Of two sheets of one drawing, paper takes the wide one.
    expect(sheets.flatMap(({ narrow }) => narrow)).toEqual([]);
    expect(sheets.flatMap(({ wide }) => wide)).not.toContain(false);
    const figures = await page.evaluate(() =>
      [...document.querySelectorAll('main figure.figure')].map((each) => ({
        title: each.getAttribute('aria-label'),
        height: each.getBoundingClientRect().height,
        whole: getComputedStyle(each).breakInside === 'avoid',
        sideways: each.scrollWidth - each.clientWidth,
      })),
    );
    if (isChapter) expect(figures.length).toBeGreaterThan(1);
    for (const figure of figures) {
      expect(figure.height, figure.title ?? '').toBeLessThanOrEqual(ROOM);
      expect(figure.whole, figure.title ?? '').toBe(true);
      expect(figure.sideways, figure.title ?? '').toBeLessThanOrEqual(1);
    }
  });
});
