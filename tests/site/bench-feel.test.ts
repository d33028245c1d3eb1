import type { Page } from 'playwright-core';
import { describe, expect, inject, test } from 'vitest';

import { bendsOf } from '../../src/instrument/bends.ts';
import { formatDifference, travelNumber } from '../../src/instrument/format.ts';
import { planOf } from '../../src/instrument/plan.ts';
import type { State } from '../../src/instrument/schema.ts';
import { initialState } from '../../src/instrument/workshop.ts';
import { browser } from './browser.ts';
import { desktop, open, phone, scrollThrough, type View } from './kit.ts';

async function bench(viewport: View['viewport'], link = '') {
  const visit = await open(browser, `${inject('origin')}bench/${link}`, { viewport });
  await scrollThrough(visit.page);
  return visit;
}
const gauges = async (page: Page): Promise<number[]> => {
  const fields = page.locator('.side.other').getByLabel(/^Gauge of string \d+$/);
  const typed = await fields.evaluateAll((all) => all.map((f) => (f as HTMLInputElement).value));
  return typed.map(Number.parseFloat);
};
const picked = (state: State) => planOf(state).strings.map((s) => s.pull?.gauge.gauge);
const row = (page: Page, string: number) => page.locator('.bends tbody tr').nth(string - 1);
const unfold = async (page: Page) => {
  const summary = page.locator('.bends summary');
  await summary.focus();
  await summary.press('Enter');
  await page.locator('.bends table').waitFor({ state: 'visible' });
};
const states = {
  opened: { ...initialState, bend: { ...initialState.bend, shown: true } },
  moved: { ...initialState, bend: { fret: 11, rise: 100, shown: true } },
} satisfies Record<string, State>;

async function expectTravel(page: Page, state: State) {
  for (const [i, bent] of bendsOf(state).entries()) {
    const shown =
      (await row(page, i + 1)
        .locator('.travel')
        .textContent()) ?? '';
    if (!bent?.travel) throw new Error(`string ${i + 1} has no bend`);
    expect(shown).toContain(travelNumber(bent.travel.reference, state.units));
    expect(shown).toContain(travelNumber(bent.travel.value, state.units));
    expect(shown).toContain(formatDifference(bent.travel.difference));
  }
}

describe.each([
  ['a phone', phone],
  ['a desktop', desktop],
])('on %s', (_, viewport) => {
  test('the bends are folded away until wanted, and unfolding them changes no verdict', async () => {
    const { page, problems, close } = await bench(viewport);
    expect(await page.locator('.bends table').isVisible()).toBe(false);
    const verdict = await page.locator('.verdict').textContent();
    expect(verdict).toContain('pull is within');
    await unfold(page);
    await expectTravel(page, states.opened);
    // Unfolding changes no verdict: it is on what the aim weighs, here the pull.
    await expect.poll(() => page.url()).toContain('/b-open/');
    expect(await page.locator('.verdict').textContent()).toBe(verdict);
    expect(problems).toEqual([]);
    await close();
  });

  test('the bend is chosen by fret and rise', async () => {
    const { page, close } = await bench(viewport);
    await unfold(page);
    await page.getByRole('button', { name: 'Fret of the bend, one lower' }).click();
    await page.getByLabel('Bent by').selectOption('a semitone');
    await expectTravel(page, states.moved);
    await page.getByLabel('Fret of the bend', { exact: true }).fill('25');
    await page.getByLabel('Fret of the bend', { exact: true }).press('Enter');
    expect(await page.getByRole('alert').textContent()).toContain('from 1 to 24');
    await close();
  });

  test('the aim may be the push, or a mix, by the keys', async () => {
    const { page, close } = await bench(
      viewport,
      '#v1/l-647.7/e4-p10/b3-p13/g3-p17/d3-w26/a2-w34/e2-w46/to/n-Curlew/l-685.8/b3/fs3/d3/a2/e2/b1',
    );
    const state: State = {
      ...initialState,
      mine: {
        ...initialState.mine,
        scale: { treble: 0.6477, bass: 0.6477 },
        strings: initialState.mine.strings.map((s, i) => (i === 4 ? { ...s, gauge: 34 } : s)),
      },
      other: {
        ...initialState.other,
        scale: { treble: 0.6858, bass: 0.6858 },
        strings: ['B3', 'F#3', 'D3', 'A2', 'E2', 'B1'].map((note) => ({ note })),
      },
    };
    const aimed = (weights: State['aim']['weights']): State => ({
      ...state,
      aim: { ...state.aim, weights },
    });
    expect(await gauges(page)).toEqual(picked(state));
    const group = page.getByRole('group', { name: 'What to match' });
    await group.getByRole('radio', { name: 'Pull', exact: true }).focus();
    await page.keyboard.press('ArrowRight');
    expect(await group.getByRole('radio', { name: 'Bend’s push' }).isChecked()).toBe(true);
    const push = picked(aimed({ pull: 0, push: 1, travel: 0 }));
    expect(push).not.toEqual(picked(state));
    await expect.poll(() => gauges(page)).toEqual(push);
    await group.getByRole('radio', { name: 'A mix' }).check({ force: true });
    await page.getByRole('button', { name: 'Weight of push, more' }).click();
    await expect.poll(() => gauges(page)).toEqual(picked(aimed({ pull: 1, push: 2, travel: 1 })));
    expect(page.url()).toContain('/w-1-2-1/');
    await close();
  });

  test('an instrument built for nylon is strung from its own drawer, and steel is warned of', async () => {
    const { page, close } = await bench(viewport);
    const side = page.getByRole('region', { name: 'What is to be strung' });
    await side.getByLabel('Start from').selectOption('Turnstone');
    expect(await side.getByLabel('Built for').inputValue()).toBe('nylon');
    expect(await page.locator('.stop').count()).toBe(0);
    for (const gauge of (await gauges(page)).slice(0, 3)) expect(gauge).toBeGreaterThanOrEqual(24);
    await side.getByLabel('Strung with').selectOption('electric');
    expect(await page.locator('.stop').textContent()).toContain('built for nylon');
    await side.getByLabel('Built for').selectOption('steel strings');
    expect(await page.locator('.stop').count()).toBe(0);
    await close();
  });
});

test('paper shows the bends only when they are open', async () => {
  const { page, close } = await bench(desktop);
  await page.emulateMedia({ media: 'print' });
  expect(await page.locator('.bends').isVisible()).toBe(false);
  await page.emulateMedia({ media: 'screen' });
  await unfold(page);
  await page.emulateMedia({ media: 'print' });
  expect(await row(page, 1).isVisible()).toBe(true);
  const pdf = await page.pdf({ format: 'A4' });
  expect(pdf.toString('latin1').match(/\/Type\s*\/Page\b(?!s)/g)?.length).toBeLessThanOrEqual(2);
  await close();
});

test('a drag of the saddle leaves the bends alone until it ends', async () => {
  const { page, close } = await bench(
    desktop,
    '#v1/l-647.7/e4-p10/b3-p13/g3-p17/d3-w26/b-open/to/n-Whimbrel/l-673.1/e4/b3/g3/d3',
  );
  await page.evaluate(() => {
    const table = document.querySelector('.bends table');
    if (!table) throw new Error('the bends are not there');
    window.changesOfBends = 0;
    new MutationObserver((list) => (window.changesOfBends += list.length)).observe(table, {
      subtree: true,
      childList: true,
      characterData: true,
      attributes: true,
    });
  });
  const saddle = page.locator('.drawing').getByRole('slider').last();
  await saddle.scrollIntoViewIfNeeded();
  const box = await saddle.boundingBox();
  if (!box) throw new Error('the saddle is not drawn');
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (let by = 1; by <= 8; by += 1) await page.mouse.move(x + 4 * by, y + 4 * by);
  expect(await page.evaluate(() => window.changesOfBends)).toBe(0);
  await page.mouse.up();
  await expect.poll(() => page.evaluate(() => window.changesOfBends)).toBeGreaterThan(0);
  await close();
});

declare global {
  interface Window {
    /** Changes of the table of bends so far. */
    changesOfBends: number;
  }
}
