/** Two necks from one nut line, and each string's difference on a rule in per cent. */
import { describe, expect, test } from 'vitest';

import TwoNecks from '../../../src/figures/choosing/two-necks/TwoNecks.svelte';
import { formatLength } from '../../../src/instrument/format.ts';
import { compared, comparedPlan } from '../../../src/instrument/pair.ts';
import { pullOf, pullsOf } from '../../../src/instrument/pulls.ts';
import { stringScale } from '../../../src/physics/index.ts';
import { all, attribute, drawnWith, marks, only, textOf } from './drawn.ts';
import { fieldsOf, knobsOf, sheetsOf } from './sheet.ts';
import { three, trying } from './states.ts';

const percent = (text: string): number => {
  if (!text.endsWith('%')) throw new Error(`"${text}" is no share`);
  return Number.parseFloat(text);
};

describe.each(three)('%s', (id) => {
  const still = trying(id, {});
  const mineTreble = still.mine.scale.treble * 0.98;
  const otherTreble = compared(still).other.scale.treble * 1.02;
  const state = trying(id, { 'scale-mine': mineTreble, 'scale-other': otherTreble });
  const { mine, other } = compared(state);
  const found = drawnWith(state, TwoNecks);

  test('both dimensions begin at the nut and end in the handles, in one scale', () => {
    const [first, second] = marks(found.root, 'line.dimension');
    if (!first || !second) throw new Error('two dimensions');
    const at = (name: 'x1' | 'x2', of: typeof first): number => percent(attribute(of, name));
    const nut = at('x1', first);
    expect(at('x1', second)).toBe(nut);
    const perMetre = (at('x2', first) - nut) / mineTreble;
    expect((at('x2', second) - nut) / perMetre).toBeCloseTo(otherTreble, 4);
    const knobs = knobsOf(found.root, 100);
    expect(knobs.map((k) => k.x)).toEqual([
      expect.closeTo(at('x2', first), 2),
      expect.closeTo(at('x2', second), 2),
    ]);
    expect(knobs.map((k) => k.text)).toEqual([
      formatLength(mineTreble, 'in-lb'),
      formatLength(otherTreble, 'in-lb'),
    ]);
    const between = only(marks(found.root, 'line.between'));
    expect([at('x1', between), at('x2', between)]).toEqual([at('x2', first), at('x2', second)]);
    const by = textOf(only(marks(found.root, 'text.by')));
    expect(by).toBe(`+${formatLength(otherTreble - mineTreble, 'in-lb')}`);
    const fields = fieldsOf(found);
    expect(fields[`Feels right: ${mine.name}`]).toBe(formatLength(mineTreble, 'in-lb'));
    expect(fields['Scale length, to be strung']).toBe(formatLength(otherTreble, 'in-lb'));
  });

  test('rings stand where the old set pulls on the other, dots where its nearest gauges do', () => {
    const own = pullsOf(mine);
    const count = own.length;
    const on = (gauge: Parameters<typeof pullOf>[0]['gauge'], i: number): number =>
      pullOf({
        gauge,
        note: other.strings[i]?.note ?? '',
        a4: other.a4,
        speakingLength: stringScale({ ...other.scale, index: i, count }),
      }).tension /
        (own[i]?.tension ?? NaN) -
      1;
    const held = (difference: number): number => Math.max(-28, Math.min(28, 100 * difference));
    const sheet = only(sheetsOf(found));
    const dots = (part: string): unknown[] =>
      sheet.of(`path[${part}]`)[0]?.lines.map(([p]) => p) ?? [];
    expect(dots('pair-rings')).toEqual(
      own.map((p, i) => [expect.closeTo(held(on(p.gauge, i)), 2), i + 0.5]),
    );
    const picks = comparedPlan(state).strings.map((s) => s.pull?.gauge);
    expect(dots('pair-dots')).toEqual(
      picks.map((gauge, i) => [expect.closeTo(held(gauge ? on(gauge, i) : NaN), 2), i + 0.5]),
    );
    // No other gauge of its kind in the same drawer would come nearer: each dot is nearer than its ring, or is the ring.
    picks.forEach((gauge, i) => {
      const old = own[i]?.gauge;
      if (gauge && old && gauge.kind === old.kind)
        expect(Math.abs(on(gauge, i))).toBeLessThanOrEqual(Math.abs(on(old, i)) + 1e-9);
    });
    const band = sheet.one('rect[pair-band]');
    expect([band.left, band.right]).toEqual([-7, 7]);
    expect(sheet.one('path[pair-outer]').lines.map((l) => l[0]?.[0])).toEqual([-21, 21]);
    // The words above the rule stand at its lines.
    const lettered = all(
      found.root,
      (e) => /left:/.test(attribute(e, 'style')) && textOf(e).trim() !== '',
    );
    const ticks = lettered.flatMap((e) => {
      const value = Number(
        textOf(e)
          .replace('−', '-')
          .replace(/\u00a0%/, ''),
      );
      return Number.isFinite(value)
        ? [[value, Number(/left:\s*([\d.]+)%/.exec(attribute(e, 'style'))?.[1])]]
        : [];
    });
    expect(ticks).toHaveLength(4);
    for (const [value, at] of ticks) expect(((at ?? NaN) - 50) * 0.64).toBeCloseTo(value ?? NaN, 6);
  });
});
