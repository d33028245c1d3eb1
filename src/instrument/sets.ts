/** The trade's families of sets, read from the data. */
import setData from '../../content/data/sets.yaml';
import type { Construction } from '../physics/index.ts';
import { constructionOf } from './drawer.ts';
import { sortOf, type Family } from './family-names.ts';
import type { Gauge } from './schema.ts';
import { readGauge } from './workshop.ts';

export interface StringSet {
  readonly name: string;
  readonly gauges: readonly Gauge[];
  readonly constructions: readonly Construction[];
}

interface SetData {
  readonly name: string;
  readonly gauges: readonly (string | number)[];
  /** A family other than the electric one, or the first word of several families' names */
  readonly on?: string;
}

const data = setData as readonly SetData[];
const madeFor = new Map<Family | undefined, readonly StringSet[]>();

/** The sets of a family, in the order of the data; those for electric instruments when none is named. */
export function setsOf(family?: Family): readonly StringSet[] {
  const made =
    madeFor.get(family) ??
    data
      .filter(({ on }) => on === family || (on ?? 'electric') === sortOf(family))
      .map(({ name, gauges }) => {
        const list = gauges.map((g) => ({ ...readGauge(String(g)), ...(family && { family }) }));
        return { name, gauges: list, constructions: list.map(constructionOf) };
      });
  madeFor.set(family, made);
  return made;
}

/** The sets for electric instruments. */
export const sets: readonly StringSet[] = setsOf();
