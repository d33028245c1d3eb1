/** The book as a page: what a reader has kept is found there, can be worked on, and comes back from its file on another device. */
import { readFileSync } from 'node:fs';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';

import { encode } from '../../src/instrument/link.ts';
import { initialState, workshopInstrument } from '../../src/instrument/workshop.ts';
import { desktop, launch, open, openShelf, phone, touch } from './kit.ts';
import { type } from './one-figure.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser.close());

const named = (name: string) => ({
  ...initialState,
  mine: { ...workshopInstrument('curlew'), name },
});
const entries = (page: Page) => page.locator('main li[aria-label]');
const names = (page: Page) =>
  entries(page).evaluateAll((all) => all.map((each) => each.getAttribute('aria-label')));

/** A reader who has kept these, each from a link, on the page of the book. */
async function kept(all: readonly string[], view = desktop) {
  const visit = await open(browser, `${inject('origin')}bench/`, { viewport: view });
  const { page } = visit;
  for (const name of all) {
    await page.goto(`${inject('origin')}bench/#${encode(named(name))}`);
    await page.reload();
    await page.getByRole('button', { name: 'Keep this one' }).click();
    await page.getByRole('region', { name: 'A visit' }).waitFor({ state: 'detached' });
    // It goes into the book a moment later, several changes at once.
    await page.waitForTimeout(600);
  }
  await page.goto(`${inject('origin')}book/`);
  await openShelf(page, 'book');
  await expect.poll(() => entries(page).count()).toBe(all.length);
  return visit;
}

test('the book stands open where something was kept, and waits for a press where nothing was', async () => {
  const { page, close } = await kept(['Knot']);
  await page.reload();
  await touch(page);
  expect(await names(page)).toEqual(['Knot']);
  const way = page.getByRole('button', { name: 'Open the book' });
  expect(await way.isVisible()).toBe(false);
  await close();
  const other = await open(browser, `${inject('origin')}book/`);
  expect(await other.page.getByRole('button', { name: 'Open the book' }).isVisible()).toBe(true);
  await other.close();
});

test('what was kept is found, renamed, noted, duplicated, and deleted with a way back', async () => {
  const { page, close } = await kept(['Knot', 'Ruff']);
  await page.getByLabel('Find').fill('kno');
  expect(await names(page)).toEqual(['Knot']);
  await page.getByLabel('Find').fill('');
  const knot = page.getByRole('listitem', { name: 'Knot' });
  await knot.getByLabel('Owner’s reference').fill('Ticket 12');
  await knot.getByLabel('Note').fill('Buzzes at fret 9');
  await type(knot.getByLabel('Name'), '');
  await expect.poll(() => knot.getByRole('alert').innerText()).toMatch(/name/);
  await type(knot.getByLabel('Name'), 'Red knot');
  await expect.poll(() => names(page)).toContain('Red knot');

  await page.getByRole('button', { name: 'Duplicate Red knot' }).click();
  await expect.poll(() => names(page)).toContain('Red knot, copy');
  await page.getByRole('button', { name: 'Delete Red knot', exact: true }).click();
  await expect.poll(() => entries(page).count()).toBe(2);
  await page.locator('main').getByRole('button', { name: 'Undo' }).click();
  await expect.poll(() => entries(page).count()).toBe(3);

  await page.reload();
  await openShelf(page, 'book');
  await expect.poll(() => entries(page).count()).toBe(3);
  const again = page.getByRole('listitem', { name: 'Red knot', exact: true });
  expect(await again.getByLabel('Owner’s reference').inputValue()).toBe('Ticket 12');
  expect(await again.getByLabel('Note').inputValue()).toBe('Buzzes at fret 9');
  await close();
});

test('one that is worked on is the instrument of the next page', async () => {
  const { page, close } = await kept(['Knot', 'Ruff'], phone);
  await page.getByRole('button', { name: 'Work on Knot' }).click();
  await page.goto(`${inject('origin')}course/speaking-length/`);
  const shown = page.getByRole('region', { name: 'Your instrument' }).locator('option:checked');
  await expect.poll(() => shown.first().innerText()).toBe('Knot');
  await close();
});

test('its file brings all of it to an empty device, and a foreign file is refused by name', async () => {
  const { page, close } = await kept(['Knot', 'Ruff']);
  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save the book as a file' }).click();
  const path = await (await coming).path();
  const text = readFileSync(path, 'utf8');
  await close();

  const other = await open(browser, `${inject('origin')}book/`, { viewport: phone });
  await openShelf(other.page, 'book');
  const file = (name: string, content: string) => ({
    name,
    mimeType: 'application/json',
    buffer: Buffer.from(content),
  });
  const field = other.page.locator('input[type="file"]');
  await field.setInputFiles(file('cats.json', '{"cats": 9}'));
  await expect.poll(() => other.page.getByRole('alert').innerText()).toContain('isn’t a book');
  await field.setInputFiles(file('book.json', text.slice(0, 200)));
  await expect.poll(() => other.page.getByRole('alert').innerText()).toContain('damaged');
  await field.setInputFiles(file('book.json', text));
  await other.page.getByRole('button', { name: 'Take it in' }).click();
  await expect.poll(() => names(other.page)).toEqual(expect.arrayContaining(['Knot', 'Ruff']));
  await other.close();
});
