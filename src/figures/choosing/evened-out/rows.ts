/** Three rows of the same notes: on the parallel board, on the slanting one with the same set, and there with gauges picked anew. */
import { readBoard, spreadOf, type Spread } from '../../../instrument/board.ts';
import { drawerOf, gaugeOf, physicalKind } from '../../../instrument/drawer.ts';
import { once } from '../../../instrument/once.ts';
import { pullOf, type Pull } from '../../../instrument/pulls.ts';
import type { State } from '../../../instrument/schema.ts';
import { nearestPull } from '../../../physics/index.ts';

export interface Row {
  readonly id: 'parallel' | 'slanting' | 'picked';
  readonly title: string;
  readonly pulls: readonly Pull[];
  readonly spread: Spread;
}

/** The drawer's gauge of its own kind that pulls nearest to `wanted` N, for each string; its own where the drawer has none that holds. */
const evenSet = (pulls: readonly Pull[], wanted: number, a4: number): readonly Pull[] =>
  pulls.map((pull) => {
    const { gauge, note, speakingLength, frequency } = pull;
    const match = nearestPull({
      speakingLength,
      frequency,
      tension: wanted,
      kind: physicalKind(gauge.kind, gauge.family),
      drawer: drawerOf(gauge.family).constructions,
    });
    if (!match) return pull;
    return pullOf({
      gauge: gaugeOf(match.construction, gauge.family),
      note,
      a4,
      speakingLength,
    });
  });

const row = (id: Row['id'], title: string, pulls: readonly Pull[]): Row => ({
  id,
  title,
  pulls,
  spread: spreadOf(pulls),
});

/** The set as it is, on either board. */
export const hungOf = once((state: State): readonly [parallel: Row, slanting: Row] => {
  const { parallel, slanting } = readBoard(state);
  return [
    row('parallel', 'Parallel, the set as it is', parallel),
    row('slanting', 'Slanting, the same set', slanting),
  ];
});

/** Gauges chosen anew for the slanting board. The set is kept as heavy as it was: what is aimed at is its mean on the parallel board. */
export const pickedOf = once((state: State): Row => {
  const [parallel, slanting] = hungOf(state);
  const picked = evenSet(slanting.pulls, parallel.spread.mean, state.mine.a4);
  return row('picked', 'Slanting, gauges chosen for one pull', picked);
});

export const rowsOf = (state: State): readonly Row[] => [...hungOf(state), pickedOf(state)];
