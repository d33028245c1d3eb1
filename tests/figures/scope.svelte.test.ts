// @vitest-environment happy-dom
/** The line at the head of a chapter: its press takes another string in hand, or shows another instrument as a visit. */
import { flushSync, mount, unmount } from 'svelte';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';

import ChapterScope from '../../src/figures/kit/scope/ChapterScope.svelte';
import { moreInstrument } from '../../src/instrument/more-instruments.ts';
import { held, store } from '../../src/instrument/store.svelte.ts';
import { initialState } from '../../src/instrument/workshop.ts';
import { furnish } from './hand.ts';

let mounted: ReturnType<typeof mount> | undefined;
beforeEach(() => {
  furnish();
  held.awake = true;
  store.change({ ...initialState, mine: moreInstrument('phalarope'), trial: { string: 2 } });
});
afterEach(async () => {
  if (mounted) await unmount(mounted);
  document.body.replaceChildren();
});
function show(chapter: string): void {
  mounted = mount(ChapterScope, { target: document.body, props: { chapter } });
  flushSync();
}
const press = (name: string): void => {
  const button = [...document.querySelectorAll('button')].find((b) => b.textContent === name);
  if (!button) throw new Error(`no button “${name}”`);
  button.click();
  flushSync();
};

test('takes the instrument’s own string in hand, which undo gives back', () => {
  show('stiff-strings');
  expect(document.body.textContent).toMatch(/D4 string by its weight alone/);
  press('Choose the E5 string');
  expect(store.state.trial.string).toBe(0);
  expect(document.body.textContent).not.toMatch(/weight alone/);
  store.undo();
  expect(store.state.trial.string).toBe(2);
});

test('shows one of the workshop’s, and the reader’s own stays', async () => {
  show('a-scale-for-every-string');
  const own = store.own.mine;
  press('Look at Redshank, one of the workshop’s');
  await vi.waitFor(() => expect(store.state.mine.name).toBe('Redshank'));
  flushSync();
  expect(document.querySelectorAll('p')).toHaveLength(0);
  expect(store.own.mine).toEqual(own);
});
