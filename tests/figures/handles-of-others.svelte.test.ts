// @vitest-environment happy-dom
/**
 * Every handle of every figure, with four instruments that are no guitar: dragged, given up, and taken by keys to both its ends, it stays in
 * its range, says what it is, and the figure says nothing that is no number.
 */
import { flushSync, mount, unmount } from 'svelte';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';

import { encode } from '../../src/instrument/link.ts';
import { moving } from '../../src/instrument/moving.svelte.ts';
import { held, store } from '../../src/instrument/store.svelte.ts';
import { everyFigure } from './every-figure.ts';
import { fourExamples } from './four-examples.ts';
import { furnish, key, keyUp, pointer, seen } from './hand.ts';

vi.setConfig({ testTimeout: 60_000 });

const figures = everyFigure({ by: ['useFigure(', 'useGuess('] });

let mounted: ReturnType<typeof mount> | undefined;
beforeEach(() => {
  furnish();
  localStorage.clear();
});
afterEach(async () => {
  if (mounted) await unmount(mounted);
  mounted = undefined;
  document.body.replaceChildren();
  expect(moving.any, 'a hand was left on').toBe(false);
});

const sliders = (): HTMLElement[] => [...document.querySelectorAll<HTMLElement>('[role="slider"]')];

const wrong =
  /\bNaN\b|\bundefined\b|\bInfinity\b|\[object|(?<![\d.,])1\s+(?:strings|courses|pairs)\b/;
const misread = /\ba (?:8|11|18)\b/;

/** All that is drawn, lettered and spoken, attributes of drawings too. */
function expectSound(where: string): void {
  const html = document.body.innerHTML.replace(/<!--.*?-->/gs, '');
  const at = html.search(wrong);
  expect(at < 0 ? '' : html.slice(Math.max(0, at - 80), at + 60), where).toBe('');
  for (const named of document.querySelectorAll('[aria-label], [aria-valuetext]'))
    for (const name of ['aria-label', 'aria-valuetext'])
      expect(named.getAttribute(name) ?? '', where).not.toMatch(misread);
  for (const slider of sliders()) {
    const { now, min, max, says, x, y } = seen(slider);
    const which = `${where}: ${slider.getAttribute('aria-label')}`;
    expect(now, which).toBeGreaterThanOrEqual(min);
    expect(now, which).toBeLessThanOrEqual(max);
    expect(says, which).toMatch(/\S/);
    expect(slider.getAttribute('aria-label') ?? '', where).toMatch(/\S/);
    expect(Number.isNaN(x) || Number.isNaN(y), which).toBe(false);
  }
}

describe.each(figures)('%s', (_, figure) => {
  test.each(fourExamples)('on %s', (_, state) => {
    store.change(state);
    mounted = mount(figure, { target: document.body });
    flushSync();
    expectSound('at first');
    for (let i = 0; i < sliders().length; i += 1) {
      const at = sliders()[i];
      if (!at) throw new Error('a handle is gone');
      const name = at.dataset.handle ?? at.getAttribute('aria-label') ?? '';
      const before = encode(store.state);
      const { x, y } = seen(at);
      for (const far of [60, -60]) {
        pointer(at, 'down', x, y);
        pointer(at, 'move', x + far, y + far);
        expectSound(`${name}, dragged ${far}`);
        key(at, 'Escape');
        expect(encode(store.state), `${name}, given up`).toBe(before);
      }
      for (const end of ['Home', 'End', 'PageDown', 'PageUp']) {
        key(at, end);
        keyUp(at);
        expectSound(`${name}, ${end}`);
      }
      // A guess keeps its marks; what changes the instrument is taken back.
      while (encode(store.state) !== before && held.past.length > 0) store.undo();
      flushSync();
      expect(encode(store.state), `${name}, taken back`).toBe(before);
    }
  });
});
