/** The stairs' sheet: 360 units wide, the floor where nothing pulls, the sections of the strings in a row above it. */
import { gaugeNumber } from '../../../instrument/format.ts';
import type { Units } from '../../../instrument/schema.ts';
import type { Stairs, Tread } from './stairs.ts';

export const frame = {
  width: 360,
  height: 372,
  left: 14,
  right: 308,
  /** Of the wanted pull’s handle, right of the last step, so that it does not cover the foot, and clear of a phone’s edge */
  handle: 330,
  floor: 300,
  /** Units for the string's own pull */
  own: 196,
  /** Middle of the two rows of sections */
  rows: { plain: 276, wound: 242 },
  /** Largest drawn diameter of a section */
  section: 26,
  labels: 316,
  readings: 342,
} as const;

export const heightAt = (share: number): number => frame.floor - share * frame.own;

export function scaleOf({ from, to }: Pick<Stairs, 'from' | 'to'>) {
  const perThousandth = (frame.right - frame.left) / (to - from);
  return (gauge: number): number => frame.left + (gauge - from) * perThousandth;
}

/** The steps of a flight from left to right, and with the floor as the outline of its body; both empty without steps. */
export function flightOf(
  treads: readonly Tread[],
  along: (gauge: number) => number,
): { readonly steps: string; readonly body: string } {
  const [first] = treads;
  if (!first) return { steps: '', body: '' };
  const left = along(first.from).toFixed(2);
  const path = treads
    .map(({ height, to }) => `V${heightAt(height).toFixed(2)}H${along(to).toFixed(2)}`)
    .join('');
  return {
    steps: `M${left} ${heightAt(first.height).toFixed(2)}${path.replace(/^V[\d.]+/, '')}`,
    body: `M${left} ${frame.floor}${path}V${frame.floor}z`,
  };
}

const WIDE = 6.6;

/** Which gauges have room for their number below the floor: the one in hand first, then from left to right. */
export function numbered(
  gauges: readonly number[],
  first: number,
  along: (gauge: number) => number,
  units: Units,
): readonly number[] {
  const kept: number[] = gauges.includes(first) ? [first] : [];
  for (const gauge of gauges) {
    const room = (other: number): number =>
      (gaugeNumber(gauge, units).length + gaugeNumber(other, units).length) * (WIDE / 2) + 4;
    if (kept.every((other) => Math.abs(along(gauge) - along(other)) >= room(other)))
      kept.push(gauge);
  }
  return kept.sort((a, b) => a - b);
}
