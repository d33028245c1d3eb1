/**
 * What a chapter can't say of the reader's instrument, a line for each, with the nearest that it can speak of. Loaded only where
 * another instrument is shown than the one that the pages were built for.
 */
import { behindCapo, capoOn } from '../../../instrument/capo.ts';
import { formatLength, formatNote } from '../../../instrument/format.ts';
import { pullsOf, type Pull } from '../../../instrument/pulls.ts';
import { stretchKnown } from '../../../instrument/pushed.ts';
import type { State } from '../../../instrument/schema.ts';
import { workshopInstrument } from '../../../instrument/workshop.ts';
import { isTabled, marginOf } from '../margin.ts';
import { triedOf } from '../../trial.ts';

/** Another string of the instrument to take in hand, or one of the workshop's instruments to look at. */
export interface Offer {
  readonly label: string;
  readonly change: (state: State) => State;
}

export interface Scope {
  readonly text: string;
  readonly offer?: Offer | undefined;
}

const called = ({ mine }: State): string => mine.name || 'your instrument';
const held = (state: State): Pull => triedOf(state).own;
const noteOf = (state: State): string => formatNote(held(state).note);

/** One of the workshop's, which every chapter can speak of; of two lengths where the chapter is about them. */
const example = (id: string): Offer => {
  const mine = workshopInstrument(id);
  return {
    label: `Look at ${mine.name}, one of the workshop’s`,
    change: (state) => ({ ...state, mine, trial: { string: 0 } }),
  };
};
const guitar = example('redshank');

/** The instrument's own string that is nearest to the one in hand and of which `knows` holds; else one of the workshop's. */
function stringWith(state: State, knows: (pull: Pull) => boolean): Offer {
  const { index } = triedOf(state);
  const [nearest] = pullsOf(state.mine)
    .map((pull, i) => ({ pull, i }))
    .filter(({ pull }) => knows(pull))
    .sort((a, b) => Math.abs(a.i - index) - Math.abs(b.i - index));
  if (!nearest) return guitar;
  return {
    label: `Choose the ${formatNote(nearest.pull.note)} string`,
    change: (next) => ({ ...next, trial: { string: nearest.i } }),
  };
}

type Line = (state: State) => Scope | undefined;

const stiffnessKnown = ({ construction: c }: Pull): boolean =>
  c.kind !== 'measured' || c.bendingStiffness !== undefined;

/** Where a string is known by its weight alone: what nobody knows of it then, and so what can't be said */
const unlessKnown =
  (isKnown: (pull: Pull) => boolean, unknown: string) =>
  (so: string): Line =>
  (state) =>
    isKnown(held(state))
      ? undefined
      : {
          text: `We know your ${noteOf(state)} string by its weight alone, not ${unknown}, so ${so}.`,
          offer: stringWith(state, isKnown),
        };
const unlessStretchKnown = unlessKnown(stretchKnown, 'how far it stretches');
const unlessStiffnessKnown = unlessKnown(stiffnessKnown, 'how stiff it is');

const strengthTabled = (pull: Pull): boolean => {
  const { share } = marginOf(pull);
  return share !== undefined && isTabled(share);
};
const unlessStrengthTabled: Line = (state) => {
  const pull = held(state);
  if (strengthTabled(pull)) return undefined;
  const text = marginOf(pull).share
    ? `Published strengths of what your ${noteOf(state)} string is made of lie far apart, so its share runs from one to the other, and there’s no fence.`
    : `We don’t know how strong the core of your ${noteOf(state)} string is, so we can’t say when it breaks.`;
  return { text, offer: stringWith(state, strengthTabled) };
};

const withoutFrets =
  (text: (name: string) => string): Line =>
  (state) =>
    state.mine.fretless ? { text: text(called(state)), offer: guitar } : undefined;

const withOneString =
  (text: string): Line =>
  (state) =>
    state.mine.strings.length === 1 ? { text, offer: example('avocet') } : undefined;

/** A string that begins at a fret of its own: frets are counted from there. */
const ofOwnNut: Line = (state) => {
  const from = state.mine.strings[triedOf(state).index]?.from;
  return from
    ? {
        text: `Your ${noteOf(state)} string begins at fret ${from}. Its frets are counted from there.`,
      }
    : undefined;
};

/** Where a capo touches the string in hand: what sounds of it, and which of a chapter's drawings leave it out. */
const withCapo =
  (whole: string): Line =>
  (state) => {
    const { mine, units } = state;
    const frets = capoOn(mine, triedOf(state).index);
    if (frets === 0) return undefined;
    const { speakingLength } = behindCapo(held(state), frets);
    return {
      text: `With the capo at fret ${mine.capo}, ${formatLength(speakingLength, units)} of your ${noteOf(state)} string sounds, and you bend only that. ${whole}`,
    };
  };

const tunedWithCapo: Line = ({ mine: { capo } }) =>
  capo
    ? { text: `The capo at fret ${capo} isn’t in these drawings: they count from the nut.` }
    : undefined;

const plucked: Line = (state) =>
  state.mine.bowed
    ? {
        text: `${called(state)} is bowed. What this chapter says of partials, and what you hear, is the string when it’s plucked.`,
      }
    : undefined;

/** Of chapters that are not named everything can be said. */
const lines: Readonly<Record<string, readonly Line[]>> = {
  'speaking-length': [
    withoutFrets(
      (name) =>
        `${name} has no twelfth fret to measure to. Measure from the nut to where the string leaves the bridge.`,
    ),
  ],
  pitch: [
    withoutFrets(
      (name) =>
        `${name} has no fret for a capo to press its strings against: its pad ends them, where a fret would be.`,
    ),
    ofOwnNut,
  ],
  'what-the-hand-feels': [
    unlessStretchKnown('the push and travel of a bend are left out'),
    withCapo('The drawing of one finger’s place is of the whole string.'),
  ],
  bending: [
    unlessStretchKnown('we can’t say how it bends'),
    withoutFrets(
      (name) => `${name} has no frets. “Fret 12” is where your finger would be with frets.`,
    ),
    ofOwnNut,
    withCapo(
      'The drawings of several gauges and of the lengths beyond the nut are of the whole string.',
    ),
  ],
  'stiff-strings': [unlessStiffnessKnown('we can’t place its partials'), plucked],
  'a-scale-for-every-string': [
    withOneString('One string has only one length. This chapter is about two or more.'),
    withoutFrets((name) => `${name} has no frets to slant. The lengths and pulls hold for it.`),
  ],
  'what-neck-and-bridge-carry': [
    unlessStretchKnown('we can’t say what bending it does on a floating bridge'),
  ],
  'when-strings-break': [unlessStrengthTabled],
  'in-tune-up-the-neck': [
    withoutFrets(
      (name) =>
        `${name} has no frets, so your fingers set each note. What follows is for a neck with frets.`,
    ),
    unlessStretchKnown('we can’t say how sharp a fret makes it'),
    ofOwnNut,
    tunedWithCapo,
  ],
};

export const scopesOf = (chapter: string, state: State): readonly Scope[] =>
  (lines[chapter] ?? []).flatMap((line) => line(state) ?? []);
