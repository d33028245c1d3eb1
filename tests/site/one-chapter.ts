/** One visit to a chapter that all tests of a file share; each test sets its figure to what it needs first. */
import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject } from 'vitest';

import { browser } from './browser.ts';
import { desktop, dragWithFinger, dragWithMouse, open, scrollThrough, type Visit } from './kit.ts';

export function chapterOnce(slug: string): () => Page {
  let visit: Visit;
  beforeAll(async () => {
    visit = await open(browser, `${inject('origin')}course/${slug}/`, { viewport: desktop });
    await scrollThrough(visit.page);
  });
  afterAll(async () => {
    await visit.close();
    expect(visit.problems).toEqual([]);
  });
  return () => visit.page;
}

export const drags = [
  ['a mouse', dragWithMouse],
  ['a finger', dragWithFinger],
] as const;

/** What a figure’s drawing tells, line by line, as it is shown. */
export async function toldBy(figure: Locator): Promise<string[]> {
  const texts = await figure.locator('.stage text:visible').allTextContents();
  return texts.map((text) => text.replace(/[ \t\n]+/g, ' ').trim());
}

export async function typed(figure: Locator, label: string, text: string): Promise<Locator> {
  const field = figure.getByRole('textbox', { name: label, exact: true });
  await field.fill(text);
  await field.press('Enter');
  return field;
}

/** Types what cannot be taken: it stays as typed, and an answer at the field says what is allowed. */
export async function refused(
  figure: Locator,
  label: string,
  text: string,
  allowed: RegExp,
): Promise<void> {
  const field = await typed(figure, label, text);
  expect(await field.inputValue()).toBe(text);
  expect(await figure.getByRole('alert').textContent()).toMatch(allowed);
  await field.press('Escape');
  expect(await figure.getByRole('alert').count()).toBe(0);
}
