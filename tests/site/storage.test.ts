/** A device that keeps nothing, has no room left, or kept rubbish: every page works, and says so quietly. */
import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { describe, expect, inject, test } from 'vitest';

import { browser } from './browser.ts';
import { desktop, open, openShelf, pressKey, scrollThrough, sliderValue } from './kit.ts';
import { type } from './one-figure.ts';

// Each runs in the page before its own scripts.
const blocked = (): void => {
  const refuse = () => {
    throw new DOMException('blocked', 'SecurityError');
  };
  Object.defineProperty(window, 'localStorage', { get: refuse });
};
const full = (): void => {
  Storage.prototype.setItem = () => {
    throw new DOMException('full', 'QuotaExceededError');
  };
};
const spoilt = (): void => {
  const rubbish = [
    '\u0000\uffff',
    '{"kind":',
    'v1/n-<b>x</b>/e4',
    'null',
    '[[[[',
    'v9/l-1',
    '2 <b>x</b>',
  ];
  const names = [
    'state',
    'theme',
    'probe',
    'done.three.order',
    'answer.three.order',
    'guess.pitch.semitone',
    'reading',
  ];
  names.forEach((name, i) => localStorage.setItem(`speaking-length.${name}`, rubbish[i] ?? ''));
};

const visit = (path: string, before: () => void) =>
  open(browser, inject('origin') + path, { viewport: desktop, before });
const notice = async (page: Page): Promise<string> =>
  (await page.locator('.notice').allInnerTexts()).join(' ');

describe.each([
  ['blocked', blocked, 'keeps nothing'],
  ['full', full, 'keeps nothing'],
  ['spoilt', spoilt, 'couldn’t read'],
])('with a memory that is %s', (kind, before, sentence) => {
  test('a figure follows the hand, undoes, and the page says so', async () => {
    const { page, problems, close } = await visit('course/three-things-set-the-pull/', before);
    await scrollThrough(page);
    const handle = page.locator('#three-handles [data-handle="length"]:visible');
    const { now } = await sliderValue(handle);
    if (kind === 'spoilt') expect(await notice(page)).toContain(sentence);
    await pressKey(handle, 'PageDown');
    expect((await sliderValue(handle)).now).toBeLessThan(now);
    if (kind !== 'spoilt') await expect.poll(() => notice(page)).toContain(sentence);
    await page.keyboard.press('Control+z');
    expect((await sliderValue(handle)).now).toBe(now);
    expect(problems).toEqual([]);
    await close();
  });

  test('an exercise is answered, and the course’s page stands', async () => {
    const { page, problems, close } = await visit('course/three-things-set-the-pull/', before);
    await scrollThrough(page);
    const exercise = page.locator('.exercise:has(.answer input)').first();
    await exercise.locator('input').fill('12345');
    await exercise.getByRole('button', { name: 'Check' }).click();
    await expect.poll(() => exercise.locator('.verdict').innerText()).not.toBe('');
    await page.goto(`${inject('origin')}course/`);
    await scrollThrough(page);
    const words = await page.locator('main').innerText();
    expect(words.includes('This device keeps nothing')).toBe(kind !== 'spoilt');
    expect(await page.locator('h1').isVisible()).toBe(true);
    expect(problems).toEqual([]);
    await close();
  });

  test('the bench and its sheet stand, and the theme changes', async () => {
    const { page, problems, close } = await visit('bench/', before);
    await scrollThrough(page);
    expect(await page.locator('.stringing tbody tr').count()).toBeGreaterThanOrEqual(4);
    await page.locator('button.theme:visible').click();
    await expect
      .poll(() => page.evaluate(() => document.documentElement.dataset.theme))
      .toBe('light');
    expect(problems).toEqual([]);
    await close();
  });
});

// The same of the book's database.
const noDatabase = (): void => {
  const refuse = () => {
    throw new DOMException('blocked', 'SecurityError');
  };
  Object.defineProperty(window, 'localStorage', { get: refuse });
  IDBFactory.prototype.open = refuse;
};
const fullDatabase = (): void => {
  IDBObjectStore.prototype.put = () => {
    throw new DOMException('full', 'QuotaExceededError');
  };
};
const spoiltDatabase = (): void => {
  const asked = indexedDB.open('speaking-length.book', 1);
  asked.onupgradeneeded = () => asked.result.createObjectStore('records', { keyPath: 'id' });
  asked.onsuccess = () => {
    const shelf = asked.result.transaction('records', 'readwrite').objectStore('records');
    shelf.put({ id: 'rubbish', kind: 'job', name: 7 });
    shelf.transaction.oncomplete = () => asked.result.close();
  };
};

/** What the file holds that a press gives. */
async function fileOf(page: Page): Promise<string> {
  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save the book as a file' }).click();
  return readFileSync(await (await coming).path(), 'utf8');
}

test.each([
  ['blocked', noDatabase, 'keeps nothing for this site'],
  ['full', fullDatabase, 'no room left'],
  ['spoilt', spoiltDatabase, ''],
])(
  'a book that is %s: card and drawer say so, lose nothing that is typed, and offer it as a file',
  async (kind, before, sentence) => {
    const { page, problems, close } = await visit('bench/', before);
    const told = () => page.getByRole('alert').filter({ hasText: 'save the book as a file' });
    await scrollThrough(page);
    await page.getByRole('button', { name: 'Keep as a job' }).click();
    const note = page
      .getByRole('article', { name: 'Job card' })
      .getByLabel('Note', { exact: true });
    await note.fill('Buzzes at the ninth.');
    if (sentence) {
      await expect.poll(() => told().innerText()).toContain(sentence);
      expect(await fileOf(page)).toContain('Buzzes at the ninth.');
    }
    await note.press('End');
    await note.pressSequentially(' Dry.');
    expect(await note.inputValue()).toBe('Buzzes at the ninth. Dry.');

    await page.goto(`${inject('origin')}drawer/`);
    await openShelf(page, 'drawer');
    await page.getByRole('button', { name: 'Add a string' }).click();
    const packet = page.getByRole('region', { name: 'A new string' });
    await type(packet.getByLabel('Gauge'), '21');
    await packet.getByRole('button', { name: /^Put the/ }).click();
    await expect.poll(() => page.locator('.tray .string').count()).toBe(1);
    if (sentence) {
      await expect.poll(() => told().innerText()).toContain(sentence);
      expect(JSON.parse(await fileOf(page))).toMatchObject({
        records: expect.arrayContaining([
          expect.objectContaining({ string: expect.objectContaining({ gauge: 21 }) }),
        ]),
      });
    }

    // What a full one refused goes from page to page, and what can't be read stays in the file.
    if (kind !== 'blocked') {
      await page.goto(`${inject('origin')}book/`);
      await openShelf(page, 'book');
      await expect.poll(() => page.locator('.board > li').count()).toBe(1);
      const file = await fileOf(page);
      expect(file).toContain('Buzzes at the ninth. Dry.');
      expect(file.includes('rubbish')).toBe(kind === 'spoilt');
      if (kind === 'spoilt')
        expect(await page.locator('main').innerText()).toContain('One entry can’t be read');
    }
    expect(problems.filter((each) => !each.startsWith('failed: '))).toEqual([]);
    await close();
  },
);
