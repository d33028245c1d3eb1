/**
 * What the model leaves out and by how much it matters, worked out for the workshop's first instrument, so that the page of
 * the model types no result. Each function gives relative changes or cents; the page says what they mean.
 */
import { drawer } from '../../instrument/drawer.ts';
import { families } from '../../instrument/families.ts';
import { doubtsOf, pullEstimate } from '../../instrument/doubts.ts';
import { pullsOf, type Pull } from '../../instrument/pulls.ts';
import { initialState } from '../../instrument/workshop.ts';
import {
  axialStiffness,
  bend,
  bendingStiffness,
  centsOfPartial,
  endLength,
  estimateString,
  fromMillimetres,
  inharmonicity,
  linearDensity,
  materials,
  strainAtPitch,
  tension,
  warmed,
  type Construction,
  type MaterialId,
} from '../../physics/index.ts';

export interface Range {
  readonly low: number;
  readonly high: number;
}

const rangeOf = (values: readonly number[]): Range => ({
  low: Math.min(...values),
  high: Math.max(...values),
});

export const example = initialState.mine;
export const pulls: readonly Pull[] = pullsOf(example);
const [firstPull] = pulls;
if (!firstPull) throw new RangeError('the example has no strings');
/** The highest string of the example, a plain one. */
export const treble: Pull = firstPull;

/** How much a tuned string is stretched, T/(E A): by so much it is lighter for its length than it was when slack. */
export const strainOf = (p: Pick<Pull, 'tension' | 'construction'>): number =>
  p.tension / axialStiffness(p.construction);

export const strains: Range = rangeOf(pulls.map(strainOf));

/**
 * The same for a plain nylon string at the example's length and highest note, over the range of its stiffness. It does not
 * depend on the gauge: pull and section grow alike.
 */
export const nylonStrain: Range = (() => {
  const { modulus } = materials.nylon;
  const [plain] = families['classical, nylon'];
  if (!plain) throw new RangeError('the classical family has no strings');
  const slackPull = tension({
    speakingLength: treble.speakingLength,
    frequency: treble.frequency,
    linearDensity: linearDensity(plain),
  });
  const at = (young: number): number =>
    strainAtPitch({ slackPull, stiffness: (axialStiffness(plain) * young) / modulus.value });
  return {
    low: at(modulus.value + modulus.tolerance),
    high: at(modulus.value - modulus.tolerance),
  };
})();

const wound = drawer.filter((c) => c.kind === 'wound');

/** How much lighter a wound string is when its wrap hugs the flats of the core, relative, over the drawer. */
export const flats: Range = rangeOf(
  wound.map((c) => 1 - linearDensity(c, 'flats') / linearDensity(c)),
);

/** How much heavier (negative: lighter) the drawer's wound strings are with a wrap of another material. */
export function withWrap(id: MaterialId): Range {
  return rangeOf(
    wound.map((c) => {
      const other: Construction = { ...c, wraps: c.wraps.map((w) => ({ ...w, material: id })) };
      return linearDensity(other) / linearDensity(c) - 1;
    }),
  );
}

/** The plating of unknown thickness: the tolerance of the wrap's density. */
export const plating =
  materials.nickelPlatedSteel.density.tolerance / materials.nickelPlatedSteel.density.value;

const stiffnessOf = (p: Pull): number => bendingStiffness(p.construction, p.tension);
const inharmonicityOf = (p: Pull): number =>
  inharmonicity({
    speakingLength: p.speakingLength,
    tension: p.tension,
    bendingStiffness: stiffnessOf(p),
  });

/** Cents by which stiffness raises the fundamental of a string on two knife edges. */
export const pinned: Range = rangeOf(
  pulls.map((p) => centsOfPartial({ inharmonicity: inharmonicityOf(p), partial: 1 })),
);

/** How much shorter a string sounds when both ends are held as in a vice, relative: the end length, twice. */
const clampedShare = (p: Pull): number =>
  (2 * endLength({ bendingStiffness: stiffnessOf(p), tension: p.tension })) / p.speakingLength;

/** By how much less such a string has to pull for its note, relative: length counts twice. */
export const clamped: Range = rangeOf(pulls.map((p) => 1 - (1 - clampedShare(p)) ** 2));

export const WARMER = 10;

/** By how many cents the treble string falls when it alone grows `WARMER` degrees warmer on a neck that keeps its length. */
export function warmth(degrees: number = WARMER): {
  readonly pull: number;
  readonly cents: number;
} {
  const left = warmed({ ...treble, degrees });
  if (!left) throw new RangeError('the treble string is not of steel');
  return { pull: left.tension / treble.tension - 1, cents: left.cents };
}

/** The same in cents for all strings of the example, each warmed alone. */
export const warmthOfSet: Range = rangeOf(
  pulls.map((p) => warmed({ ...p, degrees: WARMER })?.cents ?? NaN),
);

/** How much harder the treble string pulls while it is drawn aside by `travel` m in its middle, relative. */
export function drawnAside(travel: number): number {
  const { construction, speakingLength } = treble;
  const aside = bend({
    construction,
    speakingLength,
    tension: treble.tension,
    at: speakingLength / 2,
    travel,
  });
  return aside.tension / treble.tension - 1;
}

export const PLUCK = fromMillimetres(2);

/** Standard uncertainty of the treble's pull, relative, and what each cause adds: see `doubtsOf`. */
export function uncertaintyOfPull() {
  const pull = pullEstimate(treble);
  const share = (value: number): number => value / pull.value;
  return {
    all: share(pull.uncertainty),
    diameter: share(pull.contributions.diameter),
    density: share(pull.contributions.density),
    length: share(pull.contributions.speakingLength),
    pitch: share(pull.contributions.pitch),
  };
}

const lowest = pulls.at(-1);
if (lowest?.construction.kind !== 'wound') throw new RangeError('the example has no wound string');

/** What a core of another make does to the example's lowest string, relative, as a standard uncertainty; see `CORE_SPREAD`. */
export const otherMake = (() => {
  const { construction, speakingLength, frequency } = lowest;
  const bend = { fret: 12, rise: 100 };
  const made = estimateString({
    ...{ construction, speakingLength, frequency, bend },
    doubts: doubtsOf(construction),
  });
  const share = (of: (typeof made)['pull']): number =>
    of ? of.contributions.coreDiameter / of.value : NaN;
  return {
    pull: share(made.pull),
    travel: share(made.travel),
    push: share(made.push),
    breaking: share(made.share),
  };
})();
