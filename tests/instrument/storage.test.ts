import { afterEach, describe, expect, it, vi } from 'vitest';

import { forget, recall, recallAll, remember } from '../../src/instrument/storage.ts';
import { FakeStorage, openWindow } from './fake-window.ts';

afterEach(() => vi.unstubAllGlobals());

const refuse = (): never => {
  throw new DOMException('no', 'QuotaExceededError');
};

describe('the device’s memory', () => {
  it('keeps a text under the site’s own name until it is forgotten', () => {
    const { localStorage } = openWindow();
    expect(recall('state')).toBeUndefined();
    expect(remember('state', 'v1')).toBe(true);
    expect(recall('state')).toBe('v1');
    expect([...(localStorage as FakeStorage).kept.keys()]).toEqual(['speaking-length.state']);
    forget('state');
    expect(recall('state')).toBeUndefined();
  });

  it('tells all that it keeps under one beginning, and nothing of others', () => {
    const { localStorage } = openWindow();
    remember('done.a', '1');
    remember('state', '2');
    remember('done.b', '');
    (localStorage as FakeStorage).setItem('somebody-else.done.c', '3');
    expect(Object.fromEntries(recallAll('done.'))).toEqual({ 'done.a': '1', 'done.b': '' });
  });

  it('keeps an empty text as a text', () => {
    openWindow();
    remember('answer', '');
    expect(recall('answer')).toBe('');
  });

  it('says when it is full, and still tells what it holds', () => {
    const window = openWindow();
    remember('state', 'old');
    window.localStorage.setItem = refuse;
    expect(remember('state', 'new')).toBe(false);
    expect(recall('state')).toBe('old');
  });

  it('is empty when reading is refused', () => {
    const window = openWindow();
    window.localStorage = { getItem: refuse, setItem: refuse, removeItem: refuse };
    expect(recall('state')).toBeUndefined();
    expect(recallAll('').size).toBe(0);
    expect(remember('state', 'v1')).toBe(false);
    expect(() => forget('state')).not.toThrow();
  });

  it('is empty when the browser blocks the door itself', () => {
    const window = openWindow();
    Object.defineProperty(window, 'localStorage', { get: refuse });
    expect(recall('state')).toBeUndefined();
    expect(recallAll('').size).toBe(0);
    expect(remember('state', 'v1')).toBe(false);
    expect(() => forget('state')).not.toThrow();
  });

  it('is empty where there is no browser', () => {
    expect(typeof window).toBe('undefined');
    expect(recall('state')).toBeUndefined();
    expect(recallAll('').size).toBe(0);
    expect(remember('state', 'v1')).toBe(false);
    expect(() => forget('state')).not.toThrow();
  });
});
