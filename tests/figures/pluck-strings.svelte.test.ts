// @vitest-environment happy-dom
/** Strings of a drawn board: a pointer plucks the nearest, keys go from one to the next, the note is said, and nothing moves for a reader who wants no motion. */
import { flushSync, mount, unmount } from 'svelte';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';

import PluckStrings from '../../src/figures/kit/live/PluckStrings.svelte';
import { player } from '../../src/figures/kit/player.svelte.ts';
import { toneOf } from '../../src/figures/kit/tone.ts';
import { formatNote } from '../../src/instrument/format.ts';
import { pullsOf } from '../../src/instrument/pulls.ts';
import { initialState } from '../../src/instrument/workshop.ts';

const pulls = pullsOf(initialState.mine).slice(0, 3);
/** From the left edge of a sheet of 120 by 60, 20 units apart; the last one slants and is longer. */
const strings = pulls.map((pull, i) => ({
  pull,
  ends: [10, 10 + 20 * i, 90 + 10 * i, 10 + 20 * i + (i === 2 ? 4 : 0)] as const,
}));
const stage = { width: 120, height: 60 };

let sheet: HTMLElement;
let board: ReturnType<typeof mount>;
let frames: ((now: number) => void)[];
let still: boolean;

const button = (): HTMLElement => {
  const found = sheet.querySelector('button');
  if (!found) throw new Error('no button');
  return found;
};
const status = (): string => sheet.querySelector('[role="status"]')?.textContent ?? '';
/** The tone that was asked for last. */
const heard = (): unknown => vi.mocked(player.play).mock.lastCall?.[1][0];
async function press(at?: { x: number; y: number }): Promise<void> {
  const before = vi.mocked(player.play).mock.calls.length;
  // The sheet is drawn at its own size: one unit is one pixel.
  const click = at
    ? { detail: 1, clientX: at.x, clientY: at.y, bubbles: true }
    : { detail: 0, bubbles: true };
  button().dispatchEvent(new MouseEvent('click', click));
  flushSync();
  await vi.waitFor(() => expect(vi.mocked(player.play).mock.calls).toHaveLength(before + 1));
}
function draw(more: { cut?: { x?: number; y?: number } } = {}): void {
  board = mount(PluckStrings, {
    target: sheet,
    props: { label: 'Pluck your strings', strings, stage, ...more },
  });
  flushSync();
  const { left, top, width, height } = button().style;
  const share = (text: string): number => Number.parseFloat(text) / 100;
  const box = new DOMRect(
    share(left) * stage.width,
    share(top) * stage.height,
    share(width) * stage.width,
    share(height) * stage.height,
  );
  vi.spyOn(button(), 'getBoundingClientRect').mockReturnValue(box);
}

beforeEach(() => {
  still = false;
  frames = [];
  vi.stubGlobal('matchMedia', () => ({ matches: still }));
  vi.stubGlobal('requestAnimationFrame', (call: (now: number) => void) => frames.push(call));
  vi.stubGlobal('cancelAnimationFrame', () => (frames = []));
  vi.stubGlobal(
    'IntersectionObserver',
    class {
      observe(): void {}
      disconnect(): void {}
    },
  );
  vi.spyOn(player, 'play').mockResolvedValue('');
  sheet = document.createElement('div');
  document.body.append(sheet);
});
afterEach(async () => {
  await unmount(board);
  sheet.remove();
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

test('one button lies over all of them, from the first to the last', () => {
  draw();
  expect(button().getAttribute('aria-label')).toBe('Pluck your strings');
  const { left, top, width, height } = button().getBoundingClientRect();
  expect([left, top, width, height].map(Math.round)).toEqual([10, 10, 100, 44]);
});

test.each([
  [12, 0],
  [19, 0],
  [21, 1],
  [33, 1],
  [44, 2],
  [54, 2],
])('a finger at %i plucks the nearest string, and its note is said', async (y, i) => {
  draw();
  await press({ x: 30, y });
  expect(heard()).toEqual(toneOf(pulls[i]!));
  expect(status()).toBe(formatNote(pulls[i]!.note));
});

test('where the drawing is turned round for a left hand, the nearest is another at a slant', async () => {
  draw();
  // At the far end of the slanting string there are 42 units between the second and it, at the near end 40.
  await press({ x: 108, y: 41.5 });
  expect(heard()).toEqual(toneOf(pulls[1]!));
  sheet.className = 'stage sided';
  document.documentElement.dataset['hand'] = 'left';
  await press({ x: 108, y: 41.5 });
  delete document.documentElement.dataset['hand'];
  expect(heard()).toEqual(toneOf(pulls[2]!));
});

test('keys go from one string to the next, on from the one that was plucked last, and round', async () => {
  draw();
  const notes: string[] = [];
  for (let i = 0; i < 4; i += 1) {
    await press();
    notes.push(status());
  }
  expect(notes).toEqual([0, 1, 2, 0].map((i) => formatNote(pulls[i]!.note)));
  await press({ x: 30, y: 31 });
  await press();
  expect(status()).toBe(formatNote(pulls[2]!.note));
});

test('the string that was plucked swings where it lies, within what the drawing shows', async () => {
  draw({ cut: { x: 25 } });
  expect(Math.round(button().getBoundingClientRect().left)).toBe(25);
  await press({ x: 30, y: 31 });
  frames.splice(0).forEach((call) => call(performance.now()));
  const line = sheet.querySelector('[data-swinging]');
  expect(line?.getAttribute('d')).toMatch(/^M10 30Q.* 100 30$/);
  expect(line?.closest('svg')?.style.clipPath).toContain(`${(100 * 25) / stage.width}%`);
});

test('for a reader who wants no motion it sounds, and stands still', async () => {
  still = true;
  draw();
  await press();
  expect(frames).toEqual([]);
  expect(sheet.querySelector('[data-swinging]')).toBeNull();
});

test('what sounds may not come: that is said', async () => {
  vi.mocked(player.play).mockRejectedValue(new Error('no way'));
  draw();
  await press();
  await vi.waitFor(() => expect(status()).toMatch(/didn’t load/));
});

test('a board without a whole string has nothing to pluck', async () => {
  board = mount(PluckStrings, { target: sheet, props: { label: 'none', strings: [], stage } });
  flushSync();
  expect(sheet.querySelector('button')).toBeNull();
});
