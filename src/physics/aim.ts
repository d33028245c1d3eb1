/**
 * Choosing a string by how it feels, not by its pull alone.
 *
 * An aim weighs pull, push and travel; a string's distance is the root of the weighted mean square of its relative differences
 * from what is wanted. Plain strings of one metal at one length and pitch all need the same travel, whatever their gauge: the
 * travel alone can't choose among them. Distances that differ by rounding count as equal, and of equal ones the nearest pull wins.
 */
import type { Construction } from './construction.ts';
import type { Entry } from './entries.ts';
import { feelOf, type BendAsked } from './feel.ts';
import type { Sensation } from './felt.ts';
import { inRange } from './guard.ts';

/** One sensation alone, or weights of several: a weight of two counts a difference twice as much in the square. */
export type Aim = Sensation | Readonly<Partial<Record<Sensation, number>>>;

/** Relative difference of what was weighed, and the distance that they make. */
export type AimedResidual = Readonly<Partial<Record<Sensation, number>>> & {
  readonly distance: number;
};

const TIE = 1e-9;
const sensations = ['pull', 'push', 'travel'] as const;
const weightRange = { min: 0, max: 1e6 };

interface AimAsked {
  readonly speakingLength: number;
  readonly frequency: number;
  /** N */
  readonly tension: number;
  readonly push?: number | undefined;
  readonly travel?: number | undefined;
  readonly bend?: BendAsked | undefined;
  readonly aim?: Aim;
}

interface Term {
  readonly sensation: Sensation;
  readonly weight: number;
  readonly wanted: number;
}

function termsOf({ aim = 'pull', tension, push, travel }: AimAsked): readonly Term[] {
  const weights = typeof aim === 'string' ? { [aim]: 1 } : aim;
  const wanted = { pull: tension, push, travel };
  const terms = sensations.flatMap((sensation) => {
    const weight = inRange(`aim.${sensation}`, weights[sensation] ?? 0, weightRange);
    if (weight === 0) return [];
    const value = wanted[sensation] ?? NaN;
    return { sensation, weight, wanted: inRange(sensation, value, { min: 0, open: true }) };
  });
  if (terms.length === 0) {
    throw new RangeError(
      'aim weighs nothing; permitted: a weight above 0 for pull, push or travel',
    );
  }
  return terms;
}

function residualOf(
  construction: Construction,
  asked: AimAsked,
  terms: readonly Term[],
): (AimedResidual & { readonly pullMiss: number }) | undefined {
  const { speakingLength, frequency, bend } = asked;
  if (!bend) throw new RangeError('bend is missing; permitted: the fret and the rise of a bend');
  const feel = feelOf({ construction, speakingLength, frequency, ...bend });
  const differences: Partial<Record<Sensation, number>> = {};
  let [squares, weights] = [0, 0];
  for (const { sensation, weight, wanted } of terms) {
    const value = feel[sensation];
    if (value === undefined) return undefined;
    const difference = value / wanted - 1;
    differences[sensation] = difference;
    squares += weight * difference ** 2;
    weights += weight;
  }
  const pullMiss = Math.abs(feel.pull / asked.tension - 1);
  return { ...differences, distance: Math.sqrt(squares / weights), pullMiss };
}

/**
 * Index and residual of the entry that comes nearest to the aim and holds; undefined when none can be judged. A string whose
 * stretch isn't known, or that can't reach the rise, can't be judged by push or travel. Each entry is tried once.
 * Throws RangeError naming a weight or a wanted value that lies outside or is missing.
 */
export function nearestInFeel({
  entries,
  holds,
  ...asked
}: AimAsked & {
  readonly entries: readonly Entry[];
  readonly holds: (entry: Entry) => boolean;
}): { readonly index: number; readonly residual: AimedResidual } | undefined {
  const terms = termsOf(asked);
  let best: { index: number; residual: AimedResidual; pullMiss: number } | undefined;
  entries.forEach((entry, index) => {
    if (!holds(entry)) return;
    const found = residualOf(entry.construction, asked, terms);
    if (!found) return;
    const { pullMiss, ...residual } = found;
    const ahead = best ? best.residual.distance - residual.distance : Infinity;
    const tied = Math.abs(ahead) <= TIE;
    if (tied ? pullMiss < (best?.pullMiss ?? Infinity) : ahead > 0) {
      best = { index, residual, pullMiss };
    }
  });
  return best && { index: best.index, residual: best.residual };
}
