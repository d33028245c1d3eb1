import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';

import { FakeStorage, openWindow, type FakeWindow } from '../instrument/fake-window.ts';

type Module = typeof import('../../src/exercises/progress.svelte.ts');

let window: FakeWindow;
let progress: Module['progress'];
let today: Module['today'];
const kept = () => (window.localStorage as FakeStorage).kept;
const refuse = (): never => {
  throw new DOMException('no', 'QuotaExceededError');
};

/** A page that has loaded on a device that remembers something. */
async function load(memory: Record<string, string> = {}): Promise<void> {
  window = openWindow();
  for (const [name, text] of Object.entries(memory)) kept().set(`speaking-length.${name}`, text);
  vi.resetModules();
  ({ progress, today } = await import('../../src/exercises/progress.svelte.ts'));
}

beforeEach(() => load());
afterEach(() => vi.unstubAllGlobals());

describe('progress', () => {
  it('counts what has been answered right, and keeps the first day', async () => {
    progress.open();
    expect(progress.count(['pull.a', 'pull.b'])).toBe(0);
    progress.mark('pull.a');
    expect(progress.count(['pull.a', 'pull.b'])).toBe(1);
    expect(progress.day('pull.a')).toBe(today());
    await load({ 'done.pull.a': '2031-05-04' });
    progress.open();
    progress.mark('pull.a');
    expect(progress.day('pull.a')).toBe('2031-05-04');
    expect(kept().get('speaking-length.done.pull.a')).toBe('2031-05-04');
  });

  it('passes over marks that cannot be read, and over exercises that are gone', async () => {
    await load({ 'done.pull.a': 'yes', 'done.pull.gone': '2031-05-04', 'done.': '2031-05-04' });
    progress.open();
    expect(progress.day('pull.a')).toBeUndefined();
    expect(progress.count(['pull.a', 'pull.b'])).toBe(0);
  });

  it('knows whether the first answer was the right one, and counts no more after that', async () => {
    progress.open();
    expect(progress.atFirst('pull.a')).toBeUndefined();
    progress.tried('pull.a');
    expect(progress.atFirst('pull.a')).toBeUndefined();
    progress.mark('pull.a');
    expect(progress.atFirst('pull.a')).toBe(true);
    // An answer given again changes nothing.
    progress.tried('pull.a');
    expect(progress.atFirst('pull.a')).toBe(true);
    progress.tried('pull.b');
    progress.tried('pull.b');
    progress.mark('pull.b');
    expect(progress.atFirst('pull.b')).toBe(false);
    // On the next visit, too; a mark from before anybody counted says neither.
    await load({ 'done.pull.a': '2031-05-04', 'tries.pull.a': '3', 'done.pull.b': '2031-05-04' });
    progress.open();
    expect(progress.atFirst('pull.a')).toBe(false);
    expect(progress.atFirst('pull.b')).toBeUndefined();
  });

  it('clears marks, tries, answers and guesses, nothing else, and brings them back', async () => {
    const memory = {
      'done.pull.a': '2031-05-04',
      'tries.pull.a': '1',
      'answer.pull.a': '{}',
      'guess.half': 'Half',
    };
    await load({ ...memory, state: 'v1', theme: 'dark' });
    progress.open();
    const before = new Map(kept());
    expect(progress.canUndo).toBe(false);
    progress.reset();
    expect([...kept().keys()]).toEqual(['speaking-length.state', 'speaking-length.theme']);
    expect(progress.day('pull.a')).toBeUndefined();
    expect(progress.canUndo).toBe(true);
    progress.undo();
    expect(Object.fromEntries(kept())).toEqual(Object.fromEntries(before));
    expect(progress.day('pull.a')).toBe('2031-05-04');
    expect(progress.canUndo).toBe(false);
  });

  it('follows what another tab does', () => {
    progress.open();
    kept().set('speaking-length.done.pull.a', '2031-05-04');
    expect(progress.day('pull.a')).toBeUndefined();
    window.dispatchEvent(new Event('storage'));
    expect(progress.day('pull.a')).toBe('2031-05-04');
  });

  it('counts for the page alone on a device that keeps nothing, and says so', () => {
    window.localStorage = { getItem: refuse, setItem: refuse, removeItem: refuse };
    progress.open();
    expect(progress.refused).toBe(false);
    progress.mark('pull.a');
    expect(progress.refused).toBe(true);
    window.dispatchEvent(new Event('storage'));
    expect(progress.count(['pull.a'])).toBe(1);
    progress.reset();
    expect(progress.count(['pull.a'])).toBe(0);
  });

  it('asks the device whether it keeps anything, and leaves no trace of it', () => {
    progress.probe();
    expect(progress.refused).toBe(false);
    expect(kept().size).toBe(0);
    Object.defineProperty(window, 'localStorage', { get: refuse });
    progress.probe();
    expect(progress.refused).toBe(true);
  });

  it('writes a day as year, month, day of the device’s own calendar', () => {
    expect(today(new Date(2031, 0, 9, 23, 59))).toBe('2031-01-09');
  });
});
