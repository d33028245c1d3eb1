/** The stringing sheet as comma-separated values, in the reader's units. `sheet-read.ts` reads it back. */
import { linearDensity } from '../physics/index.ts';
import { aimText } from './aim-text.ts';
import { bendsOf, type BentString } from './bends.ts';
import { csv, type Cell } from './csv.ts';
import { constructionOf } from './drawer.ts';
import {
  densityNumber,
  densityUnit,
  forceNumber,
  forceUnit,
  inUnits,
  lengthNumber,
  lengthUnit,
  travelNumber,
} from './format.ts';
import { judgedCourses } from './judged-courses.ts';
import { judgedPulls } from './judged.ts';
import { encode } from './link.ts';
import { decode } from './link-read.ts';
import { placesText } from './place-text.ts';
import { planOf } from './plan.ts';
import { pullsOf } from './pulls.ts';
import type { Gauge, State, Units } from './schema.ts';

const percent = (share: number | undefined, digits: number): string =>
  share === undefined ? '' : (share * 100).toFixed(digits);

/** What the columns are called, as far as a reader of the file must find them. */
export const sheetColumns = {
  string: 'string',
  gauge: 'gauge (thousandths of an inch)',
  kind: 'kind',
  measured: 'measured pull',
  notes: 'notes',
} as const;
/** What the lines below the strings begin with. */
export const sheetLines = { together: 'together', link: 'link' } as const;

/** What the bends add to the sheet: their columns' headings, and one string's cells. */
const bendHeading = ({ bend, units }: State): readonly string[] => {
  const asked = `${Number(bend.rise.toFixed(1))} cents at fret ${bend.fret}`;
  return [
    `travel for ${asked} (${lengthUnit(units)})`,
    'travel, difference from the aim (%)',
    `push for ${asked} (${forceUnit(units)})`,
    'push, difference from the aim (%)',
    'verdict on pull, push and travel',
  ];
};
function bendCells(bent: BentString | undefined, units: Units): readonly string[] {
  const { travel, push, verdict } = bent && !bent.breaks ? bent : {};
  return [
    travel ? travelNumber(travel.value, units) : '',
    percent(travel?.difference, 1),
    push ? forceNumber(push.value, units) : '',
    percent(push?.difference, 1),
    bent?.breaks ? 'may break in the bend' : (verdict ?? ''),
  ];
}

const weightOf = (gauge: Gauge): string => densityNumber(linearDensity(constructionOf(gauge)));

/** As a link has it. */
export const gaugeNumber = ({ gauge }: Gauge): number => Number(gauge.toFixed(2));

const total = (newtons: number, units: Units): string => inUnits(newtons, units).toFixed(1);

/**
 * A heading, one line a string, and below them the sums, what was aimed for, and the link that opens the same bench. Differences
 * and shares are plain numbers in per cent. `withBends` adds their columns: given when the sheet shows them. What was measured is
 * left empty, to be filled in.
 */
export function sheetCsv(shown: State, withBends = false): string {
  // As its link has it, to the digits of that: what comes back is what was written.
  const state = decode(encode(shown), shown).state ?? shown;
  const bends = withBends ? bendsOf(state) : undefined;
  const { mine, other, units } = state;
  const plan = planOf(state);
  const own = pullsOf(mine);
  const judged = judgedPulls(state);
  const force = forceUnit(units);
  const whose = mine.name || 'the reference';
  const heading = [
    sheetColumns.string,
    'note',
    `speaking length (${lengthUnit(units)})`,
    sheetColumns.gauge,
    sheetColumns.kind,
    `unit weight (${densityUnit()})`,
    `pull (${force})`,
    `pull, plus or minus one standard deviation (${force})`,
    `aim (${force})`,
    'difference from the aim (%)',
    'verdict on the pull',
    'share of the minimum strength (%)',
    `note on ${whose}`,
    `gauge on ${whose} (thousandths of an inch)`,
    `kind on ${whose}`,
    `unit weight on ${whose} (${densityUnit()})`,
    `pull on ${whose} (${force})`,
    ...(bends ? bendHeading(state) : []),
    `${sheetColumns.measured} (${force})`,
    sheetColumns.notes,
  ];
  const rows = plan.strings.map((s, i): readonly Cell[] => {
    const { pull } = s;
    const broken = pull?.strain === 'broken';
    const string = mine.strings[s.referenceIndex];
    return [
      i + 1,
      s.note,
      lengthNumber(s.speakingLength, units),
      pull && gaugeNumber(pull.gauge),
      pull?.gauge.kind,
      pull && weightOf(pull.gauge),
      pull && (broken ? 'breaks' : forceNumber(pull.tension, units)),
      judged[i] && forceNumber(judged[i].doubt, units),
      forceNumber(s.wanted, units),
      broken ? '' : percent(s.difference, 1),
      judged[i]?.judgement,
      percent(pull?.share, 0),
      string?.note,
      string && gaugeNumber(string),
      string?.kind,
      string && weightOf(string),
      forceNumber(own[s.referenceIndex]?.tension ?? NaN, units),
      ...(bends ? bendCells(bends[i], units) : []),
      '',
      '',
    ];
  });
  const together: Cell[] = heading.map(() => '');
  const at = (column: string): number => heading.findIndex((name) => name.startsWith(column));
  const courses = judgedCourses(state).map(({ number, which, ...course }): Cell[] => {
    const cells: Cell[] = heading.map(() => '');
    cells[0] = `course ${number}, strings ${which.map((i) => i + 1).join(' ')}`;
    cells[at('pull (')] = total(course.pull, units);
    cells[at('aim (')] = total(course.wanted, units);
    cells[at('difference')] = percent(course.difference, 1);
    cells[at('verdict')] = course.judgement;
    return cells;
  });
  together[0] = sheetLines.together;
  together[at('pull (')] = total(plan.total, units);
  together[at('aim (')] = total(plan.wantedTotal, units);
  together[at('difference')] = percent(plan.total / plan.wantedTotal - 1, 1);
  together[at('pull on')] = total(plan.referenceTotal, units);
  const { treble, bass } = other.scale;
  const length = (metres: number): string => `${lengthNumber(metres, units)} ${lengthUnit(units)}`;
  return csv([
    heading,
    ...rows,
    ...courses,
    together,
    [],
    ['for', other.name],
    ['scale', treble === bass ? length(treble) : `${length(treble)} to ${length(bass)}`],
    ['A4', `${other.a4} Hz`],
    ...(placesText(other, false) ? [['strings', placesText(other, false)]] : []),
    ['strung with', other.family ?? 'electric strings'],
    ['to feel like', `${mine.name}, ${length(mine.scale.treble)}`],
    ['aim', aimText(state).replaceAll('\u00a0', ' ')],
    [sheetLines.link, encode(state)],
  ]);
}
