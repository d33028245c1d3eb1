/** What the physics is held against: the same sums in bare loops, without checks and objects, and with units in mathjs. */
import { add, divide, multiply, sqrt, square, subtract, unit } from 'mathjs';

/** Newton's method for a whole tone, as the module does it: the same number of steps, no checks and no objects. */
export function bareBendTo(length, pull, stiffness, at, target) {
  const b = length - at;
  const k = stiffness / pull;
  let y = 2 * Math.sqrt(target / (((k + 1) / length) * (1 / at + 1 / b) - 2 / (at * at)));
  for (let step = 0; step < 100; step += 1) {
    const p = Math.sqrt(at * at + y * y);
    const q = Math.sqrt(b * b + y * y);
    const gainA = (y * y) / (p + at);
    const gainB = (y * y) / (q + b);
    const strain = (gainA + gainB) / length;
    const miss =
      0.5 * (Math.log1p(k * strain) + Math.log1p(strain)) - Math.log1p(gainA / at) - target;
    const growth = (y / p + y / q) / length;
    const rate = 0.5 * growth * (1 / (1 / k + strain) + 1 / (1 + strain)) - y / (p * p);
    const next = y - miss / rate;
    if (Math.abs(next - y) <= 1e-15 * length) {
      y = next;
      break;
    }
    y = next;
  }
  const p = Math.sqrt(at * at + y * y);
  const q = Math.sqrt(b * b + y * y);
  const strain = (p + q - length) / length;
  return (pull + stiffness * strain) * (y / p + y / q);
}

/** The same with units: every length and force a quantity that knows what it is, the steps counted as the bare loop takes them. */
export function unitsBendTo(length, pull, stiffness, at, target) {
  const [l, a, b] = [unit(length, 'm'), unit(at, 'm'), unit(length - at, 'm')];
  const [still, stiff] = [unit(pull, 'N'), unit(stiffness, 'N')];
  const hypot = (p, q) => sqrt(add(square(p), square(q)));
  const stretch = (y) => divide(subtract(add(hypot(a, y), hypot(b, y)), l), l);
  const k = divide(stiff, still);
  let y = multiply(
    l,
    2 *
      Math.sqrt(
        target / ((k + 1) * (length / at + length / (length - at)) - 2 * (length / at) ** 2),
      ),
  );
  for (let step = 0; step < 4; step += 1) {
    const [p, q, strain] = [hypot(a, y), hypot(b, y), stretch(y)];
    const miss =
      0.5 * (Math.log1p(k * strain) + Math.log1p(strain)) - Math.log(divide(p, a)) - target;
    const growth = divide(add(divide(y, p), divide(y, q)), l);
    const tighter = multiply(growth, 0.5 * (1 / (1 / k + strain) + 1 / (1 + strain)));
    const rate = subtract(tighter, divide(y, square(p)));
    y = subtract(y, divide(miss, rate));
  }
  const pulled = add(still, multiply(stiff, stretch(y)));
  return multiply(pulled, add(divide(y, hypot(a, y)), divide(y, hypot(b, y)))).toNumber('N');
}

/** Bisection in sorted weights, then the pull and the share of the nearest on either side and of their neighbours. */
export function bareMatch({ weights, areas, strengths, notes, pulls }, length) {
  let sum = 0;
  for (let s = 0; s < notes.length; s += 1) {
    const speed = 2 * length * notes[s];
    const ideal = pulls[s] / (speed * speed);
    let [low, high] = [0, weights.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (weights[middle] < ideal) low = middle + 1;
      else high = middle;
    }
    for (let at = low - 2; at < low + 2; at += 1) {
      if (at < 0 || at >= weights.length) continue;
      const pull = weights[at] * speed * speed;
      const share = pull / areas[at] / strengths[at];
      if (share <= 1) sum += pull / pulls[s] - 1 + share;
    }
  }
  return sum;
}
