/** Cells of the map in words. */
import {
  formatDifference,
  formatLength,
  formatNote,
  spokenNote,
} from '../../../instrument/format.ts';
import { hand, percentOf } from '../../../instrument/hand.svelte.ts';
import type { Units } from '../../../instrument/schema.ts';
import { felt, fromInches } from '../../../physics/index.ts';
import { cellsOn } from './own-rule.ts';
import type { MapCell, MapRow, RuleMapData } from './rule-map.ts';

const MINUS = '\u2212';

/** A signed number of inches or of steps: +1, −½, 0. */
export function signed(value: number): string {
  if (value === 0) return '0';
  const size = Math.abs(value);
  const whole = Math.trunc(size);
  const half = size === whole ? '' : '½';
  return `${value > 0 ? '+' : MINUS}${whole === 0 && half ? '' : whole}${half}`;
}

/** A mean as the cell letters it: whole per cent, signed. */
export function cellNumber(mean: number): string {
  const value = Math.round(100 * mean);
  return value === 0 ? '0' : `${value > 0 ? '+' : MINUS}${Math.abs(value)}`;
}

export function stepText({ steps }: MapRow): string {
  if (steps === undefined) return '';
  return steps === 0 ? 'home' : `${signed(steps)} step${Math.abs(steps) > 1 ? 's' : ''}`;
}

/** A set's name where the number of strings goes without saying. */
export const shortName = (name: string): string => name.replace(/^seven-string /, '');

const stateWords: Readonly<Record<MapCell['state'], (line: string) => string>> = {
  within: (line) => `every string within ${line}`,
  average: (line) => `the average within ${line}, but not every string`,
  off: (line) => `average beyond ${line}`,
  broken: () => 'a string would break',
};

/** One cell for those who hear it; the set and the scale are said by its headings. */
export const spokenCell = (cell: MapCell): string =>
  cell.state === 'broken'
    ? 'breaks'
    : `${cellNumber(cell.mean)} per cent, ${stateWords[cell.state](`${percentOf(hand.low)} per cent`)}`;

const within = ({ residuals }: MapCell): number =>
  residuals.filter(
    (r) => r !== undefined && felt(r, 'pull', hand.thresholds.pull) === 'you’d be guessing',
  ).length;

export const scaleOf = ({ instrument }: RuleMapData, by: number, units: Units): string =>
  formatLength(instrument.scale.treble + fromInches(by), units);

/** What the chosen cell is. */
export function cellTitle(map: RuleMapData, row: MapRow, cell: MapCell, units: Units): string {
  const name = row.set.name.charAt(0).toUpperCase() + row.set.name.slice(1);
  return `${name} on ${scaleOf(map, cell.by, units)}`;
}

/** What the chosen cell says. */
export function cellVerdict(map: RuleMapData, cell: MapCell): string {
  const count = cell.residuals.length;
  if (cell.state === 'broken') {
    const names = cell.residuals.flatMap((r, i) => {
      const note = map.instrument.strings[i]?.note;
      return r === undefined && note ? [formatNote(note)] : [];
    });
    return `${names.join(' and ')} would break.`;
  }
  const note = formatNote(map.instrument.strings[cell.worstString]?.note ?? '');
  const all = within(cell) === count;
  return `${all ? 'All' : within(cell)} ${all ? count : `of ${count}`} strings within ${percentOf(hand.low)}\u00a0%; on average ${formatDifference(cell.mean)}; farthest ${note}, ${formatDifference(cell.worst)}.`;
}

export function describeChoice(map: RuleMapData, row: MapRow, cell: MapCell, units: Units): string {
  const each = cell.residuals.map((r, i) => {
    const note = spokenNote(map.instrument.strings[i]?.note ?? '');
    return `${note} ${r === undefined ? 'breaks' : formatDifference(r)}`;
  });
  return `${cellTitle(map, row, cell, units)}. ${cellVerdict(map, cell)} String by string: ${each.join(', ')}.`;
}

/** A rule as a player says it: half a step for an inch. */
export const ruleText = (rule: number, units: Units): string =>
  `half a step for ${formatLength(fromInches(rule), units)}`;

/** How many of the sets that a rule names keep every string, and on average, within what a hand can tell. */
function countText(map: RuleMapData, rule: number): string {
  const cells = cellsOn(map, rule);
  const whole = cells.filter(({ state }) => state === 'within').length;
  const average = cells.filter(({ state }) => state === 'within' || state === 'average').length;
  return `${average} of ${cells.length} sets right on average, ${whole} on every string`;
}

/** Of the line that nobody has drawn yet, which stands too steep. */
export const waitingVerdict = (map: RuleMapData, rule: number): string =>
  `As it stands: ${countText(map, rule)}. Where would you lay it?`;

export function ruleVerdict(map: RuleMapData, rule: number, units: Units): string {
  const trade = [1, 1.5].map((inches) => `${ruleText(inches, units)}, ${countText(map, inches)}`);
  return `Your rule, ${ruleText(rule, units)}: ${countText(map, rule)}. The trade’s: ${trade.join('; ')}.`;
}
