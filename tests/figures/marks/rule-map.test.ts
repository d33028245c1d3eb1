/** The rule of thumb as a map: what every set does on every scale, worked out again cell by cell. */
import { describe, expect, test } from 'vitest';

import RuleMap from '../../../src/figures/choosing/rule-map/RuleMap.svelte';
import { formatDifference } from '../../../src/instrument/format.ts';
import { pullOf, pullsOf } from '../../../src/instrument/pulls.ts';
import { setsOf } from '../../../src/instrument/sets.ts';
import { fromInches } from '../../../src/physics/index.ts';
import { all, attribute, drawnWith, only, textOf } from './drawn.ts';
import { sheetOf, sheetsOf } from './sheet.ts';
import { stateOf } from './states.ts';

const read = (text: string): number => {
  const [, sign, whole, half] = /^([+−]?)(\d*)(½?)/.exec(text) ?? [];
  return (sign === '−' ? -1 : 1) * (Number(whole || 0) + (half ? 0.5 : 0));
};

describe.each(['redshank', 'avocet', 'curlew'])('%s', (id) => {
  const state = stateOf(id);
  const found = drawnWith(state, RuleMap);
  const table = only(all(found.root, (e) => attribute(e, 'role') === 'grid'));
  const [head, ...rows] = all(table, (e) => e.tagName === 'tr');
  const columns = head
    ? all(head, (e) => e.tagName === 'th')
        .slice(1)
        .map((e) => read(textOf(e)))
    : [];
  const own = pullsOf(state.mine);
  const sets = setsOf(state.mine.strings[0]?.family);
  const cellsOf = (row: (typeof rows)[number]) => all(row, (e) => e.tagName === 'td');
  const nameOf = (row: (typeof rows)[number]): string =>
    textOf(
      only(
        all(
          row,
          (e) =>
            attribute(e, 'className') === 'name' || attribute(e, 'className').startsWith('name '),
        ),
      ),
    );
  const inside = rows.map((row) =>
    cellsOf(row).map((cell) => attribute(cell, 'ariaLabel').includes('every string within')),
  );

  test('every cell has the mean of its strings, and says what a hand makes of it', () => {
    expect(rows.length).toBeGreaterThan(2);
    for (const row of rows) {
      const set = sets.find(
        ({ name, gauges }) => name.endsWith(nameOf(row)) && gauges.length === own.length,
      );
      if (!set) throw new Error(`no set ${nameOf(row)}`);
      cellsOf(row).forEach((cell, c) => {
        const pulls = own.map((p, i) => {
          const gauge = set.gauges[i];
          if (!gauge) throw new Error('no gauge');
          const speakingLength = p.speakingLength + fromInches(columns[c] ?? NaN);
          return pullOf({ gauge, note: p.note, a4: state.mine.a4, speakingLength });
        });
        const off = pulls.map((p, i) => p.tension / (own[i]?.tension ?? NaN) - 1);
        const mean = off.reduce((sum, d) => sum + d, 0) / off.length;
        const said = attribute(cell, 'ariaLabel');
        if (pulls.some((p) => p.strain === 'broken')) expect(said).toBe('breaks');
        else {
          const percent = Math.round(100 * mean);
          const number = `${percent > 0 ? '+' : percent < 0 ? '−' : ''}${Math.abs(percent)}`;
          expect(textOf(cell).trim()).toBe(number);
          const worst = Math.max(...off.map(Math.abs));
          // A difference right on the line is the module's to judge.
          if (Math.abs(worst - 0.07) > 1e-6)
            expect(said.includes('every string within')).toBe(worst < 0.07);
        }
      });
    }
  });

  test('the rule runs half a step to the inch, and the outline runs between what is within and what is not', () => {
    const overlay = all(
      found.root,
      (e) =>
        e.tagName === 'svg' &&
        attribute(e, 'viewBox').endsWith(` ${rows.length}`) &&
        attribute(e, 'ariaHidden') !== '',
    );
    expect(overlay).toHaveLength(2);
    overlay.forEach((svg, which) => {
      const step = which === 0 ? 0.5 : 1;
      const sheet = sheetOf(found.root, svg);
      const steps = rows.map((row) => {
        const text = textOf(only(all(row, (e) => attribute(e, 'className').startsWith('steps'))));
        return text === 'home' ? 0 : read(text);
      });
      for (const [part, inches] of [
        ['rule-inch', 1],
        ['rule-far', 1.5],
      ] as const)
        sheet.one(`path[${part}]`).lines[0]?.forEach(([x, y], i) => {
          expect([x, y]).toEqual([expect.closeTo(-2 * (steps[i] ?? NaN) * inches, 9), i + 0.5]);
        });
      const shown = columns.flatMap((by, c) => (Number.isInteger(by / step) ? [{ by, c }] : []));
      const is = (r: number, k: number): boolean => inside[r]?.[shown[k]?.c ?? -1] ?? false;
      const edges = new Set<string>();
      const edge = (...at: number[]) => edges.add(at.map((n) => n.toFixed(2)).join(' '));
      rows.forEach((_, r) =>
        shown.forEach(({ by }, k) => {
          if (!is(r, k)) return;
          const [left, right] = [by - step / 2, by + step / 2];
          if (!is(r - 1, k)) edge(left, r, right, r);
          if (!is(r + 1, k)) edge(left, r + 1, right, r + 1);
          if (!is(r, k - 1)) edge(left, r, left, r + 1);
          if (!is(r, k + 1)) edge(right, r, right, r + 1);
        }),
      );
      const drawn = sheet
        .of('path[rule-outlined]')
        .flatMap((m) =>
          m.lines.map(([a, b]) => [...(a ?? []), ...(b ?? [])].map((n) => n.toFixed(2)).join(' ')),
        );
      expect(new Set(drawn)).toEqual(edges);
      expect(edges.size > 0).toBe(id !== 'curlew');
    });
  });

  test('the strings of the chosen cell stand on a rule in per cent', () => {
    const sheet = only(sheetsOf(found));
    const [chosen] = rows.flatMap((row) =>
      cellsOf(row).flatMap((cell, column) =>
        attribute(cell, 'ariaSelected') === 'true' ? [{ row, column }] : [],
      ),
    );
    if (!chosen) throw new Error('no cell is chosen');
    const set = sets.find(
      ({ name, gauges }) => name.endsWith(nameOf(chosen.row)) && gauges.length === own.length,
    );
    const off = own.map((p, i) => {
      const gauge = set?.gauges[i] ?? p.gauge;
      const speakingLength = p.speakingLength + fromInches(columns[chosen.column] ?? NaN);
      return (
        pullOf({ gauge, note: p.note, a4: state.mine.a4, speakingLength }).tension / p.tension - 1
      );
    });
    const marks = sheet.of('path.mark')[0]?.lines ?? [];
    expect(marks.map(([from]) => from)).toEqual(
      off.map((d, i) => [expect.closeTo(Math.max(-30, Math.min(30, 100 * d)), 2), i + 0.5]),
    );
    const band = sheet.one('rect.felt');
    expect([band.left, band.right]).toEqual([-7, 7]);
    expect(sheet.one('path.outer').lines.map((l) => l[0]?.[0])).toEqual([-21, 21]);
    const told = all(found.root, (e) => attribute(e, 'className').startsWith('numbers')).flatMap(
      (ul) => all(ul, (e) => e.tagName === 'li').map((li) => textOf(li).trim()),
    );
    expect(told).toEqual(off.map(formatDifference));
  });
});

test('where no family of sets has so many strings, the workshop’s six-string stands in, and says so', () => {
  expect(drawnWith(stateOf('lapwing'), RuleMap).html).toMatch(
    /drawn for the workshop’s six-string/,
  );
});
