/** The comparison as a table of data. */
import type { Cell } from '../../../instrument/csv.ts';
import { formatGauge } from '../../../instrument/format.ts';
import type { Residual } from './residuals.ts';

const percent = (share: number | undefined, without: string): Cell =>
  share === undefined ? without : (100 * share).toFixed(1);

export const dataHead: readonly string[] = [
  'note',
  'gauge now',
  'left on, pull off the aim / %',
  'gauge strung',
  'strung, pull off the aim / %',
];

export const dataRows = (residuals: readonly Residual[]): readonly (readonly Cell[])[] =>
  residuals.map(({ note, old, left, pick, picked }) => [
    note,
    formatGauge(old, 'in-lb').replace('\u00a0', ' '),
    percent(left, 'breaks'),
    pick ? formatGauge(pick, 'in-lb').replace('\u00a0', ' ') : 'none',
    percent(picked, ''),
  ]);
