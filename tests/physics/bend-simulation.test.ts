/**
 * The push, found without its formula: a row of masses on springs that runs through a ring. The ring is drawn aside and held, the
 * string slips through it towards the tighter side, and the row moves by Newton's law under damping until it rests. The push is then
 * the force on the ring. The springs follow Hooke's law; nothing else is assumed.
 */
import { expect, test } from 'vitest';

import { bend } from '../../src/physics/bend.ts';
import { axialStiffness, linearDensity } from '../../src/physics/construction.ts';
import { expectRatio } from './kit.ts';

const construction = { kind: 'plain', diameter: 2.54e-4, material: 'musicWire' } as const;
const speakingLength = 0.648;
const tension = 72;

interface Rest {
  /** Sideways force on the ring, N */
  readonly push: number;
  /** Pull of each spring, N */
  readonly pulls: readonly number[];
}

/** Steps Newton's law in time until the row rests, the ring in the place of mass `held`, `travel` aside. */
function settle({ count, held, travel }: { count: number; held: number; travel: number }): Rest {
  const gap = speakingLength / count;
  const stiffness = axialStiffness(construction);
  const mass = linearDensity(construction) * gap;
  const x = Float64Array.from({ length: count + 1 }, (_, i) => i * gap);
  // Lengths at the pull of rest; those beside the ring change as string slips through it.
  const gaps = new Float64Array(count).fill(gap);
  // It starts straight but for the ring.
  const y = new Float64Array(count + 1);
  y[held] = travel;
  const [vx, vy] = [new Float64Array(count + 1), new Float64Array(count + 1)];
  const [fx, fy] = [new Float64Array(count + 1), new Float64Array(count + 1)];
  const pulls = new Float64Array(count);
  const step = 0.5 * Math.sqrt((mass * gap) / stiffness);
  // Damping near the slowest transverse mode's own, so that it dies in a few periods.
  const damping = (2 * Math.PI * Math.sqrt(tension / linearDensity(construction))) / speakingLength;
  let speed = Infinity;
  for (let n = 0; n < 60_000 && speed > 1e-9; n += 1) {
    fx.fill(0);
    fy.fill(0);
    for (let i = 0; i < count; i += 1) {
      const [dx, dy] = [x[i + 1]! - x[i]!, y[i + 1]! - y[i]!];
      const length = Math.hypot(dx, dy);
      const pull = tension + stiffness * (length / gaps[i]! - 1);
      pulls[i] = pull;
      fx[i]! += (pull * dx) / length;
      fy[i]! += (pull * dy) / length;
      fx[i + 1]! -= (pull * dx) / length;
      fy[i + 1]! -= (pull * dy) / length;
    }
    const slip = (0.02 * gap * (pulls[held]! - pulls[held - 1]!)) / stiffness;
    gaps[held - 1]! -= slip;
    gaps[held]! += slip;
    speed = Math.abs(slip) / step;
    for (let i = 1; i < count; i += 1) {
      if (i === held) continue;
      vx[i] = (vx[i]! + (fx[i]! / mass) * step) * (1 - damping * step);
      x[i]! += vx[i]! * step;
      vy[i] = (vy[i]! + (fy[i]! / mass) * step) * (1 - damping * step);
      y[i]! += vy[i]! * step;
      speed = Math.max(speed, Math.abs(vx[i]!), Math.abs(vy[i]!));
    }
  }
  expect(speed, 'the row came to rest').toBeLessThan(1e-6);
  return { push: -fy[held]!, pulls: [...pulls] };
}

test.each([
  [12, 0.5, 0.01],
  [12, 0.5, 0.02],
  [16, 0.75, 0.012],
])(
  'a row of %d masses held at %d of its length, %d m aside: push and pull',
  (count, part, travel) => {
    const held = part * count;
    const at = (1 - part) * speakingLength;
    const { push, pulls } = settle({ count, held, travel });
    const expected = bend({ construction, speakingLength, tension, at, travel });
    expectRatio(push, expected.push, 1e-6);
    for (const pull of pulls) expectRatio(pull, expected.tension, 1e-6);
  },
);
