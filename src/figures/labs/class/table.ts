/** A class's rows as a table that a spreadsheet opens, each with the text that it came as. */
import { comparedLabs } from '../kit/class/row-text.ts';
import type { Taken } from './take.ts';

const head = [
  'lab',
  'who',
  'string',
  'what',
  'unit',
  'predicted',
  '± of it',
  'measured',
  '± of it',
  'row',
];

type Line = readonly (string | number)[];

export function classTable(rows: readonly Pick<Taken, 'row' | 'text'>[]): readonly Line[] {
  return [
    head,
    ...rows.map(({ row, text }): Line => {
      if (row.lab === 'hand')
        return ['Hand', row.who, row.string, 'judgements', '', '', '', '', '', text];
      const { title, what, unit } = comparedLabs[row.lab];
      const { predicted, measured } = row;
      return [
        title,
        row.who,
        row.string,
        what,
        unit,
        predicted.value,
        predicted.uncertainty,
        measured.value,
        measured.uncertainty,
        text,
      ];
    }),
  ];
}
