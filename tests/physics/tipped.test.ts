/** A bend on a floating bridge, against a bridge that is turned until what pulls on it balances, each string pulled as long as it is. */
import { describe, expect, test } from 'vitest';

import {
  axialStiffness,
  fromInches,
  fromThousandths,
  linearDensity,
  noteFrequency,
  tension,
  tipped,
  type Construction,
  type OnBridge,
} from '../../src/physics/index.ts';
import { expectRefused, notFinite } from './kit.ts';

const speakingLength = fromInches(25.5);
const plain = (thou: number): Construction => ({
  kind: 'plain',
  diameter: fromThousandths(thou),
  material: 'musicWire',
});
const strung = (construction: Construction, note: string): OnBridge => ({
  construction,
  speakingLength,
  tension: tension({
    speakingLength,
    frequency: noteFrequency(note),
    linearDensity: linearDensity(construction),
  }),
});
const strings = [strung(plain(10), 'E4'), strung(plain(13), 'B3'), strung(plain(17), 'G3')];
const bridge = { stringArm: 0.01, springArm: 0.038, rate: 2000, count: 3 };
const RISE = 200;
const asked = { strings, bent: 1, rise: RISE, bridge };

/** Moment left over, N m, when the bridge has turned by `tilt` and the bent string sounds its note. */
function leftOver(tilt: number): number {
  const springs = bridge.count * bridge.rate * bridge.springArm * tilt * bridge.springArm;
  const pulls = strings.map(({ construction, tension: rest }, i) =>
    i === asked.bent
      ? // The pull goes with the pitch squared.
        rest * (2 ** (RISE / 1200)) ** 2 - rest
      : -(axialStiffness(construction) * bridge.stringArm * tilt) / speakingLength,
  );
  return pulls.reduce((sum, p) => sum + p * bridge.stringArm, 0) - springs;
}
function balanced(): number {
  let [low, high] = [0, 0.5];
  for (let i = 0; i < 100; i += 1) {
    const middle = (low + high) / 2;
    if (leftOver(middle) > 0) low = middle;
    else high = middle;
  }
  return low;
}

describe('a bend on a floating bridge', () => {
  test('turns it until the moments agree', () => {
    expect(tipped(asked).tilt).toBeCloseTo(balanced(), 12);
  });

  test('lets each neighbour down by what its shorter way takes from its pull', () => {
    const { tilt, cents } = tipped(asked);
    for (const i of [0, 2]) {
      const { construction, tension: rest } = strings[i] ?? strings[0] ?? strung(plain(10), 'E4');
      const slack = speakingLength / (1 + rest / axialStiffness(construction));
      const left =
        axialStiffness(construction) * ((speakingLength - tilt * bridge.stringArm) / slack - 1);
      const hertz = (pull: number) =>
        Math.sqrt(pull / linearDensity(construction)) / (2 * speakingLength);
      expect(cents[i]).toBeCloseTo(1200 * Math.log2(hertz(left) / hertz(rest)), 0);
    }
    expect(cents[1]).toBe(RISE);
  });

  test('asks for as much more travel as the stretch that the bridge swallows', () => {
    const { tilt, travelMore } = tipped(asked);
    const { construction, tension: rest } = strings[1] ?? strung(plain(13), 'B3');
    const needed = (rest * (2 ** (RISE / 600) - 1)) / axialStiffness(construction);
    const swallowed = (tilt * bridge.stringArm) / speakingLength;
    expect((1 + (travelMore ?? NaN)) ** 2).toBeCloseTo((needed + swallowed) / needed, 9);
  });

  test('does nothing to a bridge that hardly gives', () => {
    const { tilt, cents, travelMore, stringsShare } = tipped({
      ...asked,
      bridge: { ...bridge, rate: 1e6, springArm: 1 },
    });
    expect(tilt).toBeLessThan(1e-6);
    expect(cents[0]).toBeCloseTo(0, 2);
    expect(travelMore).toBeCloseTo(0, 4);
    expect(stringsShare).toBeLessThan(0.001);
  });

  test('is less with more strings beside it, and with more springs', () => {
    const alone = tipped({ ...asked, strings: strings.slice(0, 2) });
    expect(alone.tilt).toBeGreaterThan(tipped(asked).tilt);
    expect(tipped({ ...asked, bridge: { ...bridge, count: 5 } }).tilt).toBeLessThan(
      tipped(asked).tilt,
    );
  });

  test('says nothing of a neighbour whose stretch is not known', () => {
    const weighed = strung({ kind: 'measured', diameter: 1e-3, linearDensity: 5e-3 }, 'A2');
    expect(tipped({ ...asked, strings: [...strings, weighed] }).cents[3]).toBeUndefined();
  });

  test('refuses what lies outside by name', () => {
    expectRefused('bent', (bent) => tipped({ ...asked, bent }), [NaN, -1, 0.5, 3]);
    expectRefused('rise', (rise) => tipped({ ...asked, rise }), [...notFinite, -1, 1201]);
    expectRefused('rate', (rate) => tipped({ ...asked, bridge: { ...bridge, rate } }), [NaN, 0]);
  });
});
