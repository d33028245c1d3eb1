// @vitest-environment happy-dom
/** The ladder's partials light as they sound: those of the string that is pressed, at the places of its own rungs, and then go out. */
import { mount, tick, unmount } from 'svelte';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';

import { down, phone } from '../../src/figures/feel/ladder/frame.ts';
import Lit from '../../src/figures/feel/ladder/Lit.svelte';
import { toneOf } from '../../src/figures/kit/tone.ts';
import { viewOf } from '../../src/figures/kit/stiff/stiff.ts';
import { initialState } from '../../src/instrument/workshop.ts';

const view = viewOf({ ...initialState, trial: { string: 5 } });
let lit: ReturnType<typeof mount> & Pick<Lit, 'light'>;
let place: SVGSVGElement;
const bars = (): SVGPathElement[] => [...place.querySelectorAll<SVGPathElement>('[data-lit] path')];
const heavy = (bar: SVGPathElement | undefined): number =>
  Number(bar?.style.getPropertyValue('stroke-width'));

beforeEach(() => {
  vi.useFakeTimers();
  // Without motion the lights stand still and then go out: what is tried here is which ones there are.
  vi.stubGlobal('matchMedia', () => ({ matches: true }));
  place = document.createElementNS('http://www.w3.org/2000/svg', 'svg');
  document.body.append(place);
  lit = mount(Lit, { target: place, props: { frame: phone, view } }) as typeof lit;
});
afterEach(async () => {
  await unmount(lit);
  place.remove();
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

test('light where the rungs of the sounding ladder are, the loudest first', async () => {
  expect(bars()).toEqual([]);
  await lit.light(place, 'own', toneOf(view.pull));
  const b = view.own?.inharmonicity ?? NaN;
  const ys = bars().map((bar) => Number(/M\S+ (\S+)H/.exec(bar.getAttribute('d') ?? '')?.[1]));
  expect(ys.length).toBeGreaterThan(12);
  ys.forEach((y, i) => {
    const n = i + 1;
    expect(y).toBeCloseTo(down(phone, n * Math.sqrt(1 + b * n * n)), 6);
  });
  expect(heavy(bars()[0])).toBeGreaterThan(heavy(bars()[20]));
  expect(heavy(bars()[0])).toBeGreaterThan(1);
});

test('the comb’s lights are even, and all go out', async () => {
  await lit.light(place, 'comb', toneOf(view.pull));
  const ys = bars().map((bar) => Number(/M\S+ (\S+)H/.exec(bar.getAttribute('d') ?? '')?.[1]));
  expect((ys[1] ?? NaN) - (ys[0] ?? NaN)).toBeCloseTo(-phone.step, 9);
  vi.advanceTimersByTime(10_000);
  await tick();
  expect(bars()).toEqual([]);
});
