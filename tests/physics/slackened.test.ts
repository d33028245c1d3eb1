/** What a tuned string loses when it is let out or warmed, against a wire that is cut, laid between two points and pulled tight. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

import {
  axialStiffness,
  fromInches,
  fromThousandths,
  linearDensity,
  noteFrequency,
  slackened,
  steelExpansion,
  tension,
  warmed,
  type Construction,
} from '../../src/physics/index.ts';
import { any, anyPlain, expectRefused, notFinite } from './kit.ts';

const speakingLength = fromInches(25.5);
const tuned = (construction: Construction, note: string) => ({
  construction,
  tension: tension({
    speakingLength,
    frequency: noteFrequency(note),
    linearDensity: linearDensity(construction),
  }),
});
const plain = (thou: number): Construction => ({
  kind: 'plain',
  diameter: fromThousandths(thou),
  material: 'musicWire',
});

/** The wire's own length from its pull, grown, and laid between the same two points again: no small strains taken for granted. */
function laidAgain(c: Construction, pull: number, growth: number): number {
  const slack = speakingLength / (1 + pull / axialStiffness(c));
  return axialStiffness(c) * (speakingLength / (slack * (1 + growth)) - 1);
}

describe('a string that has grown longer', () => {
  test('pulls as the wire that is laid between its ends again, but for the strain of tuning', () => {
    fc.assert(
      fc.property(
        anyPlain,
        fc.double({ min: 0.001, max: 0.01, noNaN: true }),
        fc.double({ min: 1e-6, max: 5e-4, noNaN: true }),
        (c, strain, share) => {
          const pull = strain * axialStiffness(c);
          const lost =
            pull - (slackened({ construction: c, tension: pull, share })?.tension ?? NaN);
          expect(lost / (pull - laidAgain(c, pull, share))).toBeCloseTo(1, 1.5);
        },
      ),
    );
  });

  test('falls by the cents of the frequency that is left', () => {
    const string = tuned(plain(17), 'G3');
    const left = slackened({ ...string, share: 1e-4 });
    const hertz = (pull: number) =>
      Math.sqrt(pull / linearDensity(string.construction)) / (2 * speakingLength);
    expect(left?.cents).toBeCloseTo(
      1200 * Math.log2(hertz(left?.tension ?? NaN) / noteFrequency('G3')),
      9,
    );
  });

  test('has nothing left when it has been let out by all of its stretch', () => {
    const string = tuned(plain(10), 'E4');
    const all = string.tension / axialStiffness(string.construction);
    expect(slackened({ ...string, share: all * 0.999 })?.cents).toBeLessThan(-5000);
    expect(slackened({ ...string, share: all * 1.001 })).toBeUndefined();
  });

  test('is not known where the stretch is not', () => {
    const weighed = { kind: 'measured', diameter: 1e-3, linearDensity: 5e-3 } as const;
    expect(slackened({ construction: weighed, tension: 70, share: 1e-4 })).toBeUndefined();
    expect(warmed({ construction: weighed, tension: 70, degrees: 10 })).toBeUndefined();
  });
});

describe('warmth', () => {
  test('puts a set out of tune with itself: the low plain string falls far more than the high one', () => {
    // Worked out twice, independently, for ten degrees on 25.5 in: 14 and 41 cents.
    expect(warmed({ ...tuned(plain(10), 'E4'), degrees: 10 })?.cents).toBeCloseTo(-14.3, 1);
    expect(warmed({ ...tuned(plain(17), 'G3'), degrees: 10 })?.cents).toBeCloseTo(-41.0, 1);
  });

  test('takes no notice of a plain string’s gauge', () => {
    fc.assert(
      fc.property(any.diameter, any.diameter, (a, b) => {
        const [one, other] = [a, b].map(
          (diameter) =>
            warmed({
              ...tuned({ kind: 'plain', diameter, material: 'musicWire' }, 'E4'),
              degrees: 5,
            })?.cents ?? NaN,
        );
        expect(one).toBeCloseTo(other ?? NaN, 9);
      }),
    );
  });

  test('loses E times expansion times degrees of stress, as any bar between two walls does', () => {
    const { construction, tension: pull } = tuned(plain(12), 'E4');
    const lost = pull - (warmed({ construction, tension: pull, degrees: 20 })?.tension ?? NaN);
    expect(lost).toBeCloseTo(axialStiffness(construction) * steelExpansion.value * 20, 9);
  });

  test('is not told of what is not steel', () => {
    const nylon = { kind: 'plain', diameter: 7e-4, material: 'nylon' } as const;
    expect(warmed({ construction: nylon, tension: 70, degrees: 10 })).toBeUndefined();
  });
});

test('what lies outside is refused by name', () => {
  const string = tuned(plain(10), 'E4');
  expectRefused('share', (share) => slackened({ ...string, share }), [...notFinite, -1, 1]);
  expectRefused('tension', (t) => slackened({ ...string, tension: t, share: 0 }), [NaN, 0, -1]);
  expectRefused('degrees', (degrees) => warmed({ ...string, degrees }), [...notFinite, 101]);
});
