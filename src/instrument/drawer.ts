/** The drawer: what can be had, as constructions in SI units, built from content/data/strings.yaml. */
import strings from '../../content/data/strings.yaml';
import {
  fromThousandths,
  thousandths,
  type Construction,
  type MaterialId,
} from '../physics/index.ts';
import type { Gauge, Kind } from './schema.ts';

interface DrawerData {
  readonly material: {
    readonly plain: MaterialId;
    readonly core: MaterialId;
    readonly wrap: MaterialId;
  };
  readonly plain: readonly number[];
  readonly wound: readonly {
    readonly gauge: number;
    readonly core: number;
    readonly inner?: readonly number[];
  }[];
}

const data = strings as DrawerData;

const plainString = (gauge: number): Construction => ({
  kind: 'plain',
  diameter: fromThousandths(gauge),
  material: data.material.plain,
});

const woundString = ({ gauge, core, inner = [] }: DrawerData['wound'][number]): Construction => ({
  kind: 'wound',
  diameter: fromThousandths(gauge),
  core: { shape: 'hex', diameter: fromThousandths(core), material: data.material.core },
  wraps: [
    ...inner.map((wire) => ({ diameter: fromThousandths(wire), material: data.material.wrap })),
    { material: data.material.wrap },
  ],
});

/** Every construction of the drawer; plain ones first, each kind from thin to thick. */
export const drawer: readonly Construction[] = [
  ...data.plain.map(plainString),
  ...data.wound.map(woundString),
];

/** The gauges of a kind that the drawer holds, in thousandths, from thin to thick. */
export const gauges: Readonly<Record<Kind, readonly number[]>> = {
  plain: data.plain,
  wound: data.wound.map((w) => w.gauge),
};

const index = new Map(
  drawer.map((construction, i) => {
    const gauge = i < data.plain.length ? data.plain[i] : data.wound[i - data.plain.length]?.gauge;
    return [`${construction.kind} ${gauge}`, construction];
  }),
);

/** The drawer's gauge nearest to a wanted one, in thousandths. */
export function nearestGauge(kind: Kind, gauge: number): number {
  return gauges[kind].reduce(
    (best, g) => (Math.abs(g - gauge) < Math.abs(best - gauge) ? g : best),
    gauges[kind][0] ?? gauge,
  );
}

/** The construction of a gauge: measured when its unit weight is given, otherwise the drawer's (the nearest it has). */
export function constructionOf({ kind, gauge, unitWeight }: Gauge): Construction {
  if (unitWeight !== undefined) {
    return { kind: 'measured', diameter: fromThousandths(gauge), linearDensity: unitWeight };
  }
  const construction =
    index.get(`${kind} ${gauge}`) ?? index.get(`${kind} ${nearestGauge(kind, gauge)}`);
  if (!construction)
    throw new RangeError(`gauge is ${gauge} ${kind}; permitted: a gauge of the drawer`);
  return construction;
}

/** The drawer's name for one of its constructions. */
export function gaugeOf(construction: Construction): Gauge {
  const kind = construction.kind === 'plain' ? 'plain' : 'wound';
  return { kind, gauge: nearestGauge(kind, thousandths(construction.diameter)) };
}

/** The gauge so many steps lighter (negative) or heavier in the drawer, held at its ends. */
export function stepGauge({ kind, gauge }: Gauge, steps: number): Gauge {
  const list = gauges[kind];
  const at = list.indexOf(nearestGauge(kind, gauge));
  const to = Math.min(list.length - 1, Math.max(0, at + steps));
  return { kind, gauge: list[to] ?? gauge };
}
