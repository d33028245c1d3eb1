// @vitest-environment happy-dom
/** Partials that light as they sound: one lamp for each on the sheet, as bright as it is loud, gone in the end, and steady for who wants no motion. */
import { afterEach, beforeEach, expect, test, vi } from 'vitest';

import { light } from '../../src/figures/feel/ladder/light.ts';
import { toneOf } from '../../src/figures/kit/tone.ts';
import { pullsOf } from '../../src/instrument/pulls.ts';
import { initialState } from '../../src/instrument/workshop.ts';

const pull = pullsOf(initialState.mine).at(-1);
if (!pull) throw new Error('a string');
const tone = toneOf(pull);
/** The last one lies above the sheet. */
const at = [100, 80, 60, 40, 20, -5];

let place: HTMLElement;
let frames: ((now: number) => void)[];
let still: boolean;
const lamps = (): Element[] => [...place.querySelectorAll('[data-lamps] > *')];
const widths = (): number[] => lamps().map((lamp) => Number(lamp.getAttribute('stroke-width')));
const after = (ms: number): void => frames.splice(0).forEach((draw) => draw(ms));

beforeEach(() => {
  still = false;
  frames = [];
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
  vi.stubGlobal('matchMedia', () => ({ matches: still }));
  vi.stubGlobal('requestAnimationFrame', (draw: (now: number) => void) => frames.push(draw));
  vi.stubGlobal('cancelAnimationFrame', () => (frames = []));
  vi.spyOn(performance, 'now').mockReturnValue(0);
  vi.stubGlobal(
    'IntersectionObserver',
    class {
      observe(): void {}
      disconnect(): void {}
    },
  );
  place = document.createElement('div');
  place.innerHTML = '<svg role="img"><g data-part="ladder-bare"><g class="under"></g></g></svg>';
  document.body.append(place);
});
afterEach(() => {
  place.remove();
  vi.useRealTimers();
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

test('each partial on the sheet lights, the loudest widest, and all die away and are gone', () => {
  light(place, 'own', { across: [10, 50], at, tone });
  after(0);
  expect(lamps().map((lamp) => lamp.getAttribute('d'))).toEqual(
    at.slice(0, 5).map((y) => `M10 ${y.toFixed(2)}H50`),
  );
  const first = widths();
  expect(Math.max(...first)).toBeCloseTo(9, 1);
  expect(Math.min(...first)).toBeGreaterThan(0);
  after(1000);
  widths().forEach((width, i) => expect(width).toBeLessThan(first[i] ?? 0));
  after(60_000);
  expect(lamps()).toEqual([]);
  expect(frames).toEqual([]);
});

test('another pluck puts out the lamps of the one before', () => {
  light(place, 'own', { across: [10, 50], at, tone });
  after(0);
  light(place, 'comb', { across: [60, 80], at, tone });
  after(0);
  expect(lamps()).toHaveLength(5);
  expect(lamps()[0]?.getAttribute('d')).toMatch(/^M60/);
});

test('the bare wire’s stand among what is veiled until the guess is made', () => {
  light(place, 'bare', { across: [10, 50], at, tone });
  after(0);
  expect(
    place.querySelectorAll('[data-part="ladder-bare"] > .under [data-lamps] > *'),
  ).toHaveLength(5);
});

test('for a reader who wants no motion they stand as they are at first, and then go out', () => {
  still = true;
  light(place, 'own', { across: [10, 50], at, tone });
  const first = widths();
  expect(Math.max(...first)).toBeCloseTo(9, 1);
  expect(frames).toEqual([]);
  vi.advanceTimersByTime(1000);
  expect(widths()).toEqual(first);
  vi.advanceTimersByTime(60_000);
  expect(lamps()).toEqual([]);
});
