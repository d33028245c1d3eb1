// @vitest-environment happy-dom
/** Every guess that is made in a drawing, for guitars of the workshop and four other instruments: marks, keys, spoken values, typed twins, no answer before, words after. */
import { flushSync, type Component } from 'svelte';
import { describe, expect, test, vi } from 'vitest';

import type { State } from '../../src/instrument/schema.ts';
import { store } from '../../src/instrument/store.svelte.ts';
import { initialState, workshopInstrument } from '../../src/instrument/workshop.ts';
import { fourExamples } from './four-examples.ts';
import { compared, key, keyUp, onePage, pointer, release, seen, sliders } from './hand.ts';

vi.setConfig({ testTimeout: 30_000 });

const modules = import.meta.glob<{ default: Component }>(
  '../../src/figures/{pull,feel,choosing,consequences}/**/*.svelte',
);
const sources = import.meta.glob<string>(
  '../../src/figures/{pull,feel,choosing,consequences}/**/*.svelte',
  { eager: true, query: '?raw', import: 'default' },
);
const guesses = await Promise.all(
  Object.keys(modules)
    .filter((path) => /useGuess\(/.test(sources[path] ?? ''))
    .map(async (path) => {
      const figure = await modules[path]?.();
      if (!figure) throw new Error(`no figure in ${path}`);
      return [path.split('/').at(-1)?.replace('.svelte', '') ?? '', figure.default] as const;
    }),
);

const instruments: readonly (readonly [string, State])[] = [
  ...['redshank', 'godwit', 'lapwing', 'turnstone'].map(
    (id) => [id, { ...initialState, mine: workshopInstrument(id) }] as const,
  ),
  ...fourExamples,
];

const { begin } = onePage();

const answers = (): number => document.querySelectorAll('.answer').length;
const summary = (): string =>
  document.querySelector('svg[role="img"]')?.getAttribute('aria-label') ?? '';
const show = (): void => {
  document.querySelector<HTMLElement>('.guessing .line button')?.click();
  flushSync();
};
/** Puts every mark, also those that come only when others have been put; returns how many there were. */
function putAll(): number {
  let put = 0;
  for (; put < sliders().length; put += 1) {
    const at = sliders()[put];
    if (!at) throw new Error('a mark is gone');
    key(at, seen(at).now < seen(at).max ? 'PageUp' : 'PageDown');
    keyUp(at);
  }
  return put;
}

test('there are guesses to try', () => expect(guesses.length).toBeGreaterThan(3));

describe.each(guesses)('%s', (_, figure) => {
  const start = (state: State): void => {
    store.change(state);
    begin(figure);
    flushSync();
  };

  test.each(instruments)(
    'on %s: asks first, then answers, in a drawing, in words, and in what is spoken',
    (_, state) => {
      start(state);
      expect(answers()).toBe(0);
      const before = summary();
      expect(before.length).toBeGreaterThan(40);
      show();
      expect(answers(), 'an answer without a guess').toBe(0);
      expect(compared().length).toBeGreaterThan(20);
      expect(putAll()).toBeGreaterThan(0);
      expect(summary(), 'what is spoken follows the marks').not.toBe(before);
      const put = summary();
      show();
      expect(answers()).toBeGreaterThan(0);
      expect(compared().length).toBeGreaterThan(40);
      expect(summary(), 'what is spoken holds the answer').not.toBe(put);
      expect(`${compared()} ${summary()}`).not.toMatch(/NaN|undefined|Infinity/);
    },
  );

  test('every mark goes by finger and by keys, says another value, and has a typed twin', () => {
    start(initialState);
    for (let i = 0; i < sliders().length; i += 1) {
      const at = sliders()[i];
      if (!at) throw new Error('a mark is gone');
      const { now, says, x, y, max } = seen(at);
      expect(at.getAttribute('aria-label')).not.toBe('');
      const way = now < max ? 1 : -1;
      key(at, way > 0 ? 'PageUp' : 'PageDown');
      keyUp(at);
      const keyed = seen(at);
      expect(keyed.now * way).toBeGreaterThan(now * way);
      expect(keyed.says).not.toBe(says);
      // A finger takes it back.
      pointer(at, 'down', keyed.x, keyed.y);
      pointer(at, 'move', x, y);
      release(at, x, y);
      const dragged = seen(at);
      expect(Math.hypot(dragged.x - x, dragged.y - y)).toBeLessThan(25);
      key(at, 'Home');
      expect(seen(at).now).toBe(keyed.min);
      key(at, 'End');
      keyUp(at);
      expect(seen(at).now).toBe(keyed.max);
    }
    expect(document.querySelectorAll('input.field')).toHaveLength(sliders().length);
  });

  test('answers a reader who guessed nothing, and asks again when cleared', () => {
    const question = document.createElement('div');
    question.className = 'guess';
    document.body.append(question);
    store.change(initialState);
    begin(figure, question);
    flushSync();
    question.dispatchEvent(new Event('guess-opened'));
    flushSync();
    expect(answers()).toBeGreaterThan(0);
    expect(compared()).not.toMatch(/NaN|undefined/);
    show();
    expect(answers()).toBe(0);
    expect(sliders().length).toBeGreaterThan(0);
  });
});
