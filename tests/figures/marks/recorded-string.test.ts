/** A recorded string’s partials beside the model’s, on one rule of cents. */
import { describe, expect, test } from 'vitest';

import table from '../../../content/data/recorded-partials.yaml';
import RecordedString from '../../../src/figures/feel/recorded-string/RecordedString.svelte';
import {
  bendingStiffness,
  fromThousandths,
  inharmonicity,
  linearDensity,
  tension,
} from '../../../src/physics/index.ts';
import { fitStiff } from '../../../src/physics/listening/stiff-fit.ts';
import { drawnWith } from './drawn.ts';
import { fieldsOf, sheetWith, sheetsOf, wide } from './sheet.ts';
import { trying } from './states.ts';

interface Table {
  readonly assumedScaleLength: number;
  readonly notes: readonly { fret: number; partials: Readonly<Record<string, number>> }[];
}
const { assumedScaleLength, notes } = table as unknown as Table;

describe.each(notes.map((note, i) => [note.fret, i, note] as const))(
  'stopped at fret %d',
  (fret, recorded, { partials }) => {
    const wire = 10.5;
    const state = trying('redshank', { recorded, wire });
    const found = drawnWith(state, RecordedString);
    const sheet = sheetsOf(found)[0] ?? sheetWith(state, RecordedString);
    const heard = Object.entries(partials).map(([n, hertz]) => ({ n: Number(n), hertz }));
    const fit = fitStiff(
      heard.map(({ n, hertz }) => ({
        n,
        frequency: hertz,
        doubt: (0.5 * Math.LN2 * hertz) / 1200,
      })),
    );
    // The rule of cents, and the numbers of the comb.
    const scale = sheet.of('path.scale').map((m) => m.left);
    const perCent = ((scale[1] ?? NaN) - (scale[0] ?? NaN)) / 10;
    const cents = (x: number): number => (x - (scale[0] ?? NaN)) / perCent;
    const [one, four] = ['1', '4'].map((n) =>
      sheet.of('text').find((t) => t.text === n && t.left < 30),
    );
    const rung = ((one?.top ?? NaN) - (four?.top ?? NaN)) / 3;
    const down = (n: number): number => (one?.top ?? NaN) - 4 - (n - 1) * rung;

    test('its measured rungs stand as far above even as its table says', () => {
      const { lines } = sheet.one('path[recorded-measured]');
      const drawn = heard.filter(({ n }) => n <= 28);
      expect(lines).toHaveLength(drawn.length);
      lines.forEach(([from, to], i) => {
        const { n, hertz } = drawn[i] ?? { n: NaN, hertz: NaN };
        const x = ((from?.[0] ?? NaN) + (to?.[0] ?? NaN)) / 2;
        expect(Math.abs(cents(x) - 1200 * Math.log2(hertz / (n * fit.fundamental)))).toBeLessThan(
          0.01,
        );
        expect(Math.abs((from?.[1] ?? NaN) - down(n))).toBeLessThan(0.06);
      });
    });

    test('the model’s rungs are those of the chosen wire', () => {
      const string = {
        kind: 'plain',
        diameter: fromThousandths(wire),
        material: 'musicWire',
      } as const;
      const speakingLength = assumedScaleLength * 2 ** (-fret / 12);
      const b = inharmonicity({
        speakingLength,
        tension: tension({
          speakingLength,
          frequency: fit.fundamental,
          linearDensity: linearDensity(string),
        }),
        bendingStiffness: bendingStiffness(string),
      });
      const { lines } = sheet.one('path[recorded-model]');
      expect(lines).toHaveLength(28);
      lines.forEach((line, i) => {
        const xs = line.map((p) => p[0]);
        const x = (Math.min(...xs) + Math.max(...xs)) / 2;
        expect(Math.abs(cents(x) - 600 * Math.log2(1 + b * (i + 1) ** 2))).toBeLessThan(0.01);
      });
      const small = `${Number((b * 1e6).toPrecision(3))}\u00a0millionths`;
      expect(sheet.texts).toContain(small);
      expect(sheet.texts).toContain(
        `${Number((fit.inharmonicity * 1e6).toPrecision(3))}\u00a0millionths`,
      );
      expect(sheet.knobs[0]?.text).toBe(`10.5 thousandths, B ${small}`);
      expect(fieldsOf(found).Gauge).toBe('10.5');
    });

    test('its wire is cut in the scale of its handle', () => {
      const cut = sheet.one('circle.wire');
      expect(sheet.knobs[0]?.x).toBeCloseTo(cut.right, 2);
      const thicker = sheetWith(trying('redshank', { recorded, wire: 14 }), RecordedString);
      expect(wide(thicker.one('circle.wire')) / wide(cut)).toBeCloseTo(14 / wire, 9);
    });
  },
);
