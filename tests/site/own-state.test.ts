/** What a drawing tries for itself is a part of the state: undo takes it back, and the address brings it to another device. */
import type { Locator, Page } from 'playwright-core';
import { expect, inject, test } from 'vitest';

import { browser } from './browser.ts';
import { desktop, lookUp, open, pressKey, sliderValue } from './kit.ts';
import { type } from './one-figure.ts';

/** Something of a figure that a reader changes, and what it then says or shows. */
interface Own {
  figure: string;
  change: (figure: Locator) => Promise<void>;
  read: (figure: Locator) => Promise<string | undefined>;
}

const handle = (figure: string, name: string, key = 'ArrowRight'): Own => {
  const find = (f: Locator) => f.locator(`[data-handle="${name}"]:visible`);
  return {
    figure,
    change: (f) => pressKey(find(f), key),
    read: async (f) => (await sliderValue(find(f))).text,
  };
};
const field = (figure: string, label: string, text: string): Own => {
  const find = (f: Locator) => f.getByLabel(label, { exact: true });
  return { figure, change: (f) => type(find(f), text), read: (f) => find(f).inputValue() };
};
const choice = (figure: string, label: string): Own => ({
  figure,
  change: (f) => f.getByLabel(label, { exact: true }).click(),
  read: (f) =>
    f
      .locator('input:is([type="radio"], [type="checkbox"])')
      .evaluateAll((all) => all.map((each) => (each as HTMLInputElement).checked).join(' ')),
});
const wrap: Own = {
  figure: 'the-section',
  change: async (f) => void (await f.locator('select').selectOption('phosphorBronze')),
  read: (f) => f.locator('select').inputValue(),
};
const cell: Own = {
  figure: 'rule-map',
  change: (f) => pressKey(f.locator('[aria-selected="true"]'), 'ArrowDown'),
  read: (f) => f.locator('.chosen .title').innerText(),
};
const arm: Own = {
  ...field('the-bridge', 'Edge to strings', '0.5 in'),
  change: async (f) => {
    await f.locator('summary').click();
    await type(f.getByLabel('Edge to strings', { exact: true }), '0.5 in');
  },
};

const chapters: Readonly<Record<string, readonly Own[]>> = {
  'three-things-set-the-pull': [handle('slide-rule', 'factor')],
  'speaking-length': [field('how-to-measure', 'Nut to the centre of the twelfth fret', '12.5 in')],
  pitch: [handle('the-capo', 'capo')],
  // The stairs lead to another gauge, on which the caliper closes: so they come first.
  'gauge-and-mass': [handle('the-stairs', 'wanted'), handle('the-caliper', 'jaw')],
  'wound-strings': [
    handle('the-vice', 'free'),
    handle('the-section', 'core'),
    handle('the-section', 'outer'),
    choice('the-section', 'round core'),
    wrap,
  ],
  'what-the-hand-feels': [handle('three-rulers', 'second-gauge'), handle('fingers-place', 'place')],
  bending: [
    handle('whole-string', 'beyond-nut'),
    handle('whole-string', 'beyond-saddle'),
    choice('whole-string', 'slips over the nut'),
    choice('whole-string', 'slips over the saddle'),
  ],
  'stiff-strings': [handle('ladder', 'partial'), handle('recorded-string', 'wire')],
  'two-guitars-one-feel': [cell],
  'what-neck-and-bridge-carry': [
    handle('the-bridge', 'bridge-pull'),
    handle('the-bridge', 'bridge-claw', 'ArrowLeft'),
    choice('the-bridge', '4'),
    arm,
  ],
  'in-tune-up-the-neck': [
    handle('the-flags', 'setback', 'ArrowLeft'),
    handle('pressing-down', 'action'),
    handle('pressing-down', 'pressed-fret', 'ArrowLeft'),
  ],
};

async function come(page: Page, id: string): Promise<Locator> {
  const figure = page.locator(`#${id}`);
  await figure.scrollIntoViewIfNeeded();
  await page.waitForFunction((name) => !document.querySelector(`#${name} astro-island[ssr]`), id);
  return figure;
}

test.each(Object.entries(chapters))('%s', async (slug, owns) => {
  const address = `${inject('origin')}course/${slug}/`;
  const { page, problems, close } = await open(browser, address, { viewport: desktop });
  const turn = (name: string) =>
    page
      .getByRole('button', { name, exact: true })
      .first()
      .evaluate((b: HTMLElement) => b.click());
  const left = new Map<Own, string | undefined>();
  await lookUp(page);
  for (const own of owns) {
    const figure = await come(page, own.figure);
    const first = await own.read(figure);
    await own.change(figure);
    await expect.poll(() => own.read(figure)).not.toBe(first);
    const changed = await own.read(figure);
    await turn('Undo');
    await expect.poll(() => own.read(figure)).toBe(first);
    await turn('Redo');
    await expect.poll(() => own.read(figure)).toBe(changed);
    left.set(own, changed);
  }
  // A choice reads all of its figure's, so what each left is compared once all are made.
  for (const own of owns) left.set(own, await own.read(page.locator(`#${own.figure}`)));
  // Another device: nothing but the address. The page is not left for it: what comes into sight asks for its scripts at its leisure,
  // and a script on its way when a page is left counts as one that failed.
  const other = await open(browser, page.url(), { viewport: desktop });
  await lookUp(other.page);
  for (const own of owns) {
    const figure = await come(other.page, own.figure);
    await expect.poll(() => own.read(figure)).toBe(left.get(own));
  }
  expect([...problems, ...other.problems]).toEqual([]);
  await Promise.all([close(), other.close()]);
});
