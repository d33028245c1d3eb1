/** The numbers on the reference sheets against the physics, worked out here another way. */
import { describe, expect, test } from 'vitest';

import {
  clamped,
  drawnAside,
  flats,
  nylonStrain,
  pinned,
  pulls,
  strains,
  treble,
  uncertaintyOfPull,
  warmth,
  warmthOfSet,
  withWrap,
} from '../../src/components/reference/idealised.ts';
import { glyphs } from '../../src/components/reference/glyphs.ts';
import { constantLines, materialLines } from '../../src/components/reference/materials.ts';
import { sheetOf, sheets } from '../../src/components/reference/sheets.ts';
import {
  across,
  curves,
  ksi,
  shareLines,
  strengthLines,
  up,
} from '../../src/components/reference/strength.ts';
import {
  drawnSections,
  plainLines,
  plainUncertainty,
  woundLines,
} from '../../src/components/reference/unit-weight.ts';
import { sources } from '../../src/components/sources.ts';
import { drawer } from '../../src/instrument/drawer.ts';
import {
  gramsPerMetre,
  linearDensity,
  materialNames,
  materials,
  type MaterialId,
  minimumStrengthTable,
  poundsPerInch,
  steelExpansion,
  strengthFits,
  minimumStrength,
  fromThousandths,
} from '../../src/physics/index.ts';

describe('materials', () => {
  test('each material of the module has a line', () => {
    expect(materialLines.map(({ name }) => name)).toEqual(
      (Object.keys(materials) as MaterialId[]).map((id) => materialNames[id]),
    );
  });

  test('every source exists, and the status shown is the one it has', () => {
    const known = new Map(sources.map(({ id, status }) => [id, status]));
    const entries = [...materialLines.flatMap((m) => [m.density, m.modulus]), ...constantLines];
    expect(entries.length).toBeGreaterThan(30);
    for (const { source, status } of entries) expect(known.get(source), source).toBe(status);
  });
});

describe('unit weights', () => {
  test('have a line for each string of the drawer, in both units alike', () => {
    expect(plainLines.length + woundLines.length).toBe(drawer.length);
    for (const [i, line] of [...plainLines, ...woundLines].entries()) {
      const density = linearDensity(
        drawer[i] ?? { kind: 'plain', diameter: NaN, material: 'nylon' },
      );
      expect(Number(line.gramsPerMetre) / gramsPerMetre(density)).toBeCloseTo(1, 2);
      expect(Number(line.poundsPerInch) / poundsPerInch(density)).toBeCloseTo(1, 3);
    }
  });

  test('of plain wire are doubted by twice the diameter and once the density, as the sides of a right angle', () => {
    const ten = drawer.find((c) => c.kind === 'plain' && Math.abs(c.diameter - 2.54e-4) < 1e-9);
    const byHand = Math.hypot((2 * 0.2) / 10, 30 / 7850) / Math.sqrt(3);
    expect(ten && plainUncertainty(ten)).toBeCloseTo(byHand, 5);
  });

  test('the drawn sections are of both kinds, thin to thick', () => {
    const diameters = drawnSections.map(({ diameter }) => diameter);
    expect(diameters).toEqual([...diameters].sort((a, b) => a - b));
    expect(new Set(drawnSections.map(({ kind }) => kind))).toEqual(new Set(['plain', 'wound']));
  });
});

describe('strength', () => {
  test('the drawn lines pass through the module’s values: read back through the drawing’s scales', () => {
    const read = (path: string) =>
      [...path.matchAll(/[ML]([\d.]+),([\d.]+)/g)].map(([, x, y]) => ({
        thou: across.invert(Number(x)),
        strength: up.invert(Number(y)),
      }));
    const drawn = [
      { path: curves.minimum, at: (d: number) => minimumStrength(d) ?? NaN },
      ...curves.fits.map(({ path, source }) => ({
        path,
        at: strengthFits.find((fit) => fit.source === source)?.at ?? (() => NaN),
      })),
    ];
    expect(drawn).toHaveLength(3);
    for (const { path, at } of drawn) {
      const points = read(path);
      expect(points.length).toBeGreaterThan(60);
      // A tenth of a thousandth part of the box is what the path is rounded to.
      for (const { thou, strength } of points)
        expect(Math.abs(strength - ksi(at(fromThousandths(thou))))).toBeLessThan(0.05);
    }
  });

  test('its axes are lettered at round numbers inside it', () => {
    expect(curves.across.map(({ label }) => label)).toEqual(
      [8, 10, 12, 14, 16, 18, 20, 22, 24, 26].map(String),
    );
    expect(curves.up.map(({ label }) => label)).toEqual([340, 360, 380, 400, 420].map(String));
  });

  test('has the lines of the table, and the first fit lies above each', () => {
    expect(strengthLines).toHaveLength(minimumStrengthTable.length);
    for (const { fits } of strengthLines) expect(fits[0]).toMatch(/^\+[12]\.\d$/);
  });

  test('ten thousandths at 387 ksi break at 30.4 lb', () => {
    const ten = strengthLines.find(({ gauge }) => gauge === '10');
    // 387 000 lb/in² on pi/4 of 0.01 in squared
    expect(Number(ten?.pounds)).toBeCloseTo((387_000 * Math.PI * 0.01 ** 2) / 4, 1);
  });

  test('the shares fall down the table and none of them breaks', () => {
    const shares = shareLines.map(({ share }) => share);
    expect(shares).toEqual([...shares].sort((a, b) => b - a));
    expect(shares[0]).toBeLessThan(1);
    expect(shares.at(-1)).toBeGreaterThan(0);
  });
});

describe('the small drawings of the index are read back', () => {
  const along = (path: string) => [...path.matchAll(/M([\d.]+) /g)].map(([, x]) => Number(x));

  test('each A stands twice as far along as the one before', () => {
    const [first = NaN, ...others] = along(glyphs.pitch.fine).map((x) => x - 4);
    expect(others).toHaveLength(5);
    others.forEach((x, i) => expect(Math.abs(x - first * 2 ** (i + 1))).toBeLessThan(0.05 * 33));
    expect(others.at(-1)).toBe(88);
  });

  test('the twelfth fret is half as far as the bridge would be, the twenty-fourth three quarters', () => {
    const frets = along(glyphs.frets.fine);
    expect(frets).toHaveLength(24);
    expect(frets[11]).toBeCloseTo(4 + 115 / 2, 1);
    expect(frets[23]).toBeCloseTo(4 + (115 * 3) / 4, 1);
  });

  test('the strength falls through each line of the table', () => {
    const points = [...glyphs.strength.heavy.matchAll(/[ML]([\d.]+),([\d.]+)/g)].map(
      ([, x, y]) => [Number(x), Number(y)] as const,
    );
    const [first, last] = [minimumStrengthTable[0], minimumStrengthTable.at(-1)];
    if (!first || !last) throw new Error('no table');
    expect(points).toHaveLength(minimumStrengthTable.length);
    points.forEach(([x, y], i) => {
      const line = minimumStrengthTable[i];
      const share = (from: number, to: number, at = NaN) => (at - from) / (to - from);
      expect(
        Math.abs((x - 8) / 84 - share(first.diameter, last.diameter, line?.diameter)),
      ).toBeLessThan(0.001);
      expect(
        Math.abs((y - 8) / 28 - share(first.strength, last.strength, line?.strength)),
      ).toBeLessThan(0.002);
    });
  });
});

describe('what the model leaves out', () => {
  test('a steel string is stretched by stress over modulus, under one per cent', () => {
    const stress = treble.tension / ((Math.PI / 4) * 2.54e-4 ** 2);
    expect(strains.high).toBeCloseTo(stress / 203.4e9, 6);
    expect(strains.high).toBeLessThan(0.01);
  });

  test('nylon at the same note is stretched by density times speed squared over modulus', () => {
    const speed = 2 * treble.speakingLength * treble.frequency;
    // Strain times one plus strain: the string thins as it stretches.
    const { low, high } = nylonStrain;
    expect(low * (1 + low)).toBeCloseTo((1140 * speed ** 2) / 8.4e9, 9);
    expect(high * (1 + high)).toBeCloseTo((1140 * speed ** 2) / 1.6e9, 9);
  });

  test('flats take at most a few per cent, nickel adds, stainless steel takes away', () => {
    expect(flats.low).toBeGreaterThan(0);
    expect(flats.high).toBeLessThan(0.03);
    expect(withWrap('nickel').low).toBeGreaterThan(0);
    expect(withWrap('nickel').high).toBeLessThan(8880 / 7850 - 1);
    expect(withWrap('stainless430').high).toBeLessThan(0);
    expect(withWrap('nickelPlatedSteel')).toEqual({ low: 0, high: 0 });
  });

  test('stiffness raises a fundamental by less than a cent on knife edges, by more with clamped ends', () => {
    expect(pinned.high).toBeLessThan(1);
    // A cent of pitch is about a ninth of a per cent of pull.
    expect(clamped.low).toBeGreaterThan(2 * (2 ** (pinned.high / 1200) - 1));
    expect(clamped.high).toBeLessThan(0.03);
  });

  test('ten degrees take growth over strain from the pull, half of it in nepers from the pitch', () => {
    const lost = (steelExpansion.value * 10) / strains.high;
    expect(warmth().pull).toBeCloseTo(-lost, 9);
    expect(warmth().cents).toBeCloseTo(1200 * Math.log2(Math.sqrt(1 - lost)), 9);
    expect(warmth(0)).toEqual({ pull: 0, cents: 0 });
    // Worked out independently: the set falls apart, from 14 to 42 cents.
    expect(Math.round(warmthOfSet.high)).toBe(-14);
    expect(Math.round(warmthOfSet.low)).toBe(-42);
  });

  test('drawn aside, a string pulls harder by E A times 2 y²/L²', () => {
    const y = 2e-3;
    const expected = (2 * (y / treble.speakingLength) ** 2) / strains.high;
    expect(drawnAside(y)).toBeCloseTo(expected, 6);
  });

  test('the gauge rules what is not known of a pull, and the parts add up at right angles', () => {
    const { all, diameter, density, length, pitch } = uncertaintyOfPull();
    expect(Math.hypot(diameter, density, length, pitch)).toBeCloseTo(all, 9);
    expect(diameter).toBeGreaterThan(5 * Math.max(density, length, pitch));
    expect(pulls).toHaveLength(6);
  });
});

test('the sheets follow each other, and an unknown one throws', () => {
  for (const [i, { id }] of sheets.entries()) {
    const { number, previous, next } = sheetOf(id);
    expect([number, previous, next]).toEqual([i + 1, sheets[i - 1], sheets[i + 1]]);
  }
  expect(() => sheetOf('nothing' as 'model')).toThrow(RangeError);
});

test('every figure of the reference has a menu, and none offers a page that is not there', () => {
  const pages = import.meta.glob<string>('../../src/pages/reference/*.astro', {
    query: '?raw',
    import: 'default',
    eager: true,
  });
  const figures = Object.values(pages).flatMap((page) => page.match(/<Figure\s[^>]*>/g) ?? []);
  expect(figures.length).toBeGreaterThan(2);
  for (const figure of figures) expect(figure).toMatch(/ id="[a-z-]+"\s+framed=\{false\}/);
});
