// @vitest-environment happy-dom
/** A number in a sentence, in a simulated DOM: dragged, keyed, given up, typed over; and the numbers around it that follow. */
import { flushSync, mount, tick, unmount } from 'svelte';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';

import DragSaddle from '../../src/figures/pull/the-neck/DragSaddle.svelte';
import LiveText from '../../src/figures/kit/LiveText.svelte';
import { quantitiesOf } from '../../src/figures/quantities.ts';
import { moving } from '../../src/instrument/moving.svelte.ts';
import { held, store } from '../../src/instrument/store.svelte.ts';
import { initialState } from '../../src/instrument/workshop.ts';
import { fromInches } from '../../src/physics/index.ts';
import { furnish, key, keyUp, pointer, release, seen } from './hand.ts';

/** Pixels for a step of the number, and that step: a sixteenth of an inch is what it snaps to. */
const PIXELS = 6;
const STEP = 0.25;

let mounted: ReturnType<typeof mount>[] = [];
beforeEach(() => {
  vi.useFakeTimers();
  furnish();
});
afterEach(async () => {
  await Promise.all(mounted.map((each) => unmount(each)));
  mounted = [];
  document.body.replaceChildren();
  expect(moving.any, 'a hand was left on').toBe(false);
  store.change(initialState);
  flushSync();
  vi.useRealTimers();
});

const placed = (): HTMLElement => {
  mounted.push(mount(DragSaddle, { target: document.body }));
  flushSync();
  return number();
};
function number(): HTMLElement {
  const found = document.querySelector<HTMLElement>('[role="slider"]');
  if (!found) throw new Error('no number');
  return found;
}
const inches = (): number => (store.state.trial.length ?? NaN) / fromInches(1);
const said = (text: string): string => `${text}\u00a0in`;
/** A beat of a drag: words and numbers follow it. */
function beat(): void {
  vi.advanceTimersByTime(200);
  flushSync();
}

test('shows and says what is so, with its unit and its range', () => {
  const at = placed();
  expect(at.textContent).toBe(said('25.5'));
  expect(seen(at)).toMatchObject({ now: 0.6477, says: said('25.5') });
  expect(at.getAttribute('aria-label')).toBe('Scale length tried');
  expect(at.tabIndex).toBe(0);
});

test('follows a drag, says its value at every step, and keeps it after the pointer has left', () => {
  const at = placed();
  pointer(at, 'down', 100, 0);
  pointer(at, 'move', 100 + 2 * PIXELS, 40);
  expect(inches()).toBeCloseTo(25.5 + 2 * STEP, 9);
  expect(seen(at).says).toBe(said('26'));
  beat();
  expect(at.textContent).toBe(said('26'));
  pointer(at, 'move', 100 + 4 * PIXELS, 0);
  release(at, 100 + 4 * PIXELS, 0);
  for (let i = 0; i < 3; i += 1) {
    expect([at.textContent, seen(at).says]).toEqual([said('26.5'), said('26.5')]);
    beat();
  }
  expect(store.settled.trial.length).toBeCloseTo(fromInches(26.5), 9);
  store.undo();
  flushSync();
  expect([at.textContent, seen(at).says]).toEqual([said('25.5'), said('25.5')]);
});

test('Escape and a browser that takes the pointer away put back what was there', () => {
  const at = placed();
  const steps = held.past.length;
  for (const giveUp of [() => key(at, 'Escape'), () => pointer(at, 'cancel', 0, 0)]) {
    pointer(at, 'down', 0, 0);
    pointer(at, 'move', 30, 0);
    expect(seen(at).says).not.toBe(said('25.5'));
    giveUp();
    beat();
    expect([at.textContent, seen(at).says]).toEqual([said('25.5'), said('25.5')]);
    expect(held.past).toHaveLength(steps);
  }
});

test('a drag that is given up leaves alone what another hand has moved meanwhile', () => {
  const at = placed();
  moving.begin();
  store.set({ ...store.state, bend: { ...store.state.bend, fret: 3 } });
  pointer(at, 'down', 0, 0);
  pointer(at, 'move', 30, 0);
  key(at, 'Escape');
  expect(store.state.bend.fret).toBe(3);
  expect(seen(at).says).toBe(said('25.5'));
  moving.end();
});

test('goes by keys: a step, a finer one, a larger one, the ends', () => {
  const at = placed();
  const after = (name: string, more?: KeyboardEventInit): number => {
    key(at, name, more);
    keyUp(at);
    return Number((seen(at).now / fromInches(1)).toFixed(4));
  };
  expect(after('ArrowRight')).toBe(25.75);
  expect(after('ArrowLeft', { shiftKey: true })).toBeCloseTo(25.69, 1);
  expect(after('PageUp')).toBeGreaterThan(26.4);
  expect(after('Home')).toBeCloseTo(seen(at).min / fromInches(1), 3);
  expect(after('End')).toBeCloseTo(seen(at).max / fromInches(1), 3);
  expect(at.textContent).toBe(seen(at).says);
});

test('a tap opens a field, a drag does not', async () => {
  const at = placed();
  pointer(at, 'down', 0, 0);
  pointer(at, 'move', 12, 0);
  release(at, 12, 0);
  at.click();
  await tick();
  expect(document.querySelector('input')).toBeNull();
  pointer(at, 'down', 0, 0);
  release(at, 0, 0);
  at.click();
  await tick();
  const field = document.querySelector('input');
  expect([field?.value, field?.getAttribute('aria-label')]).toEqual([
    said('26'),
    'Scale length tried',
  ]);
  expect(document.activeElement).toBe(field);
});

test('is typed over: taken with Enter, kept while it cannot be read, left with Escape', async () => {
  key(placed(), 'Enter');
  await tick();
  const typed = (): HTMLInputElement => {
    const field = document.querySelector('input');
    if (!field) throw new Error('no field');
    return field;
  };
  typed().value = 'long';
  key(typed(), 'Enter');
  expect(typed().value).toBe('long');
  expect(typed().getAttribute('aria-invalid')).toBe('true');
  const message = document.querySelector('[role="alert"]');
  expect(message?.id).toBe(typed().getAttribute('aria-describedby'));
  expect(message?.textContent.length).toBeGreaterThan(5);
  expect(store.state.trial.length).toBeUndefined();
  typed().value = '27';
  key(typed(), 'Enter');
  await tick();
  expect(inches()).toBeCloseTo(27, 9);
  expect(number().textContent).toBe(said('27'));
  expect(document.activeElement).toBe(number());
  key(number(), 'Enter');
  await tick();
  typed().value = '24';
  key(typed(), 'Escape');
  await tick();
  expect(number().textContent).toBe(said('27'));
});

test('while another handle is dragged it follows for the eye alone', () => {
  const at = placed();
  moving.begin();
  store.set({ ...store.state, trial: { string: 0, length: fromInches(26) } });
  moving.step();
  flushSync();
  beat();
  expect([at.textContent, seen(at).says]).toEqual([said('26'), said('25.5')]);
  moving.end();
  flushSync();
  expect([at.textContent, seen(at).says]).toEqual([said('26'), said('26')]);
});

test('numbers in the prose follow its drag and stay where it has left them', async () => {
  const chapter = 'three-things-set-the-pull';
  const live = document.createElement('span');
  const name = Object.keys(quantitiesOf(chapter)).find(
    (each) =>
      quantitiesOf(chapter)[each]?.(initialState) !==
      quantitiesOf(chapter)[each]?.({
        ...initialState,
        trial: { string: 0, length: fromInches(27) },
      }),
  );
  if (!name) throw new Error('no quantity hangs on the length');
  live.dataset.live = name;
  document.body.append(live);
  const at = placed();
  mounted.push(mount(LiveText, { target: document.body, props: { chapter } }));
  flushSync();
  const shown = (length: number): string =>
    quantitiesOf(chapter)[name]?.({ ...initialState, trial: { string: 0, length } }) ?? '';
  const arrived = async (): Promise<void> => {
    for (let i = 0; i < 20; i += 1) {
      await vi.advanceTimersByTimeAsync(20);
      flushSync();
    }
  };
  pointer(at, 'down', 0, 0);
  pointer(at, 'move', 4 * PIXELS, 0);
  await arrived();
  expect(live.textContent).toBe(shown(fromInches(26.5)));
  release(at, 4 * PIXELS, 0);
  await arrived();
  expect(live.textContent).toBe(shown(fromInches(26.5)));
  expect(live.textContent).not.toBe(shown(fromInches(25.5)));
});
