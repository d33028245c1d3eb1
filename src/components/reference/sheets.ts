/** The reference sheets in their order, as the index, the title blocks and the way from sheet to sheet name them. */
import { href } from '../href.ts';

export interface ReferenceSheet {
  readonly id:
    'materials' | 'pitch' | 'unit-weight' | 'strength' | 'frets' | 'instruments' | 'model';
  readonly title: string;
  /** The question that the sheet answers */
  readonly question: string;
  /** What stands on it */
  readonly holds: string;
  /** What it is worked out from */
  readonly from: string;
}

export const sheets: readonly ReferenceSheet[] = [
  {
    id: 'materials',
    title: 'Materials',
    question: 'What is a string made of, and how sure is each number?',
    holds: 'Density and stiffness with tolerance, source, and how closely we followed it',
    from: 'Handbooks, mill sheets, papers',
  },
  {
    id: 'pitch',
    title: 'Pitch',
    question: 'How many times a second does the string vibrate?',
    holds: 'C0 to C7 in hertz, for any reference pitch',
    from: 'Equal temperament',
  },
  {
    id: 'unit-weight',
    title: 'Unit weight',
    question: 'What does a metre of string weigh, and how far off may a real one be?',
    holds: 'Every gauge, its core and wraps, and sections to scale',
    from: 'Densities and the helix',
  },
  {
    id: 'strength',
    title: 'Strength',
    question: 'How hard can you pull a wire before it breaks?',
    holds: 'Minimum strength by diameter, published fits, what common strings reach',
    from: 'The standard for music wire',
  },
  {
    id: 'frets',
    title: 'Frets',
    question: 'Where does each fret go?',
    holds: 'Any scale, any equal division, two scales on one neck; prints on one page',
    from: 'Equal division',
  },
  {
    id: 'instruments',
    title: 'Instruments',
    question: 'What does each string of a mandolin, a banjo or a violin pull?',
    holds: 'Eighteen instruments with scale, tuning, gauges and the pull of every string',
    from: 'Common practice',
  },
  {
    id: 'model',
    title: 'The model',
    question: 'What do the symbols mean, and what does the calculation leave out?',
    holds: 'Symbols, equations, and everything left out, with the size of the error',
    from: 'Written for teachers',
  },
];

export const sheetHref = (id: ReferenceSheet['id']): string => href(`reference/${id}/`);

/** A sheet, its number, and its neighbours. */
export function sheetOf(id: ReferenceSheet['id']) {
  const at = sheets.findIndex((s) => s.id === id);
  const sheet = sheets[at];
  if (!sheet)
    throw new RangeError(`id is "${id}"; permitted: ${sheets.map((s) => s.id).join(', ')}`);
  return { sheet, number: at + 1, previous: sheets[at - 1], next: sheets[at + 1] };
}
