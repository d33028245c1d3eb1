/** A rule of the reader's own: so many inches of scale for half a step of set, where its line runs on the map and how it does. */
import { drawnRanges } from '../../../instrument/drawn.ts';
import type { MapCell, RuleMapData } from './rule-map.ts';

/** Where the line has its handle: the row that is nearest to a whole step from home, if the map has a line. */
export function gripRow({ rows }: Pick<RuleMapData, 'rows'>): number | undefined {
  const far = (steps: number | undefined): number => (steps ? Math.abs(Math.abs(steps) - 1) : 99);
  const best = rows.reduce((a, { steps }, i) => {
    const nearer = far(steps) < far(rows[a]?.steps);
    // Of two as near, towards the shorter scales: the guitar walks on the other side, with a ring of its own.
    const same = far(steps) === far(rows[a]?.steps) && (steps ?? 0) > 0;
    return nearer || same ? i : a;
  }, 0);
  return rows[best]?.steps ? best : undefined;
}

/** Inches along the map at which a rule has a set so many steps from home. */
export const alongRule = (rule: number, steps: number): number => -2 * steps * rule;

/** How far a rule may be drawn, in. */
export function ruleRange({ columns }: Pick<RuleMapData, 'columns'>, steps: number) {
  const { min, max } = drawnRanges.rule;
  const room = steps < 0 ? (columns.at(-1) ?? 0) : -(columns[0] ?? 0);
  return { min, max: Math.max(min, Math.min(max, room / (2 * Math.abs(steps)))) };
}

/** The set that a rule names for a scale so many inches longer: the nearest row; undefined where no row is counted in steps. */
export function rowByRule(
  { rows }: Pick<RuleMapData, 'rows'>,
  rule: number,
  by: number,
): number | undefined {
  const off = (i: number): number => {
    const steps = rows[i]?.steps;
    return steps === undefined ? Infinity : Math.abs(alongRule(rule, steps) - by);
  };
  const best = rows.reduce((a, _, i) => (off(i) < off(a) ? i : a), 0);
  return off(best) === Infinity ? undefined : best;
}

/** The cells through which a rule's line runs, home's left out: for each set the scale that the rule names, where the map has it. */
export function cellsOn(map: RuleMapData, rule: number): readonly MapCell[] {
  const [first = 0, last = 0] = [map.columns[0], map.columns.at(-1)];
  return map.rows.flatMap(({ steps }, r) => {
    if (!steps) return [];
    const by = alongRule(rule, steps);
    if (by < first - 0.25 || by > last + 0.25) return [];
    const column = map.columns.reduce(
      (a, c, i) => (Math.abs(c - by) < Math.abs((map.columns[a] ?? Infinity) - by) ? i : a),
      0,
    );
    return map.cells[r]?.[column] ?? [];
  });
}
