import { expect, test } from 'vitest';

import * as physics from '../../src/physics/index.ts';

const face = [
  'noteFrequency',
  'tension',
  'frequency',
  'linearDensityFor',
  'speakingLengthFor',
  'linearDensity',
  'fretPosition',
  'nearestConstruction',
  'strengthShare',
  'axialStiffness',
  'bendingStiffness',
  'bend',
  'bendTo',
  'inharmonicity',
] as const;

test.each(face)('%s is on the public face', (name) => {
  expect(physics[name]).toBeTypeOf('function');
});

test('what only serves the module inside stays off the public face', () => {
  expect(Object.keys(physics).filter((name) => /Range$|^inRange/.test(name))).toEqual([]);
});
