import { describe, expect, it } from 'vitest';

import { drawer } from '../../src/instrument/drawer.ts';
import { carrierOf, steelOnNylon } from '../../src/instrument/carrier.ts';
import { families } from '../../src/instrument/families.ts';
import { builtForOf, isWeighed, sortOf, type Family } from '../../src/instrument/family-names.ts';
import {
  bestMatch,
  feelOf,
  linearDensity,
  noteFrequency,
  strengthShare,
  strainState,
  tension as tensionOf,
  thousandths,
  type Construction,
} from '../../src/physics/index.ts';

const names = Object.keys(families) as Family[];
const weighed = { kind: 'measured', diameter: 1e-3, linearDensity: 2e-3 } as const;

describe.each(names)('%s', (name) => {
  const family = families[name];
  const kinds = [...new Set(family.map((c) => c.kind))];

  it('holds plain strings and others, each kind from thin to thick and from light to heavy', () => {
    expect(kinds[0]).toBe('plain');
    expect(kinds).toHaveLength(2);
    for (const kind of kinds) {
      const strings = family.filter((c) => c.kind === kind);
      expect(strings.length).toBeGreaterThan(10);
      for (const quantity of [
        (c: Construction) => thousandths(c.diameter),
        (c: Construction) => linearDensity(c),
      ]) {
        const all = strings.map(quantity);
        expect(all).toEqual(all.toSorted((a, b) => a - b));
        expect(new Set(all).size).toBe(all.length);
      }
    }
  });

  it('has a string for each of its instrument’s, that holds and can be bent where its stretch is known', () => {
    const violin = sortOf(name) === 'violin';
    const speakingLength = violin ? 0.328 : sortOf(name) === 'classical' ? 0.65 : 0.6477;
    const usual = { violin: 50, classical: 70, acoustic: 115, electric: 115 } as const;
    const notes = violin ? ['E5', 'A4', 'D4', 'G3'] : ['E4', 'B3', 'G3', 'D3', 'A2', 'E2'];
    for (const note of notes) {
      const frequency = noteFrequency(note);
      // Steel at E5 on a violin can't pull less than its thinnest wire does.
      const tension = note === 'E5' ? 72 : usual[sortOf(name) as keyof typeof usual];
      const wanted = { speakingLength, frequency, tension };
      const best = bestMatch({ ...wanted, drawer: family });
      expect(best, note).toBeDefined();
      if (!best) continue;
      expect(Math.abs(best.residual), note).toBeLessThan(0.12);
      expect(strainState(best.share)).not.toBe('broken');
      const { construction } = best;
      // Of the violin’s wound strings nothing but their weight is known.
      if (construction.kind === 'measured' && construction.axialStiffness === undefined) {
        expect(isWeighed(name)).toBe(true);
        continue;
      }
      const { push } = feelOf({
        construction: best.construction,
        speakingLength,
        frequency,
        fret: 12,
        rise: 50,
      });
      expect(push, note).toBeGreaterThan(0);
    }
  });
});

describe('what carries the pull', () => {
  it('is metal in all that is strung with steel, polymer in all that is made for nylon or gut', () => {
    for (const name of names) {
      const carrier = builtForOf(name) ? 'polymer' : 'metal';
      expect(new Set(families[name].map(carrierOf)), name).toEqual(new Set([carrier]));
    }
    expect(new Set(drawer.map(carrierOf))).toEqual(new Set(['metal']));
    expect(carrierOf(weighed)).toBe('unknown');
  });

  it('warns of metal on an instrument built for nylon or gut, and of nothing else', () => {
    for (const name of names) {
      for (const c of families[name]) {
        for (const soft of ['nylon', 'gut'] as const)
          expect(steelOnNylon(soft, c)).toBe(builtForOf(name) === undefined);
        expect(steelOnNylon('steel', c)).toBe(false);
      }
    }
    expect(steelOnNylon('nylon', weighed)).toBe(false);
  });
});

describe('the invented values', () => {
  it('give an acoustic guitar a sound set of twelves in standard tuning', () => {
    const set = [
      ['E4', 12],
      ['B3', 16],
      ['G3', 24],
      ['D3', 32],
      ['A2', 42],
      ['E2', 53],
    ] as const;
    const pulls = set.map(([note, gauge], i) => {
      const construction = families['acoustic, phosphor bronze'].find(
        (c) => Math.abs(thousandths(c.diameter) - gauge) < 1e-6 && (c.kind === 'plain') === i < 2,
      );
      expect(construction, note).toBeDefined();
      if (!construction) return NaN;
      const pull = tensionOf({
        speakingLength: 0.6477,
        frequency: noteFrequency(note),
        linearDensity: linearDensity(construction),
      });
      expect(strainState(strengthShare({ construction, tension: pull }))).toBe('sound');
      return pull;
    });
    expect(Math.max(...pulls) / Math.min(...pulls)).toBeLessThan(1.3);
  });

  it('make the weighed basses denser than nylon and lighter than their metal', () => {
    for (const c of families['classical, nylon']) {
      if (c.kind !== 'measured') continue;
      const density = c.linearDensity / ((Math.PI / 4) * c.diameter ** 2);
      expect(density).toBeGreaterThan(2000);
      expect(density).toBeLessThan(8890);
    }
  });
});
