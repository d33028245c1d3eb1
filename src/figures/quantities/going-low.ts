/** The numbers of the chapter "Going low" that follow the reader's lowest string, or that the physics works out. */
import {
  formatDensity,
  formatDifference,
  formatForce,
  formatGauge,
  formatLength,
  formatNote,
  formatShare,
  lengthNumber,
  lengthUnit,
  travelNumber,
} from '../../instrument/format.ts';
import {
  lengthFactor,
  lowString,
  massFactor,
  ownLow,
  PROPOSED,
  withLow,
  type LowString,
  type LowStrung,
} from '../../instrument/low-string.ts';
import type { State, Units } from '../../instrument/schema.ts';
import { workshopInstrument } from '../../instrument/workshop.ts';
import { bendingStiffness, gramsPerMetre, tensionRatio } from '../../physics/index.ts';
import type { Quantity } from './common.ts';

const pull = (s: LowStrung, units: Units): string =>
  s.strain === 'broken' ? 'more than it holds' : formatForce(s.tension, units);
const drift = (s: LowStrung): string =>
  s.drift === undefined ? 'an unknown number of cents' : `${s.drift.toFixed(1)}\u00a0cents`;
const travel = (s: LowStrung, units: Units): string =>
  s.travel === undefined
    ? 'an unknown distance'
    : `${travelNumber(s.travel, units)}\u00a0${lengthUnit(units)}`;
const more = (ratio: number): string => formatShare(Math.abs(ratio - 1));

type Which = 'own' | 'down' | 'longer' | 'thicker' | 'point';
type Told = 'pull' | 'gauge' | 'length' | 'drift' | 'travel';

const tell: Readonly<Record<Told, (of: LowStrung, s: State) => string>> = {
  pull: (of, s) => pull(of, s.units),
  gauge: (of, s) => formatGauge(of.gauge, s.units),
  length: (of, s) => formatLength(of.speakingLength, s.units),
  drift,
  travel: (of, s) => travel(of, s.units),
};
/** What the chapter says of each of the five strings */
const said: Readonly<Record<Which, readonly Told[]>> = {
  own: ['pull', 'gauge', 'length', 'drift', 'travel'],
  down: ['pull', 'drift', 'travel'],
  longer: ['length', 'drift', 'travel'],
  thicker: ['pull', 'gauge', 'drift'],
  point: ['pull', 'gauge', 'length', 'drift'],
};

/** `low.down.pull` and the like */
const each: Readonly<Record<string, Quantity>> = Object.fromEntries(
  (Object.keys(said) as Which[]).flatMap((id) =>
    said[id].map((what): [string, Quantity] => [
      `low.${id}.${what}`,
      (s) => tell[what](lowString(s)[id], s),
    ]),
  ),
);

const state: Readonly<Record<string, Quantity>> = {
  'low.ownNote': (s) => formatNote(lowString(s).own.note),
  'eq.low.n': (s) => String(lowString(s).semitones),
  'eq.low.L': (s) => lengthNumber(lowString(s).own.speakingLength, s.units),
  'eq.low.longer': (s) => lengthNumber(lowString(s).longer.speakingLength, s.units),
  'eq.low.mu': (s) => gramsPerMetre(lowString(s).own.linearDensity).toPrecision(4),
  'eq.low.heavier': (s) =>
    gramsPerMetre(lowString(s).own.linearDensity * massFactor(lowString(s).semitones)).toPrecision(
      4,
    ),
};

/** A fourth lower, whatever the reader has chosen: what the guess and the exercises ask for. */
const fourth = (s: State): LowString => lowString(withLow(s, { semitones: PROPOSED }));
const FOURTH_PULL = tensionRatio({ frequency: 1 / lengthFactor(PROPOSED) });

const exercise: Readonly<Record<string, Quantity>> = {
  'low.ex.note': (s) => formatNote(fourth(s).note),
  'low.ex.gauge': (s) => formatGauge(fourth(s).thicker.gauge, s.units),
  'low.ex.gaugePull': (s) => pull(fourth(s).thicker, s.units),
  'low.ex.gaugeChange': (s) => formatDifference(fourth(s).thicker.change),
  'low.ex.downPull': (s) => pull(fourth(s).down, s.units),
  'low.ex.length': (s) => formatLength(fourth(s).longer.speakingLength, s.units),
  'low.ex.density': (s) => formatDensity(ownLow(s.mine).own.linearDensity),
  'low.ex.heavier': (s) => formatDensity(ownLow(s.mine).own.linearDensity * massFactor(PROPOSED)),
  'low.ex.downTravel': (s) => travel(fourth(s).down, s.units),
  'low.ex.thickTravel': (s) => travel(fourth(s).thicker, s.units),
  'low.ex.longTravel': (s) => travel(fourth(s).longer, s.units),
};

const standard = ownLow(workshopInstrument('redshank')).own;
const bass = ownLow(workshopInstrument('godwit')).own;
const baritone = ownLow(workshopInstrument('curlew')).own;
const seven = ownLow(workshopInstrument('avocet')).own;

/** What the prose claims of no instrument in particular. */
const constant: Readonly<Record<string, Quantity>> = {
  'const.fourthLength': () => lengthFactor(PROPOSED).toFixed(3),
  'const.fourthMass': () => massFactor(PROPOSED).toFixed(2),
  'const.fourthPull': () => formatShare(FOURTH_PULL),
  'const.bassLength': () => (bass.speakingLength / standard.speakingLength).toFixed(2),
  'const.bassGauge': () => (bass.gauge.gauge / standard.gauge.gauge).toFixed(2),
  'const.bassBoth': () =>
    (
      (bass.speakingLength / standard.speakingLength) *
      (bass.gauge.gauge / standard.gauge.gauge)
    ).toFixed(1),
  'const.bassPull': (s) => formatForce(bass.tension, s.units),
  'const.bassTimes': () => (bass.tension / standard.tension).toFixed(1),
  'const.baritone': (s) =>
    `${formatLength(baritone.speakingLength, s.units)} with a ${formatGauge(baritone.gauge, s.units)} at ${formatNote(baritone.note)}`,
  'const.seven': (s) =>
    `${formatLength(seven.speakingLength, s.units)} with a ${formatGauge(seven.gauge, s.units)}`,
  'const.baritonePull': (s) => formatForce(baritone.tension, s.units),
  'const.baritoneDrift': () => drift(baritone),
  'const.sevenPull': (s) => formatForce(seven.tension, s.units),
  'const.coreGrowth': () => {
    const [from, to] = [standard, baritone].map(({ construction: c }) =>
      c.kind === 'wound' ? c.core.diameter : NaN,
    );
    return more((to ?? NaN) / (from ?? NaN));
  },
  'const.stiffnessGrowth': () =>
    more(bendingStiffness(baritone.construction) / bendingStiffness(standard.construction)),
  'const.massGrowth': () => more(baritone.linearDensity / standard.linearDensity),
  'const.wholeGrowth': () => more(baritone.gauge.gauge / standard.gauge.gauge),
};

export const quantities: Readonly<Record<string, Quantity>> = {
  ...each,
  ...state,
  ...exercise,
  ...constant,
};
