/** How good the rule of thumb is: every family of sets on every scale, against the reader's own pulls. */
import { pullOf, pullsOf, type Pull } from '../../../instrument/pulls.ts';
import { limits } from '../../../instrument/limits.ts';
import type { Gauge, Instrument } from '../../../instrument/schema.ts';
import { workshopInstrument } from '../../../instrument/workshop.ts';
import { setsOf, type StringSet } from '../../../instrument/sets.ts';
import { hand } from '../../../instrument/hand.svelte.ts';
import { felt, fromInches } from '../../../physics/index.ts';

/** Differences of scale in inches. */
const COLUMNS: readonly number[] = Array.from({ length: 19 }, (_, i) => -4 + i / 2);
/** With fewer families than this there is no step to speak of. */
const FEWEST_FAMILIES = 3;
const STAND_IN = 'redshank';

export interface MapRow {
  readonly set: StringSet;
  readonly top: Gauge;
  /** Steps of set from the home row, in thousandths of the top string; undefined where that is not a plain one. */
  readonly steps: number | undefined;
}

/** within: every string within the inner line; average: only their mean; off: neither; broken: a string would break. */
export type CellState = 'within' | 'average' | 'off' | 'broken';

export interface MapCell {
  /** Difference of scale, in */
  readonly by: number;
  /** Relative difference of each string from the reader's own; undefined where it would break */
  readonly residuals: readonly (number | undefined)[];
  readonly mean: number;
  /** The farthest from zero, and the string that it belongs to */
  readonly worst: number;
  readonly worstString: number;
  readonly state: CellState;
}

export interface RuleMapData {
  /** Whose pulls are kept: the reader's instrument, or the workshop's when no sets are sold for the reader's */
  readonly instrument: Instrument;
  readonly standsIn: boolean;
  readonly columns: readonly number[];
  readonly rows: readonly MapRow[];
  readonly cells: readonly (readonly MapCell[])[];
  /** Row of the set that is nearest to the reader's strings, and whether it is the very same */
  readonly home: number;
  readonly exact: boolean;
}

const topOf = (set: StringSet): Gauge => set.gauges[0] ?? { kind: 'plain', gauge: 10 };
const mean = (values: readonly number[]): number =>
  values.reduce((sum, v) => sum + v, 0) / Math.max(1, values.length);

const strung = (
  set: StringSet,
  own: readonly Pull[],
  a4: number,
  longer: number,
): readonly Pull[] =>
  own.flatMap(({ note, speakingLength }, i) => {
    const gauge = set.gauges[i];
    return gauge ? [pullOf({ gauge, note, a4, speakingLength: speakingLength + longer })] : [];
  });

/** How differently from the reader's strings a set is graded: the spread of its strings' ratios, whatever its weight. */
function gradingDistance(pulls: readonly Pull[], own: readonly Pull[]): number {
  const logs = pulls.map((p, i) => Math.log(p.tension / (own[i]?.tension ?? p.tension)));
  const middle = mean(logs);
  return mean(logs.map((l) => (l - middle) ** 2));
}

/** One set for each top string, from light to heavy: of several, the one graded most like the reader's. */
function families({ strings, a4 }: Instrument, own: readonly Pull[]): readonly StringSet[] {
  const best = new Map<number, { set: StringSet; distance: number }>();
  const sets = setsOf(strings[0]?.family);
  for (const set of sets.filter((s) => s.gauges.length === strings.length)) {
    const distance = gradingDistance(strung(set, own, a4, 0), own);
    const { gauge } = topOf(set);
    if (distance < (best.get(gauge)?.distance ?? Infinity)) best.set(gauge, { set, distance });
  }
  return [...best.values()].map(({ set }) => set).sort((a, b) => topOf(a).gauge - topOf(b).gauge);
}

export function cellOf(pulls: readonly Pull[], own: readonly Pull[], by: number): MapCell {
  const differences = pulls.map((p, i) => p.tension / (own[i]?.tension ?? p.tension) - 1);
  const worst = differences.reduce((most, d) => (Math.abs(d) > Math.abs(most) ? d : most), 0);
  const average = mean(differences);
  const broken = pulls.map((p) => p.strain === 'broken');
  const inside = (d: number): boolean =>
    felt(d, 'pull', hand.thresholds.pull) === 'you’d be guessing';
  return {
    by,
    residuals: differences.map((d, i) => (broken[i] ? undefined : d)),
    mean: average,
    worst,
    worstString: Math.max(0, differences.indexOf(worst)),
    state: broken.includes(true)
      ? 'broken'
      : inside(worst)
        ? 'within'
        : inside(average)
          ? 'average'
          : 'off',
  };
}

const same = (set: StringSet, { strings }: Instrument): boolean =>
  set.gauges.every(
    ({ kind, gauge }, i) =>
      strings[i]?.kind === kind && strings[i].gauge === gauge && !strings[i].unitWeight,
  );

/** The map for an instrument whose own strings hold. */
function drawn(instrument: Instrument, standsIn: boolean): RuleMapData | undefined {
  const own = pullsOf(instrument);
  const list = families(instrument, own);
  if (list.length < FEWEST_FAMILIES) return undefined;
  const fits = (length: number): boolean =>
    length >= limits.scale.min && length <= limits.scale.max;
  const { treble, bass } = instrument.scale;
  const columns = COLUMNS.filter(
    (by) => fits(treble + fromInches(by)) && fits(bass + fromInches(by)),
  );
  const cells = list.map((set) =>
    columns.map((by) => cellOf(strung(set, own, instrument.a4, fromInches(by)), own, by)),
  );
  const unevenness = (set: StringSet): number =>
    mean(
      strung(set, own, instrument.a4, 0).map(
        (p, i) => (p.tension / (own[i]?.tension ?? p.tension) - 1) ** 2,
      ),
    );
  const home = list.reduce(
    (best, set, i) => (unevenness(set) < unevenness(list[best] ?? set) ? i : best),
    0,
  );
  const homeSet = list[home];
  const homeTop = homeSet && topOf(homeSet);
  const rows = list.map((set) => {
    const top = topOf(set);
    const plain = top.kind === 'plain' && homeTop?.kind === 'plain';
    return { set, top, steps: plain ? top.gauge - homeTop.gauge : undefined };
  });
  const exact = homeSet !== undefined && same(homeSet, instrument);
  return { instrument, standsIn, columns, rows, cells, home, exact };
}

/** The map for the reader's instrument, or for the workshop's six-string where no family of sets has its strings. */
export function ruleMapOf(mine: Instrument): RuleMapData {
  const map = drawn(mine, false) ?? drawn(workshopInstrument(STAND_IN), true);
  if (!map) throw new RangeError(`sets for ${STAND_IN} are missing from the data`);
  return map;
}

/** The cell that the rule names first: half a step lighter for an inch more; the home cell where there is no half step. */
export function ruleCell({ rows, columns, home }: RuleMapData): { row: number; column: number } {
  const lighter = rows.findIndex((r) => r.steps === -0.5);
  const by = lighter < 0 ? 0 : 1;
  return {
    row: lighter < 0 ? home : lighter,
    column: Math.max(
      0,
      columns.findIndex((c) => c === by),
    ),
  };
}
