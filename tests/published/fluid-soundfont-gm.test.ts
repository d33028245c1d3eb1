/**
 * A string that was recorded at four frets, by people who had nothing of this in mind: the model against partials measured in sounds
 * of Debian's package fluid-soundfont-gm (MIT licence). The table stands in content/data/recorded-partials.yaml, with how it was
 * taken. `npm run recordings` takes it again from the sound. Status: read.
 *
 * Gauge and length of the guitar are not known, so what needs no length is held tightest: how B grows from fret to fret.
 */
import { linearRegression, median } from 'simple-statistics';
import { describe, expect, it, test } from 'vitest';

import data from '../../content/data/recorded-partials.yaml';
import {
  fitOf,
  heardGauge,
  modelled,
  notes,
  type RecordedNote,
} from '../../src/figures/feel/recorded-string/recorded.ts';
import { inharmonicity, stoppedLength, thousandths } from '../../src/physics/index.ts';

const at = (fret: number): RecordedNote => {
  const note = notes.find((each) => each.fret === fret);
  if (!note) throw new Error(`fret ${fret} was not recorded`);
  return note;
};
const open = at(0);

/** B by a general library's straight line: (f/n)² = f0² + f0² B n². */
function byLine({ partials }: RecordedNote): number {
  const { m, b } = linearRegression(
    partials.map(({ n, frequency }) => [n ** 2, (frequency / n) ** 2]),
  );
  return m / b;
}

/** B by the middle one of all pairs of partials that lie ten apart or more: no weights, no law of errors. */
function byPairs({ partials }: RecordedNote): number {
  return median(
    partials.flatMap((p) =>
      partials.flatMap((q) => {
        if (q.n < p.n + 10) return [];
        const [u, v] = [(p.frequency / p.n) ** 2, (q.frequency / q.n) ** 2];
        const slope = (v - u) / (q.n ** 2 - p.n ** 2);
        return [slope / (u - slope * p.n ** 2)];
      }),
    ),
  );
}

const held = (measured: number, expected: number, share: number) =>
  expect(Math.abs(measured / expected - 1), `${measured} / ${expected}`).toBeLessThan(share);

describe.each(notes.map((note) => [note.note, note] as const))('%s', (_, note) => {
  it('keeps to f_n = n f0 √(1 + B n²) within a cent, with twenty-nine partials or more', () => {
    expect(note.partials.length).toBeGreaterThanOrEqual(29);
    expect(note.fit.residual).toBeLessThan(1);
  });

  it('has the B that two other estimators find, within 1.5 %', () => {
    held(byLine(note), note.fit.inharmonicity, 0.015);
    held(byPairs(note), note.fit.inharmonicity, 0.015);
  });

  it('has the B of a plain steel 12 on a scale of 25.4 in, within 1.5 %', () => {
    held(note.fit.inharmonicity, modelled(note, 12), 0.015);
    // A gauge more or less is far outside.
    expect(Math.abs(note.fit.inharmonicity / modelled(note, 13) - 1)).toBeGreaterThan(0.1);
    expect(Math.abs(note.fit.inharmonicity / modelled(note, 11) - 1)).toBeGreaterThan(0.1);
  });

  it('sounds within six cents of where a fret puts it', () => {
    const ratio = note.fit.fundamental / open.fit.fundamental;
    expect(Math.abs(1200 * Math.log2(ratio) - 100 * note.fret)).toBeLessThan(6);
  });
});

test.each([
  [5, 1.782],
  [7, 2.245],
  [12, 4],
])(
  'B at fret %i is %f times that of the open string, within 1.5 %: no length is needed',
  (fret, times) => {
    const measured = at(fret).fit.inharmonicity / open.fit.inharmonicity;
    held(measured, times, 0.015);
    const string = { tension: 70, bendingStiffness: 1e-4 };
    const byModule = (f: number) =>
      inharmonicity({ ...string, speakingLength: stoppedLength({ scaleLength: 0.648, fret: f }) });
    held(byModule(fret) / byModule(0), times, 0.001);
  },
);

test('all four notes tell one gauge: a 12, and no other of the drawer', () => {
  const gauges = notes.map(heardGauge);
  const all = gauges.map(({ diameter }) => thousandths(diameter));
  expect(Math.max(...all) - Math.min(...all)).toBeLessThan(0.15);
  for (const { remaining } of gauges)
    expect(remaining.map(({ diameter }) => Math.round(10 * thousandths(diameter)) / 10)).toEqual([
      12,
    ]);
});

test('the lowest partials lean on the body: of the first sixteen alone, B comes out some 9 % higher', () => {
  const low = fitOf(open.partials, 16).inharmonicity / open.fit.inharmonicity;
  expect(low).toBeGreaterThan(1.04);
  expect(low).toBeLessThan(1.14);
});

test('the table says where it is from', () => {
  expect((data as { source: string }).source).toBe('fluid-soundfont-gm');
});
