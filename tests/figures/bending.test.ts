import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';

import {
  roomOf,
  stringsApart,
  travelRange,
  viewOf,
  wayOf,
  withFret,
  withRise,
  withTravel,
} from '../../src/figures/kit/bend/bent.ts';
import { describe as say, obstacle, travelText } from '../../src/figures/feel/bending/describe.ts';
import { formatRise } from '../../src/figures/kit/bend/words.ts';
import { frameOf, phone, wide } from '../../src/figures/feel/bending/frame.ts';
import { parseCount, parseShort } from '../../src/figures/kit/bend/parse.ts';
import { bendRows } from '../../src/figures/feel/bending/rows.ts';
import { slippedTo } from '../../src/figures/feel/whole-string/slip.ts';
import { fiveBent, gaugesAround } from '../../src/figures/feel/five-gauges/five.ts';
import { liveText } from '../../src/figures/quantities.ts';
import { withTrial } from '../../src/figures/trial.ts';
import { limits } from '../../src/instrument/limits.ts';
import { pushedBy, pushedTo, tuned } from '../../src/instrument/pushed.ts';
import type { State } from '../../src/instrument/schema.ts';
import { initialState, workshop, workshopInstrument } from '../../src/instrument/workshop.ts';
import { axialStiffness, bendTo, fromInches, fromThousandths } from '../../src/physics/index.ts';

const on = (id: string, string = 0): State => ({
  ...initialState,
  mine: workshopInstrument(id),
  trial: { string },
});
const ten = tuned(
  { kind: 'plain', diameter: fromThousandths(10), material: 'musicWire' },
  fromInches(25.5),
  'E4',
);

describe('pushedTo', () => {
  it('travels as the module says', () => {
    const { travel, push } = bendTo({ ...ten, at: ten.speakingLength / 2, rise: 200 });
    const pushed = pushedTo(ten, 12, 200);
    expect(pushed?.travel).toBeCloseTo(travel, 12);
    expect(pushed?.push).toBeCloseTo(push, 9);
  });

  it('agrees with the chapter’s law of small slopes within two per cent', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 12 }), fc.integer({ min: 25, max: 400 }), (fret, c) => {
        const a = ten.speakingLength * 2 ** (-fret / 12);
        const b = ten.speakingLength - a;
        const added = (2 ** (c / 600) - 1) * (ten.tension / axialStiffness(ten.construction));
        const ratio = (pushedTo(ten, fret, c)?.travel ?? NaN) / Math.sqrt(2 * a * b * added);
        expect(Math.abs(ratio - 1)).toBeLessThan(0.02);
      }),
    );
  });

  it('does the same work at every fret, within four per cent', () => {
    const work = (fret: number): number => {
      const to = pushedTo(ten, fret, 200)?.travel ?? NaN;
      const steps = 400;
      let sum = 0;
      for (let i = 0; i < steps; i += 1)
        sum += ((pushedBy(ten, fret, ((i + 0.5) * to) / steps)?.push ?? NaN) * to) / steps;
      return sum;
    };
    for (const fret of [2, 5, 9, 15]) expect(work(fret) / work(12)).toBeCloseTo(1, 1);
    expect(Math.abs(work(5) / work(12) - 1)).toBeLessThan(0.04);
  });

  it('stops where the room ends, and knows nothing of a string that was only weighed', () => {
    expect(pushedTo(ten, 12, 200, 0.005)?.travel).toBe(0.005);
    const weighed = { kind: 'measured', diameter: 2.5e-4, linearDensity: 4e-4 } as const;
    expect(pushedTo(tuned(weighed, 0.648, 'E4'), 12, 200)).toBeUndefined();
  });
});

describe('the board', () => {
  it('is crossed towards the lowest string from its upper half, towards the highest from the lower', () => {
    expect([0, 1, 2, 3, 4, 5].map((i) => wayOf(i, 6))).toEqual([1, 1, 1, -1, -1, -1]);
  });

  it('leaves as much room as there are strings to pass', () => {
    const six = workshopInstrument('redshank');
    expect(roomOf(six, 0) - roomOf(six, 1)).toBeCloseTo(stringsApart(six), 12);
    expect(roomOf(six, 5)).toBeCloseTo(roomOf(six, 0), 12);
  });
});

describe.each(workshop.map((w) => [w.name, w] as const))('the sheet of %s', (_, mine) => {
  it.each([phone, wide])('keeps every finger on the drawing ($name)', (plan) => {
    mine.strings.forEach((_, string) => {
      const state: State = { ...initialState, mine, trial: { string } };
      const view = viewOf(state);
      const ghost = view.ghost?.pull.speakingLength ?? 0;
      const frame = frameOf(mine, ghost, plan);
      const { max } = travelRange(view);
      const y = frame.y(string, view.way * max);
      expect(y).toBeGreaterThan(frame.top - 1e-6);
      expect(y).toBeLessThan(frame.bottom + 1e-6);
      const own = frame.neck.strings[string];
      for (const fret of [limits.fret.min, limits.fret.max]) {
        const x = frame.x((own?.nut ?? 0) + view.pull.speakingLength * (1 - 2 ** (-fret / 12)));
        expect(x).toBeGreaterThan(24);
        expect(x).toBeLessThan(frame.right);
      }
      expect(frame.x((own?.nut ?? 0) + ghost)).toBeLessThanOrEqual(frame.right + 1e-6);
    });
  });
});

describe('viewOf', () => {
  it('comes back to the rise that a travel was asked for', () => {
    const asked = withRise(on('redshank', 2), 150);
    const again = withTravel(asked, viewOf(asked).pushed?.travel ?? NaN);
    expect(again.bend.rise).toBeCloseTo(150, 6);
  });

  it('lays the same rise on the other instrument: at nearly the pull, further by the length squared', () => {
    const { pull, pushed, ghost } = viewOf(on('redshank'));
    const further = (ghost?.pushed.travel ?? NaN) / (pushed?.travel ?? NaN);
    expect(further).toBeCloseTo((26.5 / 25.5) ** 2, 2);
    expect((ghost?.pull.tension ?? NaN) / pull.tension).toBeCloseTo(1, 1);
  });

  it('has a twin beside an instrument with another number of strings', () => {
    expect(viewOf(on('godwit')).ghost?.pull.speakingLength).toBeCloseTo(fromInches(35), 3);
  });

  it('keeps fret and rise within the site’s limits', () => {
    expect(withFret(initialState, 99).bend.fret).toBe(limits.fret.max);
    expect(withRise(initialState, 1).bend.rise).toBe(limits.rise.min);
  });
});

describe('in words', () => {
  const long = withTrial(initialState, { length: limits.scale.max });
  it('gives no travel of a bend that breaks the string', () => {
    expect(travelText(viewOf(long), 'in-lb')).toBe('breaks');
    expect(say(long)).toMatch(/would break the string/);
    expect(say(long)).not.toMatch(/There a travel/);
    expect(bendRows(viewOf(long)).every(([, travel]) => travel === '')).toBe(true);
  });

  it('says where the board ends', () => {
    expect(obstacle(viewOf(withRise(on('turnstone'), 400)), 400)).toMatch(
      /board ends here: \d+\scents/,
    );
    expect(obstacle(viewOf(on('redshank')), 200)).toBe('');
  });

  it('names the rises that have a name', () => {
    expect([50, 200, 200.0000001, 137].map(formatRise)).toEqual([
      'a quarter tone',
      'a whole tone',
      'a whole tone',
      '137\u00a0cents',
    ]);
  });

  it('writes a row for every 25 cents', () => {
    const rows = bendRows(viewOf(initialState));
    expect(rows.map(([rise]) => Number(rise))).toEqual(
      Array.from({ length: 16 }, (_, i) => 25 * (i + 1)),
    );
    expect(Number(rows[7]?.[1])).toBeCloseTo(19.7, 1);
  });
});

describe('what is typed', () => {
  const range = { min: 0.001, max: 0.05 };
  it('takes a bare number in the reader’s unit, however small', () => {
    expect(parseShort('19.7', 'mm-N', range, String)).toEqual({ ok: true, value: 0.0197 });
    expect(parseShort('0.5', 'in-lb', range, String)).toEqual({ ok: true, value: 0.0127 });
    expect(parseShort('19.7 mm', 'in-lb', range, String)).toEqual({ ok: true, value: 0.0197 });
  });

  it('says what is allowed', () => {
    expect(parseShort('9 in', 'in-lb', range, String)).toMatchObject({ ok: false });
    expect(parseCount('30', limits.fret)).toMatchObject({ ok: false });
    expect(parseCount('x', limits.fret)).toMatchObject({ ok: false });
    expect(parseCount('7', limits.fret)).toEqual({ ok: true, value: 7 });
  });
});

describe('fiveBent', () => {
  it('gives plain gauges one travel and a push that goes with the gauge squared', () => {
    const five = fiveBent(on('redshank'));
    expect(gaugesAround(on('redshank'))).toEqual([8, 9, 10, 11, 12]);
    const own = five.find((b) => b.own);
    for (const { pull, pushed } of five) {
      expect(pushed?.travel).toBeCloseTo(own?.pushed?.travel ?? NaN, 9);
      const push = (pushed?.push ?? NaN) / (own?.pushed?.push ?? NaN);
      expect(push).toBeCloseTo((pull.gauge.gauge / 10) ** 2, 6);
    }
  });

  it.each(workshop.map((w) => [w.id, w.strings.length - 1] as const))(
    'finds several gauges around the lowest string of %s, its own among them',
    (id, string) => {
      const gauges = gaugesAround(on(id, string));
      expect(gauges.length).toBeGreaterThanOrEqual(3);
      expect(gauges).toContain(workshopInstrument(id).strings[string]?.gauge);
    },
  );
});

describe('slippedTo', () => {
  it('needs more travel by the root of the length that shares the stretch', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 0.2, noNaN: true }),
        fc.double({ min: 0, max: 0.2, noNaN: true }),
        (nut, saddle) => {
          const slip = slippedTo(ten, 12, 200, {
            nut,
            saddle,
            slipsAtNut: true,
            slipsAtSaddle: true,
          });
          const root = Math.sqrt((ten.speakingLength + nut + saddle) / ten.speakingLength);
          expect(Math.abs(1 + (slip?.further ?? NaN) - root)).toBeLessThan(0.01);
        },
      ),
    );
  });

  it('is as held where nothing slips, whatever lies beyond', () => {
    const held = { nut: 0.2, saddle: 0.2, slipsAtNut: false, slipsAtSaddle: false };
    expect(slippedTo(ten, 12, 200, held)?.further).toBe(0);
  });
});

test.each([
  ['bend.c.pushMore', '+49'],
  ['bend.c.longer', '12'],
  ['bend.c.slip', '11'],
  ['bend.c.woundMore', '50'],
])('the chapter’s %s is %s per cent', (key, value) => {
  expect(liveText(key, 'bending').replace(/\s%$/, '')).toBe(value);
});

test('the last line of the derivation follows from the numbers that stand in it', () => {
  const [a, b, more, pull, stiffness, y] = ['a', 'b', 'more', 'T', 'EA', 'y'].map((key) =>
    Number(liveText(`bend.eq.${key}`, 'bending')),
  ) as [number, number, number, number, number, number];
  expect(Math.sqrt((2 * a * b * more * pull) / stiffness)).toBeCloseTo(y, 1);
  expect(Math.sqrt(Number(liveText('bend.eq.y2', 'bending')))).toBeCloseTo(y, 1);
});
