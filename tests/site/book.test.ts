/** What a reader has described is never lost, and never changed by anything but the reader's own pressing and typing. */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';

import { encode } from '../../src/instrument/link.ts';
import { initialState, workshopInstrument } from '../../src/instrument/workshop.ts';
import {
  desktop,
  launch,
  open,
  phone,
  pressKey,
  quiet,
  scrollThrough,
  sliderValue,
} from './kit.ts';
import { type } from './one-figure.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser.close());

/** A friend's instrument, in a friend's units. */
const friend = {
  ...initialState,
  mine: { ...workshopInstrument('curlew'), name: 'Turnstone' },
  units: 'mm-kg' as const,
};
const bar = (page: Page) => page.getByRole('region', { name: 'Your instrument' });
const shown = (page: Page) => bar(page).locator('select').first();
const called = (page: Page) => shown(page).locator('option:checked').innerText();
const units = (page: Page) => bar(page).locator('select').nth(1).inputValue();
const visit = (page: Page) => page.getByRole('region', { name: 'A visit' });
const undo = (page: Page) => bar(page).getByRole('button', { name: 'Undo' });

/** A reader who has described an instrument, on a page of the site. */
async function described(path = 'bench/', view = desktop, before?: () => void) {
  const seen = await open(browser, `${inject('origin')}bench/`, {
    viewport: view,
    ...(before && { before }),
  });
  const { page } = seen;
  await page.locator('.side.mine').scrollIntoViewIfNeeded();
  await page.waitForFunction(
    () => !document.querySelector('.side.mine astro-island[ssr]:has(.body)'),
  );
  await type(page.getByLabel('Name', { exact: true }).first(), 'Dunlin');
  await expect.poll(() => called(page)).toBe('Dunlin');
  if (path !== 'bench/') await go(page, path);
  return seen;
}
async function go(page: Page, path: string): Promise<void> {
  await page.goto(`${inject('origin')}${path}`);
  await page.waitForFunction(() => !document.querySelector('.sheet.hand > astro-island[ssr]'));
}
async function come(page: Page, id: string) {
  const figure = page.locator(`#${id}`);
  await figure.scrollIntoViewIfNeeded();
  await page.waitForFunction((name) => !document.querySelector(`#${name} astro-island[ssr]`), id);
  return figure;
}

describe('a visit', () => {
  test('by a friend’s link leaves instrument and units alone, and says so where the reader lands', async () => {
    const { page, problems, close } = await described('', phone);
    await page.goto('about:blank');
    await go(page, `course/three-things-set-the-pull/#${encode(friend)}/at-three-handles`);
    await expect.poll(() => called(page)).toBe('Turnstone');
    await expect.poll(() => visit(page).innerText()).toContain('shared instrument');
    expect(await visit(page).isVisible()).toBe(true);
    const box = await visit(page).boundingBox();
    expect(box && box.y + box.height).toBeLessThanOrEqual(phone.height);
    expect(await units(page)).toBe('in-lb');
    await page.reload();
    await expect.poll(() => visit(page).innerText()).toContain('shared instrument');
    await visit(page).getByRole('button', { name: 'Back to Dunlin' }).click();
    await expect.poll(() => called(page)).toBe('Dunlin');
    expect(await visit(page).count()).toBe(0);
    await page.goto('about:blank');
    await go(page, 'bench/');
    await expect.poll(() => called(page)).toBe('Dunlin');
    // A page that is left early leaves what it was still asking for.
    expect(problems.filter((each) => !each.startsWith('failed: '))).toEqual([]);
    await close();
  });

  test('is kept by a button, after which undo brings back one’s own, on another page too', async () => {
    const { page, close } = await described('');
    await page.goto('about:blank');
    await go(page, `#${encode(friend)}`);
    await visit(page).getByRole('button', { name: 'Keep this one' }).click();
    await expect.poll(() => visit(page).count()).toBe(0);
    await page.goto('about:blank');
    await go(page, 'reference/');
    await expect.poll(() => called(page)).toBe('Turnstone');
    await undo(page).click();
    await expect.poll(() => called(page)).toBe('Dunlin');
    await page.goto('about:blank');
    await go(page, '');
    await expect.poll(() => called(page)).toBe('Dunlin');
    await close();
  });

  test('to an example or by a job of the bench is one too', async () => {
    const { page, close } = await described();
    await shown(page).selectOption({ label: 'Curlew' });
    await expect.poll(() => visit(page).innerText()).toContain('Back to Dunlin');
    await page.locator('.jobs a').nth(1).click();
    await expect.poll(() => visit(page).innerText()).toContain('Back to Dunlin');
    await page.goto('about:blank');
    await go(page, 'bench/');
    await expect.poll(() => called(page)).toBe('Dunlin');
    expect(await visit(page).count()).toBe(0);
    await close();
  });
});

test('a changed example is a copy with a name of its own', async () => {
  const { page, close } = await open(browser, `${inject('origin')}bench/`, { viewport: desktop });
  await page.locator('.side.mine').scrollIntoViewIfNeeded();
  await page.waitForFunction(
    () => !document.querySelector('.side.mine astro-island[ssr]:has(.body)'),
  );
  await type(page.getByLabel('Gauge of your string 1', { exact: true }), '11');
  await expect.poll(() => called(page)).toBe('My Redshank');
  const names = await shown(page).locator('option').allInnerTexts();
  expect(new Set(names).size).toBe(names.length);
  await close();
});

describe('what is tried', () => {
  test('with a saddle of chapter 9 changes nothing of one’s own, until a button says so', async () => {
    const { page, close } = await described('course/two-guitars-one-feel/');
    const figure = await come(page, 'two-necks');
    const saddle = figure.locator('[data-handle="mine"]:visible');
    const { now } = await sliderValue(saddle);
    const facts = await bar(page).locator('.facts').innerText();
    await pressKey(saddle, 'PageDown');
    await expect.poll(async () => (await sliderValue(saddle)).now).toBeLessThan(now);
    const tried = (await sliderValue(saddle)).now;
    expect(await bar(page).locator('.facts').innerText()).toBe(facts);
    expect(await visit(page).count()).toBe(0);
    await page.reload();
    await come(page, 'two-necks');
    await expect.poll(async () => (await sliderValue(saddle)).now).toBeCloseTo(tried, 6);
    await page.goto('about:blank');
    await go(page, 'course/two-guitars-one-feel/');
    await come(page, 'two-necks');
    await expect.poll(async () => (await sliderValue(saddle)).now).toBeCloseTo(now, 6);
    await pressKey(saddle, 'PageDown');
    await figure.getByRole('button', { name: 'Keep these scales' }).click();
    await expect.poll(() => bar(page).locator('.facts').innerText()).not.toBe(facts);
    await page.goto('about:blank');
    await go(page, 'reference/');
    await expect.poll(() => bar(page).locator('.facts').innerText()).not.toBe(facts);
    await undo(page).click();
    await expect.poll(() => bar(page).locator('.facts').innerText()).toBe(facts);
    await close();
  });

  test('in chapter 1 is left behind there: no later chapter shows it, or speaks of it', async () => {
    const later = ['pitch', 'bending', 'in-tune-up-the-neck'];
    const { page, close } = await described(`course/${later[0]}/`);
    // What the figures draw and the text says of the reader's instrument; the page is seen to its end, so that all of it is alive.
    const told = async (slug: string) => {
      await go(page, `course/${slug}/`);
      await scrollThrough(page);
      // It was built for the workshop's instrument, and numbers out of sight wait, but for paper.
      await expect
        .poll(() =>
          page.evaluate(() => {
            dispatchEvent(new Event('beforeprint'));
            return document.querySelector('.prose')?.textContent;
          }),
        )
        .toContain('Dunlin');
      await quiet(page);
      return page.locator('.prose').allTextContents();
    };
    const before = new Map<string, string[]>();
    for (const slug of later) before.set(slug, await told(slug));
    await go(page, 'course/three-things-set-the-pull/');
    const figure = await come(page, 'three-handles');
    const gauge = figure.locator('[data-handle="gauge"]:visible');
    const { text } = await sliderValue(gauge);
    await pressKey(gauge, 'PageUp');
    await expect.poll(async () => (await sliderValue(gauge)).text).not.toBe(text);
    await page.locator('.onward a').last().click();
    await page.waitForURL(/speaking-length\/(#|$)/);
    expect(page.url()).not.toMatch(/\/t[gln]-/);
    for (const slug of later) expect(await told(slug), slug).toEqual(before.get(slug));
    await go(page, 'course/three-things-set-the-pull/');
    await come(page, 'three-handles');
    expect((await sliderValue(gauge)).text).toBe(text);
    await close();
  });
});

test('two windows follow one another, and neither undoes what the other has changed', async () => {
  const { page, close } = await described();
  const other = await page.context().newPage();
  await other.goto(`${inject('origin')}bench/`);
  await expect.poll(() => called(other)).toBe('Dunlin');
  await type(page.getByLabel('Name', { exact: true }).first(), 'Knot');
  await expect.poll(() => called(other)).toBe('Knot');
  await other.bringToFront();
  await bar(other).locator('select').nth(1).selectOption('mm-N');
  await page.bringToFront();
  await expect.poll(() => units(page)).toBe('mm-N');
  expect(await called(page)).toBe('Knot');
  await close();
});

test('the browser is asked once, at the first instrument that is kept, not to clear the book', async () => {
  const { page, close } = await described('bench/', desktop, () => {
    navigator.storage.persisted = () => Promise.resolve(false);
    navigator.storage.persist = () => {
      sessionStorage.asked = `${sessionStorage.asked ?? ''}!`;
      return Promise.resolve(false);
    };
  });
  const asked = () => page.evaluate(() => String(sessionStorage.asked ?? ''));
  await expect.poll(asked).toBe('!');
  await type(page.getByLabel('Name', { exact: true }).first(), 'Knot');
  await go(page, 'course/');
  await expect.poll(() => called(page)).toBe('Knot');
  expect(await asked()).toBe('!');
  await close();
});

test('what an earlier version remembered is in the book', async () => {
  const before = `localStorage.setItem('speaking-length.state', ${JSON.stringify(encode(friend))})`;
  const { page, close } = await open(browser, `${inject('origin')}`, {
    viewport: desktop,
    before: new Function(before) as () => void,
  });
  await expect.poll(() => called(page)).toBe('Turnstone');
  const lying = () =>
    page.evaluate(
      () =>
        new Promise<string[]>((done) => {
          const asked = indexedDB.open('speaking-length.book');
          asked.onsuccess = () => {
            if (!asked.result.objectStoreNames.contains('records')) return done([]);
            const all = asked.result.transaction('records').objectStore('records').getAll();
            all.onsuccess = () => done(all.result.map((r: { name: string }) => r.name));
          };
          asked.onerror = () => done([]);
        }),
    );
  await page.waitForTimeout(1500);
  await expect.poll(lying).toEqual(['Turnstone']);
  await close();
});
