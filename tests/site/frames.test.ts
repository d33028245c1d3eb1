import { fromHtml } from 'hast-util-from-html';
import { visit as walk } from 'unist-util-visit';
import { expect, inject, test } from 'vitest';

import { browser } from './browser.ts';
import { sideways } from './contents.ts';
import { open, phone, smallPhone } from './kit.ts';
import { frames, htmlOf, pages } from './pages.ts';

function figuresOf(path: string): { id: string; hasMenu: boolean }[] {
  const found: { id: string; hasMenu: boolean }[] = [];
  walk(fromHtml(htmlOf(path)), 'element', (element) => {
    if (element.tagName !== 'figure') return;
    let hasMenu = false;
    walk(element, 'element', ({ properties }) => {
      if ([properties.className].flat().includes('figure-menu')) hasMenu = true;
    });
    found.push({ id: String(element.properties.id ?? ''), hasMenu });
  });
  return found;
}

test('each figure of a chapter has a menu, and a page of its own that holds it alone', () => {
  const chapters = pages().filter((path) => /^course\/./.test(path));
  const figures = chapters.flatMap(figuresOf);
  expect(figures.length).toBeGreaterThan(20);
  expect(figures.filter(({ hasMenu }) => !hasMenu)).toEqual([]);
  expect(
    frames()
      .map((path) => path.split('/')[1])
      .sort(),
  ).toEqual(figures.map(({ id }) => id).sort());
  for (const path of frames()) {
    expect(
      figuresOf(path).map(({ id }) => `embed/${id}/`),
      path,
    ).toEqual([path]);
  }
});

test.each(frames().filter((_, i) => i % 6 === 0))('/%s moves, and fits a phone', async (path) => {
  const { page, problems, close } = await open(browser, inject('origin') + path, {
    viewport: phone,
  });
  // The bar and the live numbers come alive as well as the figure.
  expect(await page.locator('astro-island[ssr]').count()).toBe(0);
  const handle = page.getByRole('slider').filter({ visible: true }).first();
  const said = () => handle.getAttribute('aria-valuetext');
  const before = await said();
  await handle.press('ArrowRight');
  if ((await said()) === before) await handle.press('ArrowLeft');
  expect(await said()).not.toBe(before);
  expect(await sideways(page)).toEqual({ by: 0, elements: [] });
  await page.setViewportSize(smallPhone);
  expect(await sideways(page)).toEqual({ by: 0, elements: [] });
  expect(problems).toEqual([]);
  await close();
});
