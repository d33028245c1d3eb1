/** One of the reader's own strings: what it is, how its weight is known, and its record in the book. SI but for the gauge. */
import { fromGramsPerMetre, gramsPerMetre } from '../physics/index.ts';
import type { StringRecord } from './book/schema.ts';
import { familyNames, type Family } from './family-names.ts';
import { limits } from './limits.ts';
import type { Gauge, Kind } from './schema.ts';
import { typicalRange } from './typical.ts';

/** How a unit weight came: told by its maker or by someone, put on a scale, or worked out from its make. */
export const origins = ['known', 'weighed', 'worked out'] as const;
export type Origin = (typeof origins)[number];

export interface OwnString {
  readonly kind: Kind;
  /** thousandths of an inch */
  readonly gauge: number;
  /** What it is made for, or of: one of the site's families, another material by its name, or electric when not named */
  readonly family?: string;
  /** kg/m; left out where it is worked out from a typical make */
  readonly unitWeight?: number;
  /** kg/m, one standard uncertainty of that weight */
  readonly doubt?: number;
  readonly how: Origin;
  readonly label: string;
  readonly inStock: boolean;
}

export const LONGEST_LABEL = 80;
const LONGEST_FAMILY = 40;

/** As it is kept: so many digits that a table gives back the same number, and words on one line. */
export const rounded = (thou: number): number => Number(thou.toFixed(6));
const roundedWeight = (kgPerMetre: number): number => Number(kgPerMetre.toPrecision(9));
/** The same from and to grams a metre. */
export const inGrams = (kgPerMetre: number): number =>
  Number(gramsPerMetre(kgPerMetre).toPrecision(9));
export const fromGrams = (grams: number): number => roundedWeight(fromGramsPerMetre(grams));
const oneLine = (text: string, longest: number): string =>
  text
    .replace(/[\s\p{Cc}\p{Surrogate}]+/gu, ' ')
    .trim()
    .slice(0, longest)
    // A pair that the cut has split.
    .replace(/\p{Surrogate}/u, '')
    .trim();

export const isShippedFamily = (family: string | undefined): family is Family | undefined =>
  family === undefined || familyNames.some((name) => name === family);

/** What is wrong with it, in words; undefined when it can be kept. */
export function wrongString({
  kind,
  gauge,
  family,
  unitWeight,
  doubt,
}: OwnString): string | undefined {
  const known = isShippedFamily(family);
  const { min, max } =
    known && unitWeight === undefined ? typicalRange(kind, family) : limits.gauge;
  if (!(gauge >= min && gauge <= max))
    return `a gauge of ${Number(gauge.toFixed(1))} thousandths is outside ${min} to ${max} for a ${kind} string here`;
  if (unitWeight === undefined)
    return known ? undefined : `nothing can be worked out for ${family}: it needs a unit weight`;
  const { min: light, max: heavy } = limits.unitWeight;
  if (!(unitWeight >= light && unitWeight <= heavy))
    return `a unit weight of ${inGrams(unitWeight)} g/m is outside ${inGrams(light)} to ${inGrams(heavy)} g/m`;
  if (doubt !== undefined && !(doubt >= 0 && doubt < unitWeight))
    return 'the ± is as large as the weight';
  return undefined;
}

/** As it is kept: words trimmed, numbers rounded, and what belongs to no weight left out. */
export function tidied(own: OwnString): OwnString {
  const { kind, gauge, unitWeight, doubt, how, inStock } = own;
  const family = own.family === undefined ? '' : oneLine(own.family, LONGEST_FAMILY);
  const isElectric = family === '' || family.toLowerCase() === 'electric';
  return {
    kind,
    gauge: rounded(gauge),
    ...(!isElectric && { family }),
    ...(unitWeight !== undefined && { unitWeight: roundedWeight(unitWeight) }),
    ...(unitWeight !== undefined && doubt !== undefined && { doubt: roundedWeight(doubt) }),
    how: unitWeight === undefined ? 'worked out' : how === 'worked out' ? 'known' : how,
    label: oneLine(own.label, LONGEST_LABEL),
    inStock,
  };
}

/** Its fields in the book. */
export function fieldsOf(own: OwnString) {
  const { kind, gauge, family, unitWeight, doubt, how, label, inStock } = tidied(own);
  return {
    kind: 'string',
    string: { kind, gauge, family, unitWeight, doubt },
    how,
    label,
    inStock,
  };
}

/** What this version of the site can read of a record; undefined for one that only a newer version can. */
export function ownOf({ string, how, label, inStock }: StringRecord): OwnString | undefined {
  const { kind, gauge, family, unitWeight, doubt } = string;
  if (kind !== 'plain' && kind !== 'wound') return undefined;
  const own: OwnString = {
    kind,
    gauge,
    ...(family !== undefined && { family }),
    ...(unitWeight !== undefined && { unitWeight }),
    ...(doubt !== undefined && { doubt }),
    how: origins.find((origin) => origin === how) ?? 'known',
    label: label ?? '',
    inStock: inStock ?? true,
  };
  return wrongString(own) === undefined ? tidied(own) : undefined;
}

/** As picks take it; undefined for a material of which the site ships no family. */
export function gaugeOfOwn({
  kind,
  gauge,
  family,
  unitWeight,
  doubt,
}: OwnString): Gauge | undefined {
  if (!isShippedFamily(family)) return undefined;
  return {
    kind,
    gauge,
    ...(unitWeight !== undefined && { unitWeight }),
    ...(doubt !== undefined && { doubt }),
    ...(family && { family }),
  };
}

/** One of an instrument's strings as the reader's own. */
export const ownFrom = ({ kind, gauge, family, unitWeight, doubt }: Gauge): OwnString =>
  tidied({
    kind,
    gauge,
    ...(family && { family }),
    ...(unitWeight !== undefined && { unitWeight }),
    ...(doubt !== undefined && { doubt }),
    how: unitWeight === undefined ? 'worked out' : 'known',
    label: '',
    inStock: true,
  });

/** From thin to thick, plain before wound, a family after the other; labels by their words. */
export const inOrder = (a: OwnString, b: OwnString): number =>
  (a.family ?? '').localeCompare(b.family ?? '') ||
  a.kind.localeCompare(b.kind) ||
  a.gauge - b.gauge ||
  (a.unitWeight ?? 0) - (b.unitWeight ?? 0) ||
  a.label.localeCompare(b.label);
