/** The stringing sheet as comma-separated values (RFC 4180), in the reader's units. */
import { forceNumber, forceUnit, lengthNumber, lengthUnit } from './format.ts';
import type { Plan } from './plan.ts';
import type { State } from './schema.ts';

const cell = (value: string | number): string => {
  const text = String(value);
  return /[",\r\n]/.test(text) ? `"${text.replace(/"/g, '""')}"` : text;
};

/** One line a string, a heading first. Differences and shares are plain numbers in per cent. */
export function sheetCsv({ mine, units }: State, plan: Plan): string {
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
  ];
  const rows = plan.strings.map((s, i) => [
    i + 1,
    s.note,
    lengthNumber(s.speakingLength, units),
    s.pull ? s.pull.gauge.gauge : '',
    s.pull ? s.pull.gauge.kind : '',
    s.pull ? forceNumber(s.pull.tension, units) : '',
    forceNumber(s.reference, units),
    s.difference === undefined ? '' : (s.difference * 100).toFixed(1),
    s.felt ?? '',
    s.pull?.share === undefined ? '' : (s.pull.share * 100).toFixed(0),
  ]);
  return `${[heading, ...rows].map((row) => row.map(cell).join(',')).join('\r\n')}\r\n`;
}
