/** The section as a table: one core diameter a row, at the same gauge. */
import { densityNumber, densityUnit, forceUnit, inUnits } from '../../../instrument/format.ts';
import type { Units } from '../../../instrument/schema.ts';
import { remade, type WoundPull } from '../../../instrument/wound-in-hand.ts';
import { wrapShare } from './describe.ts';
import { made, rangesOf, type Make } from './make.ts';

export const head = (units: Units): readonly string[] => [
  'gauge / 0.001 in',
  'core / 0.001 in',
  `unit weight / (${densityUnit()})`,
  'share of the wraps',
  `pull / ${forceUnit(units)}`,
  'share of minimum strength',
];

/** A string that would break has no pull. */
export function rows(
  own: WoundPull,
  make: Make,
  units: Units,
): readonly (readonly (string | number)[])[] {
  const { min, max } = rangesOf(own.construction, make).core;
  const first = Math.ceil(min * 2);
  return Array.from({ length: Math.max(0, Math.floor(max * 2) - first + 1) }, (_, i) => {
    const core = (first + i) / 2;
    const pull = remade(own, made(own.construction, { ...make, core }));
    const whole = pull.strain !== 'broken';
    return [
      make.outer,
      core,
      densityNumber(pull.linearDensity),
      wrapShare(pull),
      whole ? inUnits(pull.tension, units) : '',
      pull.share ?? '',
    ];
  });
}
