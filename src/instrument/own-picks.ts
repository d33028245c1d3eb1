/**
 * Picks from the reader's own strings, and from the weights that a reader knows of the strings on the instrument that feels right:
 * what hangs there exists, so it is always among what can be picked. Brings itself into the plan and into the link; kept out of
 * what a page loads first.
 *
 * `mine` picks from the reader's strings and those on the instrument; `stock` from the reader's strings in stock alone, which is
 * what its list then holds; `first` takes the best of the reader's strings where you'd be guessing, and the best of all elsewhere,
 * unless what hangs there is exactly right. A pick never depends on strings that lost, so a link that carries the picked ones alone
 * gives the same picks on any device.
 */
import { felt, nearestPull, type Construction, type Match } from '../physics/index.ts';
import { brought } from './brought.ts';
import { constructionOf, drawerOf, gaugeOf, isShipped, nameAs } from './drawer.ts';
import type { Family } from './family-names.ts';
import { gaugeCode } from './link.ts';
import { comparedPlan } from './pair.ts';
import { planOf, type Plan } from './plan.ts';
import type { Gauge, Kind, State } from './schema.ts';
import './typical.ts';

/** A residual so small is rounding: what hangs on the instrument is what was wanted. */
const EXACT = 1e-9;
/** Weights that differ by less are one string: a link rounds them. kg/m */
const SAME_WEIGHT = 1e-7;

/** Whether two gauges are the same string, as far as anything can be worked out of it. */
export const isSameString = (a: Gauge, b: Gauge): boolean =>
  a.kind === b.kind &&
  a.family === b.family &&
  Math.abs(a.gauge - b.gauge) < 0.006 &&
  (a.unitWeight === undefined) === (b.unitWeight === undefined) &&
  Math.abs((a.unitWeight ?? 0) - (b.unitWeight ?? 0)) < SAME_WEIGHT;

const made = new WeakMap<Gauge, Construction>();

/** One construction for one string, which goes by that string's gauge. */
function makeOf({ kind, gauge, unitWeight, doubt, family }: Gauge, key: Gauge): Construction {
  const lying = made.get(key);
  if (lying) return lying;
  const bare = {
    kind,
    gauge,
    ...(unitWeight !== undefined && { unitWeight }),
    ...(doubt !== undefined && { doubt }),
    ...(family && { family }),
  };
  const shipped = unitWeight === undefined && drawerOf(family).byGauge.get(`${kind} ${gauge}`);
  const construction = shipped || nameAs(constructionOf(bare), bare);
  made.set(key, construction);
  return construction;
}

type Lists = Map<string, readonly Construction[]>;
const known = new WeakMap<object, WeakMap<object, Lists>>();
const NONE: readonly Gauge[] = [];

/** What is worked out of two lists, which are never changed, kept with both. */
function keptWith(
  a: object,
  b: object,
  name: string,
  work: () => readonly Construction[],
): readonly Construction[] {
  const of = known.get(a) ?? new WeakMap<object, Lists>();
  known.set(a, of);
  const lists = of.get(b) ?? new Map<string, readonly Construction[]>();
  of.set(b, lists);
  const list = lists.get(name) ?? work();
  lists.set(name, list);
  return list;
}

/** Each string once, of this family and kind. */
function makesOf(
  strings: readonly Gauge[],
  family: Family | undefined,
  kind: Kind | undefined,
): readonly Construction[] {
  const once: Gauge[] = [];
  for (const each of strings)
    if (
      each.family === family &&
      (kind === undefined || each.kind === kind) &&
      !once.some((other) => isSameString(other, each))
    )
      once.push(each);
  return once.map((each) => makeOf(each, each));
}

const isKnown = ({ unitWeight }: Gauge): boolean => unitWeight !== undefined;
/** The shipped drawer with what the reader knows of the strings on the instrument in its place. */
function shippedAnd(
  own: readonly Construction[],
  mine: readonly Gauge[],
  family: Family | undefined,
  kind: Kind | undefined,
): readonly Construction[] {
  const kinds: readonly Kind[] = kind ? [kind] : ['plain', 'wound'];
  const { gauges, byGauge } = drawerOf(family);
  const isReplaced = (of: Kind, gauge: number): boolean =>
    mine.some((m) => isKnown(m) && m.family === family && m.kind === of && m.gauge === gauge);
  const shipped = kinds.flatMap((of) =>
    gauges[of].flatMap((gauge) => {
      const c = byGauge.get(`${of} ${gauge}`);
      return c && !isReplaced(of, gauge) ? [c] : [];
    }),
  );
  return [...new Set([...own, ...shipped])];
}

brought.pick = (state, asked, kind, match) => {
  const { mine, other, drawer } = state;
  const { family } = other;
  const from = drawer?.from ?? 'shipped';
  const ofInstrument = mine.strings;
  if (!drawer && !ofInstrument.some((s) => s.family === family && !isShipped(s))) return false;
  const kept = drawer?.strings ?? NONE;
  const list = (name: string, work: () => readonly Construction[]) =>
    keptWith(ofInstrument, kept, `${name} ${family} ${kind}`, work);
  const best = (constructions: readonly Construction[]): Match | undefined => {
    const wanted = { ...asked, kind: undefined, drawer: constructions };
    // Where the stretch of none is known, their pull is.
    return match(wanted) ?? nearestPull(wanted);
  };
  const ofDrawer = (): readonly Construction[] => makesOf(kept, family, kind);
  if (from === 'stock') return best(list('kept', ofDrawer));
  const own = list(`own ${from}`, () =>
    makesOf([...ofInstrument.filter((s) => drawer || !isShipped(s)), ...kept], family, kind),
  );
  const hanging = best(list('hanging', () => makesOf(ofInstrument, family, kind)));
  // Another string may weigh the same to the last digit.
  if (hanging && Math.abs(hanging.residual) < EXACT) return hanging;
  if (from === 'mine') return best(own);
  const first = from === 'first' ? best(list('kept', ofDrawer)) : undefined;
  if (first && felt(first.residual) === 'you’d be guessing') return first;
  return best(list(`all ${from}`, () => shippedAnd(own, ofInstrument, family, kind)));
};

/** Of the reader's own strings, those that a plan picks. */
export const pickedOf = ({ drawer, other }: State, plans: readonly Plan[]): readonly Gauge[] => {
  const best = plans.flatMap(({ strings }) =>
    strings.flatMap((s) => (s.best ? [gaugeOf(s.best.construction, other.family)] : [])),
  );
  return (drawer?.strings ?? NONE).filter((own) => best.some((pick) => isSameString(pick, own)));
};

brought.fields = (state) => [
  `from-${state.drawer?.from}`,
  ...new Set(
    pickedOf(state, [planOf(state), comparedPlan(state)]).map((own) => `own-${gaugeCode(own)}`),
  ),
];
