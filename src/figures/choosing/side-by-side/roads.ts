/** The five strings that stand side by side: as it is, at the end of each road, and where the reader's point is. */
import { lowString, type LowStrung } from '../../../instrument/low-string.ts';
import type { State } from '../../../instrument/schema.ts';
import { centsOfPartial } from '../../../physics/index.ts';

export interface Road {
  readonly id: 'own' | 'down' | 'longer' | 'thicker' | 'point';
  readonly name: string;
  readonly string: LowStrung;
}

export function roadsOf(state: State): readonly Road[] {
  const { own, down, longer, thicker, point } = lowString(state);
  return [
    { id: 'own', name: 'As it is', string: own },
    { id: 'down', name: 'Tuned down', string: down },
    { id: 'longer', name: 'Lengthened', string: longer },
    { id: 'thicker', name: 'Thickened', string: thicker },
    { id: 'point', name: 'Your point', string: point },
  ];
}

/** The partials whose drift is drawn. It grows nearly with the square of their number. */
export const shownPartials = [5, 10, 15] as const;

/** Cents by which each of them stands above its whole multiple; undefined where the stiffness is not known. */
export const driftsOf = ({ inharmonicity }: LowStrung): readonly number[] | undefined =>
  inharmonicity === undefined
    ? undefined
    : shownPartials.map((partial) => centsOfPartial({ inharmonicity, partial }));
