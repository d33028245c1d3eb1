import { describe, expect, it } from 'vitest';

import sources from '../../content/data/sources.yaml';
import { drawerOf } from '../../src/instrument/drawer.ts';
import { carrierOf } from '../../src/instrument/carrier.ts';
import { familyNames } from '../../src/instrument/family-names.ts';
import { pullsOf } from '../../src/instrument/pulls.ts';
import { limits } from '../../src/instrument/limits.ts';
import { isState } from '../../src/instrument/schema.ts';
import { tuningOf, tunings } from '../../src/instrument/tunings.ts';
import {
  asTarget,
  initialState,
  readGauge,
  workshop,
  workshopInstrument,
} from '../../src/instrument/workshop.ts';
import { setsOf } from '../../src/instrument/sets.ts';
import {
  feltSources,
  linearDensity,
  materials,
  noteNumber,
  strengthSource,
  type Constant,
} from '../../src/physics/index.ts';

const repeated = (list: readonly string[]) => list.filter((item, i) => list.indexOf(item) !== i);
const sourceIds = (sources as { id: string }[]).map(({ id }) => id);

describe('the workshop', () => {
  it('starts every reader from a valid state', () => {
    expect(isState(initialState)).toBe(true);
  });

  it('has instruments that a reader could have described', () => {
    for (const { id } of workshop) {
      const mine = workshopInstrument(id);
      expect(isState({ ...initialState, mine, other: asTarget(mine) }), id).toBe(true);
    }
  });

  it('strings them from the drawer, with nothing broken or strained beyond what is known', () => {
    for (const instrument of workshop) {
      for (const { kind, gauge, family } of instrument.strings) {
        expect(drawerOf(family).gauges[kind]).toContain(gauge);
      }
      for (const pull of pullsOf(instrument)) {
        // A polymer has no least strength, only a wide range.
        const soft = carrierOf(pull.construction) === 'polymer';
        expect(soft ? ['unknown'] : ['sound', 'caution']).toContain(pull.strain);
      }
    }
  });

  it('names each once', () => {
    expect(repeated(workshop.map((w) => w.id))).toEqual([]);
    expect(repeated(workshop.map((w) => w.name))).toEqual([]);
  });

  it('refuses an instrument that it does not have', () => {
    expect(() => workshopInstrument('heron')).toThrow(RangeError);
    expect(() => workshopInstrument('heron')).toThrow(/heron.*redshank/);
  });

  it('reads a gauge as it is written in the data, or refuses it', () => {
    expect(readGauge('9.5')).toEqual({ kind: 'plain', gauge: 9.5 });
    expect(readGauge('26w')).toEqual({ kind: 'wound', gauge: 26 });
    expect(() => readGauge('w')).toThrow(RangeError);
  });
});

const everySet = [undefined, ...familyNames].flatMap((family) =>
  setsOf(family).map((set) => ({ ...set, family })),
);

describe('the sets', () => {
  it('are there for every family', () => {
    for (const family of familyNames) expect(setsOf(family).length, family).toBeGreaterThan(1);
  });

  it('hold gauges that the drawer has, exactly', () => {
    for (const { name, gauges: list, family } of everySet) {
      for (const { kind, gauge } of list)
        expect(drawerOf(family).gauges[kind], name).toContain(gauge);
    }
  });

  it('get no lighter from one string to the next', () => {
    for (const { name, gauges: list, constructions } of everySet) {
      // A wound nylon bass may be thinner than a plain treble: it is the weight that grows.
      const weights = constructions.map((c) => linearDensity(c));
      expect(weights, name).toEqual([...weights].sort((a, b) => a - b));
      expect(list).toHaveLength(weights.length);
    }
  });

  it('are named once each and string no more than an instrument has', () => {
    expect(repeated(setsOf().map((s) => s.name))).toEqual([]);
    for (const { gauges: list } of everySet) {
      expect(list.length).toBeGreaterThanOrEqual(limits.strings.min);
      expect(list.length).toBeLessThanOrEqual(limits.strings.max);
    }
  });
});

describe('the tunings', () => {
  it('hold notes in range, as the site spells them', () => {
    for (const { id, notes } of tunings) {
      expect(notes.length, id).toBeGreaterThanOrEqual(limits.strings.min);
      expect(notes.length, id).toBeLessThanOrEqual(limits.strings.max);
      for (const note of notes) {
        expect(note).toMatch(/^[A-G][#b]?\d$/);
        expect(noteNumber(note)).toBeGreaterThanOrEqual(limits.note.min);
        expect(noteNumber(note)).toBeLessThanOrEqual(limits.note.max);
      }
    }
  });

  it('are named once each, and no two are the same notes', () => {
    expect(repeated(tunings.map((t) => t.id))).toEqual([]);
    expect(repeated(tunings.map((t) => t.name))).toEqual([]);
    expect(repeated(tunings.map((t) => t.notes.join(' ')))).toEqual([]);
  });

  it('are recognised by their notes', () => {
    for (const tuning of tunings) expect(tuningOf(tuning.notes)).toBe(tuning);
    expect(tuningOf(['E4', 'B3', 'G3', 'D3', 'A2', 'F2'])).toBeUndefined();
    expect(tuningOf(['E4', 'B3', 'G3', 'D3', 'A2'])).toBeUndefined();
  });
});

describe('the sources', () => {
  it('have one entry each', () => {
    expect(repeated(sourceIds)).toEqual([]);
  });

  it('have an entry for every constant of a material', () => {
    const constants = Object.values(materials).flatMap((m): Constant[] => [m.density, m.modulus]);
    expect(constants.length).toBeGreaterThan(8);
    for (const { source } of constants) expect(sourceIds).toContain(source);
  });

  it('give the entry the status that the constant gives it', () => {
    const status = new Map(
      (sources as { id: string; status: string }[]).map((s) => [s.id, s.status]),
    );
    for (const { density, modulus } of Object.values(materials)) {
      expect(status.get(density.source)).toBe(density.status);
      expect(status.get(modulus.source)).toBe(modulus.status);
    }
  });

  it('have an entry for what the felt band and the strengths are taken from', () => {
    expect(sourceIds).toEqual(
      expect.arrayContaining([feltSources.force, feltSources.travel, strengthSource]),
    );
  });
});
