/** The numbers of the chapter "Three things set the pull". */
import { bareGauge, constructionOf, stepGauge } from '../../instrument/drawer.ts';
import {
  forceNumber,
  formatDensity,
  formatDifference,
  formatForce,
  formatGauge,
  formatLength,
  formatNote,
  formatShare,
} from '../../instrument/format.ts';
import { pullDoubt } from '../../instrument/doubts.ts';
import type { State } from '../../instrument/schema.ts';
import { thinnestPlain } from '../../instrument/thinnest-plain.ts';
import {
  fromMillimetres,
  gramsPerMetre,
  inches,
  linearDensity,
  material,
  millimetres,
  noteName,
  noteNumber,
  pluckGlide,
  tensionRatio,
  waveSpeed,
} from '../../physics/index.ts';
import { formatSmall } from '../kit/setback.ts';
import type { Quantity } from './common.ts';
import { triedOf } from '../trial.ts';

const SEMITONE = 2 ** (1 / 12);
const own = (s: State) => triedOf(s).own;
const tried = (s: State) => triedOf(s).tried;

/** The note so many semitones from the string's own. */
const noteAway = (s: State, semitones: number): string => {
  const { note } = own(s);
  return formatNote(noteName(noteNumber(note) + semitones, { flats: note.includes('b') }));
};

/** Pull of the reader's string, N, with length and pitch multiplied. */
const pullAt = (s: State, ratios: { speakingLength?: number; frequency?: number }): number =>
  own(s).tension * tensionRatio(ratios);

const nextMass = (s: State): number => {
  const { gauge } = own(s);
  return (
    linearDensity(constructionOf(stepGauge(gauge, 1))) /
      linearDensity(constructionOf(bareGauge(gauge))) -
    1
  );
};

/** A hard pluck: so far aside, at this share of the length from the saddle. */
const PLUCKED = { travel: fromMillimetres(3), at: 1 / 6 } as const;
const glide = (s: State): string => {
  const cents = pluckGlide({ ...tried(s), ...PLUCKED });
  return cents === undefined ? 'an unknown amount' : `${cents.toFixed(1)}\u00a0cents`;
};

const massOf = (gauge: number): number => linearDensity(constructionOf({ kind: 'plain', gauge }));

export const quantities: Readonly<Record<string, Quantity>> = {
  'three.ownMu': (s) => gramsPerMetre(own(s).linearDensity).toPrecision(4),
  'three.ownKg': (s) => own(s).linearDensity.toPrecision(4),
  'three.ownL': (s) => own(s).speakingLength.toFixed(4),
  'three.ownF': (s) => own(s).frequency.toFixed(1),
  'three.ownT': (s) => forceNumber(own(s).tension, 'mm-N'),
  'three.pull': (s) =>
    tried(s).strain === 'broken' ? 'more than it can hold' : formatForce(tried(s).tension, s.units),
  'three.share': (s) => {
    const { share } = tried(s);
    return share === undefined ? 'an unknown share' : formatShare(share);
  },
  'three.pluckBy': (s) => formatSmall(PLUCKED.travel, s.units),
  'three.glide': glide,
  'three.speed': (s) => `${waveSpeed(tried(s)).toFixed(0)}\u00a0m/s`,
  'three.halfLength': (s) => formatLength(own(s).speakingLength / 2, s.units),
  'three.halfPull': (s) => formatForce(pullAt(s, { speakingLength: 0.5 }), s.units),
  'three.onePercent': () => formatShare(tensionRatio({ speakingLength: 1.01 }) - 1),
  'three.semitone': () => formatShare(tensionRatio({ frequency: SEMITONE }) - 1),
  'three.wholeTone': () => formatShare(1 - tensionRatio({ frequency: SEMITONE ** -2 })),
  'three.wholeToneRatio': () => (SEMITONE ** -2).toFixed(4),
  'three.wholeToneSquared': () => tensionRatio({ frequency: SEMITONE ** -2 }).toFixed(4),
  'three.wholeToneNote': (s) => noteAway(s, -2),
  'three.wholeTonePull': (s) => formatForce(pullAt(s, { frequency: SEMITONE ** -2 }), s.units),
  'three.semitoneNote': (s) => noteAway(s, 1),
  'three.semitoneRatio': () => SEMITONE.toFixed(4),
  'three.semitoneLength': (s) => formatLength(own(s).speakingLength / SEMITONE, s.units),
  'three.fifthFret': (s) => formatLength(own(s).speakingLength * SEMITONE ** -5, s.units),
  'three.fifthFretNote': (s) => noteAway(s, 5),
  'three.nextGauge': (s) => formatGauge(stepGauge(own(s).gauge, 1), s.units),
  'three.nextMass': (s) => formatDifference(nextMass(s)),
  'three.nineTen': () => formatShare(10 / 9 - 1),
  'three.nineTenMass': () => formatShare(massOf(10) / massOf(9) - 1),
  'three.doubt': (s) => formatShare(pullDoubt(own(s)), 1),
  'three.quarter': (s) => formatForce(own(s).tension / 4, s.units),
  'three.octaveDown': (s) => noteAway(s, -12),
  'three.plainGauge': (s) => formatGauge(thinnestPlain(s.mine).gauge, s.units),
  'three.plainInches': (s) => `${inches(thinnestPlain(s.mine).diameter).toFixed(4)}\u00a0in`,
  'three.plainDiameter': (s) => millimetres(thinnestPlain(s.mine).diameter).toFixed(4),
  'three.plainMass': (s) => formatDensity(thinnestPlain(s.mine).linearDensity),
  'three.plainMu': (s) => gramsPerMetre(thinnestPlain(s.mine).linearDensity).toPrecision(4),
  'three.steel': () => material('musicWire').density.value.toFixed(0),
};
