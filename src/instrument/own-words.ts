/** The reader's own strings in words. */
import { constructionOf } from './drawer.ts';
import { formatDensity, formatGauge, gaugeNumber } from './format.ts';
import type { Units } from './schema.ts';
import { gaugeOfOwn, type OwnString } from './own-string.ts';
import { linearDensity } from '../physics/index.ts';
import { folded } from './book/find.ts';

/** To a tenth of a thousandth: a gauge in mm is no surer. */
const shown = (gauge: number, units: Units): number =>
  units === 'in-lb' ? Number(gauge.toFixed(1)) : gauge;

/** "26 w", or "0.66 w" */
export const gaugeText = (
  { kind, gauge }: Pick<OwnString, 'kind' | 'gauge'>,
  units: Units,
): string => formatGauge({ kind, gauge: shown(gauge, units) }, units);

/** "26 wound, box 4", or "0.66 mm wound, box 4" */
export const callOwn = (own: OwnString, units: Units): string =>
  [
    `${gaugeNumber(shown(own.gauge, units), units)}${units === 'in-lb' ? '' : '\u00a0mm'} ${own.kind}`,
    own.label,
  ]
    .filter(Boolean)
    .join(', ');

/** kg/m: what is known, or worked out from its make; undefined for a material that the site can't work out. */
export function weightOf(own: OwnString): number | undefined {
  const gauge = gaugeOfOwn(own);
  return own.unitWeight ?? (gauge && linearDensity(constructionOf(gauge)));
}

/** "3.31 g/m, weighed" */
export function weightWords(own: OwnString): string {
  const weight = weightOf(own);
  if (weight === undefined) return 'weight not known';
  if (own.unitWeight !== undefined) return `${formatDensity(weight)}, ${own.how}`;
  return `${formatDensity(weight)}, ${own.kind === 'wound' ? 'from a typical make' : 'from its diameter'}`;
}

const searched = (own: OwnString): string =>
  folded(
    [
      // Typed in either unit, it is found.
      ...(['in-lb', 'mm-N'] as const).flatMap((units) => [
        gaugeText(own, units),
        callOwn(own, units),
      ]),
      own.family ?? 'electric',
      own.how,
      own.inStock ? 'in stock' : 'none left',
    ].join(' '),
  );

/** Those that hold every word typed. */
export function findStrings<T extends { readonly own: OwnString }>(
  kept: readonly T[],
  typed: string,
): readonly T[] {
  const asked = folded(typed).split(/\s+/).filter(Boolean);
  return asked.length === 0
    ? kept
    : kept.filter(({ own }) => {
        const words = ` ${searched(own)}`;
        // A gauge is a whole number: "10" is no 110.
        return asked.every((each) =>
          /^\d/.test(each) ? words.includes(` ${each}`) : words.includes(each),
        );
      });
}

export interface Tray<T> {
  readonly family: string;
  readonly plain: readonly T[];
  readonly wound: readonly T[];
}

/** One tray a family, the electric one first; in each the plain strings, then the wound ones, from thin to thick. */
export function traysOf<T extends { readonly own: OwnString }>(
  kept: readonly T[],
): readonly Tray<T>[] {
  const families = [...new Set(kept.map(({ own }) => own.family ?? ''))].sort();
  return families.map((family) => {
    const inside = kept
      .filter(({ own }) => (own.family ?? '') === family)
      .sort((a, b) => a.own.gauge - b.own.gauge || a.own.label.localeCompare(b.own.label));
    return {
      family: family === '' ? 'electric' : family,
      plain: inside.filter(({ own }) => own.kind === 'plain'),
      wound: inside.filter(({ own }) => own.kind === 'wound'),
    };
  });
}
