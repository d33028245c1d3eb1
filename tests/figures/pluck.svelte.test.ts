// @vitest-environment happy-dom
/** A drawn string that is pressed swings where it is drawn, as long as it sounds, and stands still for a reader who wants no motion. */
import { flushSync, mount, unmount } from 'svelte';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';

import PluckString from '../../src/figures/kit/live/PluckString.svelte';
import { arch } from '../../src/figures/kit/live/press.ts';
import { SLOWED } from '../../src/figures/kit/live/slowed.ts';
import { player } from '../../src/figures/kit/player.svelte.ts';
import { toneOf } from '../../src/figures/kit/tone.ts';
import { pullsOf } from '../../src/instrument/pulls.ts';
import { initialState } from '../../src/instrument/workshop.ts';

const pull = pullsOf(initialState.mine)[0];
if (!pull) throw new Error('a string');
const HERTZ = 100;

let stage: HTMLElement;
let button: ReturnType<typeof mount>;
let still: boolean;
let inSight: (seen: boolean) => void;
/** Whoever waits for the next frame */
let frames: ((now: number) => void)[];
const at = (ms: number): void => frames.splice(0).forEach((draw) => draw(ms));
const swinging = (): SVGPathElement | null => stage.querySelector('[data-swinging]');
/** How far its middle is below the line on which it lies at rest; an arch rises half as far as its point of control. */
const sag = (): number => {
  const control = Number(/Q\S+ (\S+)/.exec(swinging()?.getAttribute('d') ?? '')?.[1]);
  return (control - 20) / 2;
};
async function press(): Promise<void> {
  stage.querySelector('button')?.click();
  await vi.waitFor(() => expect(player.play).toHaveBeenCalled());
}

beforeEach(() => {
  still = false;
  frames = [];
  vi.stubGlobal('matchMedia', () => ({ matches: still }));
  vi.stubGlobal('requestAnimationFrame', (draw: (now: number) => void) => frames.push(draw));
  vi.stubGlobal('cancelAnimationFrame', () => (frames = []));
  vi.stubGlobal(
    'IntersectionObserver',
    class {
      constructor(tell: (entries: unknown[]) => void) {
        inSight = (isIntersecting) => tell([{ isIntersecting }]);
      }
      observe(): void {}
      disconnect(): void {}
    },
  );
  vi.spyOn(performance, 'now').mockReturnValue(0);
  vi.spyOn(player, 'play').mockResolvedValue('');
  stage = document.createElement('div');
  document.body.append(stage);
  button = mount(PluckString, {
    target: stage,
    props: {
      label: 'Pluck the string',
      x1: 10,
      y1: 20,
      x2: 110,
      y2: 20,
      stage: { width: 120, height: 40 },
      tone: () => toneOf(pull),
      hertz: () => HERTZ,
      swing: 8,
    },
  });
  flushSync();
});
afterEach(async () => {
  await unmount(button);
  stage.remove();
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

test('sounds and swings, so many times slower than it sounds, and is gone when it is still', async () => {
  await press();
  at(0);
  const far = sag();
  expect(far).toBeCloseTo(8, 1);
  // Half a vibration later it stands on the other side, a little less far.
  at((1000 * SLOWED) / HERTZ / 2);
  expect(sag()).toBeLessThan(-1);
  expect(Math.abs(sag())).toBeLessThan(far);
  at(60_000);
  expect(swinging()).toBeNull();
  expect(frames).toEqual([]);
});

test('costs nothing out of sight', async () => {
  await press();
  at(0);
  expect(swinging()).not.toBeNull();
  inSight(false);
  expect(swinging()).toBeNull();
  expect(frames).toEqual([]);
});

test('sounds, and stands still for a reader who wants no motion', async () => {
  still = true;
  await press();
  expect(frames).toEqual([]);
  expect(swinging()).toBeNull();
});

test('swings across itself however it lies', () => {
  expect(arch([0, 0, 0, 10], 2)).toBe('M0 0Q-4.00 5.00 0 10');
  expect(arch([0, 0, 10, 0], 0)).toBe('M0 0Q5.00 0.00 10 0');
});
