/**
 * What the physics costs: each function against a bare loop of the same arithmetic, which is the limit, and against the same sum
 * with units in mathjs; and how a match grows with the drawer. All in one run, as ratios, so that the machine matters little.
 */
import { add, divide, multiply, pow, sqrt, square, subtract, unit } from 'mathjs';

import {
  axialStiffness,
  bendTo,
  coreArea,
  fromThousandths,
  linearDensity,
  match,
  minimumStrength,
  tension,
} from '../../src/physics/index.ts';

const rounds = 7;
const rounded = (number) => Number(number.toPrecision(3));
const median = (values) => values.toSorted((a, b) => a - b)[values.length >> 1] ?? NaN;
/** Keeps results from being optimised away. */
let sink = 0;

/** Nanoseconds a call, best of interleaved rounds by median; every contender runs in every round. */
function race(contenders) {
  const times = Object.fromEntries(Object.keys(contenders).map((name) => [name, []]));
  for (let round = 0; round < rounds + 1; round += 1) {
    for (const [name, { calls, run }] of Object.entries(contenders)) {
      const start = process.hrtime.bigint();
      for (let i = 0; i < calls; i += 1) sink += run(i);
      const each = Number(process.hrtime.bigint() - start) / calls;
      // The first round only warms up.
      if (round > 0) times[name].push(each);
    }
  }
  return Object.fromEntries(Object.entries(times).map(([name, all]) => [name, median(all)]));
}

const lengths = Float64Array.from({ length: 1024 }, (_, i) => 0.6 + i * 1e-4);
const pick = (i) => lengths[i & 1023];

function raceTension() {
  const [frequency, density] = [329.63, 3.98e-4];
  const [hertz, weight] = [unit(frequency, 'Hz'), unit(density, 'kg/m')];
  return race({
    module: {
      calls: 400_000,
      run: (i) => tension({ speakingLength: pick(i), frequency, linearDensity: density }),
    },
    bare: {
      calls: 400_000,
      run: (i) => {
        const speed = 2 * pick(i) * frequency;
        return density * speed * speed;
      },
    },
    mathjs: {
      calls: 1_000,
      run: (i) =>
        multiply(weight, pow(multiply(unit(2 * pick(i), 'm'), hertz), 2)).toNumber('N'),
    },
  });
}

const wire = { kind: 'plain', diameter: fromThousandths(10), material: 'musicWire' };

/** Newton's method for a whole tone, as the module does it: the same number of steps, no checks and no objects. */
function bareBendTo(length, pull, stiffness, at, target) {
  const b = length - at;
  const k = stiffness / pull;
  let y = 2 * Math.sqrt(target / (((k + 1) / length) * (1 / at + 1 / b) - 2 / (at * at)));
  for (let step = 0; step < 100; step += 1) {
    const [p, q] = [Math.hypot(at, y), Math.hypot(b, y)];
    const [gainA, gainB] = [(y * y) / (p + at), (y * y) / (q + b)];
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
  const strain = (Math.hypot(at, y) + Math.hypot(b, y) - length) / length;
  return (pull + stiffness * strain) * (y / Math.hypot(at, y) + y / Math.hypot(b, y));
}

/** The same with units: every length and force a quantity that knows what it is, the steps counted as the bare loop takes them. */
function unitsBendTo(length, pull, stiffness, at, target) {
  const [l, a, b] = [unit(length, 'm'), unit(at, 'm'), unit(length - at, 'm')];
  const [still, stiff] = [unit(pull, 'N'), unit(stiffness, 'N')];
  const hypot = (p, q) => sqrt(add(square(p), square(q)));
  const stretch = (y) => divide(subtract(add(hypot(a, y), hypot(b, y)), l), l);
  const k = divide(stiff, still);
  let y = multiply(l, 2 * Math.sqrt(target / ((k + 1) * (length / at + length / (length - at)) - 2 * (length / at) ** 2)));
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

function raceBendTo() {
  const pull = 72;
  const stiffness = axialStiffness(wire);
  const target = (200 * Math.LN2) / 1200;
  const run = (f) => (i) => f(pick(i), pull, stiffness, pick(i) / 2, target);
  return race({
    module: {
      calls: 40_000,
      run: (i) =>
        bendTo({
          construction: wire,
          speakingLength: pick(i),
          tension: pull,
          at: pick(i) / 2,
          rise: 200,
        }).push,
    },
    bare: { calls: 40_000, run: run(bareBendTo) },
    mathjs: { calls: 200, run: run(unitsBendTo) },
  });
}

/** A drawer of `size` plain strings, evenly between the thinnest and the thickest of which the strength is known. */
const drawerOf = (size) =>
  Array.from({ length: size }, (_, i) => ({
    ...wire,
    diameter: fromThousandths(7 + (19 * i) / Math.max(1, size - 1)),
  }));
const notes = [329.63, 246.94, 196, 146.83, 110, 82.41];
const pulls = [72, 68, 74, 79, 83, 76];
const wanted = (speakingLength) =>
  notes.map((frequency, i) => ({ speakingLength, frequency, tension: pulls[i] }));

/** Bisection in sorted weights, then the pull and the share of the nearest on either side and of their neighbours. */
function bareMatch(weights, areas, strengths, length) {
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

function raceMatch() {
  const drawer = drawerOf(60);
  const weights = Float64Array.from(drawer, (c) => linearDensity(c));
  const areas = Float64Array.from(drawer, coreArea);
  const strengths = Float64Array.from(drawer, (c) => minimumStrength(c.diameter));
  const units = drawer.map((c) => unit(linearDensity(c), 'kg/m'));
  const unitsMatch = (length) => {
    let sum = 0;
    notes.forEach((frequency, s) => {
      const square = pow(multiply(unit(2 * length, 'm'), unit(frequency, 'Hz')), 2);
      const from = weights.findIndex((w) => w * (2 * length * frequency) ** 2 >= pulls[s]);
      for (const weight of units.slice(Math.max(0, from - 2), from + 2)) {
        sum += multiply(weight, square).toNumber('N') / pulls[s] - 1;
      }
    });
    return sum;
  };
  return race({
    module: {
      calls: 5_000,
      run: (i) => match({ strings: wanted(pick(i)), drawer })[0]?.residual ?? 0,
    },
    bare: { calls: 5_000, run: (i) => bareMatch(weights, areas, strengths, pick(i)) },
    mathjs: { calls: 20, run: (i) => unitsMatch(pick(i)) },
  });
}

/** A match on a drawer that it hasn't seen, which it must sort first: how the time grows for ten times the strings. */
function growth() {
  const rows = {};
  let before;
  for (const size of [100, 1_000, 10_000]) {
    const fresh = Array.from({ length: rounds }, () => drawerOf(size).reverse());
    const times = fresh.map((drawer) => {
      const start = process.hrtime.bigint();
      sink += match({ strings: wanted(0.648), drawer })[0]?.residual ?? 0;
      return Number(process.hrtime.bigint() - start);
    });
    const [seen] = fresh;
    const again = race({
      seen: { calls: 2_000, run: () => match({ strings: wanted(0.648), drawer: seen }).length },
    });
    const now = median(times);
    rows[size] = {
      'first, ms': rounded(now / 1e6),
      'first, times the row above': before ? rounded(now / before.now) : '',
      'n log n would be': before
        ? rounded((size * Math.log(size)) / (before.size * Math.log(before.size)))
        : '',
      'again, ms': rounded(again.seen / 1e6),
    };
    before = { now, size };
  }
  return rows;
}

/** Prints the ratios and judges nothing. */
export function benchPhysics() {
  const rows = {};
  for (const [name, run] of Object.entries({ tension: raceTension, bendTo: raceBendTo, 'match of six': raceMatch })) {
    const { module, bare, mathjs } = run();
    rows[name] = {
      'calls a second': Math.round(1e9 / module),
      'times a bare loop': rounded(module / bare),
      'times ahead of mathjs units': rounded(mathjs / module),
    };
  }
  console.log('What the physics costs, against a bare loop and against mathjs with units');
  console.table(rows);
  console.log('\nHow a match of six strings grows with the drawer');
  console.table(growth());
  if (Number.isNaN(sink)) throw new Error('the sums did not work out');
}

if (import.meta.main) benchPhysics();
