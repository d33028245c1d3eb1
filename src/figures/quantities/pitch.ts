/** The numbers of the chapter "Pitch". */
import {
  formatDifference,
  formatForce,
  formatFrequency,
  formatGauge,
  formatLength,
  formatNote,
  formatShare,
  formatTotal,
  forceNumber,
  forceUnit,
} from '../../instrument/format.ts';
import { formatThickness } from '../../instrument/thickness-text.ts';
import { pullsOf, totalPull } from '../../instrument/pulls.ts';
import type { State } from '../../instrument/schema.ts';
import { noteFrequency, noteName, noteNumber } from '../../physics/index.ts';
import { NUT_HEIGHT } from '../../instrument/action.ts';
import { clamped, heightOf, padBehind } from '../pull/the-capo/capo.ts';
import { cents } from '../pull/the-capo/describe.ts';
import { timesTooHigh } from '../pull/the-capo/frame.ts';
import { limitText } from '../pull/the-octave/describe.ts';
import { pullFactor, climbOf } from '../pull/the-octave/climb.ts';
import { triedOf } from '../trial.ts';
import type { Quantity } from './common.ts';

const STEP = 2 ** (1 / 12);
const own = (s: State) => triedOf(s).own;

const noteAway = (s: State, semitones: number): string => {
  const { note } = own(s);
  return formatNote(noteName(noteNumber(note) + semitones, { flats: note.includes('b') }));
};
const pullAway = (s: State, semitones: number): string =>
  formatForce(own(s).tension * pullFactor(semitones), s.units);

/** How far the last line of the derivation goes: to the note in hand, or a semitone down until one is tried. */
const steps = (s: State): number => {
  const { own, value } = climbOf(s);
  return value === own ? -1 : value - own;
};
const signed = (value: number): string => String(value).replace('-', '\u2212');

/** With the capo where the drawing proposes it. */
const capo = (s: State) => clamped(own(s), 2, s.mine.fretless);

export const quantities: Readonly<Record<string, Quantity>> = {
  'pitch.up': () => formatShare(pullFactor(1) - 1, 1),
  'pitch.down': () => formatShare(1 - pullFactor(-1), 1),
  'pitch.tone': () => formatShare(1 - pullFactor(-2), 1),
  'pitch.step': () => formatShare(STEP - 1, 1),
  'pitch.stepRatio': () => STEP.toFixed(4),
  'pitch.pullRatio': () => pullFactor(1).toFixed(4),
  'pitch.downRatio': () => pullFactor(-1).toFixed(4),
  'pitch.downNote': (s) => noteAway(s, -1),
  'pitch.downPull': (s) => pullAway(s, -1),
  'pitch.pull': (s) =>
    triedOf(s).tried.strain === 'broken'
      ? 'more than it can hold'
      : formatForce(triedOf(s).tried.tension, s.units),
  'pitch.limit': (s) => limitText(climbOf(s)),
  'pitch.toneTotal': (s) => formatTotal(totalPull(pullsOf(s.mine)) * pullFactor(-2), s.units),
  'pitch.twoHertz': () => formatDifference((442 / 440) ** 2 - 1),
  'pitch.at432': () => formatShare(1 - (432 / 440) ** 2, 1),
  'pitch.cent': () => formatShare(pullFactor(1 / 100) - 1, 2),
  'pitch.capoHigh': (s) => timesTooHigh(own(s).speakingLength).toFixed(0),
  'pitch.from415': () => formatShare(1 - (415 / 440) ** 2, 1),

  'pitch.eqSteps': (s) => signed(steps(s)),
  'pitch.eqNote': (s) => noteAway(s, steps(s)),
  'pitch.eqOwn': (s) => forceNumber(climbOf(s).rest.tension, s.units),
  'pitch.eqPull': (s) => forceNumber(climbOf(s).rest.tension * pullFactor(steps(s)), s.units),
  'pitch.eqUnit': (s) => forceUnit(s.units),

  'pitch.nutHeight': () => `${(NUT_HEIGHT * 1000).toFixed(1)}\u00a0mm`,
  'pitch.capoHeight': (s) => `${(heightOf(own(s)) * 1000).toFixed(1)}\u00a0mm`,
  'pitch.capoBehind': (s) => `${(padBehind(own(s).speakingLength, 2) * 1000).toFixed(0)}\u00a0mm`,
  'pitch.capoPull': (s) => {
    const { stretched } = capo(s);
    return stretched === undefined ? 'an unknown little' : formatShare(stretched, 2);
  },
  'pitch.capoCents': (s) => {
    const { sharp } = capo(s);
    return sharp === undefined ? 'an unknown few cents' : cents(sharp);
  },

  'pitch.gauge': (s) => formatGauge(own(s).gauge, s.units),
  'pitch.gaugeDown': (s) => formatThickness(own(s).gauge.gauge * STEP, s.units),

  'pitch.exNote': (s) => noteAway(s, -3),
  'pitch.exRatio': () => (STEP ** -3).toFixed(4),
  'pitch.exSquare': () => pullFactor(-3).toFixed(4),
  'pitch.exPull': (s) => pullAway(s, -3),
  'pitch.ex432': (s) => formatFrequency(noteFrequency(own(s).note, 432)),
  'pitch.exRatio432': (s) => (432 / s.mine.a4).toFixed(4),
  'pitch.a4': (s) => formatFrequency(s.mine.a4),
  'pitch.exLength': (s) => formatLength(clamped(own(s), 5).length, s.units),
};
