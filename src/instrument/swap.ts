/**
 * Whether plain and wound change places on a string. Only where the string's own kind has nothing inside the felt band's inner line, and
 * the other kind helps; and never for a string that would be stiffer than the stiffest of the instrument that feels right. Stiffness
 * is judged as chapter 8 measures it, by how sharp the tenth partial stands.
 */
import {
  bendingStiffness,
  centsOfPartial,
  FELT_LOW,
  inharmonicity,
  MOST_INHARMONICITY,
  type Match,
} from '../physics/index.ts';
import { once } from './once.ts';
import { pullsOf, type Pull } from './pulls.ts';
import type { Instrument, Kind } from './schema.ts';

/** Why a string is of the other kind, or why it isn't though that would come nearer. */
export interface Swap {
  /** What its own kind would be off by, relative; undefined where none of it holds */
  readonly own: number | undefined;
  /** What the other kind is or would be off by, relative */
  readonly other: number;
  /** The kind that helps */
  readonly kind: Kind;
  /** Set where it was too stiff: cents by which its tenth partial would stand sharp, and at most may */
  readonly tooStiff?: { readonly cents: number; readonly most: number };
}

const PARTIAL = 10;

/** Cents by which a string's tenth partial stands above ten times its pitch; undefined where its stiffness isn't known. */
export function stiffnessCents({
  construction,
  speakingLength,
  tension,
}: Pick<Pull, 'construction' | 'speakingLength' | 'tension'>): number | undefined {
  if (construction.kind === 'measured' && construction.bendingStiffness === undefined)
    return undefined;
  const stiff = bendingStiffness(construction);
  const b = inharmonicity({ speakingLength, tension, bendingStiffness: stiff });
  return b > MOST_INHARMONICITY ? Infinity : centsOfPartial({ inharmonicity: b, partial: PARTIAL });
}

/** The most that the strings of an instrument have; undefined where none is known. */
export const stiffest = once((mine: Instrument): number | undefined => {
  const known = pullsOf(mine).flatMap((pull) => stiffnessCents(pull) ?? []);
  return known.length > 0 ? Math.max(...known) : undefined;
});

const missOf = (match: Match | undefined): number =>
  match ? Math.abs(match.aimed?.distance ?? match.residual) : Infinity;

/** What a string gets: the nearest of its own kind, unless the other helps. */
export function swapped({
  own,
  other,
  kind,
  speakingLength,
  most,
}: {
  readonly own: Match | undefined;
  readonly other: Match | undefined;
  /** Of the other one */
  readonly kind: Kind;
  /** m */
  readonly speakingLength: number;
  /** Cents that the tenth partial may stand sharp */
  readonly most: number | undefined;
}): { readonly best: Match | undefined; readonly swap?: Swap } {
  const [miss, missOther] = [missOf(own), missOf(other)];
  // Halving the miss helps; a hair's breadth doesn't.
  const helps = missOther <= FELT_LOW || missOther <= miss / 2;
  if (!other || miss <= FELT_LOW + 1e-12 || missOther >= miss || !helps) return { best: own };
  const swap = { own: own?.residual, other: other.residual, kind };
  const cents = stiffnessCents({ ...other, speakingLength });
  // What replaces a stiffer string may be as stiff as that.
  const replaced = own && stiffnessCents({ ...own, speakingLength });
  const limit = Math.max(most ?? 0, replaced ?? 0);
  if (cents !== undefined && cents > limit)
    return { best: own, swap: { ...swap, tooStiff: { cents, most: limit } } };
  return { best: other, swap };
}
