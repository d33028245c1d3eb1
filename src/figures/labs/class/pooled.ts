/** What a class found together: how far its measurements stand off the predictions, and how its hands judged. */
import { handThreshold, type HandThreshold } from '../../../physics/labs.ts';
import { compared } from '../kit/agree.ts';
import {
  comparedLabs,
  differenceAt,
  type ComparedLab,
  type ComparedRow,
  type HandRow,
  type Judgements,
} from '../kit/class/row-text.ts';

export interface Off {
  readonly row: ComparedRow;
  /** Measured less predicted; of the prediction, or in cents where the prediction may be nothing */
  readonly off: number;
  /** Of that, what the measurement leaves open, one standard deviation */
  readonly doubt: number;
  /** What the prediction leaves open */
  readonly predictedDoubt: number;
  readonly agrees: boolean;
}
export interface Pooled {
  /** The smallest first */
  readonly offs: readonly Off[];
  readonly mean: number;
  /** One standard deviation; undefined of a single row */
  readonly spread: number | undefined;
  /** In which all of it is: a share, or cents */
  readonly isShare: boolean;
}

/** The rows of one lab; undefined of none. */
export function pooled(rows: readonly ComparedRow[], lab: ComparedLab): Pooled | undefined {
  const isShare = comparedLabs[lab].unit !== 'cents';
  const offs = rows
    .filter((row) => row.lab === lab)
    .map((row): Off => {
      const per = isShare ? row.predicted.value : 1;
      const { difference, agree } = compared(row.predicted, row.measured);
      return {
        row,
        off: difference / per,
        doubt: row.measured.uncertainty / per,
        predictedDoubt: row.predicted.uncertainty / per,
        agrees: agree,
      };
    })
    .sort((a, b) => a.off - b.off);
  if (offs.length === 0) return undefined;
  const mean = offs.reduce((sum, { off }) => sum + off, 0) / offs.length;
  const squares = offs.reduce((sum, { off }) => sum + (off - mean) ** 2, 0);
  const spread = offs.length > 1 ? Math.sqrt(squares / (offs.length - 1)) : undefined;
  return { offs, mean, spread, isShare };
}

export interface Curve {
  readonly hands: number;
  readonly steps: readonly Judgements[];
  readonly judgements: number;
  /** Of all hands as if they were one */
  readonly found: HandThreshold | undefined;
  /** Of each hand that answered enough, the smallest first */
  readonly each: readonly { readonly who: string; readonly found: HandThreshold }[];
}

/** Counts as single judgements, each at the middle of its step. */
const single = (steps: readonly Judgements[]) =>
  steps.flatMap(({ step, right, wrong }) =>
    Array.from({ length: right + wrong }, (_, i) => ({
      difference: differenceAt(step),
      right: i < right,
    })),
  );

/** The hands of a class; undefined of none. */
export function pooledHands(rows: readonly HandRow[]): Curve | undefined {
  if (rows.length === 0) return undefined;
  const all = new Map<number, { right: number; wrong: number }>();
  for (const { step, right, wrong } of rows.flatMap(({ judgements }) => judgements)) {
    const at = all.get(step) ?? { right: 0, wrong: 0 };
    all.set(step, { right: at.right + right, wrong: at.wrong + wrong });
  }
  const steps = [...all].sort(([a], [b]) => a - b).map(([step, counts]) => ({ step, ...counts }));
  return {
    hands: rows.length,
    steps,
    judgements: steps.reduce((sum, { right, wrong }) => sum + right + wrong, 0),
    found: handThreshold(single(steps)),
    each: rows
      .flatMap(({ who, judgements }) => {
        const found = handThreshold(single(judgements));
        return found ? [{ who, found }] : [];
      })
      .sort((a, b) => a.found.value - b.found.value),
  };
}
