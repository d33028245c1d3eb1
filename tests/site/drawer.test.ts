/** The reader's own strings: a table is taken, a string is changed, and the bench picks from them; on another device the book's file brings them. */
import { readFileSync } from 'node:fs';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';

import { encode } from '../../src/instrument/link.ts';
import { asTarget, initialState, workshopInstrument } from '../../src/instrument/workshop.ts';
import { comeTo, desktop, launch, open, openShelf, phone } from './kit.ts';
import { type } from './one-figure.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser.close());

const slots = (page: Page) => page.locator('.tray .string');

/** 500 rows of which twelve can't be strings. */
const rows = Array.from({ length: 500 }, (_, i) => {
  if (i % 42 === 7) return `plain;thin;;box ${i};yes`;
  return i % 2 ? `wound;${17 + (i % 40)};;box ${i};yes` : `plain;${8 + (i % 12)};;box ${i};no`;
});
const table = `kind;gauge (thou);unit weight (g/m);label;in stock\n${rows.join('\n')}\n`;

test('500 rows come in but for the twelve that are named, are found by typing, and come out as they went in', async () => {
  const { page, close } = await open(browser, `${inject('origin')}drawer/`, { viewport: phone });
  await openShelf(page, 'drawer');
  await page.getByRole('button', { name: 'A whole table' }).click();
  await page.getByLabel('The table').fill(table);
  await expect.poll(() => page.getByText(/to take/).innerText()).toMatch(/488 strings.*12 rows/);
  expect(await page.getByRole('list', { name: 'Rows left out' }).innerText()).toContain(
    'Line 9: “thin” isn’t a gauge.',
  );
  await page.getByRole('button', { name: 'Take 488 strings' }).click();
  await expect.poll(() => slots(page).count()).toBe(488);
  await page.getByLabel('Find').fill('box 21');
  await expect.poll(() => slots(page).count()).toBeLessThan(20);
  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save my strings as a table' }).click();
  const text = readFileSync(await (await coming).path(), 'utf8');
  expect(text.trim().split('\r\n')).toHaveLength(489);
  await page.getByLabel('The table').fill(text);
  await expect
    .poll(() => page.getByText(/to take/).innerText())
    .toMatch(/488 in the drawer already/);
  await close();
});

test('a string is added, changed, put away and back by keys, and the bench picks from what is in stock', async () => {
  const { page, close } = await open(browser, `${inject('origin')}drawer/`, { viewport: desktop });
  await openShelf(page, 'drawer');
  const add = async (gauge: string, weight = ''): Promise<void> => {
    await page.getByRole('button', { name: 'Add a string' }).press('Enter');
    const packet = page.getByRole('region', { name: 'A new string' });
    await type(packet.getByLabel('Gauge'), gauge);
    if (weight) await type(packet.getByLabel('Unit weight'), weight);
    await packet.getByRole('button', { name: /^Put the/ }).press('Enter');
    await packet.waitFor({ state: 'detached' });
  };
  await add('46w', '6.9 g/m');
  await add('21');
  await expect.poll(() => slots(page).count()).toBe(2);
  await page.getByRole('button', { name: /^21 plain/ }).press('Enter');
  await page.getByRole('button', { name: 'Delete 21 plain' }).press('Enter');
  await expect.poll(() => slots(page).count()).toBe(1);
  await page.locator('main').getByRole('button', { name: 'Undo' }).press('Enter');
  await expect.poll(() => slots(page).count()).toBe(2);
  const low = page.getByRole('button', { name: /^46 wound/ });
  await low.press('Enter');
  await type(page.getByLabel('Unit weight'), '7.4');
  await expect.poll(() => low.getAttribute('aria-label')).toContain('7.4');

  const same = { ...initialState, other: asTarget(workshopInstrument('redshank')) };
  await page.goto(`${inject('origin')}bench/#${encode(same)}`);
  await comeTo(page, '.side.other', '.sheet-place');
  await page.getByLabel('Pick from').selectOption('only what’s in stock');
  const gauges = () =>
    page
      .getByRole('article', { name: 'Stringing sheet' })
      .locator('td.gauge')
      .evaluateAll((all) => all.map((cell) => cell.querySelector('strong')?.textContent ?? ''));
  await expect.poll(gauges).toEqual(['21', '21', '21', '46\u00a0w', '46\u00a0w', '46\u00a0w']);
  // It is remembered, and the strings come from the book again.
  await page.goto(`${inject('origin')}bench/`);
  await comeTo(page, '.side.other', '.sheet-place');
  await expect.poll(gauges).toEqual(['21', '21', '21', '46\u00a0w', '46\u00a0w', '46\u00a0w']);
  expect(await page.getByLabel('Pick from').inputValue()).toBe('stock');
  await close();
});

test('a weight that is typed at the bench reaches the picks, and one press puts the string in the drawer', async () => {
  const same = { ...initialState, other: asTarget(workshopInstrument('redshank')) };
  const { page, close } = await open(browser, `${inject('origin')}bench/#${encode(same)}`, {
    viewport: desktop,
  });
  await comeTo(page, '.side.mine', '.side.other', '.sheet-place');
  await page.getByText('String by string').click();
  await page.getByLabel('I know unit weights').check();
  await type(page.getByLabel('Unit weight of string 4'), '3.31 g/m');
  const fourth = page.getByRole('article', { name: 'Stringing sheet' }).locator('tbody tr').nth(3);
  await expect.poll(() => fourth.locator('.difference').textContent()).toMatch(/^±0/);
  expect(await fourth.locator('.gauge strong').textContent()).toBe('26\u00a0w');
  await page.getByRole('button', { name: /Add this string: 26 wound, 3\.31/ }).click();
  await expect.poll(() => page.getByText('26 wound is in your drawer').count()).toBe(1);
  await page.goto(`${inject('origin')}drawer/`);
  await openShelf(page, 'drawer');
  await expect.poll(() => slots(page).count()).toBe(1);
  await close();
});
