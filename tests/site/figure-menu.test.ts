import { readFileSync } from 'node:fs';
import type { Locator, Page } from 'playwright-core';
import { afterEach, beforeEach, expect, inject, test } from 'vitest';

import { browser } from './browser.ts';
import { desktop, open, phone, sliderValue, type Visit } from './kit.ts';
import { drawnBelow } from './large-letters.ts';

let visit: Visit;
let page: Page;
let figure: Locator;
beforeEach(async () => {
  visit = await open(browser, `${inject('origin')}course/speaking-length/`, { viewport: desktop });
  page = visit.page;
  await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
  figure = page.locator('#the-neck');
  await figure.scrollIntoViewIfNeeded();
  await figure.locator('astro-island:not([ssr])').first().waitFor({ state: 'attached' });
  await figure.getByRole('slider').first().press('ArrowRight');
  await figure.getByRole('button', { name: 'Share or keep' }).press('Enter');
  const first = figure.getByRole('button', { name: 'Copy a link' });
  await expect.poll(() => first.evaluate((each) => each === document.activeElement)).toBe(true);
});
afterEach(async () => {
  expect(visit.problems).toEqual([]);
  await visit.close();
});

const press = (name: string) => figure.getByRole('button', { name }).press('Enter');
const clipboard = () => page.evaluate(() => navigator.clipboard.readText());
const length = (of: Page) =>
  sliderValue(of.locator('#the-neck').getByRole('slider').first()).then(({ now }) => now);

async function saved(name: string): Promise<{ name: string; bytes: Buffer }> {
  const [file] = await Promise.all([page.waitForEvent('download'), press(name)]);
  return { name: file.suggestedFilename(), bytes: readFileSync(await file.path()) };
}

test('a copied link opens the figure as it stood, and in sight', async () => {
  await press('Copy a link');
  await expect
    .poll(() => figure.locator('.menu').getByRole('status').innerText())
    .toContain('Copied');
  const other = await open(browser, await clipboard(), { viewport: phone });
  await expect.poll(() => length(other.page)).toBeCloseTo(await length(page), 6);
  const top = await other.page
    .locator('#the-neck')
    .evaluate((each) => each.getBoundingClientRect().top);
  expect(top).toBeGreaterThan(-1);
  expect(top).toBeLessThan(phone.height / 2);
  expect(other.problems).toEqual([]);
  await other.close();
});

test('the code for another page frames the figure alone, as high as it is there', async () => {
  await press('Put it on another page');
  const code = figure.getByRole('textbox', { name: 'Code for another page' });
  await expect.poll(() => code.inputValue(), { timeout: 15_000 }).toContain('<iframe');
  const [, address = '', width = '', height = ''] =
    /src="([^"]+)".* width="(\d+)" height="(\d+)"/.exec(await code.inputValue()) ?? [];
  const size = { width: Number(width), height: Number(height) };
  const framed = await open(browser, address.replaceAll('&#38;', '&'), { viewport: size });
  await expect.poll(() => length(framed.page)).toBeCloseTo(await length(page), 6);
  const needed = () => framed.page.evaluate(() => document.documentElement.scrollHeight);
  expect(await needed()).toBeLessThanOrEqual(size.height + 1);
  expect(await framed.page.locator('figure').count()).toBe(1);
  // A guest leaves no trace on the device, and its name leads to the chapter.
  await framed.page.locator('#the-neck').getByRole('slider').first().press('ArrowRight');
  expect(await framed.page.evaluate(() => Object.keys(localStorage))).toEqual([]);
  const home = framed.page.getByRole('link', { name: /Speaking Length, chapter/ });
  expect(await home.getAttribute('href')).toContain('course/speaking-length/');
  expect(framed.problems).toEqual([]);
  await framed.close();

  await figure.getByRole('checkbox').uncheck();
  await expect.poll(() => code.inputValue(), { timeout: 15_000 }).toContain('?bare');
  const alone = await open(browser, `${inject('origin')}embed/the-neck/?bare`, { viewport: phone });
  expect(await alone.page.getByRole('textbox').filter({ visible: true }).count()).toBe(0);
  expect(await alone.page.getByRole('combobox').filter({ visible: true }).count()).toBe(0);
  expect(await alone.page.getByRole('slider').filter({ visible: true }).count()).toBe(1);
  await alone.close();
});

test('a width of another page that can’t be is kept, and what may be is said', async () => {
  await press('Put it on another page');
  const width = figure.getByLabel('Width of your column / px');
  await width.fill('wide');
  await width.press('Enter');
  expect(await width.inputValue()).toBe('wide');
  expect(await figure.innerText()).toContain('from 280 to 1600');
});

test('the drawing is saved as SVG with all that it needs, and as PNG of the same shape', async () => {
  const svg = await saved('Save as SVG');
  expect(svg.name).toBe('the-neck.svg');
  const text = svg.bytes.toString();
  expect(/var\(|class=|oklab|color\(/.exec(text)).toBeNull();
  expect(/@font-face/.exec(text)).not.toBeNull();
  expect(/<desc>([^<]*)/.exec(text)?.[1]).toMatch(/25\.\d+\sin/);
  const png = await saved('Save as PNG');
  expect(png.name).toBe('the-neck.png');
  const size = (file: Buffer) => [file.readUInt32BE(16), file.readUInt32BE(20)];
  const [, width, height] = /width="([\d.]+)" height="([\d.]+)"/.exec(text) ?? [];
  expect(size(png.bytes)).toEqual([3 * Number(width), 3 * Number(height)].map(Math.round));
  // What is drawn on the screen stands in the file: as many words, as many lines.
  const drawn = await page.evaluate(
    async (source) => {
      const { documentElement: file } = new DOMParser().parseFromString(source, 'image/svg+xml');
      const shown = [...document.querySelectorAll('#the-neck .stage svg')].find(
        (each) => each.getBoundingClientRect().width > 0,
      );
      const words = (root: Element | undefined) =>
        [...(root?.querySelectorAll('text') ?? [])]
          .filter((each) => root === file || getComputedStyle(each).visibility === 'visible')
          // What waits for a guess is blotted out on the screen and left out of the file.
          .filter((each) => !each.closest('.blot[data-veil]'))
          .map((each) => each.textContent);
      return { file: words(file), screen: words(shown) };
      // Of the fonts nothing is asked here, and a page takes no style element.
    },
    text.replace(/<style>.*?<\/style>/, ''),
  );
  expect(drawn.file.length).toBeGreaterThan(10);
  expect(drawn.file).toEqual(drawn.screen);
});

test('its data is saved as a table', async () => {
  const { name, bytes } = await saved('Save its data as CSV');
  expect(name).toBe('the-neck.csv');
  expect(bytes.toString().split('\r\n').length).toBeGreaterThan(3);
});

test('on the whole screen a room sees all of the drawing and reads it, guesses, and takes it along', async () => {
  const before = await page.evaluate(() => window.scrollY);
  await page.setViewportSize({ width: 1280, height: 720 });
  await press('Fill the screen');
  const numbers = figure.getByRole('button', { name: 'Hide numbers' });
  await expect.poll(() => numbers.evaluate((each) => each === document.activeElement)).toBe(true);
  const box = await figure.locator('.stage').filter({ visible: true }).first().boundingBox();
  expect((box?.y ?? 0) + (box?.height ?? 0)).toBeLessThanOrEqual(720);
  expect(box?.height).toBeGreaterThan(0.5 * 720);
  expect(
    await page
      .locator('main > .skip, header')
      .first()
      .evaluate((each) => each.closest('[inert]') !== null),
  ).toBe(true);

  // On a picture two metres wide, letters 4 cm high; nothing of the frame lies over the drawing.
  expect(await drawnBelow(page, 26, '#the-neck')).toEqual([]);
  const head = await figure.getByRole('group', { name: 'On the whole screen' }).boundingBox();
  expect((head?.y ?? 0) + (head?.height ?? 0)).toBeLessThanOrEqual(box?.y ?? 0);
  expect(await figure.locator('figcaption').isVisible()).toBe(false);

  const verdict = figure.locator('.verdict').first();
  const shown = () =>
    figure
      .locator('.stage')
      .filter({ visible: true })
      .first()
      .evaluate((stage) =>
        [...stage.querySelectorAll('text')]
          .filter((each) => getComputedStyle(each).visibility === 'visible')
          .map((each) => each.textContent.trim()),
      );
  const all = await shown();
  const follows = all.filter(
    // The lines of the felt band are given.
    (text) => /\d\s(?:lb|%)$|^\d+\.\d$/.test(text) && !/^(±7|[−+]21)\s%$/.test(text),
  );
  expect(follows.length).toBeGreaterThan(1);
  expect(all).toEqual(expect.arrayContaining(['E4', '10', expect.stringMatching(/^[\d.]+\sin$/)]));
  await page.keyboard.press('n');
  expect(await verdict.isVisible()).toBe(false);
  // What follows is covered; what is given or set, which the class works from, is not.
  expect(await shown()).toEqual(all.filter((text) => !follows.includes(text)));
  // What a drag writes anew stays covered.
  await figure.getByRole('slider').filter({ visible: true }).first().press('PageUp');
  expect((await shown()).filter((text) => text.endsWith('lb'))).toEqual([]);
  await page.keyboard.press('n');
  expect(await verdict.isVisible()).toBe(true);
  await page.keyboard.press('c');
  expect(await figure.locator('figcaption').isVisible()).toBe(true);
  await page.keyboard.press('q');
  const code = figure.getByRole('img', { name: /A code that opens this figure/ });
  await code.waitFor();
  const side = await code.boundingBox();
  expect(Math.min(side?.width ?? 0, side?.height ?? 0)).toBeGreaterThan(400);
  expect(await figure.locator('.stage').filter({ visible: true }).count()).toBe(0);
  await page.keyboard.press('q');

  await page.keyboard.press('Escape');
  await expect
    .poll(() => figure.getByRole('button', { name: 'Copy a link' }).isVisible())
    .toBe(true);
  expect(await page.locator('[inert], [data-told], [data-grown], [data-left-out]').count()).toBe(0);
  await page.setViewportSize(desktop);
  expect(await page.evaluate(() => window.scrollY)).toBeCloseTo(before, -2);
});

test('Escape closes the menu and gives the keys back to its button', async () => {
  await page.keyboard.press('Escape');
  const button = figure.getByRole('button', { name: 'Share or keep' });
  expect(await button.getAttribute('aria-expanded')).toBe('false');
  expect(await button.evaluate((each) => each === document.activeElement)).toBe(true);
});
