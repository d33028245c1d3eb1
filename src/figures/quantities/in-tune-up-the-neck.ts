/** The numbers of the chapter "In tune up the neck". */
import { actionAt, NUT_HEIGHT } from '../../instrument/action.ts';
import {
  bestSaddle,
  errorAt,
  intoned,
  stretchAt,
  usualHeight,
  type Intoned,
} from '../../instrument/intoned.ts';
import { formatNote, formatShare } from '../../instrument/format.ts';
import { pullOf, pullsOf, type Pull } from '../../instrument/pulls.ts';
import type { Gauge, State } from '../../instrument/schema.ts';
import {
  axialStiffness,
  fretError,
  fromInches,
  fromMillimetres,
  millimetres,
  pressedDeep,
  slackened,
  warmed,
} from '../../physics/index.ts';
import { pitchJustNoticed } from '../consequences/the-flags/ear.ts';
import { centsNumber, formatCents, formatSmall } from '../kit/setback.ts';
import { heldOf } from '../held.ts';
import { formatStretch } from '../consequences/pressing-down/describe.ts';
import type { Quantity } from './common.ts';

const UNKNOWN = 'not known';
const height = (s: State): number => usualHeight(s.mine);

/** Of the string in hand; `missing` where its stretch is not known. */
const ofHeld =
  (say: (held: Intoned, s: State) => string, missing = UNKNOWN): Quantity =>
  (s) => {
    const held = heldOf(s);
    return held ? say(held, s) : missing;
  };
const bare = (say: (held: Intoned, s: State) => number, digits: number): Quantity =>
  ofHeld((held, s) => say(held, s).toFixed(digits), '?');

/** What the derivation finds for the twelfth fret, m: the stiff end, and half of the stretch times the stretch constant. */
const byTwelfth = ({ response, pull }: Intoned, h: number): number =>
  response.endLength + (response.stretch * h * h) / pull.speakingLength;
const flatTriangle = ({ pull }: Intoned, h: number): number => (2 * h * h) / pull.speakingLength;

/** A cent's worth of the natural logarithm, turned round. */
const CENTS = 1200 / Math.LN2;

/** The strings of the instrument whose stretch is known, with where their saddles belong. */
const saddles = (s: State): readonly { note: string; setback: number }[] =>
  pullsOf(s.mine)
    .flatMap((p) => intoned(p) ?? [])
    .map((known) => ({
      note: known.pull.note,
      setback: bestSaddle(known, height(s)).saddleSetback,
    }))
    .sort((a, b) => a.setback - b.setback);
const atEnd =
  (which: 0 | -1): Quantity =>
  (s) => {
    const found = saddles(s).at(which);
    return found ? `${formatSmall(found.setback, s.units)} for ${formatNote(found.note)}` : UNKNOWN;
  };

/** A G of steel on 25.5 in, at the height that is usual there. */
const third = (gauge: Gauge): Intoned | undefined =>
  intoned(pullOf({ gauge, note: 'G3', a4: 440, speakingLength: fromInches(25.5) }));
const thirdBack =
  (gauge: Gauge): Quantity =>
  (s) => {
    const known = third(gauge);
    return known
      ? formatSmall(bestSaddle(known, fromMillimetres(1.8)).saddleSetback, s.units)
      : UNKNOWN;
  };

/** A nut that stands a good half millimetre too high: what the first fret makes of it. */
const HIGH_NUT = NUT_HEIGHT + fromMillimetres(0.6);
const firstWith = (nutHeight: number): Quantity =>
  ofHeld(({ pull, response }, s) =>
    formatCents(
      fretError({
        ...actionAt(pull.speakingLength, height(s)),
        nutHeight,
        response,
        fret: 1,
      }).total,
    ),
  );

/** A hand that presses too hard: so deep, so far behind the second fret. */
const DEEP = { fret: 2, fingerBehind: fromMillimetres(10), depth: fromMillimetres(0.5) } as const;
const WARMER = 10;
const SLIP = fromMillimetres(0.1);

const falls = (cents: number): string => `${Math.abs(cents).toFixed(0)}\u00a0cents`;
/** By how much a string of a steel set on 25.5 in falls when it alone grows warmer. */
const warmedBy =
  (gauge: Gauge, note: string): Quantity =>
  () =>
    falls(
      warmed({
        ...pullOf({ gauge, note, a4: 440, speakingLength: fromInches(25.5) }),
        degrees: WARMER,
      })?.cents ?? NaN,
    );
const slipped = ({ construction, tension, speakingLength }: Pull): string => {
  const cents = slackened({ construction, tension, share: SLIP / speakingLength })?.cents;
  return cents === undefined ? UNKNOWN : falls(cents);
};
const nylonFirst = pullOf({
  gauge: { kind: 'plain', gauge: 28, family: 'classical, nylon' },
  note: 'E4',
  a4: 440,
  speakingLength: fromMillimetres(650),
});

export const quantities: Readonly<Record<string, Quantity>> = {
  'tune.ear': () => `${pitchJustNoticed.toFixed(0)} cents`,
  'tune.height': (s) => formatSmall(height(s), s.units),
  'tune.twelfth': ofHeld((held, s) =>
    formatCents(errorAt(held, { height: height(s), fret: 12 }).total),
  ),
  'tune.stretch': ofHeld((held, s) =>
    formatStretch(stretchAt(held, { height: height(s), fret: 12 }), s.units),
  ),
  'tune.constant': bare((held) => held.response.stretch, 0),
  // From slack: a polymer gives more on its way up than it does once it pulls.
  'tune.tuned': ofHeld(({ pull }) =>
    formatShare(pull.tension / axialStiffness(pull.construction), 2),
  ),
  'tune.best': ofHeld((held, s) => formatSmall(bestSaddle(held, height(s)).saddleSetback, s.units)),
  'tune.left': ofHeld((held, s) => `${bestSaddle(held, height(s)).rms.toFixed(1)} cents`),
  'tune.least': atEnd(0),
  'tune.most': atEnd(-1),
  'tune.plainThird': thirdBack({ kind: 'plain', gauge: 18 }),
  'tune.woundThird': thirdBack({ kind: 'wound', gauge: 20 }),
  'tune.nutLow': firstWith(NUT_HEIGHT),
  'tune.nutHigh': firstWith(HIGH_NUT),
  'tune.nutBy': (s) => formatSmall(HIGH_NUT - NUT_HEIGHT, s.units),

  'tune.deepBy': (s) => formatSmall(DEEP.depth, s.units),
  'tune.deep': ofHeld(({ pull, response }, s) =>
    formatCents(pressedDeep({ ...actionAt(pull.speakingLength, height(s)), ...DEEP, response })),
  ),
  'tune.degrees': () => String(WARMER),
  'tune.warmTen': warmedBy({ kind: 'plain', gauge: 10 }, 'E4'),
  'tune.warmThird': warmedBy({ kind: 'plain', gauge: 17 }, 'G3'),
  'tune.warmLow': warmedBy({ kind: 'wound', gauge: 46 }, 'E2'),
  'tune.slipBy': (s) => formatSmall(SLIP, s.units),
  'tune.slip': ofHeld(({ pull }) => slipped(pull)),
  'tune.slipNylon': () => slipped(nylonFirst),

  'tune.eqKappa': bare((held) => held.response.stretch, 0),
  'tune.eqB': bare((held) => millimetres(held.response.endLength), 2),
  'tune.eqH': (s) => millimetres(height(s)).toFixed(1),
  'tune.eqL': bare((held) => millimetres(held.pull.speakingLength), 1),
  'tune.eqDelta': bare((held, s) => millimetres(flatTriangle(held, height(s))), 4),
  'tune.eqS': bare((held, s) => millimetres(byTwelfth(held, height(s))), 2),
  'tune.eqCents': () => CENTS.toFixed(0),
  'tune.eqStretch': ofHeld(
    (held, s) =>
      centsNumber(
        (CENTS * held.response.stretch * flatTriangle(held, height(s))) /
          (2 * held.pull.speakingLength),
      ),
    '?',
  ),
  'tune.eqStiff': ofHeld(
    (held) => centsNumber((CENTS * held.response.endLength) / held.pull.speakingLength),
    '?',
  ),

  'tune.askStretch': bare((held) => 1e5 * flatTriangle(held, fromMillimetres(2)), 2),
};
