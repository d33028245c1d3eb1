/** One figure of a chapter, opened once on a phone for all tests of a file. */
import type { Browser, Locator } from 'playwright-core';
import { expect, inject } from 'vitest';

import { open, phone, type Visit } from './kit.ts';

export interface OneFigure extends Visit {
  figure: Locator;
  /** The handle of that name which the screen shows */
  handle: (name: string) => Locator;
  field: (label: string) => Locator;
}

export async function openFigure(
  browser: Browser,
  chapter: string,
  id: string,
): Promise<OneFigure> {
  const address = `${inject('origin')}course/${chapter}/`;
  const visit = await open(browser, address, { viewport: phone });
  const figure = visit.page.locator(`#${id}`);
  await figure.scrollIntoViewIfNeeded();
  await visit.page.waitForFunction(
    (name) => !document.querySelector(`#${name} astro-island[ssr]`),
    id,
  );
  return {
    ...visit,
    figure,
    handle: (name) => figure.locator(`[data-handle="${name}"]:visible`),
    field: (label) => figure.getByRole('textbox', { name: label, exact: true }),
  };
}

export async function type(field: Locator, text: string): Promise<void> {
  await field.fill(text);
  await field.press('Enter');
}

/** Types what a field can't take: it keeps that, and says at the field what it takes. Gives what it says. */
export async function refused(field: Locator, text: string): Promise<string> {
  await type(field, text);
  expect(await field.inputValue()).toBe(text);
  expect(await field.getAttribute('aria-invalid')).toBe('true');
  const said = await field.locator('..').getByRole('alert').textContent();
  await field.press('Escape');
  expect(await field.getAttribute('aria-invalid')).toBeNull();
  return said ?? '';
}

/** All but the spaces that hold a number and its unit together. */
export const plain = (text: string | null): string => (text ?? '').replace(/\s+/g, ' ').trim();
