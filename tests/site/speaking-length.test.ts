import type { Page } from 'playwright-core';
import { expect, inject, test } from 'vitest';

import { encode } from '../../src/instrument/link.ts';
import { pullsOf, totalPull } from '../../src/instrument/pulls.ts';
import { initialState, workshop, workshopInstrument } from '../../src/instrument/workshop.ts';
import * as physics from '../../src/physics/index.ts';
import { browser } from './browser.ts';
import {
  comeTo,
  desktop,
  dragWithFinger,
  dragWithMouse,
  lookUp,
  open,
  phone,
  pressKey,
  sliderValue,
} from './kit.ts';

async function chapter({ viewport = phone, link = '' } = {}) {
  const visit = await open(browser, `${inject('origin')}course/speaking-length/${link}`, {
    viewport,
  });
  await comeTo(visit.page, '#the-neck', '#the-square');
  return visit;
}

/** The one of the neck's two drawings that the screen shows. */
const saddle = (page: Page) => page.locator('#the-neck [data-handle="length"]:visible');
const numbers = async (page: Page): Promise<number[]> =>
  (await page.locator('#the-neck text.number:visible').allTextContents()).map(Number);
const corner = (page: Page) => page.locator('#the-square [data-handle="square"]');
const text = async (page: Page, selector: string): Promise<string> =>
  ((await page.locator(selector).first().textContent()) ?? '').replace(/\s+/g, ' ').trim();

const redshank = workshopInstrument('redshank');
const own = redshank.scale.treble;
const pounds = (length: number): number[] =>
  pullsOf(redshank, length / own).map(({ tension }) => physics.poundsForce(tension));

test.each([
  ['a mouse', desktop, dragWithMouse],
  ['a finger', phone, dragWithFinger],
])('dragging the neck’s saddle with %s gives the module’s pulls', async (_, viewport, drag) => {
  const { page, problems, close } = await chapter({ viewport });
  const handle = saddle(page);
  await handle.scrollIntoViewIfNeeded();
  const scrolled = await page.evaluate(() => scrollY);
  await drag(handle, { x: 21 });
  const { now } = await sliderValue(handle);
  expect(now).toBeGreaterThan(own);
  const shown = await numbers(page);
  pounds(now).forEach((value, i) => expect(shown[i]).toBeCloseTo(value, 1));
  const change = ((now / own) ** 2 - 1) * 100;
  expect(await text(page, '#the-neck .verdict')).toContain(
    `${change.toFixed(change < 9.95 ? 1 : 0)} % more`,
  );
  expect(await page.evaluate(() => scrollY), 'the page stays where it is').toBe(scrolled);
  expect(problems).toEqual([]);
  await close();
});

test('weights are drawn as long as they are heavy', async () => {
  const { page, close } = await chapter({ viewport: desktop });
  await pressKey(saddle(page), 'PageUp');
  // One path for all: each weight is drawn from its lower edge, and its stroke goes beyond it.
  const widths = await page
    .locator('#the-neck path.weight:visible')
    .evaluate((path) =>
      [...(path.getAttribute('d') ?? '').matchAll(/M([\d.]+) [\d.]+V[\d.]+H([\d.]+)/g)].map(
        ([, from, to]) =>
          Number(to) - Number(from) + parseFloat(getComputedStyle(path).strokeWidth),
      ),
    );
  expect(widths).toHaveLength(6);
  const [first = NaN, ...rest] = widths;
  const [pull = NaN, ...others] = pounds(own + physics.INCH);
  rest.forEach((width, i) => expect(width / first).toBeCloseTo((others[i] ?? NaN) / pull, 4));
  await close();
});

test('keys follow the contract, undo gives the length back, and the link keeps it', async () => {
  const { page, close } = await chapter({ viewport: desktop });
  const handle = saddle(page);
  await pressKey(handle, 'PageUp');
  expect((await sliderValue(handle)).text).toMatch(/^26\.5\sin$/);
  expect(new URL(page.url()).hash).toContain('tl-673.1');
  await pressKey(handle, 'ArrowLeft');
  expect((await sliderValue(handle)).text).toMatch(/^26\.25\sin$/);
  await page.keyboard.press('Control+z');
  expect((await sliderValue(handle)).text).toMatch(/^26\.5\sin$/);
  await pressKey(handle, 'End');
  const { now, max } = await sliderValue(handle);
  expect(now).toBe(max);
  await close();
});

test('a row lays the set on its length', async () => {
  const { page, close } = await chapter();
  const row = page.getByRole('button', { name: /^Try the set on 27\sin$/ });
  await row.click();
  expect((await sliderValue(saddle(page))).text).toMatch(/^27\sin$/);
  expect(await row.getAttribute('aria-pressed')).toBe('true');
  const total = physics.poundsForce(totalPull(pullsOf(redshank, physics.fromInches(27) / own)));
  expect(await page.locator('#the-neck .live:visible').textContent()).toContain(total.toFixed(0));
  await close();
});

test('a string beyond its strength is drawn broken and has no number', async () => {
  const { page, close } = await chapter({ link: '#v1/tl-1000' });
  expect(await page.locator('#the-neck g.broken:visible').count()).toBeGreaterThan(0);
  expect(await page.locator('#the-neck text.number:visible').first().textContent()).toBe('breaks');
  expect(await text(page, '#the-neck .verdict')).not.toContain('lb');
  await close();
});

test.each([
  ['a mouse', desktop, dragWithMouse],
  ['a finger', phone, dragWithFinger],
])(
  'dragging the square’s corner with %s adds two strips and a corner',
  async (_, viewport, drag) => {
    const { page, close } = await chapter({ viewport });
    await lookUp(page);
    await drag(corner(page), { x: 12 });
    const { now } = await sliderValue(corner(page));
    const added = now / own - 1;
    const cells = await page.locator('#the-square td').allTextContents();
    const parts = cells.slice(0, 4).map((cell) => Number.parseFloat(cell));
    [added, added, added ** 2, (1 + added) ** 2 - 1].forEach((part, i) =>
      expect(parts[i]).toBeCloseTo(100 * part, 1),
    );
    expect(Number.parseFloat(cells[4] ?? '')).toBeCloseTo(
      pounds(now).reduce((a, b) => a + b, 0),
      -0.3,
    );
    await close();
  },
);

test('a typed reading is doubled; a whole scale length is kept and answered', async () => {
  const { page, close } = await chapter();
  await comeTo(page, '#how-to-measure');
  const field = page.getByRole('textbox', { name: 'Nut to the centre of the twelfth fret' });
  await field.fill('325 mm');
  await field.press('Enter');
  expect(await text(page, '#how-to-measure .main')).toContain('650.0 mm');
  expect(await text(page, '#how-to-measure dl')).toContain('1.0 mm either way');
  await field.fill('25.5');
  await field.press('Enter');
  expect(await field.inputValue()).toBe('25.5');
  expect(await page.locator('#how-to-measure [role="alert"]').textContent()).toMatch(/whole scale/);
  await page.getByRole('button', { name: 'Try the set on this scale' }).click();
  expect((await sliderValue(saddle(page))).now).toBeCloseTo(0.65, 5);
  await close();
});

test('a step of a drag changes at most four nodes a string and twelve more', async () => {
  const { page, close } = await chapter({ viewport: desktop });
  const handle = saddle(page);
  await handle.scrollIntoViewIfNeeded();
  await page.evaluate(() => new Promise((done) => setTimeout(done, 100)));
  await page.evaluate(() => {
    const seen = Object.assign(window, { changes: 0 });
    new MutationObserver((list) => (seen.changes += list.length)).observe(document.body, {
      subtree: true,
      childList: true,
      attributes: true,
      characterData: true,
    });
  });
  await handle.focus();
  await page.keyboard.down('ArrowRight');
  const changes = await page.evaluate(
    () =>
      new Promise<number>((done) =>
        requestAnimationFrame(() => done(Number(Reflect.get(window, 'changes')))),
      ),
  );
  expect(changes).toBeGreaterThan(0);
  expect(changes).toBeLessThanOrEqual(4 * redshank.strings.length + 12);
  await close();
});

test.each(workshop.map(({ id, name }) => [name, id]))(
  '%s fits its neck on a phone',
  async (_, id) => {
    const mine = workshopInstrument(id);
    const { page, problems, close } = await chapter({
      link: `#${encode({ ...initialState, mine })}`,
    });
    expect(await page.locator('#the-neck text.number:visible').count()).toBe(mine.strings.length);
    const sideways = await page.evaluate(() => document.documentElement.scrollWidth > innerWidth);
    expect(sideways).toBe(false);
    const box = await saddle(page).boundingBox();
    if (!box) throw new Error('the handle is not drawn');
    expect(box.x).toBeGreaterThan(24);
    expect(box.x + box.width).toBeLessThan(phone.width - 24);
    expect(problems).toEqual([]);
    await close();
  },
);
