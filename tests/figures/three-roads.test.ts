import { describe, expect, test } from 'vitest';

import { liveText } from '../../src/figures/quantities.ts';
import {
  contoursOf,
  labelsOf,
  ownLabels,
  wholeLabels,
} from '../../src/figures/choosing/three-roads/contours.ts';
import { dataHead, dataRows } from '../../src/figures/choosing/three-roads/data.ts';
import { describe as say } from '../../src/figures/choosing/three-roads/describe.ts';
import { gaugeStops, parseLowNote } from '../../src/figures/choosing/three-roads/hand.ts';
import {
  contourShift,
  crossing,
  dullPath,
  fenceInSight,
  fencePath,
  frame,
  gaugeAt,
  lengthAt,
  mapFrame,
  meeting,
  noteX,
  rowsOf,
  STEP,
  xOf,
  yOf,
} from '../../src/figures/choosing/three-roads/map.ts';
import {
  gaugeMarks,
  lengthMarks,
  noteMarks,
} from '../../src/figures/choosing/three-roads/ruling.ts';
import { constructionOf } from '../../src/instrument/drawer.ts';
import { lowString, ownLow } from '../../src/instrument/low-string.ts';
import type { State } from '../../src/instrument/schema.ts';
import { initialState, workshop, workshopInstrument } from '../../src/instrument/workshop.ts';
import {
  bendingStiffness,
  inharmonicity,
  linearDensity,
  strengthShare,
  tension,
} from '../../src/physics/index.ts';

const own = ownLow(initialState.mine).own;
const map = mapFrame({ own });
const rows = rowsOf({ own }, map);
const at = (g: number) => {
  const row = rows.find(({ gauge }) => gauge === g);
  if (!row) throw new Error(`no row for ${g}`);
  return row;
};
const strungAs = (id: string): State => ({ ...initialState, mine: workshopInstrument(id) });

describe('the map’s scales', () => {
  test('are undone by their inverses', () => {
    for (const metres of [0.55, 0.65, 0.9])
      expect(lengthAt(map, xOf(map, metres))).toBeCloseTo(metres, 10);
    for (const g of [40, 46, 80]) expect(gaugeAt(map, yOf(map, g))).toBeCloseTo(g, 8);
  });

  test('have a note as far along as the length that makes up for it', () => {
    expect(noteX(5)).toBeCloseTo(xOf(map, own.speakingLength * 2 ** (5 / 12)), 8);
    expect(noteX(12) - noteX(0)).toBeCloseTo(12 * STEP, 8);
  });
});

describe('a row of the map', () => {
  const pullAt = (gauge: number, x: number, frequency: number) =>
    tension({
      speakingLength: lengthAt(map, x),
      frequency,
      linearDensity: linearDensity(constructionOf({ kind: 'wound', gauge })),
    });

  test('has the contour where the physics has the own pull, at any note', () => {
    for (const gauge of [38, 46, 62, 85]) {
      for (const semitones of [0, 5, 12]) {
        const x = noteX(at(gauge).pull + semitones);
        const frequency = own.frequency * 2 ** (-semitones / 12);
        expect(pullAt(gauge, x, frequency) / own.tension).toBeCloseTo(1, 8);
        // Any other contour is the same one moved.
        expect(pullAt(gauge, x + contourShift(1.07), frequency) / own.tension).toBeCloseTo(1.07, 8);
      }
    }
  });

  test('has the edge of the dull ground where the physics has the own stiffness', () => {
    for (const gauge of [38, 62, 85]) {
      for (const semitones of [0, 5]) {
        const construction = constructionOf({ kind: 'wound', gauge });
        const x = noteX((at(gauge).stiff ?? NaN) + semitones / 2);
        const frequency = own.frequency * 2 ** (-semitones / 12);
        const b = inharmonicity({
          speakingLength: lengthAt(map, x),
          tension: pullAt(gauge, x, frequency),
          bendingStiffness: bendingStiffness(construction),
        });
        expect(b / (own.inharmonicity ?? NaN)).toBeCloseTo(1, 8);
      }
    }
  });

  test('has the fence where the strength ends', () => {
    const gauge = 46;
    const x = noteX(at(gauge).fence ?? NaN);
    const construction = constructionOf({ kind: 'wound', gauge });
    const pull = pullAt(gauge, x, own.frequency);
    expect(strengthShare({ construction, tension: pull })).toBeCloseTo(1, 8);
    // It comes onto the map at the own note, far off, and leaves it as the note goes down.
    expect(fenceInSight(rows, map, 0)).toBe(true);
    expect(fenceInSight(rows, map, 5)).toBe(false);
  });
});

test('where the line of the own pull crosses the dull ground’s edge, the string is as firm and as clear, halfway along', () => {
  for (const semitones of [3, 5, 8]) {
    const meet = meeting(rows, map, semitones);
    if (!meet) throw new Error('they do not cross');
    // Of the drawer's gauges the one nearest to it: the string there is as near in both as the gauge is.
    const row = rows.reduce((a, b) => (Math.abs(b.y - meet.y) < Math.abs(a.y - meet.y) ? b : a));
    const construction = constructionOf({ kind: 'wound', gauge: row.gauge });
    const there = {
      speakingLength: lengthAt(map, meet.x),
      tension: tension({
        speakingLength: lengthAt(map, meet.x),
        frequency: own.frequency * 2 ** (-semitones / 12),
        linearDensity: linearDensity(construction),
      }),
    };
    const near = Math.abs(row.gauge / gaugeAt(map, meet.y) - 1);
    expect(near).toBeLessThan(0.04);
    expect(Math.abs(there.tension / own.tension - 1)).toBeLessThan(0.005 + 2.5 * near);
    const b = inharmonicity({ ...there, bendingStiffness: bendingStiffness(construction) });
    expect(Math.abs(b / (own.inharmonicity ?? NaN) - 1)).toBeLessThan(0.01 + 4 * near);
    // The chapter: half of the steps in length.
    const steps = 12 * Math.log2(there.speakingLength / own.speakingLength);
    expect(Math.abs(steps / semitones - 0.5)).toBeLessThan(0.15);
  }
  const unknown = rows.map((row) => ({ ...row, stiff: undefined }));
  expect(meeting(unknown, map, 5)).toBeUndefined();
});

test('a contour is crossed between its rows, leaning down to the right', () => {
  const place = crossing(rows, 1, yOf(map, 46));
  expect(place?.x).toBeCloseTo(noteX(0), 6);
  expect(place?.lean).toBeGreaterThan(35);
  expect(place?.lean).toBeLessThan(55);
  expect(crossing(rows, 1, -500)).toBeUndefined();
});

test('contours are round in the reader’s unit, and every place of the map has one near', () => {
  for (const units of ['in-lb', 'mm-N', 'mm-kg'] as const) {
    const contours = contoursOf({ own }, rows, units);
    const shifts = contours.map(({ ratio }) => contourShift(ratio));
    expect(shifts.every((s, i) => i === 0 || s - (shifts[i - 1] ?? s) < 2.6 * STEP)).toBe(true);
    expect(contours.some(({ text }) => text === '10')).toBe(true);
    expect(labelsOf(contours, rows, map).length).toBeGreaterThan(contours.length);
  }
});

test.each(workshop.map(({ id }) => id))(
  'on the map of %s labels stand whole and apart, at any note',
  (id) => {
    const { own } = ownLow(workshopInstrument(id));
    const map = mapFrame({ own });
    const rows = rowsOf({ own }, map);
    const labels = labelsOf(contoursOf({ own }, rows, 'in-lb'), rows, map);
    for (let semitones = 0; semitones <= 12; semitones += 1) {
      const whole = wholeLabels(labels, map, semitones, 10);
      const written = wholeLabels(ownLabels(rows, map), map, semitones, 17);
      for (const { x } of [...whole, ...written]) {
        expect(x + semitones * STEP).toBeGreaterThan(frame.left + 10);
        expect(x + semitones * STEP).toBeLessThan(frame.right - 10);
      }
      for (const a of written)
        for (const b of whole) expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeGreaterThanOrEqual(30);
      expect(whole.length, `${semitones} down`).toBeGreaterThan(2);
    }
  },
);

test('marks keep the room that their figures need', () => {
  const gaps = (values: readonly number[]) => values.slice(1).map((v, i) => v - (values[i] ?? v));
  const xs = lengthMarks(map, 'in-lb').map(({ x }) => x);
  expect(Math.min(...gaps(xs))).toBeGreaterThan(26);
  const ys = gaugeMarks(rows, map, 'in-lb')
    .map(({ y }) => y)
    .sort((a, b) => a - b);
  expect(Math.min(...gaps(ys))).toBeGreaterThan(14);
  expect(gaugeMarks(rows, map, 'in-lb').map(({ text }) => text)).toContain('46');
  expect(gaugeMarks(rows, map, 'mm-N').map(({ text }) => text)).toContain('1.17');
  expect(noteMarks('E2').find(({ semitones }) => semitones === 5)?.name).toBe('B1');
});

describe.each(workshop.map(({ id }) => id))('on %s', (id) => {
  const low = lowString(strungAs(id));
  const ground = mapFrame(low);
  const lines = rowsOf(low, ground);

  test('the string stands on its map, whose height is bounded', () => {
    expect(ground.height).toBeGreaterThan(200);
    expect(ground.height).toBeLessThan(460);
    expect(xOf(ground, low.own.speakingLength)).toBeGreaterThan(frame.left);
    expect(gaugeStops(lines, ground)).toContain(low.own.gauge.gauge);
  });

  test('what is not known is not drawn', () => {
    const known = low.own.inharmonicity !== undefined;
    expect(dullPath(lines) !== '').toBe(known);
    expect(fencePath(lines) !== '').toBe(known);
  });

  test('it is said in words and in data without a missing number', () => {
    expect(say(low, 'in-lb')).not.toMatch(/NaN|undefined/);
    for (const row of dataRows(low, 'mm-N')) expect(row).toHaveLength(dataHead('mm-N').length);
  });
});

test('a typed note is taken within the map', () => {
  const low = lowString(initialState);
  expect(parseLowNote(low, 'B1')).toEqual({ ok: true, value: 5 });
  expect(parseLowNote(low, 'E4')).toMatchObject({ ok: false });
  expect(parseLowNote(low, 'x')).toMatchObject({ ok: false });
});

test.each([
  ['const.fourthLength', '1.335'],
  ['const.fourthMass', '1.78'],
  ['const.fourthPull', '56 %'],
  ['const.bassLength', '1.33'],
  ['const.bassGauge', '2.28'],
  ['const.bassBoth', '3.0'],
  ['const.bassTimes', '2.3'],
  ['low.thicker.gauge', '62 w'],
  ['low.down.pull', '9.66 lb'],
])('the chapter’s %s is %s', (key, text) => {
  expect(liveText(key, 'going-low').replace(/\s/g, ' ')).toBe(text);
});
