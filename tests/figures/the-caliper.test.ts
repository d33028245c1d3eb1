import { describe, expect, it } from 'vitest';

import type { State } from '../../src/instrument/schema.ts';
import { initialState, workshop, workshopInstrument } from '../../src/instrument/workshop.ts';
import { measured, reachOf, wireInHand } from '../../src/figures/pull/the-caliper/caliper.ts';
import { rows } from '../../src/figures/pull/the-caliper/data.ts';
import {
  areaText,
  describe as say,
  toleranceText,
} from '../../src/figures/pull/the-caliper/describe.ts';
import { frame, ticksOf } from '../../src/figures/pull/the-caliper/frame.ts';
import { fromThousandths, gramsPerMetre, thousandths } from '../../src/physics/index.ts';

const on = (id: string, string = 0): State => ({
  ...initialState,
  mine: workshopInstrument(id),
  trial: { string },
});
const ten = { kind: 'plain', diameter: fromThousandths(10), material: 'musicWire' } as const;
const spaced = (text: string): string => text.replace(/\s/g, ' ');

describe('a wire in the caliper', () => {
  it('has the area and the mass of a cylinder', () => {
    // By hand: pi/4 of 0.254 mm squared is 0.05067 mm²; times 7.85 g/cm³ it is 0.3978 g/m.
    const at = measured(ten, ten.diameter);
    expect(at.area * 1e6).toBeCloseTo(0.05067, 5);
    expect(gramsPerMetre(at.linearDensity)).toBeCloseTo(0.3978, 4);
    expect(spaced(areaText(at.area))).toBe('0.0507 mm²');
  });

  it('may be off by what the standard permits: two tenths of a thousandth on a ten', () => {
    const at = measured(ten, ten.diameter);
    expect(thousandths(at.tolerance ?? NaN)).toBeCloseTo(0.2, 9);
    expect(at.massTolerance).toBeCloseTo(1.02 ** 2 - 1, 9);
    expect(toleranceText(measured({ ...ten, material: 'nylon' }, 7e-4), 'in-lb')).toMatch(
      /no standard/,
    );
  });

  it('is the string in hand, or the instrument’s plain one, or a ten', () => {
    expect(wireInHand(on('redshank', 2))).toMatchObject({ string: 2, inHand: true });
    expect(wireInHand(on('redshank', 5))).toMatchObject({ string: 0, inHand: false });
    expect(wireInHand(on('godwit'))).toEqual({ wire: ten, string: undefined, inHand: false });
    expect(wireInHand(on('turnstone')).wire.material).toBe('nylon');
  });

  it('fits on its sheet with the dial, and has ticks that can be told apart', () => {
    for (const { id, strings } of workshop)
      strings.forEach((_, i) => {
        const { wire } = wireInHand(on(id, i));
        const perThousandth = frame.own / thousandths(wire.diameter);
        const { max } = reachOf(wire);
        const edge = frame.jaw + max * perThousandth + frame.dial.x + frame.dial.radius;
        expect(edge).toBeLessThan(frame.width);
        const { step, number } = ticksOf(perThousandth);
        expect(step * perThousandth).toBeGreaterThanOrEqual(5);
        expect(number % step).toBe(0);
      });
  });

  it('says what it holds, and lists half thousandths', () => {
    expect(say(ten, measured(ten, ten.diameter), 'in-lb')).toMatch(/steel.*10\.0 thousandths/);
    const table = rows(ten);
    expect(table[0]?.[0]).toBe(6);
    expect(table.at(-1)?.[0]).toBe(16);
  });
});
