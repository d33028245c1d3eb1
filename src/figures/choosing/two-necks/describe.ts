/** The residuals in words. */
import {
  formatDifference,
  formatGauge,
  formatNote,
  formatShare,
  gaugeNumber,
  spokenGauge,
  spokenNote,
} from '../../../instrument/format.ts';
import { aimText } from '../../../instrument/aim-text.ts';
import { CAUTION_SHARE } from '../../../physics/index.ts';
import { hand, percentOf } from '../../../instrument/hand.svelte.ts';
import type { State, Units } from '../../../instrument/schema.ts';
import type { Residual } from './residuals.ts';
import { summaryOf } from './residuals.ts';
import { signedLength } from '../../kit/pair/words.ts';

function describeString({ note, old, left, ownBroken }: Residual, units: Units): string {
  const name = spokenNote(note);
  if (ownBroken) return `${name}: the old string breaks on its own instrument`;
  return `${name}: ${formatGauge(old, units)} left on ${left === undefined ? 'breaks' : formatDifference(left)}`;
}

/** Where the rings lie. */
export const describeResiduals = (residuals: readonly Residual[], units: Units): string =>
  `Difference of pull from the aim, string by string. ${residuals.map((each) => describeString(each, units)).join('. ')}.`;

/** Where the dots lie: the chapter’s guess asks for it. */
export const describeDots = (residuals: readonly Residual[], units: Units): string =>
  `With the nearest gauges: ${residuals
    .filter(({ ownBroken }) => !ownBroken)
    .map(({ note, pick, picked }) =>
      pick && picked !== undefined
        ? `${spokenNote(note)}: ${spokenGauge(pick, units)} ${formatDifference(picked)}`
        : `${spokenNote(note)}: nothing in the drawer holds here`,
    )
    .join('. ')}.`;

/** What changed, for the end of a drag; nothing of the dots where those are not given. */
export function describeShort(state: State, residuals?: readonly Residual[]): string {
  const by = signedLength(state.other.scale.treble - state.mine.scale.treble, state.units);
  if (!residuals) return `${by}.`;
  const { worst, within } = summaryOf(residuals);
  const farthest =
    worst?.picked === undefined
      ? ''
      : ` The worst is ${spokenNote(worst.note)}, ${formatDifference(worst.picked)}.`;
  return `${by}: with the nearest gauges, strings within ${percentOf(hand.low)} per cent of the aim: ${within} of ${residuals.length}.${farthest}`;
}

/** What is aimed for, and which gauges nobody picked: as the bench has it. */
export function asOnBench(pair: State): string {
  const hands = pair.other.strings.flatMap(({ pick }, i) => (pick ? [i + 1] : []));
  const set =
    hands.length === 0
      ? ''
      : hands.length === pair.other.strings.length
        ? ' All gauges were set by hand.'
        : ` Set by hand: ${hands.length === 1 ? 'string' : 'strings'} ${hands.join(', ')}.`;
  return `The aim: ${aimText(pair)}.${set}`;
}

/** What a reader must know of single strings, one sentence each. */
export function remarks(residuals: readonly Residual[], units: Units): readonly string[] {
  const each = residuals.flatMap(({ note, left, pick, picked, end, strained, ownBroken }) => {
    const name = formatNote(note);
    if (ownBroken)
      return [`${name} would break at this length on its own instrument: nothing to match.`];
    return [
      ...(left === undefined ? [`${name}: the old string, left on, would break.`] : []),
      ...(picked === undefined
        ? [
            pick
              ? `${name}: the ${formatGauge(pick, units)} set by hand would break here.`
              : `${name}: nothing in the drawer would hold here.`,
          ]
        : []),
      ...(end && pick
        ? [
            `${name}: ${gaugeNumber(pick.gauge, units)} is the ${end} ${pick.kind} string in the drawer.`,
          ]
        : []),
      ...(strained
        ? [
            `${name}: the pick would carry more than ${formatShare(CAUTION_SHARE)} of the minimum strength of its wire. A lower note or a shorter scale spares it.`,
          ]
        : []),
    ];
  });
  // Two strings of one course would say the same.
  return [...new Set(each)];
}
