import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

import {
  onText,
  parseBeyond,
  parseOn,
  parseTunedTo,
  withOn,
  withTunedTo,
} from '../../src/instrument/on-text.ts';
import type { Gauge } from '../../src/instrument/schema.ts';
import { setsOf } from '../../src/instrument/sets.ts';
import { families } from '../../src/instrument/families.ts';
import {
  asTarget,
  initialState,
  workshop,
  workshopInstrument,
} from '../../src/instrument/workshop.ts';

const whimbrel = initialState.other;
const read = (text: string, target = whimbrel): string => {
  const parsed = parseOn(text, target);
  return parsed.ok ? onText(withOn(target, parsed.value)) : parsed.message;
};

describe('what is on it now', () => {
  it.each([
    ['10 13 17 26 36 46', '10 13 17 26w 36w 46w'],
    ['10-13-17-26-36-46', '10 13 17 26w 36w 46w'],
    ['.010, .013, .017, .026w, .036, .046', '10 13 17 26w 36w 46w'],
    ['10,13,17,26,36,46', '10 13 17 26w 36w 46w'],
    ['9,5 12 16 26 w 36 wound ?', '9.5 12 16 26w 36w ?'],
    ['9.5 12 20p 24w 34 44', '9.5 12 20 24w 34w 44w'],
    ['? ? ? ? ? 46', '? ? ? ? ? 46w'],
    ['', ''],
  ])('is read from %j', (text, shown) => {
    expect(read(text)).toBe(shown);
  });

  it.each([
    ['10 13 17', /Type 6 gauges.*You typed 3/],
    ['10 13 17 26 36 rope', /String 6, “rope”: Type a gauge/],
    ['10 13 17 26 36 900', /String 6, “900”: Wound strings here go from/],
  ])('that can’t be read, %j, gets a sentence', (text, words) => {
    expect(read(text)).toMatch(words);
  });

  it('reads back as it is shown, for every set of the trade', () => {
    for (const instrument of workshop) {
      const target = asTarget(instrument);
      for (const family of [undefined, ...(Object.keys(families) as (keyof typeof families)[])])
        for (const { gauges } of setsOf(family).filter(
          (s) => s.gauges.length === target.strings.length,
        )) {
          const on = withOn({ ...target, family }, gauges);
          expect(read(onText(on), { ...target, family })).toBe(onText(on));
        }
    }
  });

  it('of every instrument of the workshop is told without its w', () => {
    for (const { id, strings } of workshop.filter(({ strings }) => strings.length === 6)) {
      const target = asTarget(workshopInstrument(id));
      const bare = strings.map(({ gauge }) => gauge).join(' ');
      const whole = onText(
        withOn(
          target,
          strings.map(({ kind, gauge }) => ({ kind, gauge })),
        ),
      );
      expect(read(bare, target), id).toBe(whole);
    }
  });

  it('is typed and shown in mm by metric readers, and what is left alone stays what it was', () => {
    const typed = parseOn('0.25 0.33 0.43 0.66 0.91 1.17', whimbrel, 'mm-kg');
    if (!typed.ok) throw new Error(typed.message);
    const on = withOn(whimbrel, typed.value);
    expect(onText(on)).toBe('10 13 17 26w 36w 46w');
    expect(onText(on, 'mm-kg')).toBe('0.25 0.33 0.43 0.66w 0.91w 1.17w');
    // 12.3 thousandths is 0.31 mm to the eye, and so is 12.2; a weight that is known is shown by no line.
    const between: Gauge[] = [
      { kind: 'plain', gauge: 10 },
      { kind: 'plain', gauge: 12.3 },
      { kind: 'plain', gauge: 17 },
      { kind: 'wound', gauge: 26, unitWeight: 0.0033 },
      { kind: 'wound', gauge: 36 },
      { kind: 'wound', gauge: 46 },
    ];
    const known = withOn(whimbrel, between);
    const again = parseOn(onText(known, 'mm-N').replace('0.25', '0.28'), known, 'mm-N');
    if (!again.ok) throw new Error(again.message);
    expect(again.value).toMatchObject([{ kind: 'plain', gauge: 11 }, ...between.slice(1)]);
  });

  it('keeps how it is tuned when its gauges are typed anew', () => {
    const on = withOn(whimbrel, setsOf()[0]?.gauges ?? []);
    const tuned = parseTunedTo('D4 A3 F3 C3 G2 D2', on);
    const down = withTunedTo(on, tuned.ok ? tuned.value : []);
    const again = parseOn('9 11 16 24 32 42', down);
    const next = withOn(down, again.ok ? again.value : []);
    expect(next.strings.map((s) => s.on?.note)).toEqual(['D4', 'A3', 'F3', 'C3', 'G2', 'D2']);
    expect(next.strings.map((s) => s.note)).toEqual(whimbrel.strings.map((s) => s.note));
    expect(parseTunedTo('E4 H3', on).ok).toBe(false);
    expect(parseTunedTo('E4', on).ok).toBe(false);
  });

  it('never throws', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        expect(typeof parseOn(text, whimbrel).ok).toBe('boolean');
        expect(typeof parseTunedTo(text, whimbrel).ok).toBe('boolean');
        expect(typeof parseBeyond(text, 'in-lb').ok).toBe('boolean');
      }),
    );
  });
});

describe('a length beyond nut or saddle', () => {
  it.each([
    ['42', 'in-lb', 0.042],
    ['1.5', 'in-lb', 0.0381],
    ['1.5', 'mm-N', 0.0015],
    ['42 mm', 'in-lb', 0.042],
    ['2 in', 'mm-kg', 0.0508],
    ['0', 'mm-N', 0],
  ] as const)('%s in %s', (text, units, metres) => {
    const parsed = parseBeyond(text, units);
    expect(parsed.ok && parsed.value).toBeCloseTo(metres, 9);
  });
  it('longer than half a metre is refused', () => {
    expect(parseBeyond('600 mm', 'mm-N').ok).toBe(false);
  });
});
