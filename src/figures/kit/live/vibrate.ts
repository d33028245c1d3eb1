/**
 * The one way in which a string moves: plucked, it swings and dies away, so many times slower than it sounds that an eye can
 * follow. A frame is asked for only while something swings in sight, and nothing swings for a reader who wants no motion.
 */

import { SLOWED } from './slowed.ts';

/** s in which a swing falls to 1/e of itself, and until it is still */
const DYING = 0.9;
const STILL = 3.6;

export interface Swinging {
  /** Draws the string so far from rest: -1 to 1, 0 at rest */
  readonly draw: (swing: number) => void;
  /** Hz at which it sounds; asked at each frame, so that a swing follows a pitch that is dragged */
  readonly hertz: () => number;
}

export const wantsNoMotion = (): boolean =>
  typeof matchMedia !== 'undefined' && matchMedia('(prefers-reduced-motion: reduce)').matches;

/**
 * Draws at each frame for so many seconds, told how many have passed; then, and when it is stopped, once with Infinity. Returns the
 * way to stop it. Nothing is drawn for a reader who wants no motion, and it ends where `place` goes out of sight.
 */
function animate(place: Element, seconds: number, draw: (passed: number) => void): () => void {
  if (wantsNoMotion()) return () => undefined;
  const begun = performance.now();
  let frame = 0;
  let over = false;
  const stop = (): void => {
    if (over) return;
    over = true;
    cancelAnimationFrame(frame);
    watcher.disconnect();
    draw(Infinity);
  };
  const step = (now: number): void => {
    const passed = Math.max(0, now - begun) / 1000;
    if (passed > seconds || !place.isConnected) return stop();
    draw(passed);
    frame = requestAnimationFrame(step);
  };
  const watcher = new IntersectionObserver((entries) => {
    if (!(entries.at(-1)?.isIntersecting ?? true)) stop();
  });
  watcher.observe(place);
  // An observer may have said at once that it is out of sight.
  if (!over) frame = requestAnimationFrame(step);
  return stop;
}

/** As `animate`, for what lights up rather than moves: for a reader who wants no motion it stands as it is at first, and then goes out. */
export function shine(place: Element, seconds: number, draw: (passed: number) => void): () => void {
  if (!wantsNoMotion()) return animate(place, seconds, draw);
  draw(0);
  const end = setTimeout(() => draw(Infinity), seconds * 1000);
  return () => {
    clearTimeout(end);
    draw(Infinity);
  };
}

/** Sets the string at `place` swinging; returns the way to still it at once. */
export function vibrate(place: Element, { draw, hertz }: Swinging): () => void {
  let last = 0;
  let phase = 0;
  return animate(place, STILL, (passed) => {
    if (passed === Infinity) return draw(0);
    phase += (2 * Math.PI * hertz() * (passed - last)) / SLOWED;
    last = passed;
    draw(Math.exp(-passed / DYING) * Math.cos(phase));
  });
}
