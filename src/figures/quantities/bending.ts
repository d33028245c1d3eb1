/** Numbers of the chapter "Bending": the reader's string at the chosen fret and rise, and what holds of no instrument in particular. */
import { constructionOf } from '../../instrument/drawer.ts';
import {
  formatDifference,
  formatForce,
  formatGauge,
  formatLength,
  formatNote,
  formatShare,
} from '../../instrument/format.ts';
import { compared } from '../../instrument/pair.ts';
import { lengthOf } from '../../instrument/pulls.ts';
import { pushedBy, pushedTo, tuned, type Pushed, type Tuned } from '../../instrument/pushed.ts';
import type { Gauge, State } from '../../instrument/schema.ts';
import {
  axialStiffness,
  coreArea,
  fromInches,
  INCH,
  linearDensity,
  millimetres,
  modulusUnderDoubt,
} from '../../physics/index.ts';
import { stringsApart, viewOf } from '../kit/bend/bent.ts';
import { formatTravel } from '../kit/bend/words.ts';
import { proposed, slippedTo } from '../feel/whole-string/slip.ts';
import { triedOf } from '../trial.ts';
import type { Quantity } from './common.ts';

const FRET = 12;
const TONE = 200;
const UNKNOWN = 'an unknown amount';

/** Of the pushed string, where there is one to speak of. */
const own =
  (text: (pushed: Pushed, state: State) => string): Quantity =>
  (s) => {
    const { pushed } = viewOf(s);
    if (!pushed) return UNKNOWN;
    return pushed.strain === 'broken' ? 'more than it holds' : text(pushed, s);
  };
const other =
  (text: (pushed: Pushed, state: State) => string): Quantity =>
  (s) => {
    const { ghost } = viewOf(s);
    if (!ghost) return UNKNOWN;
    return ghost.pushed.strain === 'broken' ? 'more than it holds' : text(ghost.pushed, s);
  };

const live: Readonly<Record<string, Quantity>> = {
  'bend.note': (s) => formatNote(viewOf(s).pull.note),
  'bend.travel': own(({ travel }, s) => formatTravel(travel, s.units)),
  'bend.push': own(({ push }, s) => formatForce(push, s.units)),
  'bend.apart': (s) => formatTravel(stringsApart(s.mine), s.units),
  'bend.other': (s) => compared(s).other.name || 'the other instrument',
  'bend.otherLength': (s) => {
    return formatLength(lengthOf(compared(s).other, viewOf(s).index), s.units);
  },
  'bend.otherGauge': (s) => {
    const { other } = viewOf(s);
    return other ? formatGauge(other.gauge, s.units) : 'none that holds';
  },
  'bend.otherPullMore': (s) => {
    const { other, pull } = viewOf(s);
    return other ? formatDifference(other.tension / pull.tension - 1) : UNKNOWN;
  },
  'bend.otherTravel': other(({ travel }, s) => formatTravel(travel, s.units)),
  'bend.otherMore': (s) => {
    const { ghost, pushed } = viewOf(s);
    return ghost && pushed ? formatDifference(ghost.pushed.travel / pushed.travel - 1) : UNKNOWN;
  },
};

/** The string in hand as it is on the instrument, bent at the twelfth fret: what the exercises ask about. */
const ownBent =
  (rise: number): Quantity =>
  (s) => {
    const pushed = pushedTo(triedOf(s).own, FRET, rise);
    return pushed ? formatTravel(pushed.travel, s.units) : UNKNOWN;
  };
const inchRatio = (s: State): number => 1 + INCH / triedOf(s).own.speakingLength;

const exercises: Readonly<Record<string, Quantity>> = {
  'bend.ownTone': ownBent(TONE),
  'bend.ownSemitone': ownBent(TONE / 2),
  'bend.inchRatio': (s) => inchRatio(s).toFixed(4),
  'bend.inchSquare': (s) => (inchRatio(s) ** 2).toFixed(4),
  'bend.inchMore': (s) => formatDifference(inchRatio(s) ** 2 - 1),
};

/** What the law of small slopes leads to, from the numbers that the equation shows. */
function smallSlope(s: State) {
  const { pull, fret, capo, pushed } = viewOf(s);
  const rise = pushed?.rise ?? s.bend.rise;
  const a = pull.speakingLength * 2 ** (-(fret - capo) / 12);
  const b = pull.speakingLength - a;
  const more = 2 ** (rise / 600) - 1;
  const stiffness = pushed ? axialStiffness(pull.construction, pull.tension) : NaN;
  return { a, b, more, stiffness, y: Math.sqrt((2 * a * b * more * pull.tension) / stiffness) };
}
const shown = (value: number, digits: number): string =>
  Number.isFinite(value) ? value.toPrecision(digits) : '?';

const equation: Readonly<Record<string, Quantity>> = {
  'bend.eq.a': (s) => millimetres(smallSlope(s).a).toFixed(1),
  'bend.eq.b': (s) => millimetres(smallSlope(s).b).toFixed(1),
  'bend.eq.more': (s) => smallSlope(s).more.toFixed(4),
  'bend.eq.T': (s) => viewOf(s).pull.tension.toFixed(1),
  'bend.eq.EA': (s) => {
    const { stiffness } = smallSlope(s);
    return Number.isFinite(stiffness) ? stiffness.toFixed(0) : '?';
  },
  'bend.eq.y2': (s) => shown(millimetres(smallSlope(s).y) ** 2, 4),
  'bend.eq.y': (s) => shown(millimetres(smallSlope(s).y), 3),
  'bend.exact': own(({ travel }) => `${millimetres(travel).toPrecision(3)}\u00a0mm`),
};

const STANDARD = fromInches(25.5);
const LONG = fromInches(27);
const string = (kind: Gauge['kind'], gauge: number, note: string, length = STANDARD): Tuned =>
  tuned(constructionOf({ kind, gauge }), length, note);
const toneOn = (pull: Tuned, fret = FRET): Pushed => {
  const pushed = pushedTo(pull, fret, TONE);
  if (!pushed) throw new RangeError('pull has no known stretch; permitted: a string of the drawer');
  return pushed;
};
const [nine, eleven] = [9, 11].map((gauge) => toneOn(string('plain', gauge, 'E4')));
const ten = string('plain', 10, 'E4');
const plainThird = toneOn(string('plain', 17, 'G3'));
const woundThird = toneOn(string('wound', 20, 'G3'));
const slipped = slippedTo(ten, FRET, TONE, proposed);
const nylonTreble = constructionOf({ kind: 'plain', gauge: 28, family: 'classical, nylon' });
const nylon = toneOn(tuned(nylonTreble, STANDARD, 'E4'));
/** Travel in m of the same bend with nylon as soft (-1) or as stiff (1) as its range goes: a stiffer one needs less. */
function nylonAs(side: -1 | 1): number {
  const doubt = modulusUnderDoubt('nylon', 'stretched') ?? NaN;
  const pull = tuned(nylonTreble, STANDARD, 'E4');
  // Its stretch at pitch changes the pull a little; that is left out here.
  const as = {
    kind: 'measured',
    diameter: nylonTreble.diameter,
    linearDensity: linearDensity(nylonTreble),
    axialStiffness: axialStiffness(nylonTreble, pull.tension) * (1 - side * doubt),
  } as const;
  return toneOn({ ...pull, construction: as }).travel;
}
const more = (is: number | undefined, was: number | undefined): string =>
  formatShare((is ?? NaN) / (was ?? NaN) - 1);
const share = (is: number | undefined, was: number | undefined): string =>
  formatDifference((is ?? NaN) / (was ?? NaN) - 1);

const third = constructionOf({ kind: 'wound', gauge: 20 });
/** By what share of itself the pull has to grow for a rise in cents. */
const addedFor = (cents: number): number => 2 ** (cents / 600) - 1;

/** The same for every reader. */
const constant: Readonly<Record<string, Quantity>> = {
  'bend.c.nineTravel': (s) => formatTravel(nine?.travel ?? NaN, s.units),
  'bend.c.elevenTravel': (s) => formatTravel(eleven?.travel ?? NaN, s.units),
  'bend.c.ninePush': (s) => formatForce(nine?.push ?? NaN, s.units),
  'bend.c.elevenPush': (s) => formatForce(eleven?.push ?? NaN, s.units),
  'bend.c.pushMore': () => share(eleven?.push, nine?.push),
  'bend.c.plainThird': (s) => formatTravel(plainThird.travel, s.units),
  'bend.c.woundThird': (s) => formatTravel(woundThird.travel, s.units),
  'bend.c.woundMore': () => more(woundThird.travel, plainThird.travel),
  'bend.c.longer': () => more(toneOn(string('plain', 10, 'E4', LONG)).travel, toneOn(ten).travel),
  'bend.c.halfWay': () => {
    const halfWay = pushedBy(ten, FRET, toneOn(ten).travel / 2);
    return `${(halfWay?.rise ?? NaN).toFixed(0)}\u00a0cents`;
  },
  'bend.c.fifthTravel': () => share(toneOn(ten, 5).travel, toneOn(ten).travel),
  'bend.c.fifthPush': () => share(toneOn(ten, 5).push, toneOn(ten).push),
  'bend.c.slip': () => more(slipped?.slipping.travel, slipped?.held.travel),
  'bend.c.slipNut': (s) => formatTravel(proposed.nut, s.units),
  'bend.c.slipSaddle': (s) => formatTravel(proposed.saddle, s.units),
  'bend.c.tone': () => addedFor(TONE).toFixed(3),
  'bend.c.semitone': () => addedFor(TONE / 2).toFixed(3),
  'bend.c.root': () => Math.sqrt(addedFor(TONE / 2) / addedFor(TONE)).toFixed(3),
  'bend.c.coreShare': () =>
    formatShare(
      third.kind === 'wound' ? coreArea(third) / ((Math.PI / 4) * third.diameter ** 2) : NaN,
    ),
  'bend.c.nylon': (s) => formatTravel(nylon.travel, s.units),
  'bend.c.nylonLeast': (s) => formatTravel(nylonAs(-1), s.units),
  'bend.c.nylonMost': (s) => formatTravel(nylonAs(1), s.units),
};

export const quantities: Readonly<Record<string, Quantity>> = {
  ...live,
  ...exercises,
  ...equation,
  ...constant,
};
