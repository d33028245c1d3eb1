import { readFileSync } from 'node:fs';

import type { Page } from 'playwright-core';
import { describe, expect, inject, test } from 'vitest';

import { bendsOf } from '../../src/instrument/bends.ts';
import { travelNumber } from '../../src/instrument/format.ts';
import { jobs } from '../../src/instrument/jobs.ts';
import { planOf } from '../../src/instrument/plan.ts';
import { initialState } from '../../src/instrument/workshop.ts';
import * as physics from '../../src/physics/index.ts';
import { browser } from './browser.ts';
import { desktop, dragWithMouse, open, phone, scrollThrough } from './kit.ts';
import { beyondMargin, packed, printed } from './pdf.ts';

async function bench(link = '', viewport = desktop) {
  const visit = await open(browser, `${inject('origin')}bench/${link}`, { viewport });
  await scrollThrough(visit.page);
  return visit;
}
const gaugeField = (page: Page, string: number) =>
  page.locator('.side.other').getByLabel(`Gauge of string ${string}`, { exact: true });

test('the sheet holds the plan that the module makes, string by string', async () => {
  const { page, problems, close } = await bench();
  const plan = planOf(initialState);
  for (const [i, { pull, difference }] of plan.strings.entries()) {
    const row = page.locator('#sheet-rows tbody tr').nth(i);
    expect(Number.parseFloat(await gaugeField(page, i + 1).inputValue())).toBe(pull?.gauge.gauge);
    expect(Number.parseFloat((await row.locator('.gauge').textContent()) ?? '')).toBe(
      pull?.gauge.gauge,
    );
    expect(Number.parseFloat((await row.locator('.pull').textContent()) ?? '')).toBeCloseTo(
      physics.poundsForce(pull?.tension ?? 0),
      1,
    );
    const shown =
      (await row.locator('.difference').textContent())?.replace('\u2212', '-').replace('±', '') ??
      '';
    expect(Number.parseFloat(shown)).toBeCloseTo((difference ?? 0) * 100, 1);
  }
  expect(problems).toEqual([]);
  await close();
});

test('another scale changes the picks; undo brings the old ones back', async () => {
  const { page, close } = await bench();
  const scale = page
    .getByRole('region', { name: 'What is to be strung' })
    .getByLabel('Scale length');
  await scale.fill('28 in');
  await scale.press('Enter');
  expect(await gaugeField(page, 1).inputValue()).toBe('9');
  await page.getByRole('button', { name: 'Undo' }).first().click();
  expect(await gaugeField(page, 1).inputValue()).toBe('9.5');
  // A hand that slides along a string steps its gauge, and the sheet follows when it leaves.
  const string = page.locator('.side.other').getByRole('slider', { name: 'String 1, E4' });
  await dragWithMouse(string, { x: 34 });
  expect(await gaugeField(page, 1).inputValue()).toBe('10.5');
  await expect
    .poll(() => page.locator('#sheet-rows .gauge strong').first().textContent())
    .toBe('10.5');
  await page.getByRole('button', { name: 'Undo' }).first().click();
  expect(await gaugeField(page, 1).inputValue()).toBe('9.5');
  await close();
});

test('a job of the workshop is a beginning, which undo takes back', async () => {
  const job = jobs.at(-1);
  const { page, close } = await bench();
  await page.getByRole('link', { name: job?.title ?? '' }).click();
  const picked = planOf(job?.state ?? initialState).strings.map(({ pull }) => pull?.gauge.gauge);
  const shown = async () =>
    Promise.all(
      picked.map(async (_, i) => Number.parseFloat(await gaugeField(page, i + 1).inputValue())),
    );
  await expect.poll(shown, { timeout: 10_000 }).toEqual(picked);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect.poll(() => gaugeField(page, 1).inputValue()).toBe('9.5');
  await close();
});

test('a gauge is pinned by its buttons or by typing, and handed back', async () => {
  const { page, close } = await bench('', phone);
  await page.getByRole('button', { name: 'Gauge of string 1, a step heavier' }).click();
  expect(await gaugeField(page, 1).inputValue()).toBe('10');
  await page.getByRole('button', { name: 'back to the pick' }).click();
  expect(await gaugeField(page, 1).inputValue()).toBe('9.5');
  await gaugeField(page, 1).fill('.011');
  await gaugeField(page, 1).press('Enter');
  expect(await gaugeField(page, 1).inputValue()).toBe('11');
  await gaugeField(page, 1).fill('46');
  await gaugeField(page, 1).press('Enter');
  expect(await page.locator('.message').textContent()).toContain('Plain strings here go from');
  expect(await gaugeField(page, 1).inputValue()).toBe('46');
  expect(await page.getByRole('button', { name: 'Take 46 wound' }).count()).toBe(1);
  // Undo takes back the gauge below it, and what could not be read goes with it.
  await page.getByRole('button', { name: 'Undo' }).first().click();
  expect(await gaugeField(page, 1).inputValue()).toBe('9.5');
  expect(await page.locator('.message').count()).toBe(0);
  await close();
});

test('without scripts the sheet stands as an example, and nothing offers what it can’t do', async () => {
  const { page, close } = await open(browser, `${inject('origin')}bench/`, {
    viewport: desktop,
    javaScript: false,
  });
  const offers = page.locator(
    ':is(button, [role="slider"], [type="checkbox"], [type="radio"]):visible',
  );
  expect(await offers.allTextContents()).toEqual([]);
  expect(await page.locator('#sheet-rows tbody tr').count()).toBe(
    initialState.other.strings.length,
  );
  const bends = page.locator('noscript details');
  await bends.locator('summary').click();
  expect(await bends.locator('.travel strong').allTextContents()).toEqual(
    bendsOf(initialState).map((bent) => travelNumber(bent?.travel?.value ?? NaN, 'in-lb')),
  );
  await close();
});

test('a whole set goes on the sheet at once', async () => {
  const { page, close } = await bench();
  await page.getByRole('button', { name: 'Put on the sheet' }).first().click();
  // Any set can be put on, with its verdict beside it.
  await page.getByRole('button', { name: /^All \d+ sets/ }).click();
  const nines = page.getByRole('listitem').filter({ hasText: /^nines 9 / });
  expect(await nines.textContent()).toMatch(/together \d+\slb/);
  expect(await nines.textContent()).toMatch(/hands would notice a difference on/);
  await nines.getByRole('button').click();
  expect(await gaugeField(page, 1).inputValue()).toBe('9');
  const plan = planOf(initialState);
  expect(plan.strings).toHaveLength(6);
  expect(await nines.getByRole('button').isDisabled()).toBe(true);
  await page.getByRole('button', { name: 'Back to single picks' }).click();
  expect(await gaugeField(page, 2).inputValue()).toBe(String(plan.strings[1]?.pull?.gauge.gauge));
  await close();
});

test('no pick is offered where every string would break', async () => {
  // A fourth above standard on 1,000 mm: the stress in plain wire does not depend on its gauge.
  const { page, close } = await bench(
    '#v1/l-647.7/e4-p10/b3-p13/g3-p17/d3-w26/to/n-Stilt/l-1000/a4/e4/c4/g3',
  );
  const row = page.locator('#sheet-rows tbody tr').first();
  expect(await row.textContent()).toContain('nothing in the drawer holds');
  expect(await row.locator('.pull').textContent()).toBe('');
  await close();
});

test('from home it takes three presses to the verdict on lighter strings', async () => {
  const visit = await open(browser, inject('origin'), { viewport: phone });
  await scrollThrough(visit.page);
  await visit.page.getByRole('link', { name: 'Curlew:' }).click();
  await visit.page.getByRole('link', { name: /^Lighter or heavier strings on Curlew/ }).click();
  await visit.page.waitForURL('**/bench/**');
  const sets = visit.page.locator('#whole-sets');
  await expect.poll(() => sets.evaluate((el) => el.getBoundingClientRect().top)).toBeLessThan(700);
  const first = sets.getByRole('listitem').first();
  await first.getByRole('button', { name: 'Put on the sheet' }).click();
  expect(await first.textContent()).toMatch(/together \d+\slb.*hands would notice a difference on/);
  await expect.poll(() => visit.page.locator('.stringing dl').textContent()).toContain('Curlew');
  await visit.close();
});

describe('taking the sheet along', () => {
  test('as a file whose numbers are the sheet’s', async () => {
    const { page, close } = await bench();
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save as CSV' }).click(),
    ]);
    expect(download.suggestedFilename()).toBe('stringing-sheet-whimbrel.csv');
    const text = readFileSync(await download.path(), 'utf8');
    expect(text.split('\r\n')[1]?.split(',')[3]).toBe(await gaugeField(page, 1).inputValue());
    // Filled in elsewhere, it comes back as a visit, with what was measured beside what was predicted.
    const changed = text.replace(/^1,E4,26.5,9.5,/m, '1,E4,26.5,10.5,');
    await page.getByLabel('Open a saved sheet').setInputFiles({
      name: 'sheet.csv',
      mimeType: 'text/csv',
      buffer: Buffer.from(changed.replace(/,,\r\n2,/, ',16.1,\r\n2,')),
    });
    await expect.poll(() => gaugeField(page, 1).inputValue()).toBe('10.5');
    const said = page.locator('.hand-over [role="status"]');
    await expect.poll(() => said.textContent()).toContain('String 1: measured 16.1');
    await close();
  });

  test('as a link that opens the same bench', async () => {
    const { page, close } = await bench();
    await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
    await gaugeField(page, 1).fill('10.5');
    await gaugeField(page, 1).press('Enter');
    await page.getByRole('button', { name: 'Copy a link' }).click();
    await expect.poll(() => page.evaluate(() => navigator.clipboard.readText())).toContain('#v1/');
    const link = await page.evaluate(() => navigator.clipboard.readText());
    await close();
    const other = await open(browser, link, { viewport: phone });
    await scrollThrough(other.page);
    expect(await gaugeField(other.page, 1).inputValue()).toBe('10.5');
    await other.close();
  });

  test('as a worksheet that gives instruments and aim and nothing that is to be found, and as its key', async () => {
    // With a hand's own pick, a job's card and the bends on it, all of which would tell.
    const { page, close } = await bench();
    await gaugeField(page, 3).fill('16.5');
    await gaugeField(page, 3).press('Enter');
    await page.locator('.bends summary').click();
    await page.getByRole('button', { name: 'Keep as a job' }).click();
    await page.getByRole('article', { name: 'Job card' }).waitFor();
    await page.locator('.bends tbody tr').first().waitFor();
    await page.evaluate(() => (window.print = () => undefined));
    const paper = async (name: string): Promise<string> => {
      await page.getByRole('button', { name, exact: true }).click();
      await page.waitForFunction(() => document.documentElement.dataset.paper);
      const { pages } = await printed(page);
      await page.evaluate(() => dispatchEvent(new Event('afterprint')));
      return pages.join('');
    };
    const texts = (cells: string) => page.locator(`.stringing ${cells}`).allTextContents();
    const found = (
      await Promise.all(
        ['tbody :is(.gauge strong, .pull, .difference, .felt, .share)', 'tbody :is(strong, .by)']
          .concat('.verdict', '.checks strong')
          .map(texts),
      )
    )
      .flat()
      .map(packed)
      .filter((text) => text !== '');
    expect(found.length).toBeGreaterThan(40);
    const given = await texts('tbody :is(.note, .own, #sheet-rows .aim, .from)');
    expect(given.length).toBeGreaterThan(24);

    const sheet = await paper('Print a worksheet');
    for (const text of given) expect(sheet).toContain(packed(text));
    // A pick may be of a gauge that is given, and a share be one of the thresholds in the small print.
    const open = [...given, ...(await texts('.key'))].map(packed);
    const telling = found.filter((text) => !open.some((each) => each.includes(text)));
    expect(telling.length).toBeGreaterThan(30);
    expect(telling.filter((text) => sheet.includes(text))).toEqual([]);
    expect(sheet).toMatch(/Stringingsheet:worksheet.*Name.*Date.*Takecare.*Working/);

    const key = await paper('Print its key');
    expect(key).toContain('Stringingsheet:key');
    for (const text of [...given.map(packed), ...found]) expect(key).toContain(text);
    expect(await paper('Print the sheet')).not.toMatch(/worksheet|sheet:key/);
    await close();
  });

  test('no wider than its paper, whatever it says of a string', async () => {
    const strings = 'e4-p10/b3-p13/g3-p17/d3-w26/a2-w36/e2-w46';
    const { page, close } = await bench(
      `#v1/n-Redshank/l-647.7/${strings}/f-170/b-open/to/n-Heron/l-610/${strings}`,
    );
    await expect
      .poll(() => page.locator('#sheet-rows .felt').first().textContent())
      .toBe('nearly any hand would tell');
    for (const format of ['A4', 'Letter'] as const)
      expect(await beyondMargin(page, format), format).toBeLessThan(1);
    await close();
  });

  test.each(['A4', 'Letter'])('on one page of %s', async (format) => {
    const { page, close } = await bench();
    const pdf = await page.pdf({ format });
    // Each page of a PDF is one object of this type.
    expect(pdf.toString('latin1').match(/\/Type\s*\/Page\b(?!s)/g)).toHaveLength(1);
    await close();
  });
});
