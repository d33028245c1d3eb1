/** What the three handles of one string hold, where each may go, and what a move of each does to the reader's state. */
import { bareGauge, drawerOf, nearestGauge } from '../../../instrument/drawer.ts';
import {
  formatGauge,
  formatLength,
  formatNote,
  gaugeNumber,
  spokenGauge,
} from '../../../instrument/format.ts';
import { parseAnyLength, parseNote, type Parsed } from '../../../instrument/parse.ts';
import { parseGauge } from '../../../instrument/parse-gauge.ts';
import { limits } from '../../../instrument/limits.ts';
import { once } from '../../../instrument/once.ts';
import type { Gauge, State } from '../../../instrument/schema.ts';
import { noteName, noteNumber } from '../../../physics/index.ts';
import { lengthDomain } from '../scale-length/frame.ts';
import type { Span } from '../slide.ts';
import { mainScale, triedOf, withTrial } from '../../trial.ts';

/** One handle in its own quantity: m, semitones above C-1, thousandths of an inch. */
export interface Hand extends Span {
  readonly own: number;
  readonly stops?: readonly number[];
  readonly label: string;
  readonly text: string;
  readonly spoken?: string;
}

/** How far the pitch goes either way of the string's own note, in semitones: an octave down, a fourth up. */
const BELOW = 12;
const ABOVE = 5;

const same = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-6 * Math.abs(b);

export const lengthHand = once((state: State): Hand => {
  const { own, tried } = triedOf(state);
  // A trial names the treble side's length; a string of a multi-scale instrument shows its own.
  const share = own.speakingLength / mainScale(state);
  const domain = lengthDomain(state.mine, state.units);
  return {
    ...domain,
    min: domain.min * share,
    max: domain.max * share,
    value: tried.speakingLength,
    own: own.speakingLength,
    label: 'Speaking length',
    text: formatLength(tried.speakingLength, state.units),
  };
});

export function setLength(state: State, metres: number): State {
  const { own } = triedOf(state);
  const ratio = metres / own.speakingLength;
  if (same(ratio, 1)) return withTrial(state, { length: undefined });
  // Rounding on the way through another string's length must not leave the site's range.
  const length = Math.min(limits.scale.max, Math.max(limits.scale.min, mainScale(state) * ratio));
  return withTrial(state, { length });
}

export const noteHand = once((state: State): Hand => {
  const { own, tried } = triedOf(state);
  const at = noteNumber(own.note);
  return {
    value: noteNumber(tried.note),
    own: at,
    min: Math.max(limits.note.min, at - BELOW),
    max: Math.min(limits.note.max, at + ABOVE),
    step: 1,
    fine: 1,
    page: 2,
    label: 'Pitch',
    text: formatNote(tried.note),
  };
});

export function setNote(state: State, number: number): State {
  const { own } = triedOf(state);
  const note = noteName(number, { flats: own.note.includes('b') });
  return withTrial(state, { note: number === noteNumber(own.note) ? undefined : note });
}

/** The drawer's gauges of the kind in hand from half the string's own to twice it, and its own among them. */
export const gaugeHand = once((state: State): Hand => {
  const { own, tried } = triedOf(state);
  const { kind, gauge, family } = tried.gauge;
  const at = own.gauge.gauge;
  const listed = drawerOf(family).gauges[kind].filter((g) => g >= at / 2 && g <= at * 2);
  const stops = [...new Set([...listed, ...(kind === own.gauge.kind ? [at] : []), gauge])].sort(
    (a, b) => a - b,
  );
  return {
    value: gauge,
    own: at,
    min: stops[0] ?? gauge,
    max: stops.at(-1) ?? gauge,
    step: kind === 'plain' ? 0.5 : 1,
    fine: 0.5,
    page: 4,
    stops,
    label: 'Gauge',
    text: formatGauge(tried.gauge, state.units),
    spoken: spokenGauge(tried.gauge, state.units),
  };
});

const setWhole = (state: State, gauge: Gauge): State => {
  const { own } = triedOf(state);
  const back = gauge.kind === own.gauge.kind && gauge.gauge === own.gauge.gauge;
  return withTrial(state, { gauge: back ? undefined : bareGauge(gauge) });
};

/** A gauge in thousandths, of the kind in hand. */
export const setGauge = (state: State, gauge: number): State =>
  setWhole(state, { ...triedOf(state).tried.gauge, gauge });

/** What the handles accept when a value is typed: the same ranges, said in the same units. */
export function parseLength(state: State, typed: string): Parsed<number> {
  const parsed = parseAnyLength(typed, state.units);
  const { min, max } = lengthHand(state);
  if (!parsed.ok || (parsed.value >= min - 1e-4 && parsed.value <= max + 1e-4)) return parsed;
  const [low, high] = [min, max].map((m) => formatLength(m, state.units));
  return { ok: false, message: `This drawing goes from ${low} to ${high}.` };
}

export function parsePitch(state: State, typed: string): Parsed<number> {
  const parsed = parseNote(typed);
  if (!parsed.ok) return parsed;
  const { min, max } = noteHand(state);
  const value = noteNumber(parsed.value);
  if (value >= min && value <= max) return { ok: true, value };
  return {
    ok: false,
    message: `This drawing goes from ${formatNote(noteName(min))} to ${formatNote(noteName(max))}.`,
  };
}

export function parseStringGauge(state: State, typed: string): Parsed<Gauge> {
  const { own, tried } = triedOf(state);
  const parsed = parseGauge(typed, tried.gauge.kind, tried.gauge.family);
  if (!parsed.ok) return parsed;
  const { kind, gauge, family } = parsed.value;
  const at = own.gauge.gauge;
  if (gauge >= at / 2 && gauge <= at * 2) return parsed;
  const [low, high] = [Math.max(at / 2, drawerOf(family).gauges[kind][0] ?? 0), at * 2].map((g) =>
    gaugeNumber(nearestGauge(kind, g, family), state.units),
  );
  const unit = state.units === 'in-lb' ? '' : '\u00a0mm';
  return {
    ok: false,
    message: `This drawing goes from ${low} to ${high}${unit}, half to twice the string’s own gauge.`,
  };
}

/** The kind too, when it was typed. */
export const setTypedGauge = setWhole;

export interface Factors {
  readonly length: number;
  readonly pitch: number;
  readonly gauge: number;
  readonly mass: number;
  /** of the pull, by all three together */
  readonly pull: number;
}

/** What was tried over what is, quantity by quantity. */
export function factorsOf(state: State): Factors {
  const { own, tried } = triedOf(state);
  return {
    length: tried.speakingLength / own.speakingLength,
    pitch: tried.frequency / own.frequency,
    gauge: tried.gauge.gauge / own.gauge.gauge,
    mass: tried.linearDensity / own.linearDensity,
    pull: tried.tension / own.tension,
  };
}

/** ×1.039 */
export const formatFactor = (factor: number): string => `×${factor.toFixed(3)}`;
