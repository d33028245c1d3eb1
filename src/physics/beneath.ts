/**
 * The best whole beneath a ceiling: of each string's choices one, so that all together pull no more than a given load and the sum of
 * their costs is least. A knapsack with one choice of each kind: a price on the load gives a bound, and a search below that bound the
 * answer (M. L. Fisher, Management Science 27 (1981) 1, on prices as bounds; memory).
 */
import { inRange } from './guard.ts';

export interface Choice {
  /** N */
  readonly tension: number;
  /** How far it is from what is wanted, in any unit that adds up */
  readonly cost: number;
}

interface Ranked extends Choice {
  readonly index: number;
}

// A search that takes longer than this gives the best that it has found: with a drawer's steps it never comes to that.
const MOST_STEPS = 200_000;
const EXACT = 1e-9;

/** From the lightest; what pulls more without coming nearer is left out. */
function worthwhile(choices: readonly Choice[]): readonly Ranked[] {
  const all = choices
    .map(({ tension, cost }, index) => ({ tension, cost, index }))
    .sort((a, b) => a.tension - b.tension || a.cost - b.cost);
  let least = Infinity;
  return all.filter(({ cost }) => cost < least && ((least = cost), true));
}

const sum = (values: readonly number[]): number => values.reduce((all, one) => all + one, 0);

/** The cheapest of a string's choices when each newton costs `price` more. */
const bestAt = (choices: readonly Ranked[], price: number): Ranked | undefined =>
  choices.reduce<Ranked | undefined>(
    (best, each) =>
      best && best.cost + price * best.tension <= each.cost + price * each.tension ? best : each,
    undefined,
  );

/** The least price at which the cheapest choices stay beneath the ceiling. */
function priceFor(strings: readonly (readonly Ranked[])[], ceiling: number): number {
  const load = (price: number): number => sum(strings.map((s) => bestAt(s, price)?.tension ?? 0));
  let [low, high] = [0, 1];
  while (load(high) > ceiling && high < 1e12) high *= 4;
  for (let i = 0; i < 60; i += 1) {
    const middle = (low + high) / 2;
    if (load(middle) > ceiling) low = middle;
    else high = middle;
  }
  return high;
}

/**
 * Which choice of each string: the least cost of all whose tensions add up to no more than `ceiling` N. Undefined where even the
 * lightest pull more, or a string has no choice. Throws RangeError naming a ceiling that lies outside. Source: mathematics.
 */
export function beneath({
  strings,
  ceiling,
}: {
  readonly strings: readonly (readonly Choice[])[];
  readonly ceiling: number;
}): readonly number[] | undefined {
  inRange('ceiling', ceiling, { min: 0 });
  const most = ceiling * (1 + EXACT);
  const ranked = strings.map(worthwhile);
  const lightest = ranked.map((s) => s[0]?.tension ?? Infinity);
  if (sum(lightest) > most) return undefined;
  const price = priceFor(ranked, most);
  const priced = ({ tension, cost }: Choice): number => cost + price * tension;
  const ordered = ranked.map((s) => [...s].sort((a, b) => priced(a) - priced(b)));

  // What the strings from here on cost at least, at this price, and pull at least.
  const least = [0];
  const load = [0];
  for (let i = ordered.length - 1; i >= 0; i -= 1) {
    const best = ordered[i]?.[0];
    least.unshift((least[0] ?? 0) + (best ? priced(best) : 0));
    load.unshift((load[0] ?? 0) + (lightest[i] ?? 0));
  }
  let found = ranked.map((s) => bestAt(s, price)?.index ?? 0);
  let lowest = sum(ranked.map((s) => bestAt(s, price)?.cost ?? 0));
  let steps = 0;
  const chosen: number[] = [];
  const search = (i: number, cost: number, tension: number): void => {
    if ((steps += 1) > MOST_STEPS) return;
    if (cost + price * tension + (least[i] ?? 0) - price * most >= lowest - 1e-15) return;
    const choices = ordered[i];
    if (!choices) {
      if (cost < lowest) [lowest, found] = [cost, [...chosen]];
      return;
    }
    for (const choice of choices) {
      const together = tension + choice.tension;
      if (together + (load[i + 1] ?? 0) > most) continue;
      chosen[i] = choice.index;
      search(i + 1, cost + choice.cost, together);
    }
  };
  search(0, 0, 0);
  return found;
}
