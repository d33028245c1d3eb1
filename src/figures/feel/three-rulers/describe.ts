/** The two hands in words. */
import {
  forceNumber,
  forceUnit,
  formatDifference,
  formatLength,
  gaugeNumber,
  spokenNote,
  travelNumber,
  lengthUnit,
} from '../../../instrument/format.ts';
import { thicknessNumber, thicknessUnit } from '../../../instrument/thickness-text.ts';
import { compared } from '../../../instrument/pair.ts';
import { onHowMany } from '../../kit/bend/words.ts';
import type { State, Units } from '../../../instrument/schema.ts';
import type { Sensation } from '../../../physics/index.ts';
import type { Held, View } from './feel.ts';

export const sensations: readonly Sensation[] = ['pull', 'push', 'travel'];

/** A gauge that may be of no drawer: as it is sold, or to a tenth. */
export const gaugeText = ({ gaugeThere, exact }: View, units: Units): string =>
  exact ? thicknessNumber(gaugeThere, units) : gaugeNumber(gaugeThere, units);

export const valueText = (sensation: Sensation, value: number, units: Units): string =>
  sensation === 'travel' ? travelNumber(value, units) : forceNumber(value, units);

export const unitText = (sensation: Sensation, units: Units): string =>
  sensation === 'travel' ? lengthUnit(units) : forceUnit(units);

/** What the three add up to, or why they don't. */
export function verdictText({ feel, broken }: View): string {
  if (broken) return 'One of the two would break';
  return feel.verdict ?? 'No verdict: we don’t know how much it stretches';
}

function line(sensation: Sensation, { feel, own }: View, units: Units): string {
  const judged = feel[sensation];
  if (!judged) return `${sensation} not known`;
  const { reference, value, difference, felt } = judged;
  const [was, is] = [reference, value].map((v) => valueText(sensation, v, units));
  const of = sensation === 'travel' ? '' : onHowMany(own.beside);
  return `${sensation}${of} from ${was} to ${is} ${unitText(sensation, units)}, ${formatDifference(difference)}, ${felt}`;
}

export function describeShort(view: View, units: Units): string {
  if (view.broken) return verdictText(view);
  const lines = sensations.map((sensation) => line(sensation, view, units));
  return `${lines.join('; ')}. Together: ${verdictText(view)}`;
}

const longText = ({ speakingLength, capo }: Held, units: Units): string =>
  `${formatLength(speakingLength, units)} ${capo > 0 ? 'from the capo to the saddle' : 'long'}`;

export function describe(state: State, view: View): string {
  const { units, bend } = state;
  const other = compared(state).other.name || 'the second instrument';
  const there = `${spokenNote(view.there.note)}, ${gaugeText(view, units)} ${thicknessUnit(units)}, ${longText(view.there, units)}`;
  return `Two hands bend two strings to the same note, and on the second each sensation has its felt band. The ${spokenNote(view.own.note)} string of ${state.mine.name || 'your instrument'}, ${gaugeNumber(view.gauge, units)} ${thicknessUnit(units)}, ${longText(view.own, units)}, and one on ${other}: ${there}. Bent by ${bend.rise.toFixed(0)} cents at fret ${view.frets[0]}${view.own.beside.length > 0 ? ', each with its whole course' : ''}. ${describeShort(view, units)}.`;
}
