/** The reference sheets as a reader meets them: typed fields against the physics, one printed page, tables that scroll alone. */
import type { Page } from 'playwright-core';
import { describe, expect, inject, test } from 'vitest';

import { sheets } from '../../src/components/reference/sheets.ts';
import { workshop } from '../../src/instrument/workshop.ts';
import { fretPosition, inches, millimetres, noteFrequency } from '../../src/physics/index.ts';
import { browser } from './browser.ts';
import { desktop, hydrated, open, phone, scrollThrough, smallPhone } from './kit.ts';

const at = (path: string) => `${inject('origin')}reference/${path}`;

async function type(page: Page, label: string, text: string): Promise<void> {
  const field = page.getByLabel(label, { exact: true });
  await field.fill(text);
  await field.press('Enter');
}

/** The cells of the line that begins with this head. */
const lineOf = (page: Page, head: string) =>
  page.locator('tbody tr', { has: page.getByRole('rowheader', { name: head, exact: true }) });

/** Sheet and view of a visit whose islands are all awake. */
async function visit(path: string, viewport = desktop) {
  const opened = await open(browser, at(path), { viewport });
  await scrollThrough(opened.page);
  await hydrated(opened.page);
  return opened;
}

test('the index leads to every sheet and to the sources, and the head leads to the index', async () => {
  const { page, close } = await open(browser, inject('origin'), { viewport: smallPhone });
  await page.getByRole('navigation', { name: 'Rooms' }).getByText('Reference').click();
  // A link may carry the reader's instrument after its #.
  await page.waitForURL(/\/reference\/(#|$)/);
  for (const { title } of sheets) {
    await expect(page.getByRole('link', { name: title, exact: true }).count()).resolves.toBe(1);
  }
  await page.locator('main').getByRole('link', { name: 'Sources' }).click();
  await page.waitForURL(/\/sources\/(#|$)/);
  await close();
});

describe('the fret table', () => {
  const cells = (scale: number, fret: number, divisions = 12) => {
    const place = fretPosition({ scaleLength: scale, fret, divisions });
    const step = place - fretPosition({ scaleLength: scale, fret: fret - 1, divisions });
    return [place, step].flatMap((m) => [millimetres(m).toFixed(2), inches(m).toFixed(3)]);
  };

  test('stands at 25.5 in without a script', async () => {
    const { page, close } = await open(browser, at('frets/'), { javaScript: false });
    const line = await lineOf(page, '12').locator('td').allInnerTexts();
    expect(line).toEqual(cells(25.5 * 0.0254, 12));
    expect(await page.locator('tbody tr').count()).toBe(24);
    await close();
  });

  test.each([phone, desktop])(
    'follows a typed scale and division at $width px',
    async (viewport) => {
      const { page, problems, close } = await visit('frets/', viewport);
      await type(page, 'Scale', '628 mm');
      await type(page, 'Steps to the octave', '19');
      await type(page, 'Frets', '38');
      const line = await lineOf(page, '19').locator('td').allInnerTexts();
      expect(line).toEqual(cells(0.628, 19, 19));
      expect(line[0]).toBe('314.00');
      expect(await page.locator('tbody tr').count()).toBe(38);
      expect(problems).toEqual([]);
      await close();
    },
  );

  test('gives both edges of a multi-scale neck, and one square fret in its drawing', async () => {
    const { page, close } = await visit('frets/');
    await type(page, 'Scale, bass side', '27 in');
    await type(page, 'Square fret', '9');
    const line = await lineOf(page, '9').locator('td').allInnerTexts();
    expect(line).toEqual([...cells(25.5 * 0.0254, 9), ...cells(27 * 0.0254, 9)]);
    expect(
      await page.getByRole('img', { name: /slanting frets, the one at 9 square/ }).count(),
    ).toBe(1);
    await close();
  });

  test('takes the scales of the reader’s instrument', async () => {
    const avocet = workshop.find(({ id }) => id === 'avocet');
    if (!avocet) throw new Error('no multi-scale instrument in the workshop');
    const { page, close } = await visit('frets/');
    await page.locator('.hand select').first().selectOption({ label: avocet.name });
    await page.getByRole('button', { name: /Take the scale of Avocet/ }).click();
    const line = await lineOf(page, '12').locator('td').allInnerTexts();
    expect(line).toEqual([...cells(avocet.scale.treble, 12), ...cells(avocet.scale.bass, 12)]);
    await close();
  });

  test('keeps wrong input and says what is allowed', async () => {
    const { page, close } = await visit('frets/');
    await type(page, 'Frets', '24.5');
    expect(await page.getByRole('alert').innerText()).toContain('Frets from');
    expect(await page.locator('tbody tr').count()).toBe(24);
    await close();
  });

  test.each(['25.5 in', '34 in'])(
    'prints 24 frets of two scales from %s on one page',
    async (scale) => {
      const { page, close } = await visit('frets/');
      await type(page, 'Scale', scale);
      await type(page, 'Scale, bass side', '35 in');
      const pdf = await page.pdf({ format: 'A4', preferCSSPageSize: true });
      expect(pdf.toString('latin1').match(/\/Type\s*\/Page\b(?!s)/g)).toHaveLength(1);
      await close();
    },
  );
});

test('the pitch table follows another A4', async () => {
  const { page, close } = await visit('pitch/');
  await type(page, 'Reference pitch, A4', '415 Hz');
  const line = await lineOf(page, 'E').locator('td').allInnerTexts();
  expect(line[2]).toBe(noteFrequency('E2', 415).toFixed(2));
  expect(line[4]).toBe(noteFrequency('E4', 415).toFixed(2));
  await close();
});

describe.each(sheets)('$title', ({ id }) => {
  test('scrolls a wide table alone, by keys too, and names it', async () => {
    const { page, close } = await visit(`${id}/`, smallPhone);
    const plates = page.locator('.plate:visible');
    expect(await plates.count()).toBeGreaterThan(0);
    for (const plate of await plates.all()) {
      const wide = await plate.evaluate((e) => e.scrollWidth - e.clientWidth);
      expect(await plate.getAttribute('aria-label')).toBeTruthy();
      if (wide < 4) continue;
      await plate.focus();
      await plate.press('ArrowRight');
      await expect.poll(() => plate.evaluate((e) => e.scrollLeft)).toBeGreaterThan(0);
    }
    await close();
  });

  test('has its headings in order', async () => {
    const { page, close } = await open(browser, at(`${id}/`));
    const levels = await page
      .locator('main :is(h1, h2, h3)')
      .evaluateAll((all) => all.map((e) => Number(e.tagName[1])));
    expect(levels[0]).toBe(1);
    for (const [i, level] of levels.slice(1).entries()) {
      expect(level - (levels[i] ?? 0)).toBeLessThanOrEqual(1);
    }
    await close();
  });
});
