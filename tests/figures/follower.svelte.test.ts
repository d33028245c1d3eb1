import { flushSync } from 'svelte';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';

import { Follower } from '../../src/figures/kit/follower.svelte.ts';
import { atBeat, moving } from '../../src/instrument/moving.svelte.ts';
import { store } from '../../src/instrument/store.svelte.ts';
import { initialState } from '../../src/instrument/workshop.ts';
import { openWindow } from '../instrument/fake-window.ts';

const withLength = (length: number) => ({ ...initialState, trial: { string: 0, length } });

/** What a reader sees, each time that it is told anew, for as long as the watch lasts. */
function watch<T>(read: () => T): { readonly seen: T[]; readonly stop: () => void } {
  const seen: T[] = [];
  const stop = $effect.root(() => {
    $effect(() => void seen.push(read()));
  });
  flushSync();
  return { seen, stop };
}

/** A step of a drag, and its frame. */
function step(of: { set: (state: typeof initialState) => void }, length: number): void {
  of.set(withLength(length));
  moving.step();
  flushSync();
  vi.advanceTimersByTime(16);
  flushSync();
}

beforeEach(() => {
  vi.useFakeTimers();
  openWindow();
});
afterEach(() => {
  if (moving.any) moving.end();
  store.change(initialState);
  flushSync();
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

it('words follow a drag some times a second, and tell at its end where it came to', () => {
  const told = watch(() => store.told.trial.length);
  const drawn = watch(() => store.state.trial.length);
  moving.begin();
  const lengths = Array.from({ length: 60 }, (_, i) => 0.6 + i / 1000);
  lengths.forEach((length) => step(store, length));
  expect(drawn.seen).toEqual([undefined, ...lengths]);
  // 60 steps are 0.96 s.
  expect(told.seen.length).toBeGreaterThan(8);
  expect(told.seen.length).toBeLessThan(13);
  expect([undefined, ...lengths]).toEqual(expect.arrayContaining(told.seen));
  expect(told.seen.at(-1)).not.toBe(lengths.at(-1));
  moving.end();
  flushSync();
  expect(told.seen.at(-1)).toBe(lengths.at(-1));
  told.stop();
  drawn.stop();
});

it('words follow keys and typing at once', () => {
  const told = watch(() => store.told.trial.length);
  store.set(withLength(0.7));
  flushSync();
  store.set(withLength(0.71));
  flushSync();
  expect(told.seen).toEqual([undefined, 0.7, 0.71]);
  told.stop();
});

it('a beat that is due shares the frame of its step, and where the hand rests the next comes by itself', () => {
  const told = watch(() => atBeat(() => store.state.trial.length));
  const move = (length: number): void => {
    store.set(withLength(length));
    moving.step();
    flushSync();
  };
  moving.begin();
  flushSync();
  move(0.7);
  expect(told.seen.at(-1)).toBe(0.7);
  vi.advanceTimersByTime(17);
  move(0.71);
  expect(told.seen.at(-1)).toBe(0.7);
  vi.advanceTimersByTime(100);
  expect(told.seen.at(-1)).toBe(0.7);
  move(0.72);
  expect(told.seen.at(-1)).toBe(0.72);
  vi.advanceTimersByTime(17);
  move(0.73);
  expect(told.seen.at(-1)).toBe(0.72);
  vi.advanceTimersByTime(140);
  flushSync();
  expect(told.seen.at(-1)).toBe(0.73);
  told.stop();
});

it('a figure follows its own drag at every step, and another’s at the beat', () => {
  const [own, other] = [new Follower(), new Follower()];
  const ours = watch(() => own.state.trial.length);
  const theirs = watch(() => other.state.trial.length);
  moving.begin();
  step(own, 0.6);
  const before = theirs.seen.length;
  const lengths = [0.61, 0.62, 0.63, 0.64, 0.65];
  lengths.forEach((length) => step(own, length));
  expect(ours.seen.slice(-5)).toEqual(lengths);
  expect(theirs.seen.length - before).toBeLessThan(3);
  // Whoever makes a next state needs the present one.
  expect(other.state.trial.length).toBe(0.65);
  moving.end();
  flushSync();
  expect(theirs.seen.at(-1)).toBe(0.65);
  ours.stop();
  theirs.stop();
});

it('what lies outside a figure follows its drag at every third beat, and at the next where the hand rests', () => {
  const [own, other] = [new Follower(), new Follower()];
  const near = watch(() => own.told.trial.length);
  const far = [() => store.told, () => other.told, () => other.state].map((read) =>
    watch(() => read().trial.length),
  );
  moving.begin();
  flushSync();
  const lengths = Array.from({ length: 60 }, (_, i) => 0.6 + i / 1000);
  lengths.forEach((length) => step(own, length));
  // 60 steps are 0.96 s: ten beats. Whose drag it is shows at its first step.
  expect(near.seen.length).toBeGreaterThan(8);
  for (const { seen } of far) {
    expect(seen.length).toBeGreaterThan(2);
    expect(seen.length).toBeLessThan(7);
    expect([undefined, ...lengths]).toEqual(expect.arrayContaining(seen));
    expect(seen.at(-1)).not.toBe(lengths.at(-1));
  }
  vi.advanceTimersByTime(160);
  flushSync();
  for (const { seen } of [near, ...far]) expect(seen.at(-1)).toBe(lengths.at(-1));
  moving.end();
  for (const { stop } of [near, ...far]) stop();
});

it('a step that brings a beat and is the last for now reaches what lies outside the figure', () => {
  const own = new Follower();
  const far = watch(() => store.told.trial.length);
  moving.begin();
  step(own, 0.6);
  vi.advanceTimersByTime(90);
  step(own, 0.7);
  expect(far.seen.at(-1)).toBe(0.6);
  vi.advanceTimersByTime(150);
  flushSync();
  expect(far.seen.at(-1)).toBe(0.7);
  moving.end();
  far.stop();
});

it('a drag lasts until the last hand lets go', () => {
  moving.begin();
  moving.begin();
  moving.end();
  expect(moving.any).toBe(true);
  moving.end();
  expect(moving.any).toBe(false);
});

it('a number in the prose moves all figures that can be seen, at every step', () => {
  const figure = new Follower();
  const seen = watch(() => figure.state.trial.length);
  moving.begin();
  const lengths = [0.61, 0.62, 0.63];
  lengths.forEach((length) => step(store, length));
  expect(seen.seen.slice(-3)).toEqual(lengths);
  seen.stop();
});

it('a figure out of sight waits for the end, and one with two sheets is seen by either', () => {
  const watchers: { readonly element: Element; readonly see: (seen: boolean) => void }[] = [];
  vi.stubGlobal(
    'IntersectionObserver',
    class {
      readonly #told: (entries: { isIntersecting: boolean }[]) => void;
      constructor(told: (entries: { isIntersecting: boolean }[]) => void) {
        this.#told = told;
      }
      observe = (element: Element) =>
        void watchers.push({ element, see: (isIntersecting) => this.#told([{ isIntersecting }]) });
      disconnect = () => undefined;
    },
  );
  const figure = new Follower();
  const sheets = [{}, {}] as Element[];
  sheets.forEach((sheet) => void figure.watch(sheet));
  watchers.forEach(({ see }) => see(false));
  const seen = watch(() => figure.state.trial.length);
  moving.begin();
  step(figure, 0.61);
  expect(seen.seen).not.toContain(0.61);
  watchers[1]?.see(true);
  step(figure, 0.62);
  expect(seen.seen.at(-1)).toBe(0.62);
  watchers[1]?.see(false);
  step(figure, 0.63);
  expect(seen.seen).not.toContain(0.63);
  moving.end();
  figure.commit();
  flushSync();
  expect(seen.seen.at(-1)).toBe(0.63);
  seen.stop();
});

describe('what is painted', () => {
  const lengthOf = ({ trial }: typeof initialState) => trial.length;
  /** A figure that paints the length, and what it has painted. */
  function painter() {
    const figure = new Follower();
    const painted: (number | undefined)[] = [];
    const stop = figure.painted((state) => painted.push(lengthOf(state)));
    return { figure, painted, stop };
  }

  it('is written at every step of the figure’s own drag; all that reacts is told at the beat', () => {
    const { figure, painted, stop } = painter();
    const shown = watch(() => lengthOf(store.state));
    moving.begin();
    const lengths = Array.from({ length: 30 }, (_, i) => 0.6 + i / 1000);
    lengths.forEach((length) => step(figure, length));
    expect(painted).toEqual(lengths);
    // 30 steps are 0.48 s.
    expect(shown.seen.length).toBeGreaterThan(3);
    expect(shown.seen.length).toBeLessThan(8);
    expect([undefined, ...lengths]).toEqual(expect.arrayContaining(shown.seen));
    expect(figure.state.trial.length).toBe(lengths.at(-1));
    moving.end();
    flushSync();
    expect(shown.seen.at(-1)).toBe(lengths.at(-1));
    figure.commit();
    expect(lengthOf(store.settled)).toBe(lengths.at(-1));
    stop();
    shown.stop();
  });

  it('is lettered at the beat by a figure that tells, and passed on to all that reacts at every third', () => {
    const { figure, stop } = painter();
    const lettered: (number | undefined)[] = [];
    const quit = figure.painted((state) => lettered.push(lengthOf(state)), true);
    const shown = watch(() => lengthOf(store.state));
    moving.begin();
    const lengths = Array.from({ length: 60 }, (_, i) => 0.6 + i / 1000);
    lengths.forEach((length) => step(figure, length));
    expect(new Set(lettered).size).toBeGreaterThan(8);
    expect(shown.seen.length).toBeGreaterThan(2);
    expect(shown.seen.length).toBeLessThan(6);
    // What came from elsewhere meanwhile is not lettered over.
    store.set(withLength(0.9));
    vi.advanceTimersByTime(200);
    expect(lettered.at(-1)).toBe(0.9);
    moving.end();
    flushSync();
    expect(shown.seen.at(-1)).toBe(0.9);
    stop();
    quit();
    shown.stop();
  });

  it('tells of its own drag at the beat, and all else that reacts at every third', () => {
    const { figure, stop } = painter();
    const own = watch(() => lengthOf(figure.told));
    const other = watch(() => atBeat(() => lengthOf(store.state)));
    moving.begin();
    Array.from({ length: 60 }, (_, i) => step(figure, 0.6 + i / 1000));
    expect(own.seen.length).toBeGreaterThan(8);
    expect(other.seen.length).toBeGreaterThan(2);
    expect(other.seen.length).toBeLessThan(6);
    moving.end();
    flushSync();
    for (const { seen } of [own, other]) expect(seen.at(-1)).toBe(0.659);
    stop();
    own.stop();
    other.stop();
  });

  it('reacts to its own drag when the hand lets go, and is painted as what was settled', () => {
    const { figure, painted, stop } = painter();
    const reacted = watch(() => lengthOf(figure.state));
    moving.begin();
    [0.6, 0.61, 0.62].forEach((length) => step(figure, length));
    vi.advanceTimersByTime(200);
    flushSync();
    expect(lengthOf(store.state)).toBe(0.62);
    expect(reacted.seen.at(-1)).not.toBe(0.62);
    moving.end();
    flushSync();
    expect(reacted.seen.at(-1)).toBe(0.62);
    figure.commit();
    // A link carries no more than this: what lies nearer is settled as what was there.
    moving.begin();
    step(figure, 0.62 + 1e-9);
    moving.end();
    figure.commit();
    expect(lengthOf(store.settled)).toBe(0.62);
    expect(painted.at(-1)).toBe(0.62);
    stop();
    reacted.stop();
  });

  it('goes with what another hand makes of it, and is lost to neither', () => {
    const { figure, stop } = painter();
    const other = new Follower();
    moving.begin();
    figure.set(withLength(0.7));
    other.set({ ...other.state, units: 'mm-N' });
    vi.advanceTimersByTime(200);
    expect([lengthOf(store.state), store.state.units]).toEqual([0.7, 'mm-N']);
    figure.set({ ...figure.state, trial: { string: 0, length: 0.71 } });
    expect(figure.state.units).toBe('mm-N');
    moving.end();
    expect([lengthOf(store.state), store.state.units]).toEqual([0.71, 'mm-N']);
    stop();
  });

  it('gives way to a state that came from elsewhere, and is painted as that is', () => {
    const { figure, painted, stop } = painter();
    moving.begin();
    figure.set(withLength(0.7));
    store.set(withLength(0.65));
    moving.step();
    vi.advanceTimersByTime(200);
    expect(lengthOf(store.state)).toBe(0.65);
    expect(painted).toEqual([0.7, 0.65]);
    moving.end();
    stop();
  });

  it('goes into the store at once where no pointer drags', () => {
    const { figure, painted, stop } = painter();
    figure.set(withLength(0.7));
    expect(lengthOf(store.state)).toBe(0.7);
    expect(painted).toEqual([]);
    stop();
  });
});
