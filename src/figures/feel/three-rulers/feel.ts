/** The string in hand and its counterpart on a second instrument, as a hand meets them. */
import { gaugeOf, drawerOf } from '../../../instrument/drawer.ts';
import { hand } from '../../../instrument/hand.svelte.ts';
import { once } from '../../../instrument/once.ts';
import { onceByHand } from '../../../instrument/once-by-hand.ts';
import { compared } from '../../../instrument/pair.ts';
import { lengthOf } from '../../../instrument/pulls.ts';
import { pushedTo } from '../../../instrument/pushed.ts';
import type { Gauge, State } from '../../../instrument/schema.ts';
import {
  compareFeel,
  noteFrequency,
  pullAtPitch,
  strainState,
  strengthShare,
  thousandths,
  type Construction,
  type FeelCompared,
  type Strung,
} from '../../../physics/index.ts';
import { triedOf } from '../../trial.ts';

/** The same make of string with every diameter multiplied: its mass and its stretch stiffness go with the square. */
export function scaled(c: Construction, factor: number): Construction {
  const diameter = c.diameter * factor;
  if (c.kind === 'plain') return { ...c, diameter };
  if (c.kind === 'wound')
    return {
      ...c,
      diameter,
      core: { ...c.core, diameter: c.core.diameter * factor },
      wraps: c.wraps.map((wrap) =>
        wrap.diameter === undefined ? wrap : { ...wrap, diameter: wrap.diameter * factor },
      ),
    };
  return {
    kind: 'measured',
    diameter,
    linearDensity: c.linearDensity * factor ** 2,
    ...(c.axialStiffness !== undefined && { axialStiffness: c.axialStiffness * factor ** 2 }),
  };
}

/** The string of the same make that pulls on the second instrument exactly as the reference does on its own. */
export const equalPull = (
  own: Strung,
  there: { readonly speakingLength: number; readonly frequency: number },
): Construction =>
  // The pull goes with the section, also where the string thins on its way to pitch.
  scaled(
    own.construction,
    Math.sqrt(pullAtPitch(own) / pullAtPitch({ ...there, construction: own.construction })),
  );

export interface View {
  /** With its pull in N */
  readonly own: Strung & { readonly note: string; readonly tension: number };
  readonly there: Strung & { readonly note: string };
  /** Thousandths of an inch on either instrument */
  readonly gauge: number;
  readonly gaugeThere: number;
  /** True when the second string is of no gauge that exists, but pulls exactly alike */
  readonly exact: boolean;
  readonly feel: FeelCompared;
  /** True when one of the two would break, tuned or bent: then there is nothing to compare. */
  readonly broken: boolean;
}

const breaks = (s: Strung, fret: number, rise: number): boolean => {
  const { construction, speakingLength } = s;
  const pull = pullAtPitch(s);
  const tuned = strainState(strengthShare({ construction, tension: pull }));
  const bent = pushedTo({ construction, speakingLength, tension: pull }, fret, rise);
  return tuned === 'broken' || bent?.strain === 'broken';
};

/** The second instrument's string of the same number, in a gauge of the same drawer, or pulling exactly alike. */
export function viewWith(state: State, gauge: number | undefined): View {
  const { own: pull, index } = triedOf(state);
  const { other } = compared(state);
  const note = other.strings[index]?.note ?? pull.note;
  const place = {
    speakingLength: lengthOf(other, index),
    frequency: noteFrequency(note, other.a4),
  };
  const { kind, family } = pull.gauge;
  const own = { ...pull, note: pull.note };
  const picked = gauge === undefined ? undefined : drawerOf(family).byGauge.get(`${kind} ${gauge}`);
  const construction = picked ?? equalPull(own, place);
  const there = { construction, ...place, note };
  const { fret, rise } = state.bend;
  return {
    own,
    there,
    gauge: pull.gauge.gauge,
    gaugeThere: picked ? gaugeOf(picked, family).gauge : thousandths(construction.diameter),
    exact: picked === undefined,
    feel: compareFeel({ reference: own, other: there, fret, rise, thresholds: hand.thresholds }),
    broken: breaks(own, fret, rise) || breaks(there, fret, rise),
  };
}

/** What stands until the reader picks a gauge. */
export const exactView = onceByHand((state: State): View => viewWith(state, undefined));

/** The drawer's gauges near the one in hand, for the second string. */
const stopsNear = once(({ kind, gauge, family }: Gauge): readonly number[] =>
  drawerOf(family).gauges[kind].filter((g) => g > gauge * 0.65 && g < gauge * 1.5),
);
export const stopsFor = (state: State): readonly number[] => stopsNear(triedOf(state).own.gauge);
