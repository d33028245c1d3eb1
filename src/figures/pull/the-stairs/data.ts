/** The stairs as a table: one gauge a row. */
import { forceUnit, inUnits } from '../../../instrument/format.ts';
import type { Units } from '../../../instrument/schema.ts';
import { gramsPerMetre } from '../../../physics/index.ts';
import type { Stairs } from './stairs.ts';

export const head = (units: Units): readonly string[] => [
  'kind',
  'gauge / 0.001 in',
  'unit weight / (g/m)',
  `pull / ${forceUnit(units)}`,
  'share of its own pull',
];

/** A string that would break has no pull. */
export const rows = (
  { plain, wound }: Stairs,
  units: Units,
): readonly (readonly (string | number)[])[] =>
  [...plain, ...wound].map(({ kind, gauge, pull, height }) => {
    const whole = pull.strain !== 'broken';
    return [
      kind,
      gauge,
      gramsPerMetre(pull.linearDensity),
      whole ? inUnits(pull.tension, units) : '',
      whole ? height : '',
    ];
  });
