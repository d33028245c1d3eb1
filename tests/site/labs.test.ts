import { expect, inject, test } from 'vitest';

import { browser } from './browser.ts';
import { writeRow } from '../../src/figures/labs/kit/class/row-text.ts';
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

  // The same readings as a row, taken in by a class
  await readings.getByRole('textbox', { name: 'Your name in it' }).fill('Knot 7');
  await readings.getByRole('textbox', { name: 'Your name in it' }).press('Enter');
  const row = await readings.getByRole('textbox', { name: 'Your row' }).inputValue();
  expect(row).toMatch(/^WEIGH\/KNOT 7\/E4 10\/0\.[\d./]+\/0\.4\/0\.00\d+\/\d\d$/);
  await expect.poll(() => readings.getByRole('img', { name: /holds this row/ }).count()).toBe(1);
  await readings.getByRole('link', { name: 'class’s page' }).click();
  await comeTo(page, '.lab-readings');
  await readings.getByRole('button', { name: 'Take in the rows of a class' }).click();
  const rowsField = readings.getByRole('textbox', { name: /Rows of your class/ });
  const take = readings.getByRole('button', { name: 'Take these rows in' });
  await rowsField.fill(row);
  await take.click();
  await expect.poll(() => readings.locator('[data-off]').count()).toBe(1);

  // Thirty, of which one has a wrong digit, one has lost its end, and one is here already
  const lines = Array.from({ length: 29 }, (_, i) =>
    writeRow({
      lab: 'weigh',
      who: `Dunlin ${i + 1}`,
      string: 'E4 10',
      predicted: { value: 0.3984, uncertainty: 0.0046 },
      measured: { value: 0.3984 + 0.0002 * (i - 14), uncertainty: 0.003 },
    }),
  );
  lines[3] = lines[3]?.replace('0.3984', '0.3948');
  lines[7] = lines[7]?.slice(0, -5);
  await rowsField.fill([...lines, row].join('\n'));
  await take.click();
  await expect.poll(() => readings.locator('[data-off]').count()).toBe(28);
  const refused = await readings.getByRole('alert').innerText();
  expect(refused).toMatch(/DUNLIN 4: The check digits don’t fit/);
  expect(refused).toMatch(/DUNLIN 8: It has 7 parts and should have 8|DUNLIN 8: The check digits/);
  expect(refused).toMatch(/KNOT 7: This row is here already/);
  // What was refused stays to be put right.
  expect(await rowsField.inputValue()).toBe(`${lines[3]}\n${lines[7]}\n${row}`);
  expect(await readings.innerText()).toContain('28 rows. On average the unit weight came out');
  expect(problems).toEqual([]);
  await close();
});

/** A column of each lab's sheet for paper */
const sheets = {
  listen: 'B in millionths',
  weigh: 'mass in g',
  hang: 'weight in kg',
  'push-aside': 'how far it gives',
  hand: 'harder or softer',
  'in-tune': 'pitch in Hz',
  class: 'Who',
};

test('no print of a lab ends with a page that holds next to nothing: its sheet and the site’s foot share the last one', async () => {
  const { page, close } = await open(browser, `${inject('origin')}labs/`, { viewport: phone });
  for (const [lab, column] of Object.entries(sheets)) {
    await page.goto(`${inject('origin')}labs/${lab}/`);
    await page.emulateMedia({ media: 'print' });
    const foot = packed(await page.locator('footer').innerText());
    await page.emulateMedia({ media: null });
    for (const format of ['A4', 'Letter'] as const) {
      const last = (await printed(page, format)).pages.at(-1);
      expect(last, `${lab} on ${format}`).toContain(packed(column));
      expect(last, `${lab} on ${format}`).toContain(foot.slice(-10));
    }
  }
  await close();
});

test('each sheet for paper takes one page of A4 and one of Letter, and holds nothing else of its lab', async () => {
  const { page, close } = await open(browser, `${inject('origin')}labs/`, { viewport: phone });
  for (const [lab, column] of Object.entries(sheets)) {
    await page.goto(`${inject('origin')}labs/${lab}/`);
    await page.evaluate(() => {
      window.print = () => undefined;
    });
    // Readings that nobody has begun leave no heading without a text.
    await page.emulateMedia({ media: 'print' });
    expect(
      await page.locator('.lab-readings:visible, h2:has(+ .lab-readings):visible').count(),
    ).toBe(0);
    await page.emulateMedia({ media: null });
    for (const format of ['A4', 'Letter'] as const) {
      await page.getByRole('button', { name: 'Print this sheet' }).click();
      await expect.poll(() => page.locator('html').getAttribute('data-sheet-only')).toBe('');
      const { pages } = await printed(page, format);
      expect(pages.length, `${lab} on ${format}`).toBe(1);
      expect(pages[0]).toContain(packed(column));
      expect(pages[0]).not.toMatch(/Howtodoit|Howitgoes/);
    }
  }
  await close();
});

test('a hand is judged: twenty answers, one taken back, and a threshold with its range', async () => {
  const { page, problems, close } = await open(browser, `${inject('origin')}labs/hand/`, {
    viewport: phone,
  });
  const lab = page.locator('.lab-readings');
  await comeTo(page, '.lab-readings');
  await lab.getByRole('button', { name: 'Begin the readings' }).click();
  await lab.getByRole('button', { name: 'Begin the session' }).click();
  const count = () => lab.locator('[data-judged]').count();
  const place = async () =>
    Number(
      /turn to\s*(\d+) cents below/i.exec(
        (await lab.locator('.turn').innerText()).replace(/^First.*?Then /, ''),
      )?.[1],
    );
  let now = 0;
  for (let i = 0; i < 22; i += 1) {
    const at = await place();
    const harder = at < now;
    // Every fifth is a slip.
    const says = i % 5 === 4 ? !harder : harder;
    await lab
      .getByRole('button', { name: says ? 'Harder than before' : 'Softer than before' })
      .click();
    await expect.poll(count).toBe(i + 1);
    await expect.poll(() => lab.locator('.count').innerText()).toContain(`Judgement ${i + 2},`);
    now = at;
  }
  await expect.poll(() => lab.innerText()).toMatch(/This hand’s threshold:\s*[\d.]+\s%/);
  expect(await lab.locator('[data-judged].right').count()).toBe(18);
  await lab.getByRole('button', { name: 'Take the last answer back' }).click();
  await expect.poll(count).toBe(21);

  // Once the session is over, the threshold stands in the felt band of other pages.
  await lab.getByRole('button', { name: 'End this session' }).click();
  const found = /This hand’s threshold:\s*([\d.]+)\s%/.exec(await lab.innerText())?.[1] ?? '';
  await page.goto(`${inject('origin')}course/speaking-length/`);
  await page.locator('[data-part="neck-band"]:visible').first().scrollIntoViewIfNeeded();
  await expect.poll(() => page.locator('[data-part="own-hand"]').count()).toBeGreaterThan(1);
  const said = await page.locator('.own-hand').innerText();
  expect(Math.abs(Number(/hand, ([\d.]+)\s%/.exec(said)?.[1]) - Number(found))).toBeLessThan(0.5);
  expect(problems).toEqual([]);
  await close();
});
