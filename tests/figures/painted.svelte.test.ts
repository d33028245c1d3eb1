// @vitest-environment happy-dom
/**
 * What a figure writes at each step of a drag is what its markup says once the hand lets go: every handle of the figures that
 * paint, held in a simulated DOM before a beat, after it, and after the release; and in the end the same figure made anew.
 */
import { flushSync, mount, unmount } from 'svelte';
import { afterEach, beforeEach, expect, test } from 'vitest';

import { moving } from '../../src/instrument/moving.svelte.ts';
import { held, store } from '../../src/instrument/store.svelte.ts';
import { initialState, workshopInstrument } from '../../src/instrument/workshop.ts';
import { everyFigure } from './every-figure.ts';
import { furnish, key, pointer, seen } from './hand.ts';

const figures = everyFigure({ also: 'painted' });

let mounted: ReturnType<typeof mount> | undefined;
beforeEach(() => {
  furnish();
  // A figure alone is no page that is to be woken.
  held.awake = true;
  store.change({ ...initialState, mine: workshopInstrument('avocet'), units: 'mm-N' });
});
afterEach(async () => {
  if (mounted) await unmount(mounted);
  mounted = undefined;
  document.body.replaceChildren();
});

/** Every attribute of what is drawn and of the handles, and every letter. */
const attributes = (): Map<Element, Map<string, string>> =>
  new Map(
    [...document.querySelectorAll('svg, svg *, [role="slider"]')].map((element) => [
      element,
      new Map([
        ...[...element.attributes].map(({ name, value }): [string, string] => [name, value]),
        ...(element.matches('text') ? [['its text', element.textContent] as const] : []),
      ]),
    ]),
  );
/** The same as lines, in the order of the drawing; what is made anew has other ids. */
const lines = (): string[] =>
  [...attributes()].map(([{ tagName }, all]) =>
    [tagName, ...[...all].sort().map((each) => each.join('='))]
      .join(' ')
      .replaceAll(/\bc\d+\b/g, 'id'),
  );
/** All of the page is told of a step. */
function beat(): void {
  moving.beforeBeat?.(true);
  moving.count += 1;
  moving.beat += 1;
  moving.far += 1;
  flushSync();
}

test('some figures paint', () => {
  expect(figures.map(([name]) => name)).toEqual(expect.arrayContaining(['Monochord', 'Necks']));
});

test.each(figures)('%s writes at a step what it says at the release', async (name, figure) => {
  mounted = mount(figure, { target: document.body });
  flushSync();
  const wrong: string[] = [];
  let moved = 0;
  for (const handle of document.querySelectorAll<HTMLElement>('[role="slider"]')) {
    // What takes few values needs a long way to the next.
    for (const far of [14, 31, -240]) {
      const { x, y } = seen(handle);
      pointer(handle, 'down', x, y);
      // The first step brings a beat, which letters, and says what holds there: what the second one moves is painted alone.
      pointer(handle, 'move', x + far / 2, y + far / 2);
      flushSync();
      const before = attributes();
      pointer(handle, 'move', x + far, y + far);
      flushSync();
      const painted = attributes();
      beat();
      const told = attributes();
      // All that reacts follows at the end of the drag, before it is settled.
      moving.end();
      flushSync();
      const ended = attributes();
      moving.begin();
      pointer(handle, 'up', x + far, y + far);
      // What the beat has told is what the end of the drag leaves; a drawing's summary rests until then.
      for (const [element, all] of told)
        for (const [attribute, value] of all) {
          const then = ended.get(element)?.get(attribute);
          if (attribute !== 'data-dragging' && !element.matches('[role="img"]') && then !== value)
            wrong.push(`${element.tagName} ${attribute}: told ${value}, then ${then}`);
        }
      for (const [element, all] of painted)
        for (const [attribute, value] of all) {
          if (before.get(element)?.get(attribute) === value) continue;
          if (attribute === 'data-dragging') continue;
          moved += 1;
          for (const then of [told, ended].map((each) => each.get(element)?.get(attribute)))
            if (then !== value)
              wrong.push(`${element.tagName} ${attribute}: painted ${value}, then ${then}`);
        }
    }
  }
  expect(wrong, name).toEqual([]);
  expect(moved).toBeGreaterThan(0);
  const dragged = lines();
  await unmount(mounted);
  mounted = mount(figure, { target: document.body });
  flushSync();
  expect(dragged).toEqual(lines());
});

test.each(figures)(
  '%s keeps what a hand has moved where units are chosen meanwhile',
  (name, figure) => {
    mounted = mount(figure, { target: document.body });
    flushSync();
    let moved = 0;
    for (const handle of document.querySelectorAll<HTMLElement>('[role="slider"]')) {
      const { x, y } = seen(handle);
      const value = (): string | null => handle.getAttribute('aria-valuenow');
      const before = value();
      pointer(handle, 'down', x, y);
      pointer(handle, 'move', x + 31, y + 31);
      beat();
      const there = value();
      pointer(handle, 'move', x, y);
      beat();
      pointer(handle, 'move', x + 31, y + 31);
      store.set({ ...store.state, units: 'in-lb' });
      beat();
      expect(value(), name).toBe(there);
      expect(store.state.units).toBe('in-lb');
      if (there !== before) moved += 1;
      key(handle, 'Escape');
      flushSync();
      store.change({ ...store.state, units: 'mm-N' });
      flushSync();
    }
    expect(moved).toBeGreaterThan(0);
  },
);
