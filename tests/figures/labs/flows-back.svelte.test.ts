// @vitest-environment happy-dom
/** A lab's result on the card of a job and in the drawer: where it goes, and that nothing which stands there is lost. */
import 'fake-indexeddb/auto';
import { flushSync, mount, unmount } from 'svelte';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';

import { onCard, placeOn, type ForCard } from '../../../src/figures/labs/kit/job/on-card.ts';
import PutOnJob from '../../../src/figures/labs/kit/job/PutOnJob.svelte';
import KeepString from '../../../src/figures/labs/kit/KeepString.svelte';
import type { Lab } from '../../../src/figures/labs/kit/lab.svelte.ts';
import { Rows } from '../../../src/figures/labs/kit/rows.svelte.ts';
import { labString } from '../../../src/figures/labs/kit/strings.ts';
import { openBook } from '../../../src/instrument/book/open.ts';
import { makeJob } from '../../../src/instrument/book/keep-job.ts';
import type { JobRecord } from '../../../src/instrument/book/schema.ts';
import { stringsOf } from '../../../src/instrument/own-strings.ts';
import { store } from '../../../src/instrument/store.svelte.ts';
import { initialState } from '../../../src/instrument/workshop.ts';
import { furnish } from '../hand.ts';

const notes = ['E4', 'B3', 'G3', 'D3', 'A2', 'E2'];
const card = (fields: Partial<JobRecord> = {}) =>
  ({ other: { strings: notes.map((note) => ({ note })) }, ...fields }) as JobRecord;
const sharp: ForCard = {
  note: 'B3',
  index: 1,
  intonation: '3.2 ± 1.6 cents sharp',
  words: 'B3, a plain 13: 3.2 ± 1.6 cents sharp at fret 12',
};
const weighed: ForCard = { note: 'B3', index: 1, words: 'B3, a plain 13: weighed, 0.67 g/m' };

test('cents go to the string of that note, wherever it lies, and nowhere else', () => {
  expect(onCard(card(), 'after', sharp)).toEqual({
    intonation: ['', sharp.intonation, '', '', '', ''],
  });
  expect(placeOn(card(), { ...sharp, index: 4 })).toBe(1);
  // Two strings of one note: the one that was measured.
  const pair = card({ other: { strings: [{ note: 'B3' }, { note: 'B3' }] } } as never);
  expect(placeOn(pair, sharp)).toBe(1);
});

test('a note that the job’s instrument doesn’t have goes into the words', () => {
  expect(onCard(card(), 'before', { ...sharp, note: 'C3' })).toEqual({ words: sharp.words });
});

test('what stands there stays, and the same is written once', () => {
  const before = { intonation: ['', '5 cents sharp'], words: 'Buzzes.', relief: '0.3 mm' };
  const once = onCard(card({ before }), 'before', sharp);
  expect(once).toEqual({
    ...before,
    intonation: ['', '5 cents sharp; 3.2 ± 1.6 cents sharp', '', '', '', ''],
  });
  expect(onCard(card({ before: once } as never), 'before', sharp)).toEqual(once);
  expect(onCard(card({ before }), 'before', weighed)?.words).toBe(`Buzzes.\n${weighed.words}`);
});

test('what the column can’t hold goes into the words, and what these can’t hold is refused', () => {
  const full = { intonation: ['', 'x'.repeat(50)], words: '' };
  expect(onCard(card({ before: full }), 'before', sharp)).toEqual({ ...full, words: sharp.words });
  const words = 'x'.repeat(3990);
  expect(onCard(card({ before: { ...full, words } }), 'before', sharp)).toBeUndefined();
});

let mounted: ReturnType<typeof mount> | undefined;
beforeEach(() => {
  furnish();
  store.change(initialState);
});
afterEach(async () => {
  if (mounted) await unmount(mounted);
  document.body.replaceChildren();
});

test('a press puts it on the job that is picked, another takes it off; without a job the way to the bench stands there', async () => {
  const button = (name: string) =>
    vi.waitFor(() => {
      const found = [...document.querySelectorAll('button')].find(
        (each) => each.textContent.trim() === name,
      );
      if (!found) throw new Error(`no button ${name}`);
      return found;
    });
  mounted = mount(PutOnJob, { target: document.body, props: { result: sharp } });
  await vi.waitFor(() => expect(document.querySelector('a')?.textContent).toBe('the bench'));
  await makeJob('one', initialState);
  await makeJob('two', initialState);
  const book = await openBook();
  const put = await button('Put it on the card, before');
  const select = document.querySelector('select');
  if (!select) throw new Error('no jobs');
  select.value = 'one';
  select.dispatchEvent(new Event('change', { bubbles: true }));
  flushSync();
  put.click();
  const measured = (id: string) => (book.get(id) as JobRecord).before;
  await vi.waitFor(() => expect(measured('one')?.intonation?.[1]).toBe(sharp.intonation));
  expect(measured('two')).toBeUndefined();
  (await button('Take it off again')).click();
  await vi.waitFor(() => expect(measured('one')?.intonation).toBeUndefined());
});

test('a measured weight goes into the drawer with its ±, and can be picked', async () => {
  const rows = new Rows('weigh');
  const leave = rows.open();
  await vi.waitFor(() => expect(rows.isRead).toBe(true));
  const { mine } = initialState;
  const lab = { mine, rows, string: labString(mine, 0, 'in-lb') } as unknown as Lab;
  const weight = { value: 4e-4, uncertainty: 2e-6 };
  mounted = mount(KeepString, { target: document.body, props: { lab, weight, how: 'weighed' } });
  document.querySelector('button')?.click();
  const book = await openBook();
  await vi.waitFor(() => expect(stringsOf(book.records)).toHaveLength(1));
  expect(stringsOf(book.records)[0]?.own).toMatchObject({
    unitWeight: 4e-4,
    doubt: 2e-6,
    how: 'weighed',
    label: `weighed, from ${mine.name}`,
    inStock: true,
  });
  leave();
});
