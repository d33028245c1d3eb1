/** Partials that light as they sound: over the teeth of the comb or the rungs of a ladder, each as bright as it is loud. It comes with the first pluck. */
import { lightsOf } from '../../kit/live/lights.ts';
import { shine } from '../../kit/live/vibrate.ts';
import type { Tone } from '../../kit/tone.ts';

/** s */
const SHINING = 2.4;
const SVG = 'http://www.w3.org/2000/svg';
const shining = new WeakMap<Element, () => void>();

/** Among what is veiled until the chapter's guess is made, the bare wire's lamps stay as dark. */
const holders = {
  comb: 'svg[role="img"]',
  own: 'svg[role="img"]',
  bare: '[data-part="ladder-bare"] > .under',
} as const;

export interface Lamps {
  readonly across: readonly [number, number];
  /** Down, of each partial, in the drawing's units; one above its sheet is not drawn */
  readonly at: readonly number[];
  readonly tone: Tone;
}

/** `place` holds the drawing. */
export function light(place: Element, on: keyof typeof holders, { across, at, tone }: Lamps): void {
  shining.get(place)?.();
  const holder = place.querySelector(holders[on]);
  if (!holder) return;
  const [x1, x2] = across;
  const lights = lightsOf(tone, at.length);
  const group = document.createElementNS(SVG, 'g');
  group.style.cssText = 'stroke:var(--pencil);stroke-linecap:round';
  group.dataset['lamps'] = on;
  for (const y of at.filter((y) => y > 0)) {
    const lamp = document.createElementNS(SVG, 'path');
    lamp.setAttribute('d', `M${x1} ${y.toFixed(2)}H${x2}`);
    group.append(lamp);
  }
  holder.append(group);
  const stop = shine(place, SHINING, (seconds) => {
    if (seconds === Infinity) return group.remove();
    [...group.children].forEach((lamp, i) => {
      const bright = lights[i]?.(seconds) ?? 0;
      lamp.setAttribute('stroke-width', (9 * bright).toFixed(2));
      lamp.setAttribute('opacity', (0.35 + 0.65 * bright).toFixed(2));
    });
  });
  shining.set(place, stop);
}
