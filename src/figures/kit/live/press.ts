/** What a press of a drawn string does: it swings where it is drawn, and sounds. It comes with the first press. */
import { player } from '../player.svelte.ts';
import type { Tone } from '../tone.ts';
import { vibrate } from './vibrate.ts';

/** Both ends, x and y, in the drawing's units */
export type Ends = readonly [x1: number, y1: number, x2: number, y2: number];

export interface Swung {
  /** The drawing's size in its own units */
  readonly stage: { readonly width: number; readonly height: number };
  /** Asked at each frame, so that a swing goes along with what a hand moves */
  readonly ends: () => Ends;
  /** Hz; asked at each frame */
  readonly hertz: () => number;
  /** How far its middle swings at most, and how thick it is, in the drawing's units */
  readonly swing: number;
  readonly thickness: number;
  /** Where the drawing breaks strings off, if it does: nothing is drawn before it */
  readonly cut?: { readonly x?: number; readonly y?: number } | undefined;
}

export interface Heard {
  readonly tone: () => Tone | readonly Tone[];
  /** By how many cents the tone is bent up while it sounds */
  readonly rise?: (() => number) | undefined;
}

const SVG = 'http://www.w3.org/2000/svg';
const swinging = new WeakMap<Element, () => void>();

/** A string's shape, so far from rest (-1 to 1): one arch of a parabola, which is a sine's half wave to the eye. */
export function arch([x1, y1, x2, y2]: Ends, to: number): string {
  const long = Math.hypot(x2 - x1, y2 - y1) || 1;
  const x = (x1 + x2) / 2 - ((y2 - y1) / long) * 2 * to;
  const y = (y1 + y2) / 2 + ((x2 - x1) / long) * 2 * to;
  return `M${x1} ${y1}Q${x.toFixed(2)} ${y.toFixed(2)} ${x2} ${y2}`;
}

/** Draws a string that swings over the drawing in which the pressed `button` lies, and takes it away when it is still. */
export function swing(button: Element, { stage, ends, hertz, swing, thickness, cut }: Swung): void {
  swinging.get(button)?.();
  const sheet = document.createElementNS(SVG, 'svg');
  sheet.setAttribute('viewBox', `0 0 ${stage.width} ${stage.height}`);
  sheet.setAttribute('aria-hidden', 'true');
  // A sheet that is as wide as the page lets it be has units of its own along.
  sheet.setAttribute('preserveAspectRatio', 'none');
  sheet.style.cssText =
    'position:absolute;inset:0;width:100%;height:100%;overflow:visible;pointer-events:none';
  if (cut) {
    const { x = -stage.width, y = -stage.height } = cut;
    sheet.style.clipPath = `inset(${(100 * y) / stage.height}% -100% -100% ${(100 * x) / stage.width}%)`;
  }
  const line = document.createElementNS(SVG, 'path');
  line.style.cssText = `fill:none;stroke:var(--pencil);stroke-width:${thickness}`;
  line.dataset['swinging'] = '';
  sheet.append(line);
  const draw = (at: number): void => {
    if (at === 0) return sheet.remove();
    line.setAttribute('d', arch(ends(), at * swing));
    if (!sheet.isConnected) button.parentElement?.append(sheet);
  };
  swinging.set(button, vibrate(button, { hertz, draw }));
}

/** Lets a tone be heard for the button `who`; resolves to a sentence when it can't be. */
export function hear(who: string, { tone, rise }: Heard): Promise<string> {
  const asked = tone();
  return player.play(who, 'tension' in asked ? [asked] : asked, rise?.());
}
