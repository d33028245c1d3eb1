/** The map's strings as a table of data. */
import type { Cell } from '../../../instrument/csv.ts';
import { forceNumber, lengthNumber } from '../../../instrument/format.ts';
import { PARTIAL, type LowString, type LowStrung } from '../../../instrument/low-string.ts';
import type { Units } from '../../../instrument/schema.ts';
import { stringHead } from '../../kit/string-head.ts';

export const dataHead = (units: Units): readonly string[] => [
  'string',
  ...stringHead(units),
  'inharmonicity B',
  `partial ${PARTIAL} sharp / cents`,
];

/** A string that would break has no pull; one whose stiffness is not known no inharmonicity. */
export function dataRows(low: LowString, units: Units): readonly (readonly Cell[])[] {
  const row = (name: string, s: LowStrung): readonly Cell[] => {
    const holds = s.strain !== 'broken';
    return [
      name,
      s.note,
      s.gauge.gauge,
      lengthNumber(s.speakingLength, units),
      holds ? forceNumber(s.tension, units) : 'breaks',
      holds && s.inharmonicity !== undefined ? s.inharmonicity.toPrecision(3) : '',
      holds && s.drift !== undefined ? s.drift.toFixed(1) : '',
    ];
  };
  return [
    row('as it is', low.own),
    row('tuned down', low.down),
    row('lengthened', low.longer),
    row('thickened', low.thicker),
    row('the point', low.point),
  ];
}
