import { describe, expect, it } from 'vitest';

import { gauges } from '../../src/instrument/drawer.ts';
import { parseA4, parseNote } from '../../src/instrument/parse.ts';
import { parseGauge } from '../../src/instrument/parse-gauge.ts';

describe('parseNote', () => {
  it.each([
    ['E4', 'E4'],
    [' e4 ', 'E4'],
    ['c#3', 'C#3'],
    ['C♯3', 'C#3'],
    ['bb1', 'Bb1'],
    ['B♭ 1', 'Bb1'],
    ['b1', 'B1'],
    ['C0', 'C0'],
    ['C7', 'C7'],
    ['B#6', 'B#6'],
  ])('spells “%s” as %s', (text, note) => {
    expect(parseNote(text)).toEqual({ ok: true, value: note });
  });

  it.each(['Cb0', 'C#7', 'E9', 'B#7'])('refuses %s with the range', (text) => {
    expect(parseNote(text)).toEqual({ ok: false, message: 'Notes from C0 to C7.' });
  });

  it.each(['', 'H4', 'E', '4', 'E44', 'C##3', 'Do3'])(
    'says how a note is written: “%s”',
    (text) => {
      const parsed = parseNote(text);
      expect(parsed.ok ? '' : parsed.message).toMatch(/^A note is a letter A to G/);
    },
  );
});

describe('parseA4', () => {
  it.each([
    ['440', 440],
    ['432 Hz', 432],
    ['442,5 hz', 442.5],
    ['380', 380],
    ['480', 480],
  ])('reads %s', (text, hertz) => {
    expect(parseA4(text)).toEqual({ ok: true, value: hertz });
  });

  it.each(['', 'high', '379.9', '481', '440 kHz', '-440'])(
    'refuses “%s” with the range',
    (text) => {
      expect(parseA4(text)).toEqual({ ok: false, message: 'A4 from 380 to 480 Hz.' });
    },
  );
});

describe('parseGauge', () => {
  it.each([
    ['10', 'plain', 'plain', 10],
    ['.010', 'plain', 'plain', 10],
    ['0,0095', 'plain', 'plain', 9.5],
    ['9½', 'plain', 'plain', 9.5],
    ['46', 'wound', 'wound', 46],
    ['46w', 'plain', 'wound', 46],
    ['.046 wound', 'plain', 'wound', 46],
    ['20 p', 'wound', 'plain', 20],
    ['20 plain', 'wound', 'plain', 20],
    ['.145', 'wound', 'wound', 145],
  ] as const)('reads “%s” where a %s one is asked', (text, asked, kind, gauge) => {
    expect(parseGauge(text, asked)).toEqual({ ok: true, value: { kind, gauge } });
  });

  it('reads every gauge of the drawer', () => {
    for (const kind of ['plain', 'wound'] as const) {
      for (const gauge of gauges[kind]) {
        expect(parseGauge(String(gauge), kind)).toEqual({ ok: true, value: { kind, gauge } });
        expect(parseGauge(`${gauge / 1000} ${kind}`, kind)).toEqual({
          ok: true,
          value: { kind, gauge },
        });
      }
    }
  });

  it.each([
    ['46', 'plain', 'Plain strings here go from 5 to 36.', '46 wound'],
    ['10w', 'plain', 'Wound strings here go from 15 to 195.', '10 plain'],
    ['400', 'plain', 'Plain strings here go from 5 to 36.', undefined],
  ] as const)(
    'offers the other kind for %s %s, where there is one',
    (text, kind, message, offer) => {
      expect(parseGauge(text, kind)).toEqual({ ok: false, message, ...(offer && { offer }) });
    },
  );

  it.each([
    ['0.25 mm', 'plain', 10],
    ['0,33 mm', 'plain', 13],
    ['1.17 mm w', 'wound', 46],
    ['.010 in', 'plain', 10],
    ['0.046" wound', 'wound', 46],
  ] as const)('takes a gauge with its unit: “%s”', (text, kind, gauge) => {
    expect(parseGauge(text, 'plain')).toEqual({ ok: true, value: { kind, gauge } });
  });

  it.each([
    ['10.2', 10.2],
    ['.021', 21],
    ['0.6 mm', 23.62],
  ] as const)('takes a gauge that no drawer holds: “%s”', (text, gauge) => {
    expect(parseGauge(text, 'plain')).toEqual({ ok: true, value: { kind: 'plain', gauge } });
  });

  it('says what there is where a gauge in mm is none of it', () => {
    const parsed = parseGauge('10 mm', 'plain');
    expect(parsed.ok ? '' : parsed.message).toBe('Plain strings here go from 5 to 36.');
  });

  it.each(['', 'thin', '10 yd'])('says how a gauge is written: “%s”', (text) => {
    expect(parseGauge(text, 'plain')).toEqual({
      ok: false,
      message: 'Type a gauge in thousandths, such as 10, .010 or 46w, or in mm.',
    });
  });
});
