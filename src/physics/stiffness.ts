/**
 * A stiff string: its partials stand a little above the whole multiples of its fundamental.
 * Source: H. Fletcher, Journal of the Acoustical Society of America 36 (1964) 203, for pinned ends:
 * f_n = n f0 sqrt(1 + B n²), with B = pi² E I/(T L²), which is pi³ E d⁴/(64 T L²) for round wire.
 */
import { inRange, speakingLengthRange, tensionRange } from './guard.ts';
import { frequency as frequencyOf } from './tension.ts';

const stiffnessRange = { min: 0, max: 1e3, unit: 'N m²' };
/** Inharmonicity from which a wire rings as a bar does, and is a string no more. */
export const MOST_INHARMONICITY = 1;
const inharmonicityRange = { min: 0, max: MOST_INHARMONICITY };
const partialRange = { min: 1, max: 10_000, whole: true };

/** Inharmonicity coefficient B, without unit. Throws RangeError naming an argument that lies outside. Source: Fletcher 1964. */
export function inharmonicity({
  speakingLength,
  tension,
  bendingStiffness,
}: {
  /** m */
  speakingLength: number;
  /** N */
  tension: number;
  /** N m² */
  bendingStiffness: number;
}): number {
  inRange('speakingLength', speakingLength, speakingLengthRange);
  inRange('tension', tension, tensionRange);
  inRange('bendingStiffness', bendingStiffness, stiffnessRange);
  return (Math.PI ** 2 * bendingStiffness) / (tension * speakingLength * speakingLength);
}

/** Factor sqrt(1 + B n²) by which partial `partial` stands above its whole multiple of the flexible string's pitch. Source: Fletcher 1964. */
export function stretchOfPartial({
  inharmonicity: b,
  partial,
}: {
  inharmonicity: number;
  partial: number;
}): number {
  inRange('inharmonicity', b, inharmonicityRange);
  inRange('partial', partial, partialRange);
  return Math.sqrt(1 + b * partial * partial);
}

/** How many cents partial `partial` stands above its whole multiple of the flexible string's pitch. Source: Fletcher 1964. */
export function centsOfPartial(of: { inharmonicity: number; partial: number }): number {
  return 1200 * Math.log2(stretchOfPartial(of));
}

/** Frequencies in Hz of the first `count` partials. Throws RangeError naming an argument that lies outside. Source: Fletcher 1964. */
export function partials({
  speakingLength,
  tension,
  linearDensity,
  bendingStiffness,
  count,
}: {
  /** m */
  speakingLength: number;
  /** N */
  tension: number;
  /** kg/m */
  linearDensity: number;
  /** N m² */
  bendingStiffness: number;
  count: number;
}): readonly number[] {
  inRange('count', count, { min: 0, max: 10_000, whole: true });
  const flexible = frequencyOf({ speakingLength, tension, linearDensity });
  const b = inharmonicity({ speakingLength, tension, bendingStiffness });
  return Array.from({ length: count }, (_, i) => {
    const partial = i + 1;
    return partial * flexible * Math.sqrt(1 + b * partial * partial);
  });
}

/**
 * Length in m over which a string's end resists bending, sqrt(E I/T): how much shorter a clamped string sounds at each end.
 * Source: the static shape of a pulled beam, and Fletcher 1964 for clamped ends.
 */
export function endLength({
  bendingStiffness,
  tension,
}: {
  /** N m² */
  bendingStiffness: number;
  /** N */
  tension: number;
}): number {
  inRange('bendingStiffness', bendingStiffness, stiffnessRange);
  inRange('tension', tension, tensionRange);
  return Math.sqrt(bendingStiffness / tension);
}
