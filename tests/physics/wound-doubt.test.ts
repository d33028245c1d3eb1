/**
 * How far a wound string's weight and stiffness may lie from the model's, by drawing strings: the wrap seated anywhere between
 * the core's flats and its corners, materials anywhere in their range, the wraps giving anything from nothing to all that they
 * can. What the propagation says must be the scatter of what was drawn.
 */
import { describe, test } from 'vitest';

import {
  bendingStiffness,
  coreArea,
  layers,
  linearDensity,
  wrapLengthRatio,
  type WoundString,
} from '../../src/physics/construction.ts';
import { materials, youngsModulus } from '../../src/physics/materials.ts';
import { estimateString } from '../../src/physics/uncertainty.ts';
import { fromThousandths } from '../../src/physics/units.ts';
import { expectRatio } from './kit.ts';

const string: WoundString = {
  kind: 'wound',
  diameter: fromThousandths(42),
  core: { shape: 'hex', diameter: fromThousandths(15.9), material: 'musicWire' },
  wraps: [{ material: 'nickelPlatedSteel' }],
};
const told = estimateString({
  construction: string,
  speakingLength: 0.648,
  frequency: 110,
  doubts: {},
});

/** Evenly spread numbers in [0, 1) that repeat: a 32-bit linear congruence, so that the run is always the same. */
function dice(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

function deviation(values: readonly number[]): number {
  const mean = values.reduce((a, b) => a + b, 0) / values.length;
  return Math.sqrt(values.reduce((s, v) => s + (v - mean) ** 2, 0) / (values.length - 1));
}

describe('twenty thousand strings of one description', () => {
  const draws = 20_000;
  const roll = dice(11);

  test('scatter in weight by the whole range from lightest to heaviest', () => {
    const core = materials.musicWire.density.value * coreArea(string);
    const steel = materials.musicWire.density.tolerance / materials.musicWire.density.value;
    const { value, tolerance, below } = materials.nickelPlatedSteel.density;
    // A plating only adds weight: below it there is no more than the steel's own doubt.
    const [wrap, lighter] = [tolerance / value, below / value];
    const heaviest = core * (1 + steel) + (linearDensity(string) - core) * (1 + wrap);
    const lightest =
      linearDensity(string, 'flats') - core * steel - (linearDensity(string) - core) * lighter;
    const drawn = Array.from({ length: draws }, () => lightest + roll() * (heaviest - lightest));
    expectRatio(told.linearDensity?.uncertainty ?? NaN, deviation(drawn), 0.02);
  });

  test('scatter in stiffness by their core’s modulus and by all that their wraps may add', () => {
    const [layer] = layers(string);
    if (!layer || !told.inharmonicity || !told.linearDensity) throw new Error('nothing told');
    const { wire, inner, material } = layer;
    // A helix as stiff in twist as in bend: E I over the length of wire in a length of string.
    const most =
      (youngsModulus({ material, diameter: wire }) * Math.PI * wire ** 4) /
      64 /
      wrapLengthRatio({ inner, wire });
    const core = bendingStiffness(string);
    const range = materials.musicWire.modulus.tolerance / materials.musicWire.modulus.value;
    const weight = told.linearDensity.uncertainty / told.linearDensity.value;
    const drawn = Array.from({ length: draws }, () => {
      const stiffness = core * (1 + range * (2 * roll() - 1)) + most * roll();
      // At one pitch the pull goes as the weight.
      return stiffness / (1 + weight * Math.sqrt(3) * (2 * roll() - 1));
    });
    const { uncertainty, value } = told.inharmonicity;
    expectRatio(uncertainty / value, deviation(drawn) / core, 0.02);
  });
});
