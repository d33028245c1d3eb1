import { describe, expect, it } from 'vitest';

import { adviceFor } from '../../src/instrument/advice.ts';
import { withPicks } from '../../src/instrument/edit.ts';
import { parseOn, withOn } from '../../src/instrument/on-text.ts';
import { planOf } from '../../src/instrument/plan.ts';
import type { State, Target } from '../../src/instrument/schema.ts';
import { initialState } from '../../src/instrument/workshop.ts';

/** Whimbrel, strung with what is typed, or with what the drawer offers. */
function strung(on: string, { pick, ...more }: Partial<Target> & { pick?: string } = {}): State {
  const gauges = (text: string) => {
    const read = parseOn(text, initialState.other);
    return read.ok ? read.value : [];
  };
  const other = withOn({ ...initialState.other, ...more }, gauges(on));
  return { ...initialState, other: pick ? withPicks(other, gauges(pick)) : other };
}
const advice = (state: State) => adviceFor(state, planOf(state));
const line = (state: State, what: string) =>
  advice(state).checks.find((check) => check.what === what)?.why;
const tens = '10 13 17 26 36 46';

describe('the checklist', () => {
  it('asks for nothing at a fret where there are none, and keeps a bowed one’s bridge upright', () => {
    const without = strung('', { fretless: true });
    for (const { why } of advice(without).checks) expect(why).not.toMatch(/twelfth|fretted|saddle/);
    expect(line(without, 'Action')).toMatch(/end of the board/);
    expect(line(without, 'Intonation')).toMatch(/finger or your bar/);
    expect(line(strung('', { fretless: true, bridge: 'standing' }), 'Intonation')).not.toMatch(
      /octave/,
    );
    expect(line(without, 'Bridge')).toMatch(/If it floats on springs/);
    expect(line(strung('', { fretless: true, bowed: true }), 'Bridge')).toMatch(/one at a time/);
    expect(line(strung(''), 'Action')).toMatch(/twelfth fret/);
    expect(line(strung(''), 'Intonation')).toMatch(/fretted/);
  });

  it('never compares with another guitar', () => {
    for (const state of [
      strung(''),
      strung('9 11 16 24 32 42'),
      strung(tens, { bridge: 'sprung' }),
    ])
      expect(JSON.stringify(advice(state))).not.toContain('Redshank');
  });

  it('names the slots that are too narrow, and those that are too wide, and no others', () => {
    expect(line(strung('9 13 17 26 36 46', { pick: '10 13 17 26 36 40' }), 'Nut slots')).toMatch(
      /^String 1 is thicker .* String 6 is much thinner/,
    );
    expect(line(strung(tens, { pick: tens }), 'Nut slots')).toBeUndefined();
    expect(line(strung('10 13 17 26 36 ?', { pick: tens }), 'Nut slots')).toBeUndefined();
    expect(line(strung(''), 'Nut slots')).toMatch(/pinches/);
  });

  it('speaks of post and ball end only where a string is thicker than any that is on', () => {
    expect(line(strung(tens, { pick: '10 13 17 26 36 52' }), 'Post and ball end')).toMatch(
      /^String 6 is thicker than any/,
    );
    expect(line(strung(tens, { pick: '11 14 18 28 38 46' }), 'Post and ball end')).toBeUndefined();
    expect(line(strung('', { pick: '10 13 17 26 36 52' }), 'Post and ball end')).toBeUndefined();
  });

  it('says what the neck carries against what it carries now', () => {
    expect(line(strung('9 11 16 24 32 42', { pick: tens }), 'Relief')).toMatch(
      /pull \d\d.% more than what is on it now/u,
    );
    expect(line(strung(tens, { pick: '9 11 16 24 32 42' }), 'Relief')).toMatch(
      /less than what is on it now/,
    );
    expect(line(strung(tens, { pick: tens }), 'Relief')).toMatch(/as much as what is on it now/);
    expect(line(strung('10 13 17 26 36 ?', { pick: tens }), 'Relief')).toMatch(
      /^A new set changes/,
    );
  });

  it('has the lines of the bridge that it has, and of no other', () => {
    const all = (bridge: Target['bridge']) =>
      advice(strung(tens, { bridge })).checks.map(({ what }) => what);
    expect(all('sprung')).toContain('Springs');
    for (const bridge of ['saddles', 'glued', 'standing'] as const)
      expect(all(bridge)).not.toContain('Springs');
    expect(all('standing')).toContain('Bridge');
    expect(all('glued')).not.toContain('Bridge');
    expect(line(strung(tens, { bridge: 'glued' }), 'Intonation')).toMatch(/stays where it is/);
  });

  it('brings the lengths beyond where the job has them and the bend counts', () => {
    const beyond = { nut: 0.06, saddle: 0.04 };
    const state = strung(tens, { beyond });
    expect(line(state, 'Beyond nut and saddle')).toBeUndefined();
    const bent = { ...state, bend: { ...state.bend, shown: true } };
    expect(line(bent, 'Beyond nut and saddle')).toMatch(/up to \d+.% further/u);
    const held = { ...bent, other: { ...bent.other, beyond: { nut: 0, saddle: 0 } } };
    expect(line(held, 'Beyond nut and saddle')).toMatch(/up to 0.% further/u);
  });

  it('asks for the maker’s word where the load grows, a string is tuned up, or nobody knows', () => {
    const asks = (state: State) => advice(state).cautions.some((text) => text.includes('maker'));
    expect(asks(strung('9 11 16 24 32 42', { pick: tens }))).toBe(true);
    expect(asks(strung(tens, { pick: '9 11 16 24 32 42' }))).toBe(false);
    expect(asks(strung('', { pick: tens }))).toBe(true);
    const lower = strung(tens, { pick: '9 11 16 24 32 42' });
    const slack = lower.other.strings.map((s, i) =>
      i === 5 && s.on ? { ...s, on: { ...s.on, note: 'D2' } } : s,
    );
    expect(asks({ ...lower, other: { ...lower.other, strings: slack } })).toBe(true);
  });
});
