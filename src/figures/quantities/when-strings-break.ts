/** The numbers of the chapter "When strings break". */
import { formatForce, formatGauge, formatNote, formatShare } from '../../instrument/format.ts';
import { pullOf, pullsOf, type Pull } from '../../instrument/pulls.ts';
import type { State } from '../../instrument/schema.ts';
import {
  bend,
  CAUTION_SHARE,
  coreArea,
  fromInches,
  fromThousandths,
  inches,
  linearDensity,
  material,
  minimumStrength,
  minimumStrengthTable,
  noteFrequency,
  reachable,
  strengthBounds,
  type Construction,
} from '../../physics/index.ts';
import { highestNoteBelow, shareText, size } from '../consequences/the-cliff/describe.ts';
import { edgeOf, isTabled, marginOf, semitonesTo } from '../kit/margin.ts';
import { mainScale, triedOf } from '../trial.ts';
import type { Quantity } from './common.ts';

const UNKNOWN = 'not known';
const steel = material('musicWire').density.value;
const plain = (thou: number): Construction => ({
  kind: 'plain',
  diameter: fromThousandths(thou),
  material: 'musicWire',
});
/** Length times pitch at which a plain steel wire may break, m/s. */
const edge = (thou: number): number => edgeOf(plain(thou))?.low ?? NaN;
const strengthOf = (thou: number): number => minimumStrength(fromThousandths(thou)) ?? NaN;
const wireHolds = (thou: number): number =>
  coreArea({ kind: 'plain', diameter: fromThousandths(thou), material: 'musicWire' }) *
  strengthOf(thou);
const octaves = (ratio: number): number => Math.abs(Math.log2(ratio));

/** A plain ten at a length and a note, as a share of its strength. */
const tenShare = (length: number, note: string): number =>
  (length * noteFrequency(note)) ** 2 / edge(10) ** 2;
const SHEET = { length: fromInches(25.5), note: 'G4' };

/** The string of the instrument that is nearest to breaking; undefined where no strength is known. */
function nearest(s: State): Pull | undefined {
  const known = pullsOf(s.mine).filter((p) => marginOf(p).share);
  const share = (p: Pull): number => marginOf(p).share?.high ?? 0;
  return known.sort((a, b) => share(b) - share(a))[0];
}
const ofNearest =
  (say: (p: Pull, s: State) => string): Quantity =>
  (s) => {
    const pull = nearest(s);
    return pull ? say(pull, s) : UNKNOWN;
  };

/** The string in hand as it is, so many semitones higher. */
const raised =
  (semitones: number): Quantity =>
  (s) => {
    const { own } = triedOf(s);
    return shareText(
      marginOf({ construction: own.construction, tension: own.tension * 2 ** (semitones / 6) }),
    );
  };

/** The highest note of the string in hand, at its own length, up to a share of its strength. */
const highest =
  (share: number): Quantity =>
  (s) => {
    const { own } = triedOf(s);
    const edges = edgeOf(own.construction);
    // The caution's share is that of steel wire, whose strength is one number.
    if (!edges || (share < 1 && !isTabled(edges))) return UNKNOWN;
    const limit = (edges.low * Math.sqrt(share)) / own.speakingLength;
    return formatNote(highestNoteBelow(limit, s.mine.a4));
  };

/** Density of what carries, burdened with all that it carries, kg/m³: of a plain string its own. */
function burden(c: Construction): number | undefined {
  return c.kind === 'measured' ? undefined : linearDensity(c) / coreArea(c);
}
const tried = (say: (p: Pull) => number | undefined, digits: number): Quantity => {
  return (s) => say(triedOf(s).tried)?.toFixed(digits) ?? '?';
};

/** Bent by a whole tone at the twelfth fret: the share of strength, where the stretch is known. */
const bent: Quantity = (s) => {
  const { construction, speakingLength, tension: pull } = triedOf(s).own;
  const held = { construction, speakingLength, tension: pull, at: speakingLength / 2 };
  const reach = marginOf({ construction, tension: pull }).share
    ? reachable({ ...held, rise: 200 })
    : undefined;
  if (!reach) return UNKNOWN;
  return shareText(
    marginOf({ construction, tension: bend({ ...held, travel: reach.travel }).tension }),
  );
};

/** A nine tuned to G4, as on twelve-string instruments, at the workshop's 24.75 in. */
const octaveG = pullOf({
  gauge: { kind: 'plain', gauge: 9 },
  note: 'G4',
  a4: 440,
  speakingLength: fromInches(24.75),
});

/** A plain and a wound string of one gauge. */
const sectionOf = (kind: 'plain' | 'wound', s: State) =>
  pullOf({ gauge: { kind, gauge: 20 }, note: 'G3', a4: s.mine.a4, speakingLength: mainScale(s) });

const byUnit = (s: State, metric: string, inch: string): string =>
  s.units === 'in-lb' ? inch : metric;

/** A strength is tabulated with three figures; what follows from it has no more. */
const tens = (value: number): number => 10 * Math.round(value / 10);
function shownStrength(c: Construction): number | undefined {
  const low = strengthBounds(c)?.low;
  return low && tens(low / 1e6);
}
/** From the strength as it is shown, so that the lines of the equation agree. */
function shownProduct(c: Construction): number | undefined {
  const [shown, heavy] = [shownStrength(c), burden(c)];
  return shown && heavy && Math.sqrt((shown * 1e6) / heavy) / 2;
}
const edgeText =
  (gauge: number): Quantity =>
  (s) =>
    `${(edge(gauge) / mainScale(s)).toFixed(0)}\u00a0Hz`;

export const quantities: Readonly<Record<string, Quantity>> = {
  'breaking.nineHolds': (s) => formatForce(wireHolds(9), s.units),
  'breaking.twelveHolds': (s) => formatForce(wireHolds(12), s.units),
  'breaking.holdsMore': () => formatShare(wireHolds(12) / wireHolds(9) - 1),
  'breaking.nineEdge': edgeText(9),
  'breaking.twelveEdge': edgeText(12),
  'breaking.twelveLower': () => `${(1200 * octaves(edge(12) / edge(9))).toFixed(0)} cents`,

  'breaking.nearNote': ofNearest((p) => formatNote(p.note)),
  'breaking.nearGauge': ofNearest((p, s) => formatGauge(p.gauge, s.units)),
  'breaking.nearShare': ofNearest((p) => shareText(marginOf(p))),
  'breaking.nearLeft': ofNearest((p) => size(marginOf(p).toEdge)),

  'breaking.band': () => {
    const [thin, thick] = [minimumStrengthTable[0], minimumStrengthTable.at(-1)];
    return size(semitonesTo((thick?.strength ?? NaN) / (thin?.strength ?? NaN)));
  },
  'breaking.fenceSemitones': () => size(semitonesTo(CAUTION_SHARE)),
  'breaking.semitone': () => formatShare(2 ** (1 / 6) - 1, 1),
  'breaking.inch': (s) => size(12 * octaves((mainScale(s) + fromInches(1)) / mainScale(s))),
  'breaking.speed': () => `${(2 * edge(10)).toFixed(0)}\u00a0m/s`,
  'breaking.product': (s) =>
    byUnit(s, `${edge(10).toFixed(0)}\u00a0m·Hz`, `${tens(inches(edge(10)))}\u00a0in·Hz`),
  'breaking.productAt': edgeText(10),

  'breaking.share': (s) => shareText(marginOf(triedOf(s).tried)),
  'breaking.ownShare': raised(0),
  'breaking.up1': raised(1),
  'breaking.up2': raised(2),
  'breaking.up3': raised(3),
  'breaking.up5': raised(5),
  'breaking.highestSafe': highest(CAUTION_SHARE),
  'breaking.highestAny': highest(1),
  'breaking.bent': bent,
  'breaking.octaveG': () => shareText(marginOf(octaveG)),

  'breaking.plainTwenty': (s) => shareText(marginOf(sectionOf('plain', s))),
  'breaking.woundTwenty': (s) => shareText(marginOf(sectionOf('wound', s))),

  'breaking.eqRho': tried((p) => burden(p.construction), 0),
  'breaking.eqSigma': tried(({ construction }) => shownStrength(construction), 0),
  'breaking.eqProduct': tried(({ construction }) => shownProduct(construction), 1),
  'breaking.eqL': (s) => triedOf(s).tried.speakingLength.toFixed(4),
  'breaking.eqF': tried((p) => {
    const product = shownProduct(p.construction);
    return product && product / p.speakingLength;
  }, 0),

  'breaking.steel': () => String(steel),
  'breaking.tenStrength': () => tens(strengthOf(10) / 1e6).toFixed(0),
  'breaking.tenSpeed': () => Math.sqrt(strengthOf(10) / steel).toFixed(0),
  'breaking.threeStress': () => formatShare(2 ** (3 / 6) - 1, 1),
  'breaking.threeRatio': () => (2 ** (3 / 12)).toFixed(4),
  'breaking.sheetShare': () => formatShare(tenShare(SHEET.length, SHEET.note)),
  'breaking.sheetTwelve': () =>
    formatShare((SHEET.length * noteFrequency(SHEET.note)) ** 2 / edge(12) ** 2),
};
