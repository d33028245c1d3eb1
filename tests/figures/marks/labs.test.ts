/** The labs' drawings, read back: points against their readings, doubts against what was stated, by the letters on their axes. */
import { expect, test } from 'vitest';

import Dots from '../../../src/figures/labs/class/Dots.svelte';
import HandsCurve from '../../../src/figures/labs/class/HandsCurve.svelte';
import { pooled, pooledHands } from '../../../src/figures/labs/class/pooled.ts';
import Track from '../../../src/figures/labs/hand/Track.svelte';
import Cents from '../../../src/figures/labs/in-tune/Cents.svelte';
import Agree from '../../../src/figures/labs/kit/Agree.svelte';
import { counted, differenceAt } from '../../../src/figures/labs/kit/class/row-text.ts';
import Plot from '../../../src/figures/labs/kit/Plot.svelte';
import Partials from '../../../src/figures/labs/listen/Partials.svelte';
import { drawn } from './drawn.ts';
import { centre, ends, sheetsOf, type Mark, type Sheet } from './sheet.ts';

function sheetOfPart(part: unknown, props: object): Sheet {
  const [sheet] = sheetsOf(drawn(part as never, props));
  if (!sheet) throw new Error('no sheet');
  return sheet;
}
const number = ({ text }: Mark): number => Number(text.replace('\u2212', '-'));

/** A linear scale from lettered ticks: letters stand in the middle of, or a little below, what they say. */
function scaleOf(ticks: readonly Mark[], along: 'x' | 'y', by: (n: number) => number = (n) => n) {
  const sorted = [...ticks].sort((a, b) => number(a) - number(b));
  const [low, high] = [sorted[0], sorted.at(-1)];
  if (!low || !high || low === high) throw new Error('no scale');
  const at = (mark: Mark): number => (along === 'x' ? mark.left : mark.top - 4);
  const per = (at(high) - at(low)) / (by(number(high)) - by(number(low)));
  const back = (place: number): number => by(number(low)) + (place - at(low)) / per;
  for (const tick of sorted) expect(back(at(tick))).toBeCloseTo(by(number(tick)), 6);
  return back;
}
const ticksOf = (sheet: Sheet, isOn: (mark: Mark) => boolean): Mark[] =>
  sheet.of('text.tick').filter((mark) => /^[-\u2212]?[\d.]+$/.test(mark.text) && isOn(mark));

test('a plot has each reading at its numbers, its doubt about it, and how far it stands off below', () => {
  const points = [
    { x: 200, y: 0.081, doubt: 0.004 },
    { x: 310, y: 0.12, doubt: 0.004 },
    { x: 400, y: 0.163, doubt: 0.004 },
  ];
  const sheet = sheetOfPart(Plot, {
    points,
    curve: (x: number) => 4e-4 * x,
    xLabel: 'length',
    yLabel: 'mass',
    rest: { label: 'off it', per: 1000 },
    summary: 'three pieces',
  });
  const x = scaleOf(
    ticksOf(sheet, ({ left }) => left >= 54),
    'x',
  );
  const y = scaleOf(
    ticksOf(sheet, ({ top, left }) => left < 54 && top < 245),
    'y',
  );
  const off = scaleOf(
    ticksOf(sheet, ({ top, left }) => left < 54 && top > 290),
    'y',
  );
  const circles = sheet.of('circle');
  expect(circles.length).toBe(2 * points.length);
  const doubts = sheet.of('path.doubt');
  points.forEach((point, i) => {
    const [cx, cy] = centre(circles[i] ?? never());
    expect(x(cx)).toBeCloseTo(point.x, 6);
    expect(y(cy)).toBeCloseTo(point.y, 6);
    const doubt = doubts[i] ?? never();
    expect(y(doubt.top)).toBeCloseTo(point.y + point.doubt, 6);
    expect(y(doubt.bottom)).toBeCloseTo(point.y - point.doubt, 6);
    // Below, in a scale of its own, a thousand times finer
    const [restX, restY] = centre(circles[points.length + i] ?? never());
    expect(restX).toBeCloseTo(cx, 6);
    expect(off(restY)).toBeCloseTo(1000 * (point.y - 4e-4 * point.x), 6);
    expect(off(doubts[points.length + i]?.top ?? NaN)).toBeCloseTo(off(restY) + 4, 6);
  });
  expect(off(ends(sheet.of('path.law').at(-1) ?? never())[0][1])).toBeCloseTo(0, 6);
});

test('predicted and measured stand on one line of numbers, each with one and two of its doubts', () => {
  const predicted = { value: 0.398, uncertainty: 0.009 };
  const measured = { value: 0.409, uncertainty: 0.003 };
  const sheet = sheetOfPart(Agree, { predicted, measured, unit: 'g/m', what: 'Unit weight' });
  const x = scaleOf(
    ticksOf(sheet, () => true),
    'x',
  );
  const [bars, whiskers, middles] = ['bar', 'whisker', 'mark'].map((name) =>
    sheet.of(`path.${name}`),
  );
  [predicted, measured].forEach(({ value, uncertainty }, i) => {
    expect(x(middles?.[i]?.left ?? NaN)).toBeCloseTo(value, 9);
    expect(x(bars?.[i]?.left ?? NaN)).toBeCloseTo(value - uncertainty, 9);
    expect(x(whiskers?.[i]?.right ?? NaN)).toBeCloseTo(value + 2 * uncertainty, 9);
  });
  expect(sheet.summary).toContain('predicted: 0.398');
});

test('cents at the frets stand at the fret and height that they say, with the model’s dash', () => {
  const frets = [3, 7, 12].map((fret) => ({
    fret,
    measured: { value: fret / 3 - 2, uncertainty: 1.5 },
    predicted: { value: 1 - fret / 12, uncertainty: 0.4 },
  }));
  const sheet = sheetOfPart(Cents, {
    frets: [...frets, { fret: 5, predicted: { value: 0.5, uncertainty: 0.4 } }],
  });
  const y = scaleOf(
    ticksOf(sheet, ({ left }) => left < 50),
    'y',
  );
  const letters = ticksOf(sheet, ({ top }) => top > 220);
  const circles = sheet.of('circle');
  frets.forEach(({ fret, measured, predicted }, i) => {
    const [cx, cy] = centre(circles[i] ?? never());
    expect(y(cy)).toBeCloseTo(measured.value, 6);
    expect(letters.find((mark) => number(mark) === fret)?.left).toBeCloseTo(cx, 6);
    expect(y(sheet.of('path.model')[i]?.top ?? NaN)).toBeCloseTo(predicted.value, 6);
    expect(y(sheet.of('rect.band')[i]?.top ?? NaN)).toBeCloseTo(predicted.value + 0.8, 6);
    expect(y(sheet.of('path.doubt')[i]?.top ?? NaN)).toBeCloseTo(
      measured.value + measured.uncertainty,
      6,
    );
  });
});

test('before a fret is read, its prediction stands alone', () => {
  const sheet = sheetOfPart(Cents, {
    frets: [{ fret: 5, predicted: { value: 1, uncertainty: 0.4 } }],
  });
  expect(sheet.of('circle').length).toBe(0);
  expect(sheet.of('path.model').length).toBe(1);
  expect(sheet.summary).toContain('Fret 5: predicted 1.0');
});

test('partials stand above even ones by the law that they follow', () => {
  const [fundamental, inharmonicity] = [110, 8e-5];
  const partials = [2, 5, 9, 14, 20].map((n) => ({
    n,
    frequency: n * fundamental * Math.sqrt(1 + inharmonicity * n * n),
    level: -3 * n,
  }));
  const heard = { fundamental, inharmonicity, partials, residual: 0.4 };
  const sheet = sheetOfPart(Partials, { heard, model: 5e-5 });
  const x = scaleOf(
    ticksOf(sheet, ({ top }) => top > 270),
    'x',
  );
  const y = scaleOf(
    ticksOf(sheet, ({ left }) => left < 50),
    'y',
  );
  const fit = sheet.one('path.fit').lines.flat();
  partials.forEach(({ n }, i) => {
    const [cx, cy] = centre(sheet.of('circle')[i] ?? never());
    expect(x(cx)).toBeCloseTo(n, 6);
    expect(y(cy)).toBeCloseTo(600 * Math.log2(1 + inharmonicity * n * n), 6);
    // The line that fits goes through it.
    const on = fit.find(([at]) => Math.abs(at - cx) < 1e-3);
    expect(on?.[1]).toBeCloseTo(cy, 2);
  });
});

test('judgements stand at the size of their difference; the hand’s line, its range and the published one too', () => {
  const judged = [0.14, 0.09, 0.06, 0.075, 0.02].map((difference, i) => ({
    id: String(i),
    difference,
    right: i !== 4,
    session: 1,
    asked: difference,
    cents: 0,
  }));
  const found = {
    value: 0.055,
    low: 0.04,
    high: 0.09,
    openBelow: false,
    openAbove: false,
    lapses: 0,
  };
  const sheet = sheetOfPart(Track, { judged, found, published: 0.07 });
  const y = scaleOf(
    ticksOf(sheet, ({ left }) => left < 50),
    'y',
    Math.log,
  );
  const share = (place: number): number => Math.exp(y(place)) / 100;
  judged.forEach(({ difference }, i) =>
    expect(share(centre(sheet.of('circle')[i] ?? never())[1])).toBeCloseTo(difference, 6),
  );
  expect(sheet.of('circle.right').length).toBe(4);
  expect(share(sheet.one('path.own').top)).toBeCloseTo(0.055, 6);
  expect(share(sheet.one('path.published').top)).toBeCloseTo(0.07, 6);
  expect(share(sheet.one('rect.range').top)).toBeCloseTo(0.09, 6);
  expect(share(sheet.one('rect.range').bottom)).toBeCloseTo(0.04, 6);
});

test('a class’s dots stand off the prediction by what their rows say, the average among them', () => {
  const rows = [0.03, -0.01, 0.004].map((off, i) => ({
    lab: 'weigh' as const,
    who: `KNOT ${i}`,
    string: 'E4 10',
    predicted: { value: 0.4, uncertainty: 0.004 },
    measured: { value: 0.4 * (1 + off), uncertainty: 0.002 },
  }));
  const all = pooled(rows, 'weigh');
  const sheet = sheetOfPart(Dots, { all, summary: 'three rows' });
  const x = scaleOf(
    ticksOf(sheet, ({ top }) => top > 60),
    'x',
  );
  const offs = sheet.of('circle').map((mark) => x(centre(mark)[0]));
  [-1, 0.4, 3].forEach((off, i) => expect(offs[i]).toBeCloseTo(off, 6));
  expect(x(sheet.one('path.mean').left)).toBeCloseTo(0.8, 6);
  expect(x(sheet.one('path.predicted').left)).toBeCloseTo(0, 6);
  expect(x(sheet.of('path.doubt')[2]?.right ?? NaN)).toBeCloseTo(3.5, 6);
  expect(x(sheet.of('rect.band')[0]?.right ?? NaN)).toBeCloseTo(2, 6);
  // Two doubts of the prediction's one and a half hold all but the first.
  expect(sheet.of('circle.agrees').length).toBe(2);
  expect(sheet.texts).toContain('KNOT 0');
});

test('a class’s curve goes through its shares of right answers, by a scale of differences that grows by ratios', () => {
  const judged = [0.01, 0.05, 0.2].flatMap((difference, i) =>
    Array.from({ length: 20 }, (_, j) => ({ difference, right: j < 11 + 4 * i })),
  );
  const curve = pooledHands([
    { lab: 'hand', who: 'RUFF', string: 'B3', judgements: counted(judged) },
  ]);
  const sheet = sheetOfPart(HandsCurve, { curve, published: 0.07, summary: 'one hand' });
  const x = scaleOf(
    ticksOf(sheet, ({ top, left }) => top > 230 && left > 50),
    'x',
    Math.log,
  );
  const y = scaleOf(
    ticksOf(sheet, ({ left }) => left < 50),
    'y',
  );
  curve?.steps.forEach(({ step, right, wrong }, i) => {
    const [cx, cy] = centre(sheet.of('circle')[i] ?? never());
    expect(Math.exp(x(cx)) / 100).toBeCloseTo(differenceAt(step), 6);
    expect(y(cy)).toBeCloseTo((100 * right) / (right + wrong), 6);
  });
  // At its threshold a pair is told right in 76 %: the published line crosses there.
  const published = sheet.one('path.published').lines.flat();
  const near = published.reduce((best, point) =>
    Math.abs(Math.exp(x(point[0])) / 100 - 0.07) < Math.abs(Math.exp(x(best[0])) / 100 - 0.07)
      ? point
      : best,
  );
  expect(y(near[1])).toBeGreaterThan(74);
  expect(y(near[1])).toBeLessThan(78);
});

const never = (): never => {
  throw new Error('no such mark');
};
