/** The numbers of the chapter "What neck and bridge carry". */
import { benchBridge, benchRounds } from '../../instrument/bench-bridge.ts';
import {
  formatDifference,
  formatForce,
  formatGauge,
  formatLength,
  formatNote,
  formatShare,
  forceUnit,
  formatTotal,
  inUnits,
} from '../../instrument/format.ts';
import { heavierSet } from '../../instrument/heavier.ts';
import { pullChange } from '../../instrument/length-law.ts';
import { pullsOf, totalPull } from '../../instrument/pulls.ts';
import type { State, Units } from '../../instrument/schema.ts';
import {
  bridgeBalance,
  fromInches,
  heldBack,
  loadChange,
  millimetres,
  saddleForce,
  slotFriction,
  tipped,
  turnsToLevel,
} from '../../physics/index.ts';
import { roundsNeeded, shareLeft } from '../consequences/rounds/rounds.ts';
import { formatArm, formatRate } from '../consequences/the-bridge/describe.ts';
import { mainScale, triedOf } from '../trial.ts';
import type { Quantity } from './common.ts';

const total = (s: State): number => totalPull(pullsOf(s.mine));
const tensions = (s: State, steps: number): readonly number[] =>
  pullsOf(heavierSet(s.mine, steps)).map((p) => p.tension);
/** The load of the set one step of the drawer heavier, against the set as it is. */
const heavier = (s: State) => loadChange({ tensions: tensions(s, 1), reference: tensions(s, 0) });
const balance = (s: State) => bridgeBalance({ ...benchBridge, pull: total(s) });
const turns = (s: State): number =>
  turnsToLevel({ ...benchBridge, from: total(s), to: total(s) + heavier(s).difference });

const WHOLE_TONE_CENTS = 200;
const WHOLE_TONE = 2 ** (-2 / 6) - 1;
const TEN_DEGREES = Math.PI / 18;

const stuck = heldBack({ angle: TEN_DEGREES });

const UNKNOWN = 'an unknown amount';
/** The string in hand bent a whole tone on that bridge. */
const bent = (s: State) =>
  tipped({
    strings: pullsOf(s.mine),
    bent: triedOf(s).index,
    rise: WHOLE_TONE_CENTS,
    bridge: benchBridge,
  });
/** How far the other strings fall, smallest first; where none is known, nothing. */
const fallen = (s: State): readonly number[] => {
  const { index } = triedOf(s);
  return bent(s)
    .cents.flatMap((cents, i) => (i === index || cents === undefined ? [] : [-cents]))
    .sort((a, b) => a - b);
};
const flat: Quantity = (s) => {
  const [least, most] = [fallen(s).at(0), fallen(s).at(-1)];
  return least === undefined || most === undefined
    ? UNKNOWN
    : `${least.toFixed(0)} to ${most.toFixed(0)}\u00a0cents`;
};

const fourDigits = (newtons: number, units: Units): string =>
  `${inUnits(newtons, units).toPrecision(4)}\u00a0${forceUnit(units)}`;

export const quantities: Readonly<Record<string, Quantity>> = {
  'carry.heavierTotal': (s) => formatTotal(total(s) + heavier(s).difference, s.units),
  'carry.heavierMore': (s) => formatDifference(heavier(s).relative),
  'carry.heavierSet': (s) =>
    heavierSet(s.mine, 1)
      .strings.map((g) => formatGauge(g, s.units))
      .join(', '),
  'carry.downTotal': (s) => formatTotal(total(s) * (1 + WHOLE_TONE), s.units),
  'carry.down': () => formatDifference(WHOLE_TONE),
  'carry.downBare': () => `${(-100 * WHOLE_TONE).toFixed(0)}\u00a0%`,
  'carry.inch': (s) => formatDifference(pullChange(1 + fromInches(1) / mainScale(s))),
  'carry.inchLonger': (s) => formatLength(mainScale(s) + fromInches(1), s.units),
  'carry.press': (s) =>
    formatForce(saddleForce({ tension: triedOf(s).own.tension, angle: TEN_DEGREES }), s.units),
  'carry.friction': () => String(slotFriction.value),
  'carry.held': () => formatShare(stuck.share, 1),
  'carry.heldCents': () => `${stuck.cents.toFixed(0)}\u00a0cents`,
  'carry.bentNote': (s) => formatNote(triedOf(s).own.note),
  'carry.bentTilt': (s) => `${((bent(s).tilt * 180) / Math.PI).toFixed(1)}\u00a0degrees`,
  'carry.bentFlat': flat,
  'carry.bentTravel': (s) => {
    const { travelMore } = bent(s);
    return travelMore === undefined ? UNKNOWN : formatShare(travelMore);
  },
  'carry.roundShare': () => formatShare(shareLeft),
  'carry.roundsNeeded': () => `${roundsNeeded}`,
  'carry.bentShare': (s) => formatShare(bent(s).stringsShare),
  'carry.reliefShare': (s) => (heavier(s).relative / -WHOLE_TONE).toFixed(2),

  'carry.stringArm': (s) => formatArm(benchBridge.stringArm, s.units),
  'carry.springArm': (s) => formatArm(benchBridge.springArm, s.units),
  'carry.rate': (s) => formatRate(benchBridge.rate, s.units),
  'carry.pitch': (s) => formatArm(benchBridge.pitch, s.units),
  'carry.count': () => String(benchBridge.count),
  'carry.springs': (s) => formatTotal(balance(s).springForce, s.units),
  'carry.edge': (s) => formatTotal(total(s) + balance(s).springForce, s.units),
  'carry.turns': (s) => turns(s).toFixed(1),

  'carry.eqT': (s) => total(s).toFixed(0),
  'carry.eqDelta': (s) => heavier(s).difference.toFixed(1),
  'carry.eqA': () => millimetres(benchBridge.stringArm).toFixed(0),
  'carry.eqB': () => millimetres(benchBridge.springArm).toFixed(0),
  'carry.eqF': (s) => balance(s).springForce.toFixed(0),
  'carry.eqRate': () => (benchBridge.rate / 1000).toFixed(1),
  'carry.eqPitch': () => millimetres(benchBridge.pitch).toFixed(0),
  'carry.eqTurns': (s) => turns(s).toFixed(2),

  // To four digits: the exercises go on from the difference of the two.
  'carry.roundTotal': (s) => fourDigits(benchRounds.before, s.units),
  'carry.roundSprings': (s) =>
    formatForce((benchRounds.before * benchBridge.stringArm) / benchBridge.springArm, s.units),
  'carry.roundHeavier': (s) => fourDigits(benchRounds.after, s.units),
  'carry.roundTurns': () =>
    turnsToLevel({ ...benchBridge, from: benchRounds.before, to: benchRounds.after }).toFixed(2),
};
