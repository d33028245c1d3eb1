/** A job: made at the bench, kept as it is typed, found in the book, carried to another device, and printed. */
import { readFileSync } from 'node:fs';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';

import { desktop, launch, open, openShelf, phone, scrollThrough } from './kit.ts';
import { type } from './one-figure.ts';
import { packed, printed } from './pdf.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser.close());

const card = (page: Page) => page.getByRole('article', { name: 'Job card' });
const visit = (page: Page) => page.getByRole('region', { name: 'A visit' });
const field = (page: Page, label: string) => card(page).getByLabel(label, { exact: true });
const pick = (page: Page, string: number) =>
  card(page)
    .locator('tbody tr')
    .nth(string - 1)
    .locator('.pick strong');

/** What lies in the book's database. */
const shelved = (page: Page): Promise<string> =>
  page.evaluate(
    () =>
      new Promise((resolve, reject) => {
        const asked = indexedDB.open('speaking-length.book');
        asked.onerror = () => reject(new Error('the book can’t be opened'));
        asked.onsuccess = () => {
          const all = asked.result.transaction('records').objectStore('records').getAll();
          all.onsuccess = () => {
            asked.result.close();
            resolve(JSON.stringify(all.result));
          };
        };
      }),
  );

/** A bench on which what is on the instrument was said, kept as a job, with something written on its card. */
async function kept() {
  const seen = await open(browser, `${inject('origin')}bench/`, { viewport: desktop });
  const { page } = seen;
  await scrollThrough(page);
  await page.getByRole('button', { name: 'Say what is on it now' }).click();
  await type(page.getByLabel('Gauges, from the highest'), '10 13 17 26 36 46');
  await page.getByLabel('Its bridge').selectOption('sprung');
  await expect.poll(() => page.locator('.checks').innerText()).toContain('than what is on it now');
  expect(await page.locator('.checks').innerText()).toContain('Springs');
  await page.getByRole('button', { name: 'Keep as a job' }).click();
  await field(page, 'Action at string 1, before').fill('1.6 mm');
  await field(page, 'Owner’s reference').fill('Ticket 777');
  await field(page, 'Note').fill('Buzzes at the ninth.\nLow strings floppy.');
  await field(page, 'Relief, after').fill('0.25 mm');
  return seen;
}

test('a job is kept as it is typed, is there after a reload, goes on a second page, and is found in the book', async () => {
  const { page, problems, close } = await kept();
  await page.reload();
  await scrollThrough(page);
  await expect.poll(() => field(page, 'Action at string 1, before').inputValue()).toBe('1.6 mm');
  expect(await field(page, 'Relief, after').inputValue()).toBe('0.25 mm');
  expect(await card(page).locator('.now').first().innerText()).toContain('10');
  expect(await pick(page, 1).innerText()).toBe('9.5');
  expect(await visit(page).innerText()).toContain('You’re working on a job');

  // Two windows write on one card at the same time.
  const other = await page.context().newPage();
  await other.goto(page.url());
  await scrollThrough(other);
  await expect.poll(() => field(other, 'Note').inputValue()).toContain('Low strings floppy.');
  await field(other, 'Action at string 6, before').fill('2.0 mm');
  await field(page, 'Action at string 2, before').fill('1.7 mm');
  for (const window of [page, other])
    for (const [label, text] of [
      ['Action at string 1, before', '1.6 mm'],
      ['Action at string 2, before', '1.7 mm'],
      ['Action at string 6, before', '2.0 mm'],
    ] as const)
      await expect.poll(() => field(window, label).inputValue()).toBe(text);
  await other.close();

  // A third, which hears nothing of the others, as one that sleeps: it writes from what it knew.
  const deaf = await page.context().newPage();
  await deaf.addInitScript(() => {
    BroadcastChannel.prototype.postMessage = () => undefined;
    Object.defineProperty(BroadcastChannel.prototype, 'onmessage', { set: () => undefined });
  });
  await deaf.goto(page.url());
  await scrollThrough(deaf);
  await expect.poll(() => field(deaf, 'Action at string 2, before').inputValue()).toBe('1.7 mm');
  await field(page, 'Action at string 3, before').fill('1.8 mm');
  await expect.poll(() => shelved(page)).toContain('1.8 mm');
  expect(await field(deaf, 'Action at string 3, before').inputValue()).toBe('');
  await field(deaf, 'Action at string 4, before').fill('1.9 mm');
  await expect.poll(() => shelved(page)).toContain('1.9 mm');
  expect(await shelved(page)).toContain('1.8 mm');
  await deaf.close();

  // More than its field shows.
  const long = '4 cents sharp at the octave, 7 at the fifteenth fret';
  await field(page, 'Intonation at string 6, after').fill(long);
  const { pages } = await printed(page);
  expect(pages).toHaveLength(2);
  for (const words of ['Whimbrel, like Redshank', '1.6 mm', '0.25 mm', 'Ticket 777', long])
    expect(pages[1]).toContain(packed(words));

  await page.goto(`${inject('origin')}book/`);
  await openShelf(page, 'book');
  const entry = page.getByRole('listitem', { name: 'Whimbrel, like Redshank', exact: true });
  await page.getByLabel('Find').fill('777 whim');
  expect(await entry.innerText()).toContain('9.5');
  await page.getByRole('button', { name: 'Duplicate Whimbrel, like Redshank' }).click();
  await expect.poll(() => page.locator('.board > li').count()).toBe(2);
  await page.getByRole('button', { name: 'Delete Whimbrel, like Redshank', exact: true }).click();
  await page.reload();
  await openShelf(page, 'book');
  await page.locator('summary', { hasText: 'Deleted' }).click();
  await page.getByRole('button', { name: 'Put back Whimbrel, like Redshank', exact: true }).click();
  await page.getByRole('link', { name: 'Open Whimbrel, like Redshank on the bench' }).click();
  await page.waitForURL(/\/j-/);
  await scrollThrough(page);
  await expect.poll(() => field(page, 'Note').inputValue()).toContain('Low strings floppy.');
  await visit(page).getByRole('button', { name: 'Back to Redshank' }).click();
  await expect.poll(() => card(page).count()).toBe(0);
  // A page that is left early leaves what it was still asking for.
  expect(problems.filter((each) => !each.startsWith('failed: '))).toEqual([]);
  await close();
});

test('a job’s link shows it on another device without the owner’s reference, and a press keeps it there', async () => {
  const { page, close } = await kept();
  await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
  await page.getByRole('button', { name: 'Copy a link to the job' }).click();
  await expect.poll(() => page.evaluate(() => navigator.clipboard.readText())).toContain('/jn-');
  const link = await page.evaluate(() => navigator.clipboard.readText());
  expect(new URL(link).hash).not.toContain('777');
  await close();

  const other = await open(browser, link, { viewport: phone });
  await scrollThrough(other.page);
  await expect.poll(() => visit(other.page).innerText()).toContain('a shared job: Whimbrel');
  expect(await card(other.page).innerText()).toContain('Low strings floppy.');
  expect(await pick(other.page, 1).innerText()).toBe('9.5');
  await visit(other.page).getByRole('button', { name: 'Keep this job' }).click();
  await expect
    .poll(() => field(other.page, 'Action at string 1, before').inputValue())
    .toBe('1.6 mm');
  await field(other.page, 'Action at string 1, after').fill('1.4 mm');

  // The file of that device brings it to an empty one.
  await other.page.goto(`${inject('origin')}book/`);
  await openShelf(other.page, 'book');
  const coming = other.page.waitForEvent('download');
  await other.page.getByRole('button', { name: 'Save the book as a file' }).click();
  const text = readFileSync(await (await coming).path());
  await other.close();
  const third = await open(browser, `${inject('origin')}book/`, { viewport: phone });
  await openShelf(third.page, 'book');
  const file = { name: 'book.json', mimeType: 'application/json', buffer: text };
  await third.page.locator('input[type="file"]').first().setInputFiles(file);
  await third.page.getByRole('button', { name: 'Take it in' }).click();
  await third.page.getByRole('link', { name: 'Open Whimbrel, like Redshank on the bench' }).click();
  await third.page.waitForURL(/\/j-/);
  await scrollThrough(third.page);
  await expect
    .poll(() => field(third.page, 'Action at string 1, after').inputValue())
    .toBe('1.4 mm');
  await third.close();
});
