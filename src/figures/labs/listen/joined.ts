/** Several plucks of one string as one: weighed by their doubts, with those that don't belong named and left out. */
import type { Estimate } from '../../../physics/index.ts';

export interface Heard {
  readonly id: string;
  /** Hz */
  readonly fundamental: number;
  readonly fundamentalDoubt: number;
  readonly inharmonicity: number;
  readonly inharmonicityDoubt: number;
}

export interface Joined {
  readonly fundamental: Estimate;
  readonly inharmonicity: Estimate;
  readonly used: readonly string[];
  /** Ids of plucks that lie far from the others */
  readonly dropped: readonly string[];
}

/** A pluck lies far off when it is so many doubts from the middle one, its own and what plucks differ by anyway. */
const FAR = 5;
/** Relative: hard and soft plucks of one string differ by so much, whatever the fit says */
const PLUCKED_APART = { fundamental: 3e-4, inharmonicity: 0.01 };

const middle = (values: readonly number[]): number => {
  const sorted = [...values].sort((a, b) => a - b);
  const half = sorted.length / 2;
  return sorted.length % 2
    ? (sorted[Math.floor(half)] ?? NaN)
    : ((sorted[half - 1] ?? NaN) + (sorted[half] ?? NaN)) / 2;
};

function mean(values: readonly Estimate[]): Estimate {
  const weights = values.map(({ uncertainty }) => uncertainty ** -2);
  const whole = weights.reduce((sum, w) => sum + w, 0);
  const value = values.reduce((sum, v, i) => sum + v.value * (weights[i] ?? 0), 0) / whole;
  const squares = values.reduce((sum, v, i) => sum + (weights[i] ?? 0) * (v.value - value) ** 2, 0);
  const scatter = values.length > 1 ? Math.max(1, squares / (values.length - 1)) : 1;
  return { value, uncertainty: Math.sqrt(scatter / whole) };
}

/** Undefined of no pluck. */
export function joined(plucks: readonly Heard[]): Joined | undefined {
  if (plucks.length === 0) return undefined;
  const tone = (p: Heard): Estimate => ({
    value: p.fundamental,
    uncertainty: Math.hypot(p.fundamentalDoubt, PLUCKED_APART.fundamental * p.fundamental),
  });
  const stiff = (p: Heard): Estimate => ({
    value: p.inharmonicity,
    uncertainty: Math.hypot(p.inharmonicityDoubt, PLUCKED_APART.inharmonicity * p.inharmonicity),
  });
  // Two that differ don't say which of them is wrong.
  const far = (of: (p: Heard) => Estimate): ReadonlySet<string> => {
    if (plucks.length < 3) return new Set();
    const at = middle(plucks.map((p) => of(p).value));
    const usual = middle(plucks.map((p) => Math.abs(of(p).value - at)));
    return new Set(
      plucks
        .filter((p) => Math.abs(of(p).value - at) > FAR * Math.hypot(of(p).uncertainty, usual))
        .map(({ id }) => id),
    );
  };
  const [farTone, farStiff] = [far(tone), far(stiff)];
  const used = plucks.filter(({ id }) => !farTone.has(id) && !farStiff.has(id));
  return {
    fundamental: mean(used.map(tone)),
    inharmonicity: mean(used.map(stiff)),
    used: used.map(({ id }) => id),
    dropped: plucks.filter((p) => !used.includes(p)).map(({ id }) => id),
  };
}
