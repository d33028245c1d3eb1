/** The hand lab: from the judgements that are kept to the next step and to the threshold. */
import {
  centsDown,
  differenceOfCents,
  nextStep,
  REACH,
  type HandThreshold,
  type Judgement,
} from '../../../physics/labs.ts';
import { cents } from '../../../physics/index.ts';
import { percent } from '../kit/agree.ts';
import { plainColumn } from '../kit/columns.ts';
import type { Reading } from '../kit/rows.svelte.ts';

/** Judgements after which a rest does good, and at which a session may end */
export const REST_EVERY = 20;
export const ENOUGH = 40;
/** An interval must be narrower than this factor, over so many sessions, before it may stand in for the published threshold */
export const NARROW = 2.5;
const SESSIONS = 2;

export interface Judged extends Judgement {
  readonly id: string;
  readonly session: number;
  /** What was asked for; the staircase goes by it */
  readonly asked: number;
  /** Cents below pitch at which it was judged */
  readonly cents: number;
}

export const judgedOf = (readings: readonly Reading[]): readonly Judged[] =>
  readings.flatMap(({ id, values: { difference, asked, right, cents, session } }) =>
    difference !== undefined && difference > 0 && right !== undefined
      ? [
          {
            id,
            difference,
            asked: asked ?? difference,
            right: right === 1,
            cents: cents ?? 0,
            session: session ?? 0,
          },
        ]
      : [],
  );

export interface Ahead {
  /** Cents below pitch to which the string is to be brought */
  readonly cents: number;
  /** Cents below pitch that it is taken past first, so that the turning gives nothing away */
  readonly past: number;
  readonly harder: boolean;
  readonly asked: number;
}

/** What is to be done before the next judgement, from a string so many cents below its pitch. `chance` and `sham` are even between 0 and 1. */
export function ahead(
  now: number,
  judged: readonly Judged[],
  { chance, sham }: { readonly chance: number; readonly sham: number },
): Ahead {
  const pull = 2 ** (-now / 600);
  const answers = judged.map(({ asked, right }) => ({ difference: asked, right }));
  const step = nextStep({ pull, answers, chance });
  const cents = Math.round(centsDown(Math.min(1, step.pull)));
  const most = Math.round(centsDown(1 - REACH));
  // Half of them past the place, half of them the other way first; never above pitch.
  const swing = 20 + Math.round(60 * (sham < 0.5 ? 2 * sham : 2 * sham - 1));
  const past = sham < 0.5 ? Math.max(0, cents - swing) : Math.min(most + 60, cents + swing);
  return { cents, past, harder: step.harder, asked: step.difference };
}

/** A place that the string is brought to, in words. */
export const placeWords = (cents: number): string =>
  cents === 0 ? 'its pitch' : `${cents} cents below`;

/** What the friend does before a judgement; the last part is the place. */
export function turnWords({ cents, past }: Ahead, note: string): readonly [string, string, string] {
  const first = past === 0 ? note : `${placeWords(past)} ${note}`;
  return [
    past === cents ? 'Turn to' : `First turn to ${first}. Then turn to`,
    `${cents} cents below`,
    cents === 0 ? ': that’s its pitch.' : '.',
  ];
}

/** The judgement of a string that was brought from `before` to `now` cents below pitch, when the player said whether it got harder. */
export function judge(before: number, now: number, saidHarder: boolean): Judgement | undefined {
  const difference = differenceOfCents(-before, -now);
  if (difference < 1e-4) return undefined;
  return { difference, right: saidHarder === now < before };
}

/** How wide its range is, in words; open where the answers set no end to it. */
export const rangeWords = ({ low, high, openBelow, openAbove }: HandThreshold): string =>
  `likely between ${openBelow ? 'next to nothing' : percent(low)} and ${openAbove ? 'a great deal' : percent(high)}`;

/** Whether the threshold may stand in for the published one. */
export function mayReplace(judged: readonly Judged[], found: HandThreshold | undefined): boolean {
  if (!found || found.openAbove || found.openBelow) return false;
  const sessions = new Set(judged.map(({ session }) => session)).size;
  return sessions >= SESSIONS && found.high / found.low < NARROW;
}

/** Cents below its pitch at which a string was heard, to the whole cent, and never above pitch. */
export const centsBelow = (pitch: number, heard: number): number =>
  Math.min(400, Math.max(0, Math.round(cents(heard, pitch))));

/** What is kept of a judgement, as columns of a file. */
export const handColumns = [
  plainColumn('session', 'session', 'ms'),
  plainColumn('difference', 'difference of pull', 'share'),
  plainColumn('asked', 'asked for', 'share'),
  plainColumn('right', 'right', '1 or 0'),
  plainColumn('cents', 'below pitch', 'cents'),
];
