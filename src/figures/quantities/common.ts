/** Quantities that any chapter may name: the instrument, the string in hand as it is and as tried out, bare SI for equations. */
import {
  forceNumber,
  formatDensity,
  formatForce,
  formatFrequency,
  formatGauge,
  formatLength,
  formatNote,
  formatShare,
  formatTotal,
} from '../../instrument/format.ts';
import { pullsOf, totalPull } from '../../instrument/pulls.ts';
import type { State } from '../../instrument/schema.ts';
import { CAUTION_SHARE, feltThresholds, gramsPerMetre } from '../../physics/index.ts';
import { mainScale, triedOf } from '../trial.ts';

export type Quantity = (state: State) => string;

const instrument: Readonly<Record<string, Quantity>> = {
  'mine.name': ({ mine }) => mine.name || 'your instrument',
  'mine.scale': (s) => formatLength(mainScale(s), s.units),
  'mine.total': (s) => formatTotal(totalPull(pullsOf(s.mine)), s.units),
};

/** The string in hand as it is. */
const own: Readonly<Record<string, Quantity>> = {
  'own.note': (s) => formatNote(triedOf(s).own.note),
  'own.gauge': (s) => formatGauge(triedOf(s).own.gauge, s.units),
  'own.length': (s) => formatLength(triedOf(s).own.speakingLength, s.units),
  'own.frequency': (s) => formatFrequency(triedOf(s).own.frequency),
  'own.density': (s) => formatDensity(triedOf(s).own.linearDensity),
  'own.pull': (s) => formatForce(triedOf(s).own.tension, s.units),
};

/** The string in hand as tried out. */
const trial: Readonly<Record<string, Quantity>> = {
  'trial.note': (s) => formatNote(triedOf(s).tried.note),
  'trial.length': (s) => formatLength(triedOf(s).tried.speakingLength, s.units),
  'trial.frequency': (s) => formatFrequency(triedOf(s).tried.frequency),
  'trial.density': (s) => formatDensity(triedOf(s).tried.linearDensity),
  'trial.pull': (s) => formatForce(triedOf(s).tried.tension, s.units),
};

/** What the reader has chosen to read in. */
const units: Readonly<Record<string, Quantity>> = {
  'units.gauge': (s) => (s.units === 'in-lb' ? 'thousandths of an inch' : 'millimetres'),
};

/** Bare SI numbers for the equations, which carry their units themselves. */
const equation: Readonly<Record<string, Quantity>> = {
  'eq.mu': (s) => gramsPerMetre(triedOf(s).tried.linearDensity).toPrecision(4),
  'eq.L': (s) => triedOf(s).tried.speakingLength.toFixed(4),
  'eq.f': (s) => triedOf(s).tried.frequency.toFixed(1),
  'eq.T': (s) => forceNumber(triedOf(s).tried.tension, 'mm-N'),
};

/** The same for every reader, and wanted in several chapters. */
const limits: Readonly<Record<string, Quantity>> = {
  'hand.forceLow': () => formatShare(feltThresholds.pull.low.value),
  'hand.forceHigh': () => formatShare(feltThresholds.pull.high.value),
  'breaking.fence': () => formatShare(CAUTION_SHARE),
};

export const quantities: Readonly<Record<string, Quantity>> = {
  ...instrument,
  ...own,
  ...trial,
  ...units,
  ...equation,
  ...limits,
};
