import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

import { encode, encodeInstrument } from '../../src/instrument/link.ts';
import { decode } from '../../src/instrument/link-read.ts';
import { limits } from '../../src/instrument/limits.ts';
import { isState, type State } from '../../src/instrument/schema.ts';
import { initialState, workshop, workshopInstrument } from '../../src/instrument/workshop.ts';
import { anyGauge, anyInstrument, anyPlainNote, anyState } from './any-state.ts';

const readBack = (state: State) => decode(encode(state), initialState);
const named = (name: string): State => ({ ...initialState, mine: { ...initialState.mine, name } });

describe('a link', () => {
  it('holds letters, digits, dots, hyphens and slashes only', () => {
    fc.assert(
      fc.property(anyState, (state) => {
        expect(encode(state)).toMatch(/^[A-Za-z0-9./-]+$/);
      }),
    );
  });

  it('reads back to the state that writes the same link, and nothing has to be told', () => {
    fc.assert(
      fc.property(anyState, (state) => {
        const { state: read, notes } = readBack(state);
        return isState(state) && notes.length === 0 && read && encode(read) === encode(state);
      }),
      { numRuns: 2000 },
    );
  }, 60_000);

  it('keeps every workshop instrument to the last digit', () => {
    for (const { id } of workshop) {
      const mine = workshopInstrument(id);
      expect(readBack({ ...initialState, mine }).state?.mine).toEqual(mine);
    }
  });

  it('keeps what is at the limits of the site', () => {
    const { min, max } = limits.scale;
    const strings = initialState.mine.strings.map((string, i) => ({
      ...string,
      note: i % 2 ? 'C0' : 'C7',
      gauge: i % 2 ? limits.gauge.min : limits.gauge.max,
      unitWeight: i % 2 ? limits.unitWeight.min : limits.unitWeight.max,
    }));
    const mine = { name: 'Knot', scale: { treble: min, bass: max }, a4: limits.a4.min, strings };
    const aim = { ...initialState.aim, factor: limits.factor.max };
    const { state, notes } = readBack({ ...initialState, mine, aim });
    expect(notes).toEqual([]);
    expect(state?.mine).toEqual(mine);
    expect(state?.aim).toEqual(aim);
  });

  it.each([
    'Lapwing',
    'Bar-tailed godwit',
    'Ringed  plover',
    'Höckerschwan 2',
    '杓鷸',
    'a.b/c#d%e',
    '🪶 plume',
    'to',
    'n-L',
  ])('keeps the name %s', (name) => {
    expect(readBack(named(name)).state?.mine.name).toBe(name);
  });

  it('leaves out of a name what no one can read', () => {
    expect(readBack(named('\u0007Kn\u0000ot\ud800 ')).state?.mine.name).toBe('Knot');
  });

  it('keeps a name of the greatest length whole', () => {
    const name = '🪶'.repeat(limits.name / 2);
    expect(readBack(named(name)).state?.mine.name).toBe(name);
  });

  it('leaves out what rounds to the usual value', () => {
    const state = {
      ...initialState,
      mine: { ...initialState.mine, a4: 440.001 },
      aim: { ...initialState.aim, factor: 1.0001 },
    };
    expect(encode(state)).toBe(encode(initialState));
  });
});

describe('the link of an instrument', () => {
  const six = workshop.filter(({ strings }) => strings.length === 6);

  it('is shorter than 200 characters for every six-string of the workshop', () => {
    expect(six.length).toBeGreaterThanOrEqual(4);
    for (const instrument of six) {
      expect(encodeInstrument(instrument).length, instrument.name).toBeLessThan(200);
    }
  });

  it('is shorter than 200 characters for any six strings and a name of twelve letters', () => {
    const letters = fc.string({
      unit: fc.constantFrom(...'abcdefghijklmnopqrstuvwxyz '),
      minLength: 12,
      maxLength: 12,
    });
    const string = fc.tuple(anyPlainNote, anyGauge).map(([note, gauge]) => ({ note, ...gauge }));
    const strings = fc.array(string, { minLength: 6, maxLength: 6 });
    fc.assert(
      fc.property(anyInstrument, letters, strings, (instrument, name, six) => {
        return encodeInstrument({ ...instrument, name, strings: six }).length < 200;
      }),
      { numRuns: 1000 },
    );
  }, 60_000);

  it('leaves everything but the instrument as it was', () => {
    const base: State = {
      ...initialState,
      units: 'mm-kg',
      other: { ...initialState.other, name: 'Dunlin' },
    };
    const [, , , curlew] = workshop;
    if (!curlew) throw new Error('the workshop has no fourth instrument');
    const { state } = decode(encodeInstrument(curlew), base);
    expect(state?.mine.strings).toEqual(curlew.strings);
    expect(state?.units).toBe('mm-kg');
    expect(state?.other).toEqual(base.other);
  });
});
