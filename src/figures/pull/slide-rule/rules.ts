/** Four rules with one hairline: each pairs a quantity, above, with the pull that it gives, below. */
import {
  letteredDensity,
  formatForce,
  formatFrequency,
  formatLength,
} from '../../../instrument/format.ts';
import type { State } from '../../../instrument/schema.ts';
import { tensionExponents } from '../../../physics/index.ts';
import { triedOf } from '../../trial.ts';

export interface Rule {
  readonly name: string;
  /** The pull grows with this power of the quantity */
  readonly exponent: number;
  /** The factor at which this wire reaches the minimum strength of its kind; undefined where it never does, or is not known */
  readonly breaksAt: number | undefined;
  readonly value: (factor: number) => string;
  readonly pull: (factor: number) => string;
}

/** The rules for the string in hand as it is on the instrument. */
export function rulesOf(state: State): readonly Rule[] {
  const { own } = triedOf(state);
  const { units } = state;
  // Length and pitch load the same wire; more mass or gauge means another wire, which is judged when it is picked.
  const breaksAt =
    own.share === undefined ? undefined : own.share ** (-1 / tensionExponents.speakingLength);
  const rule = (
    name: string,
    exponent: number,
    value: (factor: number) => string,
    limit?: number,
  ): Rule => ({
    name,
    exponent,
    value,
    breaksAt: limit,
    pull: (factor) => {
      if (limit !== undefined && factor > limit) return 'breaks';
      const ratio = factor ** exponent;
      return `pull ${formatForce(own.tension * ratio, units)}, ×${ratio.toFixed(2)}`;
    },
  });
  return [
    rule(
      'Length',
      tensionExponents.speakingLength,
      (k) => formatLength(own.speakingLength * k, units),
      breaksAt,
    ),
    rule('Pitch', tensionExponents.frequency, (k) => formatFrequency(own.frequency * k), breaksAt),
    rule('Mass', tensionExponents.linearDensity, (k) => letteredDensity(own.linearDensity * k)),
    rule(
      'Gauge',
      tensionExponents.diameter,
      (k) => `${Number((own.gauge.gauge * k).toPrecision(3))}`,
    ),
  ];
}

/** Half to double, as far as the rules reach. */
export const reach = { min: -1, max: 1 } as const;

/** Marks of a logarithmic scale from half to double, and from a quarter to four times; the numbered ones first. */
export const marks: Readonly<
  Record<
    number,
    { readonly numbered: readonly (readonly [number, string])[]; readonly plain: readonly number[] }
  >
> = {
  1: {
    numbered: [
      [0.5, '½'],
      [1, '1'],
      [2, '2'],
    ],
    plain: [0.6, 0.7, 0.8, 0.9, 1.1, 1.2, 1.3, 1.4, 1.5, 1.6, 1.7, 1.8, 1.9],
  },
  2: {
    numbered: [
      [0.25, '¼'],
      [0.5, '½'],
      [1, '1'],
      [2, '2'],
      [4, '4'],
    ],
    plain: [0.3, 0.35, 0.4, 0.45, 0.6, 0.7, 0.8, 0.9, 1.2, 1.4, 1.6, 1.8, 2.5, 3, 3.5],
  },
};
