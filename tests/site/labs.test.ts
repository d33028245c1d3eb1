import { expect, inject, test } from 'vitest';

import { browser } from './browser.ts';
import { comeTo, open, phone } from './kit.ts';
import { packed, printed } from './pdf.ts';

test('a string is weighed, kept as it is typed, taken out, put back, and still there after a reload', async () => {
  const { page, problems, close } = await open(browser, `${inject('origin')}labs/weigh/`, {
    viewport: phone,
  });
  const readings = page.locator('.lab-readings');
  await comeTo(page, '.lab-readings');
  await readings.getByRole('button', { name: 'Begin the readings' }).click();
  const cell = (what: string, reading: number) =>
    readings.getByRole('textbox', { name: `${what}, reading ${reading}` });
  const type = async (what: string, reading: number, text: string) => {
    await cell(what, reading).fill(text);
    await cell(what, reading).press('Enter');
  };
  for (const [i, [length, mass]] of [
    ['200', '0.08'],
    ['30 cm', '0,12'],
    ['400', '0.16'],
  ].entries()) {
    await type('length in mm', i + 1, length ?? '');
    await type('mass in g', i + 1, mass ?? '');
    await expect.poll(() => cell('length in mm', i + 2).count()).toBe(1);
  }
  await expect.poll(() => readings.innerText()).toMatch(/You measured\s*0\.400\s±\s0\.00\d\sg\/m/);
  expect(await readings.innerText()).toContain('They agree.');
  const rows = () => readings.locator('[data-row]').count();
  expect(await rows()).toBe(2);

  await type('length in mm', 4, 'a foot');
  await expect.poll(() => readings.getByRole('alert').innerText()).toContain('Type a number');
  expect(await cell('length in mm', 4).inputValue()).toBe('a foot');

  await readings.getByRole('button', { name: 'Take out reading 2' }).click();
  await expect.poll(() => cell('length in mm', 2).inputValue()).toBe('400');
  await readings.getByRole('button', { name: 'Put it back' }).click();
  await expect.poll(() => cell('length in mm', 2).inputValue()).toBe('300');

  await page.reload();
  await comeTo(page, '.lab-readings');
  await expect.poll(() => cell('mass in g', 3).inputValue()).toBe('0.16');
  await readings.getByRole('button', { name: 'Keep this string in my book' }).click();
  await expect.poll(() => readings.innerText()).toContain('Kept in your book: 0.400');
  expect(problems).toEqual([]);
  await close();
});

test('the sheet for paper takes one page, and nothing else of the lab', async () => {
  const { page, close } = await open(browser, `${inject('origin')}labs/hang/`, { viewport: phone });
  await page.evaluate(() => {
    window.print = () => undefined;
  });
  await page.getByRole('button', { name: 'Print this sheet' }).click();
  await expect.poll(() => page.locator('html').getAttribute('data-sheet-only')).toBe('');
  const { pages } = await printed(page);
  expect(pages.length).toBe(1);
  expect(pages[0]).toContain(packed('weight in kg'));
  expect(pages[0]).not.toContain(packed('How to do it'));
  await close();
});
