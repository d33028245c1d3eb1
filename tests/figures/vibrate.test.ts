// @vitest-environment happy-dom
/** The one way in which a string moves: slowed, dying away, still for who wants no motion, and free of cost when it is not seen. */
import { afterEach, beforeEach, expect, test, vi } from 'vitest';

import { SLOWED } from '../../src/figures/kit/live/slowed.ts';
import { shine, vibrate } from '../../src/figures/kit/live/vibrate.ts';

let frames: Map<number, FrameRequestCallback>;
let asked: number;
let now: number;
let tellSeen: ((isSeen: boolean) => void) | undefined;
let still: boolean;
let place: HTMLElement;
let drawn: number[];

beforeEach(() => {
  frames = new Map();
  asked = 0;
  now = 1000;
  still = false;
  drawn = [];
  tellSeen = undefined;
  vi.stubGlobal('requestAnimationFrame', (call: FrameRequestCallback) => {
    asked += 1;
    frames.set(asked, call);
    return asked;
  });
  vi.stubGlobal('cancelAnimationFrame', (id: number) => frames.delete(id));
  vi.stubGlobal('matchMedia', () => ({ matches: still }));
  vi.spyOn(performance, 'now').mockImplementation(() => now);
  vi.stubGlobal(
    'IntersectionObserver',
    class {
      constructor(tell: (entries: unknown[]) => void) {
        tellSeen = (isIntersecting) => tell([{ isIntersecting }]);
      }
      observe(): void {}
      disconnect(): void {
        tellSeen = undefined;
      }
    },
  );
  place = document.createElement('div');
  document.body.append(place);
});
afterEach(() => {
  vi.unstubAllGlobals();
  vi.restoreAllMocks();
  place.remove();
});

/** So many ms later the browser draws. */
function frame(ms: number): void {
  now += ms;
  const due = [...frames.values()];
  frames.clear();
  for (const call of due) call(now);
}
const swing = (hertz: () => number) => vibrate(place, { draw: (at) => drawn.push(at), hertz });

test('swings as often as the pitch says, so many times slower than it sounds', () => {
  swing(() => 200);
  const period = (1000 * SLOWED) / 200;
  for (let i = 0; i < 4; i += 1) frame(period / 4);
  const signs = drawn.map((at) => (Math.abs(at) < 1e-9 ? 0 : Math.sign(at)));
  expect(signs).toEqual([0, -1, 0, 1]);
});

test('follows a pitch that is dragged while it swings', () => {
  let hertz = 100;
  swing(() => hertz);
  frame((1000 * SLOWED) / 100 / 2);
  hertz = 400;
  frame((1000 * SLOWED) / 400 / 2);
  expect(drawn[0]).toBeLessThan(0);
  expect(drawn[1]).toBeGreaterThan(0);
});

test('dies away, ends at rest, and asks for no frame after that', () => {
  swing(() => 100);
  for (let i = 0; i < 50; i += 1) frame(100);
  expect(drawn.at(-1)).toBe(0);
  expect(frames.size).toBe(0);
  expect(tellSeen).toBeUndefined();
});

test('rests at once when it is out of sight', () => {
  swing(() => 100);
  frame(100);
  tellSeen?.(false);
  expect(drawn.at(-1)).toBe(0);
  expect(frames.size).toBe(0);
});

test('stands still for a reader who wants no motion', () => {
  still = true;
  swing(() => 100);
  expect(asked).toBe(0);
  expect(drawn).toEqual([]);
});

test('what lights up stands as it is at first for who wants no motion, and then goes out', () => {
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
  still = true;
  const told: number[] = [];
  shine(place, 2, (passed) => told.push(passed));
  expect(told).toEqual([0]);
  expect(frames.size).toBe(0);
  vi.advanceTimersByTime(1999);
  expect(told).toEqual([0]);
  vi.advanceTimersByTime(1);
  expect(told).toEqual([0, Infinity]);
  const put = shine(place, 2, (passed) => told.push(passed));
  put();
  vi.advanceTimersByTime(5000);
  expect(told).toEqual([0, Infinity, 0, Infinity]);
  vi.useRealTimers();
});
