/** The stringing sheet as comma-separated values, in the reader's units. */
import { csv } from './csv.ts';
import { forceNumber, forceUnit, lengthNumber, lengthUnit, travelNumber } from './format.ts';
import type { BentString } from './bends.ts';
import type { Plan } from './plan.ts';
import type { State } from './schema.ts';

const percent = (share: number | undefined, digits: number): string =>
  share === undefined ? '' : (share * 100).toFixed(digits);

/** What the bends add to the sheet: their columns' headings, and one string's cells. */
const bendHeading = ({ bend, units }: State): readonly string[] => {
  const asked = `${Number(bend.rise.toFixed(1))} cents at fret ${bend.fret}`;
  return [
    `travel for ${asked} (${lengthUnit(units)})`,
    'its difference from the aim (%)',
    `push (${forceUnit(units)})`,
    'its difference from the aim (%)',
    `pull plus or minus (${forceUnit(units)})`,
    'verdict on pull, push and travel',
  ];
};
function bendCells(bent: BentString | undefined, units: State['units']): readonly string[] {
  const { travel, push, verdict, doubt } = bent && !bent.breaks ? bent : {};
  return [
    travel ? travelNumber(travel.value, units) : '',
    percent(travel?.difference, 1),
    push ? forceNumber(push.value, units) : '',
    percent(push?.difference, 1),
    doubt === undefined ? '' : forceNumber(doubt, units),
    bent?.breaks ? 'may break in the bend' : (verdict ?? ''),
  ];
}

/**
 * One line a string, a heading first. Differences and shares are plain numbers in per cent. `bends` adds their columns: given when
 * the sheet shows them.
 */
export function sheetCsv(
  state: State,
  plan: Plan,
  bends?: readonly (BentString | undefined)[],
): string {
  const { mine, units } = state;
  const heading = [
    'string',
    'note',
    `speaking length (${lengthUnit(units)})`,
    'gauge (thousandths of an inch)',
    'kind',
    `pull (${forceUnit(units)})`,
    `pull on ${mine.name || 'the reference'} (${forceUnit(units)})`,
    'difference from the aim (%)',
    'felt band',
    'share of the minimum strength (%)',
    ...(bends ? bendHeading(state) : []),
  ];
  const rows = plan.strings.map((s, i) => [
    i + 1,
    s.note,
    lengthNumber(s.speakingLength, units),
    s.pull ? s.pull.gauge.gauge : '',
    s.pull ? s.pull.gauge.kind : '',
    s.pull ? forceNumber(s.pull.tension, units) : '',
    forceNumber(s.reference, units),
    percent(s.difference, 1),
    s.felt ?? '',
    percent(s.pull?.share, 0),
    ...(bends ? bendCells(bends[i], units) : []),
  ]);
  return csv([heading, ...rows]);
}
