import { afterAll, beforeAll, expect, inject, test } from 'vitest';

import { barriersAt, type Look } from './barriers.ts';
import { browser } from './browser.ts';
import { contents, sideways } from './contents.ts';
import {
  desktop,
  narrowPhone,
  open,
  phone,
  scrollDown,
  scrollThrough,
  smallPhone,
  touch,
  type Visit,
} from './kit.ts';
import { drawnBelow, withLetters } from './large-letters.ts';
import { lettersOver } from './letters-over.ts';
import { isFirstOfItsKind } from './pages.ts';
import { watchShifts } from './shifts.ts';
import { centre, fingersOn, standing } from './touch.ts';
import { firstView, fontBytes, scriptBytes } from './weights.ts';

const kilobyte = 1000;
const still = { by: 0, elements: [] };
/** Where a phone may take a swipe for a step back. */
const EDGE = 24;

/**
 * Narrow and light with all rules, wide and dark for the colours: each page has both layouts and both schemes judged. The first
 * of each kind, as chapters are one, has every pair of them and all rules in either layout; `tests/structure/contrast.test.ts`
 * judges the inks themselves.
 */
const usualLooks: readonly Look[] = [
  { size: desktop, scheme: 'dark', colours: 'alone' },
  { size: phone, scheme: 'light' },
];
const everyLook: readonly Look[] = [
  { size: desktop, scheme: 'dark', colours: 'alone' },
  { size: desktop, scheme: 'light' },
  { size: phone, scheme: 'dark', colours: 'alone' },
  { size: phone, scheme: 'light' },
];

/** All that holds of each page. */
export function everyPage(path: string): void {
  let visit: Visit;
  let codeAtFirst = 0;
  let codeInHand = 0;
  let codeAtEnd = 0;
  let atFirst: Awaited<ReturnType<typeof firstView>>;
  beforeAll(async () => {
    const url = inject('origin') + path;
    visit = await open(browser, url, { viewport: phone, before: watchShifts, untouched: true });
    codeAtFirst = await scriptBytes(visit.page, visit.responses);
    atFirst = await firstView(visit.responses);
    await touch(visit.page);
    codeInHand = await scriptBytes(visit.page, visit.responses);
    await scrollDown(visit.page);
    codeAtEnd = await scriptBytes(visit.page, visit.responses);
    await scrollThrough(visit.page);
  });
  afterAll(() => visit.close());

  test('loads without a complaint, from its own origin', () => {
    const { problems, requests } = visit;
    const foreign = requests.filter(
      (url) => !/^(data|blob):/.test(url) && !url.startsWith(inject('origin')),
    );
    expect(problems).toEqual([]);
    expect(foreign).toEqual([]);
  });

  test('keeps within its weight before the reader acts, in the reader’s hand, at its end, and all of it awake', async () => {
    const { page, responses } = visit;
    expect(codeAtFirst).toBeLessThanOrEqual(7 * kilobyte);
    expect(codeInHand).toBeLessThanOrEqual(44 * kilobyte);
    expect(atFirst.bytes).toBeLessThanOrEqual(150 * kilobyte);
    expect(atFirst.answers).toBeLessThanOrEqual(15);
    expect(codeAtEnd).toBeLessThanOrEqual(90 * kilobyte);
    expect(await scriptBytes(page, responses)).toBeLessThanOrEqual(100 * kilobyte);
    expect(await fontBytes(responses)).toBeLessThanOrEqual(60 * kilobyte);
  });

  test('stands still while it loads', async () => {
    const { sum, what } = await visit.page.evaluate(() => window.shifts);
    expect(sum, what.join('\n')).toBe(0);
  });

  test('has the words, the equations and the figures without JavaScript too', async () => {
    const plain = await open(browser, inject('origin') + path, { javaScript: false });
    const without = await contents(plain.page);
    await plain.close();
    const withScript = await contents(visit.page);

    expect(without.titles).toHaveLength(1);
    expect(without.titles).toEqual(withScript.titles);
    expect(without.headings).toEqual(withScript.headings);
    expect(without.words).toBeGreaterThanOrEqual(0.9 * withScript.words);
    expect(without.equations).toEqual(withScript.equations);
    expect(without.mathml).toBe(without.equations.length);
    // More may be drawn than with a script, which keeps an answer back until the reader has guessed.
    expect(without.figures.length).toBeGreaterThanOrEqual(withScript.figures.length);
    for (const [i, { drawings }] of withScript.figures.entries()) {
      expect(without.figures[i]?.drawings).toBeGreaterThanOrEqual(drawings);
    }
    expect(without.figures.filter(({ isDrawn }) => !isDrawn)).toEqual([]);
    if (without.figures.length)
      expect(without.figures.some(({ drawings }) => drawings > 0)).toBe(true);
  });

  test('never scrolls sideways, on a phone or on a small one', async () => {
    expect(await sideways(visit.page)).toEqual(still);
    await visit.page.setViewportSize(smallPhone);
    expect(await sideways(visit.page)).toEqual(still);
    await visit.page.setViewportSize(phone);
  });

  test('draws no letter below 11 px on a phone of 360 px', async () => {
    await visit.page.setViewportSize(narrowPhone);
    expect(await drawnBelow(visit.page, 11)).toEqual([]);
    await visit.page.setViewportSize(phone);
  });

  test.each([
    ['a phone', phone],
    ['a wide screen', desktop],
  ] as const)(
    'draws no letters over one another on %s, in the device’s own faces neither',
    async (_, size) => {
      await visit.page.setViewportSize(size);
      for (const own of [false, true])
        expect(await lettersOver(visit.page, own), own ? 'own faces' : '').toEqual([]);
      await visit.page.setViewportSize(phone);
    },
  );

  test.each([
    ['a phone', phone, [150, 175, 200]],
    ['a narrow phone', narrowPhone, [150, 175, 200]],
    ['a wide screen', desktop, [150, 175, 200]],
  ] as const)('holds together with large letters on %s', async (_, size, percents) => {
    for (const [where, found] of Object.entries(await withLetters(visit.page, size, percents)))
      expect(found, where).toEqual({ ...still, cut: [], over: [], unsaid: [] });
    await visit.page.setViewportSize(phone);
  });

  test('has handles that a finger finds: 44 px in a drawing, 24 px in a line of text', async () => {
    const small = await visit.page.evaluate(() =>
      [...document.querySelectorAll('[role="slider"]')]
        .filter((each) => each.checkVisibility())
        .map((each) => {
          const { width, height } = each.getBoundingClientRect();
          const least = each.classList.contains('number') ? 24 : 44;
          return { what: each.getAttribute('aria-label'), size: Math.min(width, height), least };
        })
        .filter(({ size, least }) => size < least - 0.01),
    );
    expect(small).toEqual([]);
  });

  test('moves at every handle by keys, says a value that can be read, and complains of nothing', async () => {
    const { page, problems } = visit;
    for (const handle of await page.getByRole('slider').all()) {
      if (!(await handle.isVisible())) continue;
      const text = () => handle.getAttribute('aria-valuetext');
      const name = (await handle.getAttribute('aria-label')) ?? '';
      const said = [await text()];
      const isDrawn = await handle.evaluate((each) => 'handle' in each.dataset);
      for (const key of ['ArrowRight', 'PageDown', 'Home', 'End']) {
        await handle.press(key);
        said.push(await text());
        if (!isDrawn || (key !== 'Home' && key !== 'End')) continue;
        const { x, width } = (await handle.boundingBox()) ?? { x: 0, width: 0 };
        expect(Math.round(x), `${name} at ${key}`).toBeGreaterThanOrEqual(EDGE);
        expect(Math.round(x + width), `${name} at ${key}`).toBeLessThanOrEqual(phone.width - EDGE);
      }
      expect(name).not.toBe('');
      expect(new Set(said).size, `${name}: ${said.join(' | ')}`).toBeGreaterThan(1);
      expect(said.join(' '), name).not.toMatch(/NaN|Infinity|undefined|null/);
    }
    const words = await page.evaluate(() => document.body.innerText);
    expect(words.match(/.{0,40}(NaN|Infinity|undefined).{0,40}/g)).toBeNull();
    expect(problems).toEqual([]);
  });

  test('has no barrier that axe knows of, narrow or wide, light or dark', async () => {
    const looks = isFirstOfItsKind(path) ? everyLook : usualLooks;
    expect(await barriersAt(visit.page, looks)).toEqual([]);
  });

  test('is scrolled by no finger on a handle, in a drawing', async () => {
    const { page, problems } = visit;
    const fingers = await fingersOn(page);
    // Numbers in the prose, and strings that fill a screen one below the other, leave up and down to the page.
    for (const handle of await page
      .locator(':is([role="slider"]:not(.number, .hold), .grip):visible')
      .all()) {
      const name = await handle.evaluate((e) => e.dataset.handle ?? e.getAttribute('aria-label'));
      const at = await centre(handle);
      const across = { x: 10, y: at.y > phone.height / 2 ? -120 : 120 };
      await fingers.swipe([at], [across], { steps: 4 });
      expect(await page.evaluate(() => window.takenBack), name ?? '').toBe(0);
    }
    expect((await standing(page)).selected).toBe('');
    expect(problems).toEqual([]);
  });
}
