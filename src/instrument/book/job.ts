/** A job as the book keeps it: made from what stands on the bench, and set up there again. */
import '../bend-aims.ts';
import '../ceiling.ts';
import '../link-now.ts';
import { gaugeOf } from '../drawer.ts';
import { withPick } from '../edit.ts';
import type { Family } from '../family-names.ts';
import { pickedOf } from '../own-picks.ts';
import { planOf, type PlannedString } from '../plan.ts';
import {
  readAim,
  readBend,
  readDrawer,
  readInstrument,
  readPick,
  readTarget,
  type Gauge,
  type OwnDrawer,
  type State,
} from '../schema.ts';
import { canonical } from './merge.ts';
import type { FrozenPick, JobRecord } from './schema.ts';
import { withUnknown } from './unknown.ts';

/** What of a job the bench changes. */
export type BenchFields = Pick<
  JobRecord,
  'right' | 'other' | 'aim' | 'bend' | 'drawer' | 'picks' | 'picked'
>;
type Kept = Pick<JobRecord, 'right' | 'other' | 'aim' | 'bend' | 'drawer' | 'picks'>;

/** The picks as they stand, in numbers that no later drawer and no later physics move. */
export const frozenPicks = (state: State): FrozenPick[] =>
  planOf(state).strings.map(({ note, pull, best, wanted }) => ({
    note,
    best: best ? { ...gaugeOf(best.construction, state.other.family) } : null,
    gauge: pull ? { ...pull.gauge } : null,
    pull: pull && pull.strain !== 'broken' ? pull.tension : null,
    wanted,
  }));

/** What picks follow from: everything but names, and what is on it now unless its pull is the ceiling. */
const askedBy = ({ mine, other, aim, drawer }: State): string =>
  canonical([
    { ...mine, name: '' },
    {
      ...other,
      name: '',
      bridge: '',
      beyond: '',
      strings: other.strings.map((s) => [s.note, s.pick, aim.ceiling === 'now' ? s.on : '']),
    },
    aim,
    drawer?.from ?? '',
  ]);

/**
 * What the bench says of a job at that moment (ms since 1970). Of a job that is kept already, `before`, the picks move only where the
 * reader has changed what they follow from.
 */
export function benchFields(
  state: State,
  moment: number,
  before?: Kept & Pick<JobRecord, 'picked'>,
): BenchFields {
  const { mine, other, aim, bend } = state;
  const was = before && stateOf(before, state);
  const stands = was !== undefined && askedBy(was) === askedBy(state);
  const { picks, picked } =
    before && stands ? before : { picks: frozenPicks(state), picked: moment };
  return {
    right: withUnknown(before?.right, readInstrument(before?.right), mine),
    other: withUnknown(before?.other, readTarget(before?.other), other),
    aim: withUnknown(before?.aim, readAim(before?.aim), aim),
    bend: withUnknown(before?.bend, readBend(before?.bend), bend),
    drawer: keptDrawer(state),
    picks,
    picked,
  } as unknown as BenchFields;
}

/** Strings that lost change no pick: they stay in the reader's drawer. */
const keptDrawer = (state: State): OwnDrawer | null =>
  state.drawer ? { from: state.drawer.from, strings: pickedOf(state, [planOf(state)]) } : null;

/** What a job's picks come from; what stands on the bench where an earlier version has not kept it. */
const drawerOfJob = ({ drawer }: Kept, base: State): OwnDrawer | undefined =>
  drawer === undefined ? base.drawer : readDrawer(drawer);

/** A new job's name. */
export const jobName = ({ mine, other }: State): string =>
  `${other.name || 'To be strung'}, like ${mine.name || 'yours'}`;

const sameGauge = (a: Gauge | undefined, b: Gauge | undefined): boolean =>
  a?.kind === b?.kind &&
  a?.gauge === b?.gauge &&
  a?.family === b?.family &&
  a?.unitWeight === b?.unitWeight;

/**
 * The state that sets a job up on the bench, in the units of `base`; undefined where only a newer version can show it. A pick that
 * drawer or physics would now make otherwise is pinned as it was.
 */
export function stateOf(job: Kept, base: State): State | undefined {
  const [mine, other] = [readInstrument(job.right), readTarget(job.other)];
  if (!mine || !other) return undefined;
  const aim = readAim(job.aim) ?? base.aim;
  const bend = readBend(job.bend) ?? base.bend;
  const drawer = drawerOfJob(job, base);
  const state: State = { ...base, trial: { string: 0 }, mine, other, aim, bend, drawer };
  const today = planOf(state).strings;
  const pinned = job.picks.slice(0, other.strings.length).reduce((target, { gauge }, i) => {
    const pick = readPick(gauge);
    return pick && !sameGauge(pick, today[i]?.pull?.gauge) ? withPick(target, i, pick) : target;
  }, other);
  return pinned === other ? state : { ...state, other: pinned };
}

/** Where today's drawer and physics part from a pick that was kept, as the reader sees it; undefined where they agree. */
export interface Moved {
  /** What would be picked today, where that is another gauge */
  readonly gauge: Gauge | undefined;
  /** What the kept gauge pulls by today's physics, N, where that is another number */
  readonly pull: number | undefined;
}

/** Below this share no reader sees a change: pulls are shown to three digits. */
const SEEN = 0.002;

export function movedSince(
  pick: FrozenPick | undefined,
  today: PlannedString | undefined,
  family: Family | undefined,
): Moved | undefined {
  const kept = readPick(pick?.gauge);
  if (!pick || !kept || !today) return undefined;
  // What the drawer would have offered then and now: what the reader chose instead is the reader's.
  const was = readPick(pick.best);
  const best = today.best && gaugeOf(today.best.construction, family);
  const gauge = was && best && !sameGauge(best, was) ? best : undefined;
  const pull = today.pull && sameGauge(today.pull.gauge, kept) ? today.pull.tension : undefined;
  const apart = pick.pull !== null && pull !== undefined && Math.abs(pull / pick.pull - 1) > SEEN;
  return gauge || apart ? { gauge, pull: apart ? pull : undefined } : undefined;
}
