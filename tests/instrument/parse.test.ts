import fc from 'fast-check';
import { gauges } from '../../src/instrument/drawer.ts';
import { formatGauge } from '../../src/instrument/format.ts';
import { describe, expect, it } from 'vitest';

import {
  parseA4,
  parseAnyDensity,
  parseAnyLength,
  parseDensity,
  parseForce,
  parseNote,
  parseScale,
  readNumber,
  type Parsed,
} from '../../src/instrument/parse.ts';
import { parseGauge } from '../../src/instrument/parse-gauge.ts';
import { readThickness } from '../../src/instrument/thickness.ts';
import type { Units } from '../../src/instrument/schema.ts';
import { POUND_FORCE, POUND_PER_INCH, STANDARD_GRAVITY } from '../../src/physics/index.ts';

const value = <T>(parsed: Parsed<T>): T => {
  if (!parsed.ok) throw new Error(parsed.message);
  return parsed.value;
};
const message = (parsed: Parsed<unknown>): string => (parsed.ok ? '' : parsed.message);

describe('readNumber', () => {
  it.each([
    ['25.5', 25.5, ''],
    [' 25.5 in ', 25.5, 'in'],
    ['25,5IN', 25.5, 'in'],
    ['.010', 0.01, ''],
    [',5', 0.5, ''],
    ['25 1/2', 25.5, ''],
    ['25 1/2"', 25.5, '"'],
    ['1/2 in', 0.5, 'in'],
    ['3 / 4', 0.75, ''],
    ['25½ in', 25.5, 'in'],
    ['24 ¾', 24.75, ''],
    ['⅞', 0.875, ''],
    ['+8 %', 8, '%'],
    ['-3.5', -3.5, ''],
    ['−3.5', -3.5, ''],
    ['–3.5', -3.5, ''],
    ['-3 1/2', -3.5, ''],
    ['−0 ½', -0.5, ''],
    ['-1/2', -0.5, ''],
    ['2.2e-5 lb/in', 2.2e-5, 'lb/in'],
    ['25.5\u00a0in', 25.5, 'in'],
    ['25.5 in.', 25.5, 'in'],
    ['25.', 25, ''],
    ['10 w', 10, 'w'],
  ])('reads “%s” as %f and “%s”', (text, number, unit) => {
    const read = readNumber(text);
    expect(read?.value).toBeCloseTo(number, 12);
    expect(read?.unit).toBe(unit);
  });

  it.each(['', '  ', 'in', 'ten', '-', '/2', '1/0', '5 1/0', '1e999', 'π', '-½'])(
    'finds no number in “%s”',
    (text) => {
      expect(readNumber(text)).toBeUndefined();
    },
  );
});

describe('parseAnyLength', () => {
  it.each<[string, Units, number]>([
    ['25.5', 'in-lb', 0.6477],
    ['25.5', 'mm-N', 0.6477],
    ['648', 'in-lb', 0.648],
    ['648', 'mm-kg', 0.648],
    ['199', 'in-lb', 199 * 0.0254],
    ['46', 'mm-N', 0.046],
    ['64.8 cm', 'in-lb', 0.648],
    ['0.648 m', 'in-lb', 0.648],
    ['648 mm', 'in-lb', 0.648],
    ['25.5″', 'mm-N', 0.6477],
    ['25.5”', 'mm-N', 0.6477],
    ['25.5 inches', 'mm-N', 0.6477],
    ['1 inch', 'mm-N', 0.0254],
  ])('reads %s in %s', (text, units, metres) => {
    expect(value(parseAnyLength(text, units))).toBeCloseTo(metres, 12);
  });

  it('says what a length looks like, or which units there are', () => {
    expect(message(parseAnyLength('long', 'in-lb'))).toBe(
      'Type a length, such as 25.5 in or 648 mm.',
    );
    expect(message(parseAnyLength('5 ft', 'in-lb'))).toMatch(/^“ft” is not a unit of length/);
  });
});

describe('parseScale', () => {
  it('takes the limits as they are shown', () => {
    for (const units of ['in-lb', 'mm-N', 'mm-kg'] as const) {
      expect(value(parseScale('9.84 in', units))).toBe(0.25);
      expect(value(parseScale('43.31 in', units))).toBe(1.1);
      expect(value(parseScale('250 mm', units))).toBe(0.25);
      expect(value(parseScale('1100 mm', units))).toBe(1.1);
    }
  });

  it.each(['249 mm', '1101 mm', '9.8 in', '43.4 in', '0', '-25.5'])('refuses %s', (text) => {
    expect(message(parseScale(text, 'in-lb'))).toBe(
      'Scale lengths from 9.84\u00a0in to 43.31\u00a0in.',
    );
    expect(message(parseScale(text, 'mm-N'))).toBe(
      'Scale lengths from 250.0\u00a0mm to 1100.0\u00a0mm.',
    );
  });

  it('passes on why nothing could be read', () => {
    expect(message(parseScale('x', 'in-lb'))).toMatch(/^Type a length/);
  });
});

describe('parseForce', () => {
  it.each<[string, Units, number]>([
    ['17.5', 'in-lb', 17.5 * POUND_FORCE],
    ['78', 'mm-N', 78],
    ['8', 'mm-kg', 8 * STANDARD_GRAVITY],
    ['17.5 lb', 'mm-N', 17.5 * POUND_FORCE],
    ['17,5 lbs', 'mm-N', 17.5 * POUND_FORCE],
    ['17.5 lbf', 'mm-N', 17.5 * POUND_FORCE],
    ['1 pound', 'mm-N', POUND_FORCE],
    ['2 pounds.', 'mm-N', 2 * POUND_FORCE],
    ['78 N', 'in-lb', 78],
    ['1 newton', 'in-lb', 1],
    ['78 newtons', 'in-lb', 78],
    ['8 kg', 'in-lb', 8 * STANDARD_GRAVITY],
    ['8 kgf', 'in-lb', 8 * STANDARD_GRAVITY],
    ['8 kp', 'in-lb', 8 * STANDARD_GRAVITY],
    ['8 kilos', 'in-lb', 8 * STANDARD_GRAVITY],
    ['8 kilograms', 'in-lb', 8 * STANDARD_GRAVITY],
  ])('reads %s in %s', (text, units, newtons) => {
    expect(value(parseForce(text, units))).toBeCloseTo(newtons, 10);
  });

  it('says what a pull looks like, or which units there are', () => {
    expect(message(parseForce('hard', 'mm-N'))).toBe('Type a pull, such as 17.5 lb, 78 N or 8 kg.');
    expect(message(parseForce('1/0', 'mm-N'))).toMatch(/^Type a pull/);
    expect(message(parseForce('3 stone', 'mm-N'))).toMatch(/^“stone” is not a unit of pull/);
  });
});

describe('parseDensity', () => {
  it.each<[string, number]>([
    ['0.00002227 lb/in', 2.227e-5 * POUND_PER_INCH],
    ['6.7', 0.0067],
    ['6.7 g/m', 0.0067],
    ['6.7 g / m', 0.0067],
    ['0.0067 kg/m', 0.0067],
    ['0.00037 lbs/in', 0.00037 * POUND_PER_INCH],
    ['0.00037 lb/in', 0.00037 * POUND_PER_INCH],
  ])('reads %s', (text, kgPerMetre) => {
    expect(value(parseDensity(text))).toBeCloseTo(kgPerMetre, 12);
  });

  it('refuses what no string weighs, unless any weight will do', () => {
    expect(message(parseDensity('201 g/m'))).toBe('Unit weights from 0.01 to 200 g/m.');
    expect(message(parseDensity('0.009 g/m'))).toMatch(/^Unit weights/);
    expect(value(parseDensity('200 g/m'))).toBe(0.2);
    expect(value(parseAnyDensity('201 g/m'))).toBeCloseTo(0.201, 12);
  });

  it('says what a unit weight looks like, or which units there are', () => {
    expect(message(parseDensity(''))).toMatch(/^Type a unit weight/);
    expect(message(parseDensity('6 g'))).toMatch(/^“g” is not a unit weight/);
  });
});

describe('whatever is typed', () => {
  const typed = fc.oneof(
    fc.string({ unit: 'binary', maxLength: 30 }),
    fc
      .tuple(
        fc.string({ unit: fc.constantFrom(...'0123456789.,/-+e ½'), maxLength: 8 }),
        fc.constantFrom('', 'constructor', '__proto__', 'toString', 'valueOf', 'w', 'in', 'kg'),
      )
      .map((parts) => parts.join(' ')),
  );

  it('gives a finite value or a sentence, and never throws', () => {
    const parsers: readonly ((text: string) => Parsed<unknown>)[] = [
      (t) => parseAnyLength(t, 'in-lb'),
      (t) => parseScale(t, 'mm-N'),
      (t) => parseForce(t, 'mm-kg'),
      (t) => parseDensity(t),
      parseNote,
      parseA4,
      (t) => parseGauge(t, 'plain'),
    ];
    const sound = (parsed: Parsed<unknown>) =>
      parsed.ok
        ? typeof parsed.value !== 'number' || Number.isFinite(parsed.value)
        : parsed.message.endsWith('.');
    fc.assert(
      fc.property(typed, (text) => {
        for (const parse of parsers) expect(sound(parse(text)), text).toBe(true);
      }),
      { numRuns: 3000 },
    );
  }, 60_000);

  it.each(['5 constructor', '5 __proto__', '5 toString'])('takes no unit from “%s”', (text) => {
    expect(parseAnyLength(text, 'in-lb').ok).toBe(false);
    expect(parseForce(text, 'in-lb').ok).toBe(false);
    expect(parseDensity(text).ok).toBe(false);
    expect(parseGauge(text, 'plain').ok).toBe(false);
  });
});

describe('gauges as people type them', () => {
  const gaugeOf = (text: string, kind: 'plain' | 'wound' = 'plain') => {
    const read = parseGauge(text, kind);
    return read.ok ? read.value : undefined;
  };

  it.each([
    ['0.25', 'plain', 10],
    ['0,25', 'plain', 10],
    ['.25', 'plain', 10],
    ['0.25 mm', 'plain', 10],
    ['.010', 'plain', 10],
    ['0.33', 'plain', 13],
    ['1.17', 'wound', 46],
    ['1.17w', 'wound', 46],
    ['2.67 wound', 'wound', 105],
    ['0.046', 'wound', 46],
  ] as const)('%s is a %s %d', (text, kind, gauge) => {
    expect(gaugeOf(text, kind)).toEqual({ kind, gauge });
  });

  it('reads every gauge of the drawer back from what metric readers are shown', () => {
    for (const kind of ['plain', 'wound'] as const)
      for (const gauge of gauges[kind])
        expect(gaugeOf(formatGauge({ kind, gauge }, 'mm-N'), kind)).toEqual({ kind, gauge });
  });

  it('offers the wound string that a plain one can’t be, as it would be typed', () => {
    const read = parseGauge('46', 'plain');
    expect(read.ok).toBe(false);
    if (read.ok) return;
    expect(read.offer).toBe('46 wound');
    expect(parseGauge(read.offer ?? '', 'plain')).toEqual({
      ok: true,
      value: { kind: 'wound', gauge: 46 },
    });
    expect(parseGauge('500', 'plain')).not.toHaveProperty('offer');
  });
});

it.each([
  ['25-1/2', 25.5],
  ['25 - 1/2', 25.5],
  ['25-1/2 in', 25.5],
  ['24-3/4″', 24.75],
  ['25 1/2', 25.5],
])('%s is %d inches', (text, inchesLong) => {
  const read = parseScale(text, 'in-lb');
  expect(read.ok && read.value / 0.0254).toBeCloseTo(inchesLong, 9);
});

describe('readThickness', () => {
  it.each([
    ['9.44', 9.44],
    ['9.44 thousandths', 9.44],
    ['0.24', 0.24 / 0.0254],
    ['0,24 mm', 0.24 / 0.0254],
    ['.0095', 9.5],
    ['0.0095 in', 9.5],
  ])('reads %s', (text, thou) => expect(readThickness(text)).toBeCloseTo(thou, 9));
  it.each(['', 'thick', '9 lb'])('refuses %j', (text) =>
    expect(readThickness(text)).toBeUndefined(),
  );
});
