/** Five gauges for one note on one length, from a fifth thinner than the string in hand to a fifth thicker. */
import { nearestGauge } from '../../../instrument/drawer.ts';
import { pullOf, type Pull } from '../../../instrument/pulls.ts';
import type { State } from '../../../instrument/schema.ts';
import { pushedTo, type Pushed } from '../../../instrument/pushed.ts';
import { triedOf, type Played } from '../../trial.ts';

const SHARES = [0.8, 0.9, 1, 1.1, 1.2] as const;

export interface Each {
  readonly pull: Pull;
  /** The gauge in hand */
  readonly own: boolean;
}

export interface Bent extends Each {
  /** Undefined where the stretch is not known */
  readonly pushed: Pushed | undefined;
}

/** The gauges of the drawer around the one in hand, thin to thick; fewer where the drawer is sparse. */
export function gaugesAround(state: Played): readonly number[] {
  const { kind, gauge, family } = triedOf(state).tried.gauge;
  const near = SHARES.map((share) =>
    share === 1 ? gauge : nearestGauge(kind, gauge * share, family),
  );
  return [...new Set(near)].toSorted((a, b) => a - b);
}

/** Each at rest: a bend leaves them as they are. */
export function fiveAtRest(state: Played): readonly Each[] {
  const { tried } = triedOf(state);
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
    return { pull, own };
  });
}

/** Each bent at the chosen fret by the chosen rise. */
export function fiveBent(state: State): readonly Bent[] {
  const { fret, rise } = state.bend;
  return fiveAtRest(state).map((each) => ({ ...each, pushed: pushedTo(each.pull, fret, rise) }));
}
