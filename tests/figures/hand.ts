/** A hand in a simulated DOM: what a pointer and keys do to a handle that is mounted there. */
import { flushSync, mount, unmount, type Component } from 'svelte';
import { afterEach, beforeEach, expect } from 'vitest';

import { moving } from '../../src/instrument/moving.svelte.ts';
import { store } from '../../src/instrument/store.svelte.ts';
import { initialState } from '../../src/instrument/workshop.ts';

/** Pixels that every drawing is taken to be wide. */
export const WIDE = 1000;

/** What a simulated DOM lacks: it lays nothing out, sees nothing, and has no pointers to capture. */
export function furnish(): void {
  globalThis.IntersectionObserver = class {
    readonly #tell: IntersectionObserverCallback;
    constructor(tell: IntersectionObserverCallback) {
      this.#tell = tell;
    }
    observe(target: Element): void {
      const seen = [{ target, isIntersecting: true }] as unknown as IntersectionObserverEntry[];
      this.#tell(seen, this as unknown as IntersectionObserver);
    }
    disconnect(): void {}
    unobserve(): void {}
    takeRecords = (): [] => [];
  } as unknown as typeof IntersectionObserver;
  const box = { left: 0, top: 0, x: 0, y: 0, width: WIDE, height: WIDE, right: WIDE, bottom: WIDE };
  Element.prototype.getBoundingClientRect = () => ({ ...box, toJSON: () => box });
  Element.prototype.setPointerCapture = () => undefined;
}

export function pointer(on: Element, type: string, x: number, y: number): void {
  const event = new Event(`pointer${type}`, { bubbles: true });
  on.dispatchEvent(Object.assign(event, { clientX: x, clientY: y, pointerId: 1, button: 0 }));
  flushSync();
}
/** The pointer leaves, and with it its capture. */
export function release(on: Element, x: number, y: number): void {
  pointer(on, 'up', x, y);
  on.dispatchEvent(Object.assign(new Event('lostpointercapture'), { pointerId: 1 }));
  flushSync();
}
export function key(on: Element, name: string, more: KeyboardEventInit = {}): void {
  on.dispatchEvent(
    new KeyboardEvent('keydown', { key: name, bubbles: true, cancelable: true, ...more }),
  );
  flushSync();
}
export function keyUp(on: Element): void {
  on.dispatchEvent(new KeyboardEvent('keyup', { bubbles: true }));
  flushSync();
}

const number = (of: Element, name: string): number => Number(of.getAttribute(name));

/** A slider as it stands: its value and range, what it says, and where it is on the screen. */
export const seen = (of: Element) => {
  const [x = NaN, y = NaN] = ((of as HTMLElement).style.getPropertyValue('translate') || '')
    .split(' ')
    .map((part) => (Number.parseFloat(part) * WIDE) / 100);
  return {
    now: number(of, 'aria-valuenow'),
    min: number(of, 'aria-valuemin'),
    max: number(of, 'aria-valuemax'),
    says: of.getAttribute('aria-valuetext') ?? '',
    x,
    y,
  };
};

/** An empty page with an empty memory for each test, and the ways to put a figure on it and off again. */
export function onePage() {
  let mounted: ReturnType<typeof mount> | undefined;
  const end = async (): Promise<void> => {
    if (mounted) await unmount(mounted);
    mounted = undefined;
  };
  beforeEach(() => {
    furnish();
    localStorage.clear();
    store.change(initialState);
  });
  afterEach(async () => {
    await end();
    document.body.replaceChildren();
    expect(moving.any, 'a hand was left on').toBe(false);
  });
  const begin = (figure: Component, target: Element = document.body): void => {
    mounted = mount(figure, { target });
    flushSync();
  };
  return { begin, end };
}
export const sliders = (): HTMLElement[] => [
  ...document.querySelectorAll<HTMLElement>('[role="slider"]'),
];
export const press = (name: string): void => {
  const found = [...document.querySelectorAll('button')].find((b) => b.textContent.trim() === name);
  if (!found) throw new Error(`no button ${name}`);
  found.click();
  flushSync();
};
/** What a guess says once it has been compared */
export const compared = (): string => document.querySelector('.compared')?.textContent ?? '';
