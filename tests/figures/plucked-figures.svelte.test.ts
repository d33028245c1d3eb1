// @vitest-environment happy-dom
/**
 * Every drawing in which a string can be plucked, mounted in a simulated DOM: nothing moves for a reader who wants no motion, a string
 * swings for any other, and costs no frame once it is out of sight. What swings is the same everywhere; who asks for it is not.
 */
import { flushSync, mount, unmount, type Component } from 'svelte';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';

import { player } from '../../src/figures/kit/player.svelte.ts';
import { store } from '../../src/instrument/store.svelte.ts';
import { initialState } from '../../src/instrument/workshop.ts';
import { everyFigure } from './every-figure.ts';
import { furnish } from './hand.ts';

vi.setConfig({ testTimeout: 60_000 });

const chapters = import.meta.glob<string>('../../content/course/*.mdx', {
  eager: true,
  query: '?raw',
  import: 'default',
});
const figures = everyFigure({ by: ['useFigure(', 'useGuess('] });

let mounted: ReturnType<typeof mount> | undefined;
let frames: Map<number, FrameRequestCallback>;
let asked: number;
let still: boolean;
/** Tells all that watch whether they are in sight that they aren't. */
let leave: (() => void)[];

beforeEach(() => {
  furnish();
  frames = new Map();
  asked = 0;
  leave = [];
  vi.stubGlobal('matchMedia', (query: string) => ({
    matches: still && query.includes('reduced-motion'),
    addEventListener: () => undefined,
    removeEventListener: () => undefined,
  }));
  vi.stubGlobal('requestAnimationFrame', (call: FrameRequestCallback) => {
    asked += 1;
    frames.set(asked, call);
    return asked;
  });
  vi.stubGlobal('cancelAnimationFrame', (id: number) => frames.delete(id));
  vi.spyOn(player, 'play').mockResolvedValue('');
  store.change(initialState);
});
afterEach(async () => {
  if (mounted) await unmount(mounted);
  mounted = undefined;
  document.body.replaceChildren();
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

function watched(): void {
  vi.stubGlobal(
    'IntersectionObserver',
    class {
      constructor(tell: (entries: unknown[]) => void) {
        leave.push(() => tell([{ isIntersecting: false }]));
      }
      observe(): void {}
      unobserve(): void {}
      disconnect(): void {}
    },
  );
}
function draw(figure: Component): HTMLElement[] {
  mounted = mount(figure, { target: document.body });
  flushSync();
  return [...document.querySelectorAll<HTMLElement>('.string-press:not([disabled])')];
}
const swinging = (): number => document.querySelectorAll('[data-swinging]').length;
async function pluck(string: HTMLElement): Promise<void> {
  const before = vi.mocked(player.play).mock.calls.length;
  string.click();
  await vi.waitFor(() => expect(vi.mocked(player.play).mock.calls).toHaveLength(before + 1));
}
/** One frame, in which what moves is drawn, and asks for the next. */
function frame(): void {
  const due = [...frames.values()];
  frames.clear();
  for (const call of due) call(performance.now());
}

/** Drawings whose strings sound and don't swing: a string that is cut along has no ends. */
const onlySound: ReadonlySet<string> = new Set(['TheSection']);
const plucked = new Set<string>();

describe.each(figures)('%s', (name, figure) => {
  test('stands still for a reader who wants no motion, and costs nothing out of sight', async () => {
    still = true;
    const strings = draw(figure);
    if (strings.length > 0) plucked.add(name);
    for (const string of strings) {
      frames.clear();
      await pluck(string);
      expect([frames.size, swinging()], 'for a reader who wants no motion').toEqual([0, 0]);
    }
    const [string] = strings;
    if (!string || onlySound.has(name)) return;
    still = false;
    watched();
    await pluck(string);
    expect(frames.size).toBeGreaterThan(0);
    frame();
    expect(swinging(), 'in sight').toBeGreaterThan(0);
    expect(frames.size).toBeGreaterThan(0);
    for (const tell of leave) tell();
    frame();
    expect([frames.size, swinging()], 'out of sight').toEqual([0, 0]);
  });
});

/** Their drawings hold no string that could ring: they weigh and round gauges, and lay strings over a nut and a bridge. */
const silent: ReadonlySet<string> = new Set(['04', '12']);

test('each chapter has a string to pluck', () => {
  const without = Object.entries(chapters)
    .filter(([, text]) => ![...plucked].some((name) => text.includes(`<${name}`)))
    .map(([path]) => path.split('/').at(-1)?.slice(0, 2) ?? '');
  expect(Object.keys(chapters)).toHaveLength(14);
  expect(without.filter((number) => !silent.has(number))).toEqual([]);
});
