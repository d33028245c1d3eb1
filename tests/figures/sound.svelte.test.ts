// @vitest-environment happy-dom
/** Sound that follows a drag: silent until it is asked for, remembered, and at rest after the drag. */
import { afterEach, beforeEach, expect, test, vi } from 'vitest';

const sounded: number[] = [];
let resting = 0;
vi.mock('../../src/figures/kit/live/voice.ts', () => ({
  openVoice: () => ({
    sound: (hertz: number) => sounded.push(hertz),
    rest: () => (resting += 1),
  }),
}));
const { sound } = await import('../../src/figures/kit/live/sound.svelte.ts');

// What sounds comes by an import: it is there before the clock is held.
await import('../../src/figures/kit/live/sounding.ts');
const settled = () => vi.advanceTimersByTimeAsync(1);
beforeEach(() => {
  vi.useFakeTimers();
  localStorage.clear();
  sounded.length = 0;
  resting = 0;
});
afterEach(() => {
  sound.turn(false);
  vi.useRealTimers();
});

test('is off until a reader asks for it', async () => {
  expect(sound.on).toBe(false);
  sound.follow(330);
  await settled();
  expect(sounded).toEqual([]);
});

test('follows each pitch, and rests a while after the last', async () => {
  sound.turn(true);
  sound.follow(330);
  await settled();
  sound.follow(349);
  await settled();
  expect(sounded.at(-1)).toBe(349);
  expect(resting).toBe(0);
  await vi.advanceTimersByTimeAsync(2000);
  expect(resting).toBe(1);
});

test('is remembered, on and off', () => {
  sound.turn(true);
  expect(localStorage.getItem('speaking-length.sound')).toBe('on');
  sound.turn(false);
  expect(localStorage.getItem('speaking-length.sound')).toBe('off');
});

test('sounds nothing that is no pitch', async () => {
  sound.turn(true);
  sound.follow(NaN);
  await settled();
  expect(sounded).toEqual([]);
});

test('plays back what a hand did in its own time, also while the switch is off, and stops for the next drag', async () => {
  const moments = [330, 340, 350].map((hertz, i) => ({ hertz, ms: 500 + 100 * i }));
  sound.replay(moments);
  await vi.advanceTimersByTimeAsync(0);
  expect(sounded).toEqual([330]);
  await vi.advanceTimersByTimeAsync(100);
  expect(sounded).toEqual([330, 340]);
  sound.turn(true);
  sound.follow(440);
  await vi.advanceTimersByTimeAsync(300);
  expect(sounded).toEqual([330, 340, 440]);
});
