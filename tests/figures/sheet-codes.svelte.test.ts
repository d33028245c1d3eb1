// @vitest-environment happy-dom
/** A printed sheet leads back: its codes open the same bench, and the chapter that says why, with these picks. */
import { flushSync, mount, unmount } from 'svelte';
import { expect, test, vi } from 'vitest';

import SheetHead from '../../src/figures/bench/SheetHead.svelte';
import { residualsOf } from '../../src/figures/choosing/two-necks/residuals.ts';
import { decode } from '../../src/instrument/link-read.ts';
import { planOf } from '../../src/instrument/plan.ts';
import type { State } from '../../src/instrument/schema.ts';
import { initialState } from '../../src/instrument/workshop.ts';
import { readCode } from './read-code.ts';

/** Strung at nine tenths, with a string set by hand and places that may change. */
const strung: State = {
  ...initialState,
  aim: { ...initialState.aim, factor: 0.9, kinds: 'any' },
  other: {
    ...initialState.other,
    strings: initialState.other.strings.map((string, i) =>
      i === 1 ? { ...string, pick: { kind: 'plain', gauge: 15 } } : string,
    ),
  },
};

test('the codes of a sheet open bench and chapter with its picks', async () => {
  window.location.href = 'https://strings.example/bench/#v1/whatever';
  let state = $state.raw(initialState);
  const head = mount(SheetHead, {
    target: document.body,
    props: {
      get state() {
        return state;
      },
    },
  });
  flushSync();
  const codes = () => [...document.querySelectorAll('.codes svg')];
  // As long as it is the example's, its address says it all.
  expect(codes()).toEqual([]);
  state = strung;
  flushSync();
  await vi.waitFor(() => {
    flushSync();
    expect(codes()).toHaveLength(2);
  });
  const [bench, chapter] = codes().map((svg) => {
    const [, , size = '0'] = (svg.getAttribute('viewBox') ?? '').split(' ');
    const path = svg.querySelector('path')?.getAttribute('d') ?? '';
    return new URL(readCode({ size: Number(size) - 8, path }) ?? '');
  });
  expect(bench?.pathname).toBe('/bench/');
  expect(chapter?.pathname).toBe('/course/two-guitars-one-feel/');
  const picks = planOf(strung).strings.map(({ pull }) => pull?.gauge);
  for (const { hash } of [bench, chapter].filter((url) => url !== undefined)) {
    const { state } = decode(hash.slice(1), initialState);
    expect(state && planOf(state).strings.map(({ pull }) => pull?.gauge)).toEqual(picks);
    expect(state && residualsOf(state).map(({ pick }) => pick)).toEqual(picks);
  }
  await unmount(head);
});
