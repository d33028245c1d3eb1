/** The trade's families of sets, read from the data. */
import setData from '../../content/data/sets.yaml';
import type { Construction } from '../physics/index.ts';
import { constructionOf } from './drawer.ts';
import type { Gauge } from './schema.ts';
import { readGauge } from './workshop.ts';

export interface StringSet {
  readonly name: string;
  readonly gauges: readonly Gauge[];
  readonly constructions: readonly Construction[];
}

export const sets: readonly StringSet[] = (
  setData as { name: string; gauges: (string | number)[] }[]
).map((d) => {
  const list = d.gauges.map((g) => readGauge(String(g)));
  return { name: d.name, gauges: list, constructions: list.map(constructionOf) };
});
