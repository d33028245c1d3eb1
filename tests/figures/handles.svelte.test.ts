// @vitest-environment happy-dom
/**
 * Every handle of every figure, mounted in a simulated DOM: it stays under the finger that drags it, goes back at Escape, settles
 * once, goes by keys from end to end, and its typed twin says what it says.
 */
import { flushSync, mount, unmount } from 'svelte';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';

import { encode } from '../../src/instrument/link.ts';
import { moving } from '../../src/instrument/moving.svelte.ts';
import { held, store } from '../../src/instrument/store.svelte.ts';
import { initialState, workshopInstrument } from '../../src/instrument/workshop.ts';
import type { State } from '../../src/instrument/schema.ts';
import { everyFigure } from './every-figure.ts';
import { furnish, key, keyUp, pointer, release, seen } from './hand.ts';

// The largest drawings take seconds on a busy machine.
vi.setConfig({ testTimeout: 60_000 });

const figures = everyFigure();

/** Figures whose only controls are fields and buttons. */
const without: ReadonlySet<string> = new Set([
  'HowToMeasure',
  'EvenedOut',
  'SideBySide',
  'SetAtReference',
]);
/** Its frets stand closer and closer, so a slider of whole frets cannot stay right under the finger. */
const uneven: ReadonlySet<string> = new Set(['board-square']);
/** A side of the board leans, and a finger on a string stands where its fret does. */
const slanting: ReadonlySet<string> = new Set(['DrawTheBoard', 'Bending', 'TheSquare']);

const bare: State = { ...initialState, mine: workshopInstrument('avocet'), units: 'mm-N' };

let mounted: ReturnType<typeof mount> | undefined;
beforeEach(() => {
  furnish();
  store.change(bare);
});
afterEach(async () => {
  if (mounted) await unmount(mounted);
  mounted = undefined;
  document.body.replaceChildren();
  expect(moving.any, 'a hand was left on').toBe(false);
});

/** Figures whose typed twins stand apart from them. */
const elsewhere: ReadonlySet<string> = new Set(['TheBridge', 'Necks', 'Monochord']);
/** Of two sheets the wide one is shown here, and follows. */
const handles = (): HTMLElement[] =>
  [...document.querySelectorAll<HTMLElement>('[role="slider"]')].filter(
    (each) => !each.closest('.narrow-sheet'),
  );
const fields = (): string[] =>
  [...document.querySelectorAll<HTMLInputElement>('input.field')].map((field) => field.value);

/** All drawings as they stand, but for the names that each mounting gives its hatchings. */
const drawings = (): string =>
  [...document.querySelectorAll('svg')]
    .map((svg) => svg.outerHTML)
    .join('\n')
    .replaceAll(/<!--.*?-->/g, '')
    .replaceAll(/(id="|#)c\d+/g, '$1');

/** Where two drawings begin to differ; nothing where they don't. */
function difference(a: string, b: string): string {
  if (a === b) return '';
  const at = [...a].findIndex((letter, i) => letter !== b[i]);
  return [a, b].map((each) => each.slice(Math.max(0, at - 60), at + 60)).join(' | ');
}

/** Pixels of a drag: the farthest for which its range has room. */
const distances = [90, 45, 20, 10];

/** What the finger may be off the handle: it snaps to what an arrow key would step to. */
function snapping(at: HTMLElement): number {
  const start = seen(at);
  const steps = ['ArrowRight', 'ArrowLeft'].map((name) => {
    key(at, name);
    keyUp(at);
    const { x, y } = seen(at);
    store.undo();
    flushSync();
    return Math.hypot(x - start.x, y - start.y);
  });
  return 0.8 * Math.max(...steps) + 1;
}

/** Drags a handle so far right or down, and lets `then` look before the finger has left. */
function drag(at: HTMLElement, dx: number, dy: number, then: () => void): void {
  const { x, y } = seen(at);
  pointer(at, 'down', x, y);
  pointer(at, 'move', x + dx, y + dy);
  then();
}

/** Where a drag along its own way brings a handle, before Escape puts it back. */
function tried(at: HTMLElement, far: number, upright: boolean) {
  const start = seen(at);
  let here = start;
  drag(at, upright ? 0 : far, upright ? far : 0, () => {
    here = seen(at);
    key(at, 'Escape');
  });
  const [x, y] = [here.x - start.x, here.y - start.y];
  const room = (here.max - here.min) * 1e-4;
  return {
    moved: upright ? y : x,
    across: upright ? x : y,
    isAtEnd: here.now < here.min + room || here.now > here.max - room,
  };
}

describe.each(figures.filter(([name]) => !without.has(name)))('%s', (name, figure) => {
  test('has handles that go as they are drawn', () => {
    mounted = mount(figure, { target: document.body });
    flushSync();
    const names = handles().map((each) => each.dataset.handle ?? '');
    expect(names.length).toBeGreaterThan(0);
    names.forEach((handle, i) => {
      const at = handles()[i];
      if (!at) throw new Error('a handle is gone');
      const orientation = at.getAttribute('aria-orientation');
      if (!orientation) return;
      const upright = orientation === 'vertical';
      const off = snapping(at);
      const before = encode(store.state);
      const steps = held.past.length;
      const start = seen(at);
      const drawn = drawings();
      let isTried = uneven.has(handle);
      for (const way of [1, -1]) {
        for (const far of distances) {
          const { moved, across, isAtEnd } = tried(at, way * far, upright);
          const said = `${handle} by ${way * far}: ${moved}`;
          expect(encode(store.state), `${said}, after Escape`).toBe(before);
          expect(seen(at), `${said}, after Escape`).toEqual(start);
          expect(held.past, `${said}, after Escape`).toHaveLength(steps);
          expect(difference(drawings(), drawn), `${said}, after Escape`).toBe('');
          expect(moved * way, said).toBeGreaterThanOrEqual(0);
          if (!slanting.has(name)) expect(Math.abs(across), said).toBeLessThan(0.01);
          if (isAtEnd || uneven.has(handle)) continue;
          expect(Math.abs(moved - way * far), said).toBeLessThanOrEqual(off);
          isTried ||= far > off;
          break;
        }
      }
      expect(isTried, `${handle} could go nowhere`).toBe(true);
    });
  });

  test('settles a drag once, keeps it, and its typed twin says the same', () => {
    mounted = mount(figure, { target: document.body });
    flushSync();
    handles().forEach((at) => {
      const handle = at.dataset.handle ?? '';
      const start = seen(at);
      const steps = held.past.length;
      const shown = fields().join('|');
      // Towards the middle of its range there is room.
      const rising = start.now - start.min < start.max - start.now;
      key(at, rising ? 'PageUp' : 'PageDown');
      keyUp(at);
      const { now, says } = seen(at);
      expect(rising ? now > start.now : now < start.now, handle).toBe(true);
      expect(says, handle).not.toBe(start.says);
      expect(held.past, handle).toHaveLength(steps + 1);
      if (!elsewhere.has(name)) expect(fields().join('|'), handle).not.toBe(shown);
      expect(encode(store.settled), handle).toBe(encode(store.state));
      store.undo();
      flushSync();
      expect(seen(at), `${handle} undone`).toEqual(start);
    });
  });

  test('is drawn after a drag as if it had been opened there', async () => {
    mounted = mount(figure, { target: document.body });
    flushSync();
    handles().forEach((at) => {
      const upright = at.getAttribute('aria-orientation') === 'vertical';
      const { x, y } = seen(at);
      drag(at, upright ? 0 : 16, upright ? 16 : 5, () => {
        // There and back, and a little further: what was painted on the way must not stay.
        pointer(at, 'move', x + (upright ? 0 : -12), y + (upright ? -12 : -5));
        release(at, x, y);
      });
    });
    const dragged = drawings();
    await unmount(mounted);
    document.body.replaceChildren();
    mounted = mount(figure, { target: document.body });
    flushSync();
    expect(difference(dragged, drawings())).toBe('');
  });

  test('goes by Home and End to its ends', () => {
    mounted = mount(figure, { target: document.body });
    flushSync();
    handles().forEach((at) => {
      const handle = at.dataset.handle ?? '';
      const before = store.state;
      for (const [name, end] of [
        ['Home', 'min'],
        ['End', 'max'],
      ] as const) {
        const before = seen(at);
        key(at, name);
        keyUp(at);
        expect(Math.abs(seen(at).now - before[end]), `${handle} ${name}`).toBeLessThanOrEqual(
          (before.max - before.min) * 1e-3,
        );
      }
      store.change(before);
      flushSync();
    });
  });
});

test('the map’s point and the string on the cliff go both ways at once', async () => {
  const { default: ThreeRoads } =
    await import('../../src/figures/choosing/three-roads/ThreeRoads.svelte');
  mounted = mount(ThreeRoads, { target: document.body });
  flushSync();
  const point = handles().find((each) => each.dataset.handle === 'point');
  if (!point) throw new Error('no point');
  const start = seen(point);
  drag(point, -60, 80, () => {
    const { x, y } = seen(point);
    expect(Math.abs(x - start.x + 60)).toBeLessThan(8);
    expect(Math.abs(y - start.y - 80)).toBeLessThan(40);
    release(point, 0, 0);
  });
  expect(seen(point).says).not.toBe(start.says);
  await unmount(mounted);
  document.body.replaceChildren();

  store.change(bare);
  const { default: TheCliff } =
    await import('../../src/figures/consequences/the-cliff/TheCliff.svelte');
  mounted = mount(TheCliff, { target: document.body });
  flushSync();
  const grip = document.querySelector<HTMLElement>('.grip');
  if (!grip) throw new Error('no grip');
  const [from, before] = [seen(grip), store.state.trial];
  drag(grip, 40, 70, () => {
    const { x, y } = seen(grip);
    expect(Math.abs(x - from.x - 40)).toBeLessThan(8);
    expect(Math.abs(y - from.y - 70)).toBeLessThan(40);
    release(grip, 0, 0);
  });
  expect(store.settled.trial).not.toEqual(before);
});
