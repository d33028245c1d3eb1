/** A finger on a handle moves the handle alone; a finger beside it, and two fingers anywhere else, are the page's. */
import { expect, inject, test } from 'vitest';

import { browser } from './browser.ts';
import { lookUp, sliderValue, type Step } from './kit.ts';
import { besideHandles, centre, groundOf, onPhone, standing } from './touch.ts';

const visit = (path: string, figure: string) => onPhone(browser, inject('origin') + path, figure);

// A busy machine scrolls late.
// Of a swipe of 150 px a browser takes some for telling it from a tap, and two fingers count less than one.
const SCROLLS = 40;
// The same goes for a pinch; a page that does not zoom stays at 1.
const ZOOMS = 1.2;
const patient = { timeout: 10_000 };

/** A handle of each kind. `by` moves its value; the other way is across it, where a page would scroll. */
const kinds = [
  {
    kind: 'slides along',
    path: 'course/three-things-set-the-pull/',
    figure: '#three-handles',
    handle: '#three-handles [data-handle="length"]:visible',
    by: { x: -50, y: 90 },
  },
  {
    kind: 'slides up and down',
    path: 'course/three-things-set-the-pull/',
    figure: '#three-handles',
    handle: '#three-handles [data-handle="pitch"]:visible',
    by: { x: 60, y: 60 },
  },
  {
    kind: 'roams',
    path: 'course/going-low/',
    figure: '#three-roads',
    handle: '[data-handle="point"]:visible',
    by: { x: -40, y: -70 },
  },
  {
    kind: 'is a number in prose',
    path: 'course/three-things-set-the-pull/',
    figure: '.prose p:has([role="slider"])',
    handle: 'p [role="slider"]:visible',
    by: { x: 60, y: 6 },
  },
] satisfies { kind: string; path: string; figure: string; handle: string; by: Step }[];

test.each(kinds)(
  'a handle that $kind is moved by its finger alone, and the page is not',
  async (each) => {
    const { page, fingers, problems, close } = await visit(each.path, each.figure);
    // The cross waits for the guess.
    if (each.figure === '#three-roads') await lookUp(page);
    const handle = page.locator(each.handle).first();
    const { by } = each;
    const at = await centre(handle);
    const ground = await groundOf(handle);
    const value = await sliderValue(handle);
    await fingers.swipe([at], [by], {
      during: async () => expect(await groundOf(handle)).toEqual(ground),
    });
    expect(await sliderValue(handle)).not.toEqual(value);
    expect(await groundOf(handle)).toEqual(ground);

    // A second finger lands where the handle is while the first holds it, and goes its own way.
    const from = await centre(handle);
    const there = await groundOf(handle);
    const moved = { x: from.x - by.x / 2, y: from.y - by.y / 2 };
    await fingers.send('touchStart', [from]);
    await fingers.send('touchMove', [moved]);
    const { now } = await sliderValue(handle);
    const box = await handle.boundingBox();
    if (!box) throw new Error('the handle is not drawn');
    const second = { x: box.x + box.width / 2 + 6, y: box.y + box.height / 2 + 4 };
    await fingers.send('touchStart', [moved, second]);
    for (let i = 1; i <= 8; i += 1) {
      await fingers.send('touchMove', [moved, { x: second.x - i * 8, y: second.y - i * 8 }]);
    }
    expect((await sliderValue(handle)).now).toBe(now);
    await fingers.send('touchEnd', []);
    expect((await sliderValue(handle)).now).toBe(now);
    expect(await groundOf(handle)).toEqual(there);
    expect(await page.locator('[data-dragging]').count()).toBe(0);
    expect((await standing(page)).selected).toBe('');
    expect(problems).toEqual([]);
    await close();
  },
);

test('a finger that goes up or down from a number in prose scrolls the page and leaves the number', async () => {
  const { page, fingers, problems, close } = await visit(
    'course/three-things-set-the-pull/',
    '.prose p:has([role="slider"])',
  );
  const handle = page.locator('p [role="slider"]:visible').first();
  const before = await sliderValue(handle);
  for (const y of [-150, 150]) {
    const at = await centre(handle);
    const { scrolled } = await standing(page);
    // Nobody swipes straight: the first steps lean to the side.
    await fingers.swipe([at], [{ x: 12, y }]);
    await expect
      .poll(async () => Math.abs((await standing(page)).scrolled - scrolled), patient)
      .toBeGreaterThan(SCROLLS);
    expect(await sliderValue(handle)).toEqual(before);
  }
  expect(await page.locator('[data-dragging]').count()).toBe(0);
  expect((await standing(page)).selected).toBe('');
  expect(problems).toEqual([]);
  await close();
});

const drawings = [
  ['course/three-things-set-the-pull/', '#three-handles'],
  ['course/pitch/', '#the-octave'],
  ['course/going-low/', '#three-roads'],
  ['course/when-strings-break/', '#the-cliff'],
  ['course/speaking-length/', '#the-neck'],
] as const;

test.each(drawings)(
  'over /%s%s fingers beside the handles are the page’s',
  async (path, figure) => {
    const { page, fingers, close } = await visit(path, figure);
    const stage = page.locator(`${figure} .stage:visible`).first();
    const values = () =>
      page
        .locator(`${figure} [data-handle]:visible`)
        .evaluateAll((all) => all.map((each) => each.getAttribute('aria-valuenow')));
    const before = await values();
    const up = { y: -150 };

    for (const fingersDown of [1, 2]) {
      const at = await besideHandles(stage);
      const { scrolled } = await standing(page);
      const from = [at, { x: at.x + 60, y: at.y }].slice(0, fingersDown);
      await fingers.swipe(from, [up, up]);
      await expect
        .poll(async () => (await standing(page)).scrolled - scrolled, patient)
        .toBeGreaterThan(SCROLLS);
    }

    const { x, y } = await besideHandles(stage);
    const apart = [
      { x, y: y - 20 },
      { x, y: y + 20 },
    ];
    await fingers.swipe(apart, [{ y: -70 }, { y: 70 }]);
    await expect.poll(async () => (await standing(page)).zoom, patient).toBeGreaterThan(ZOOMS);
    expect(await values()).toEqual(before);
    expect((await standing(page)).selected).toBe('');
    await close();
  },
);
