/** Five gauges for one note on one length, from a fifth thinner than the string in hand to a fifth thicker. */
import { nearestGauge } from '../../instrument/drawer.ts';
import { pullOf, type Pull } from '../../instrument/pulls.ts';
import type { State } from '../../instrument/schema.ts';
import { pushedTo, type Pushed } from '../../instrument/pushed.ts';
import { triedOf } from '../trial.ts';

const SHARES = [0.8, 0.9, 1, 1.1, 1.2] as const;

export interface Bent {
  readonly pull: Pull;
  readonly own: boolean;
  /** Undefined where the stretch is not known */
  readonly pushed: Pushed | undefined;
}

/** The gauges of the drawer around the one in hand, thin to thick; fewer where the drawer is sparse. */
export function gaugesAround(state: State): readonly number[] {
  const { kind, gauge, family } = triedOf(state).tried.gauge;
  const near = SHARES.map((share) =>
    share === 1 ? gauge : nearestGauge(kind, gauge * share, family),
  );
  return [...new Set(near)].toSorted((a, b) => a - b);
}

/** Each bent at the chosen fret by the chosen rise. */
export function fiveBent(state: State): readonly Bent[] {
  const { tried } = triedOf(state);
  const { fret, rise } = state.bend;
  return gaugesAround(state).map((gauge) => {
    const own = gauge === tried.gauge.gauge;
    const { kind, family } = tried.gauge;
    const pull = own
      ? tried
      : pullOf({
          gauge: { kind, gauge, ...(family && { family }) },
          note: tried.note,
          a4: state.mine.a4,
          speakingLength: tried.speakingLength,
        });
    return { pull, own, pushed: pushedTo(pull, fret, rise) };
  });
}
