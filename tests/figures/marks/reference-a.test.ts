/** The reference A of a sentence, and what the set pulls at it. */
import { afterAll, describe, expect, test } from 'vitest';

import DragReference from '../../../src/figures/pull/reference-a/DragReference.svelte';
import SetAtReference from '../../../src/figures/pull/reference-a/SetAtReference.svelte';
import { reference } from '../../../src/figures/pull/reference-a/reference.svelte.ts';
import { formatDifference, formatTotal } from '../../../src/instrument/format.ts';
import { pullsOf, totalPull } from '../../../src/instrument/pulls.ts';
import { drawnWith, textOf } from './drawn.ts';
import { knobsOf } from './sheet.ts';
import { stateOf, three } from './states.ts';

afterAll(() => reference.set(440));

describe.each(three)('%s', (id) => {
  test.each([415, 432, 442])('at %d Hz', (hertz) => {
    const state = stateOf(id);
    reference.set(hertz);
    const [knob] = knobsOf(drawnWith(state, DragReference).root, 1);
    expect([knob?.label, knob?.text, knob?.now]).toEqual([
      'Reference A4',
      `${hertz}.0\u00a0Hz`,
      hertz,
    ]);
    // Pull goes with the square of the frequency.
    const ratio = (hertz / 440) ** 2;
    const total = totalPull(pullsOf(state.mine)) * ratio;
    expect(textOf(drawnWith(state, SetAtReference).root)).toBe(
      `${formatTotal(total, 'in-lb')} (${formatDifference(ratio - 1)})`,
    );
  });
});
