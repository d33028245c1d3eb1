/** The reader's own strings in words. */
import { constructionOf } from './drawer.ts';
import { formatDensity, formatGauge } from './format.ts';
import { gaugeOfOwn, type OwnString } from './own-string.ts';
import { linearDensity } from '../physics/index.ts';
import { folded } from './book/find.ts';

/** "26 w": to a tenth of a thousandth; a gauge in mm is no surer. */
export const gaugeText = ({ kind, gauge }: Pick<OwnString, 'kind' | 'gauge'>): string =>
  formatGauge({ kind, gauge: Number(gauge.toFixed(1)) });

/** "26 wound, box 4" */
export const callOwn = (own: OwnString): string =>
  [`${Number(own.gauge.toFixed(1))} ${own.kind}`, own.label].filter(Boolean).join(', ');

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
      gaugeText(own),
      callOwn(own),
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
