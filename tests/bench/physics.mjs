/**
 * What the physics costs: each function against a bare loop of the same arithmetic, which is the limit, and against the same sum
 * with units in mathjs; and how a match grows with the drawer. All in one run, as ratios, so that the machine matters little.
 */
import { multiply, pow, unit } from 'mathjs';

import {
  axialStiffness,
  bendTo,
  coreArea,
  fromThousandths,
  linearDensity,
  match,
  materials,
  minimumStrength,
  tension,
} from '../../src/physics/index.ts';
import { bareBendTo, bareMatch, unitsBendTo } from './baselines.mjs';
import { median, race, rounded, rounds } from './race.mjs';

const lengths = Float64Array.from({ length: 1024 }, (_, i) => 0.6 + i * 1e-4);
const pick = (i) => lengths[i & 1023];

function raceTension() {
  const [frequency, density] = [329.63, 3.98e-4];
  const [hertz, weight] = [unit(frequency, 'Hz'), unit(density, 'kg/m')];
  return race({
    module: {
      calls: 400_000,
      run: (calls) => {
        let sum = 0;
        for (let i = 0; i < calls; i += 1)
          sum += tension({ speakingLength: pick(i), frequency, linearDensity: density });
        return sum;
      },
    },
    bare: {
      calls: 400_000,
      run: (calls) => {
        let sum = 0;
        for (let i = 0; i < calls; i += 1) {
          const speed = 2 * pick(i) * frequency;
          sum += density * speed * speed;
        }
        return sum;
      },
    },
    mathjs: {
      calls: 1_000,
      run: (calls) => {
        let sum = 0;
        for (let i = 0; i < calls; i += 1) {
          const speed = multiply(unit(2 * pick(i), 'm'), hertz);
          sum += multiply(weight, pow(speed, 2)).toNumber('N');
        }
        return sum;
      },
    },
  });
}

const wire = { kind: 'plain', diameter: fromThousandths(10), material: 'musicWire' };

function raceBendTo() {
  const pull = 72;
  const modulus = materials.musicWire.modulus.value;
  const target = (200 * Math.LN2) / 1200;
  return race({
    module: {
      calls: 40_000,
      run: (calls) => {
        let sum = 0;
        for (let i = 0; i < calls; i += 1) {
          const speakingLength = pick(i);
          const at = speakingLength / 2;
          sum += bendTo({ construction: wire, speakingLength, tension: pull, at, rise: 200 }).push;
        }
        return sum;
      },
    },
    bare: {
      calls: 40_000,
      run: (calls) => {
        let sum = 0;
        for (let i = 0; i < calls; i += 1) {
          const stiffness = modulus * (Math.PI / 4) * wire.diameter * wire.diameter;
          sum += bareBendTo(pick(i), pull, stiffness, pick(i) / 2, target);
        }
        return sum;
      },
    },
    mathjs: {
      calls: 200,
      run: (calls) => {
        let sum = 0;
        for (let i = 0; i < calls; i += 1)
          sum += unitsBendTo(pick(i), pull, axialStiffness(wire), pick(i) / 2, target);
        return sum;
      },
    },
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

function raceMatch() {
  const drawer = drawerOf(60);
  const weights = Float64Array.from(drawer, (c) => linearDensity(c));
  const areas = Float64Array.from(drawer, coreArea);
  const strengths = Float64Array.from(drawer, (c) => minimumStrength(c.diameter));
  const bare = { weights, areas, strengths, notes, pulls };
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
  const asked = Array.from(lengths, wanted);
  return race({
    module: {
      calls: 5_000,
      run: (calls) => {
        let sum = 0;
        for (let i = 0; i < calls; i += 1)
          sum += match({ strings: asked[i & 1023], drawer })[0]?.residual ?? 0;
        return sum;
      },
    },
    bare: {
      calls: 5_000,
      run: (calls) => {
        let sum = 0;
        for (let i = 0; i < calls; i += 1) sum += bareMatch(bare, pick(i));
        return sum;
      },
    },
    mathjs: {
      calls: 20,
      run: (calls) => {
        let sum = 0;
        for (let i = 0; i < calls; i += 1) sum += unitsMatch(pick(i));
        return sum;
      },
    },
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
      match({ strings: wanted(0.648), drawer });
      return Number(process.hrtime.bigint() - start);
    });
    const [seen] = fresh;
    const strings = wanted(0.648);
    const again = race({
      seen: {
        calls: 2_000,
        run: (calls) => {
          let sum = 0;
          for (let i = 0; i < calls; i += 1) sum += match({ strings, drawer: seen }).length;
          return sum;
        },
      },
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
  for (const [name, run] of Object.entries({
    tension: raceTension,
    bendTo: raceBendTo,
    'match of six': raceMatch,
  })) {
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
}

if (import.meta.main) benchPhysics();
