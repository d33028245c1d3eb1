import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';

import { workshopInstrument } from '../../src/instrument/workshop.ts';
import { FakeStorage, openWindow, type FakeWindow } from '../instrument/fake-window.ts';

const KEY = 'two-guitars-one-feel.lowest';
const CHAPTER = 'two-guitars-one-feel';

let window: FakeWindow;
const kept = () => (window.localStorage as FakeStorage).kept;

/** A page that has loaded, with the exercise on it. */
async function load() {
  vi.resetModules();
  const { Attempt } = await import('../../src/exercises/attempt.svelte.ts');
  const { askChoice } = await import('../../src/exercises/picked.ts');
  const { progress } = await import('../../src/exercises/progress.svelte.ts');
  const { store } = await import('../../src/instrument/store.svelte.ts');
  const { lowestPick } = await import('../../src/instrument/lowest-pick.ts');
  const right = () => String(lowestPick(store.state).best.gauge.gauge);
  const wrong = () =>
    lowestPick(store.state)
      .offered.map(({ gauge }) => String(gauge.gauge))
      .find((id) => id !== right()) ?? '';
  return { attempt: new Attempt('choose', () => KEY, askChoice), progress, store, right, wrong };
}

beforeEach(() => {
  window = openWindow();
});
afterEach(async () => {
  // What was asked for late still looks for the window.
  await vi.dynamicImportSettled();
  vi.unstubAllGlobals();
});

describe('an attempt', () => {
  it('says nothing before it is answered, and nothing is judged before the file is there', async () => {
    const { attempt, right } = await load();
    attempt.give([right()]);
    expect(attempt.given).toBeUndefined();
    await attempt.open(CHAPTER);
    expect(attempt.notice).toBe('');
    expect(attempt.verdict).toBeUndefined();
    expect(attempt.options?.length).toBe(5);
  });

  it('is judged, marked as done when right, and remembered', async () => {
    const page = await load();
    await page.attempt.open(CHAPTER);
    page.attempt.give([page.wrong()]);
    expect(page.attempt.verdict?.kind).toBe('wrong');
    expect(page.progress.day(KEY)).toBeUndefined();
    page.attempt.give([page.right()]);
    expect(page.attempt.right).toBe(true);
    expect(page.progress.day(KEY)).toBeDefined();

    const next = await load();
    await next.attempt.open(CHAPTER);
    expect(next.attempt.standing?.picked).toEqual([next.right()]);
    expect(next.attempt.right).toBe(true);
  });

  it('stands no longer when the instrument has changed, and stands again when it is back', async () => {
    const { attempt, store, right, progress } = await load();
    await attempt.open(CHAPTER);
    attempt.give([right()]);
    const before = store.state;
    store.set({ ...before, mine: workshopInstrument('godwit') });
    expect(attempt.right, 'while it is dragged').toBe(true);
    store.commit();
    expect(attempt.verdict).toBeUndefined();
    expect(attempt.notice).toMatch(/have changed/);
    expect(progress.day(KEY), 'done is done').toBeDefined();
    attempt.give([right()]);
    expect(attempt.right).toBe(true);
    store.change(before);
    expect(attempt.notice).toMatch(/have changed/);
  });

  it('keeps its verdict in other units', async () => {
    const { attempt, store, right } = await load();
    await attempt.open(CHAPTER);
    attempt.give([right()]);
    store.change({ ...store.state, units: 'mm-kg' });
    expect(attempt.right).toBe(true);
  });

  it('cleared is forgotten, the mark is not', async () => {
    const { attempt, right, progress } = await load();
    await attempt.open(CHAPTER);
    attempt.give([right()]);
    attempt.clear();
    expect(attempt.verdict).toBeUndefined();
    expect(kept().has(`speaking-length.answer.${KEY}`)).toBe(false);
    expect(progress.day(KEY)).toBeDefined();
  });

  it('begins anew where the memory is corrupted', async () => {
    kept().set(`speaking-length.answer.${KEY}`, '{"picked":{},"right":7}');
    const { attempt } = await load();
    await attempt.open(CHAPTER);
    expect(attempt.given).toBeUndefined();
    expect(attempt.notice).toBe('');
  });

  it('works where nothing can be kept', async () => {
    Object.defineProperty(window, 'localStorage', {
      get: () => {
        throw new DOMException('no', 'SecurityError');
      },
    });
    const { attempt, right, progress } = await load();
    await attempt.open(CHAPTER);
    attempt.give([right()]);
    expect(attempt.right).toBe(true);
    expect(progress.refused).toBe(true);
  });

  it('says so when its chapter’s file does not arrive', async () => {
    const { attempt } = await load();
    await attempt.open('no-such-chapter');
    expect(attempt.notice).toMatch(/didn’t load/);
  });
});
