/**
 * What drawn nylon 6,6 bears. As yarn, 4.3 to 8.8 grams-force a denier at 1.14 g/cm3. Source: notes on textile fibres, Properties of
 * nylon 6,6. As fine monofilament: a surgical thread of size 3-0, 0.200 to 0.249 mm, broke at 30.9 N. Source: S. E. Naleway and others,
 * Journal of Biomedical Materials Research B 103, 735 (2015), abstract, and a table of the sizes of surgical thread. Status: read.
 */
import { unit } from 'mathjs';
import { expect, test } from 'vitest';

import { linearDensity, materials, noteFrequency, tension } from '../../src/physics/index.ts';

const { density, strength } = materials.nylon;
const [weakest, strongest] = [
  strength.value - strength.tolerance,
  strength.value + strength.tolerance,
];

/** Pa of so many grams-force a denier; a denier is a gram on 9000 m. */
const ofYarn = (tenacity: number): number =>
  tenacity * (unit(1, 'kilogramforce').toNumber('N') / 1000) * (9000 / 1e-3) * density.value;
const ofThread = (force: number, millimetres: number): number =>
  force / ((Math.PI / 4) * (millimetres / 1000) ** 2);

test('yarn of 4.3 to 8.8 grams-force a denier bears 433 to 885 MPa, and our range holds all of it', () => {
  expect(density.value).toBe(1140);
  expect([4.3, 8.8].map((tenacity) => Math.round(ofYarn(tenacity) / 1e6))).toEqual([433, 885]);
  expect(weakest).toBeLessThanOrEqual(ofYarn(4.3));
  expect(strongest).toBeGreaterThanOrEqual(ofYarn(8.8));
});

test('thread that broke at 30.9 N bore 635 MPa or more, and it isn’t weaker than our weakest', () => {
  const [thick, thin] = [ofThread(30.9, 0.249), ofThread(30.9, 0.2)];
  expect(Math.round(thick / 1e6)).toBe(635);
  expect(Math.round(thin / 1e6)).toBe(984);
  expect(thick).toBeGreaterThan(weakest);
  expect(thick).toBeLessThan(strongest);
});

test('a margin is worked out from the weakest, which is a third below the weakest yarn: string is thicker and ages', () => {
  expect(1 - weakest / ofYarn(4.3)).toBeGreaterThan(0.3);
  expect(strength).toMatchObject({ source: 'nylon-yarn', status: 'read' });
});

// Source: Princeton glossary of engineering materials, and W. D. Callister, appendix B: nylon as a bulk bears 90 to 165 MPa at most.
test('bulk nylon, 90 to 165 MPa, could not be a guitar’s first string, which is why the range is of drawn line', () => {
  const string = { kind: 'plain', diameter: 7.1e-4, material: 'nylon' } as const;
  const pull = tension({
    speakingLength: 0.65,
    frequency: noteFrequency('E4'),
    linearDensity: linearDensity(string),
  });
  const stress = pull / ((Math.PI / 4) * string.diameter ** 2);
  expect(stress).toBeGreaterThan(165e6);
  expect(stress).toBeLessThan(weakest);
});
