/** The comparison in words, and as a table of data. */
import type { Cell } from '../../../instrument/csv.ts';
import {
  forceNumber,
  formatForce,
  formatLength,
  lengthNumber,
  lengthUnit,
  spokenGauge,
  spokenNote,
  travelNumber,
} from '../../../instrument/format.ts';
import type { Units } from '../../../instrument/schema.ts';
import { driftsOf, shownPartials, type Road } from './roads.ts';
import { stringHead } from '../../kit/string-head.ts';

function sentence({ name, string: s }: Road, units: Units): string {
  const what = `${name}: ${spokenNote(s.note)}, ${spokenGauge(s.gauge, units)}, ${formatLength(s.speakingLength, units)}`;
  if (s.strain === 'broken') return `${what}: breaks.`;
  const travel =
    s.travel === undefined
      ? 'travel not known'
      : `travel for a semitone ${travelNumber(s.travel, units)} ${lengthUnit(units)}`;
  const drift =
    s.drift === undefined
      ? 'stiffness not known'
      : `tenth partial ${s.drift.toFixed(1)} cents sharp`;
  return `${what}: pulls ${formatForce(s.tension, units)}, ${travel}, ${drift}.`;
}

export const describe = (roads: readonly Road[], units: Units): string =>
  `The same low string five times. ${roads.map((road) => sentence(road, units)).join(' ')}`;

export const dataHead = (units: Units): readonly string[] => [
  'string',
  ...stringHead(units),
  `travel for a semitone at the seventh fret / ${lengthUnit(units)}`,
  ...shownPartials.map((n) => `partial ${n} sharp / cents`),
];

export const dataRows = (roads: readonly Road[], units: Units): readonly (readonly Cell[])[] =>
  roads.map(({ name, string: s }) => {
    const broken = s.strain === 'broken';
    const drifts = broken ? undefined : driftsOf(s);
    return [
      name,
      s.note,
      s.gauge.gauge,
      lengthNumber(s.speakingLength, units),
      broken ? 'breaks' : forceNumber(s.tension, units),
      broken || s.travel === undefined ? '' : travelNumber(s.travel, units),
      ...shownPartials.map((_, i) => drifts?.[i]?.toFixed(1) ?? ''),
    ];
  });
