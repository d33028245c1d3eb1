/** The vice as a table: one free length a row, a centimetre apart. */
import { millimetres } from '../../../physics/index.ts';
import { droop, reach, type Pair } from './vice.ts';

export const head: readonly string[] = [
  'free length / mm',
  'plain droops / mm',
  'wound droops / mm',
];

export const rows = ({ plain, wound }: Pair): readonly (readonly number[])[] =>
  Array.from({ length: Math.round((reach.max - reach.min) / 0.01) + 1 }, (_, i) => {
    const length = reach.min + i * 0.01;
    return [length, droop(plain, length).down, droop(wound, length).down].map(millimetres);
  });
