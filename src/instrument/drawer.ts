/** The drawer: what can be had, as constructions in SI units, built from content/data/strings.yaml. */
import strings from '../../content/data/strings.yaml';
import {
  fromThousandths,
  thousandths,
  type Construction,
  type MaterialId,
} from '../physics/index.ts';
import { brought } from './brought.ts';
import { families } from './families.ts';
import { isWeighed, type Family } from './family-names.ts';
import type { Gauge, Kind } from './schema.ts';

interface DrawerData {
  readonly coreSpread: number;
  readonly material: {
    readonly plain: MaterialId;
    readonly core: MaterialId;
    readonly wrap: MaterialId;
  };
  readonly plain: readonly number[];
  /** Gauge, core and inner wires */
  readonly wound: readonly (readonly [number, number, ...number[]])[];
}

const data = strings as unknown as DrawerData;

/** How far a bought string's core may lie either way from the drawer's, as a share of its diameter: as measured strings differ. */
export const CORE_SPREAD = data.coreSpread;

const plainString = (gauge: number): Construction => ({
  kind: 'plain',
  diameter: fromThousandths(gauge),
  material: data.material.plain,
});

const woundString = ([gauge, core, ...inner]: DrawerData['wound'][number]): Construction => ({
  kind: 'wound',
  diameter: fromThousandths(gauge),
  core: { shape: 'hex', diameter: fromThousandths(core), material: data.material.core },
  wraps: [
    ...inner.map((wire) => ({ diameter: fromThousandths(wire), material: data.material.wrap })),
    { material: data.material.wrap },
  ],
});

/** Every construction of the drawer for electric instruments; plain ones first, each kind from thin to thick. */
export const drawer: readonly Construction[] = [
  ...data.plain.map(plainString),
  ...data.wound.map(woundString),
];

export interface Drawer {
  readonly constructions: readonly Construction[];
  /** The gauges of each kind, in thousandths, from thin to thick */
  readonly gauges: Readonly<Record<Kind, readonly number[]>>;
  readonly byGauge: ReadonlyMap<string, Construction>;
}

const kindOf = (c: Construction): Kind => (c.kind === 'plain' ? 'plain' : 'wound');
const gaugeIn = (c: Construction): number => Number(thousandths(c.diameter).toFixed(2));

function drawerFrom(constructions: readonly Construction[]): Drawer {
  const list = (kind: Kind) => constructions.filter((c) => kindOf(c) === kind).map(gaugeIn);
  return {
    constructions,
    gauges: { plain: list('plain'), wound: list('wound') },
    byGauge: new Map(constructions.map((c) => [`${kindOf(c)} ${gaugeIn(c)}`, c])),
  };
}

const electric = drawerFrom(drawer);
const others = new Map<Family, Drawer>();

/** The drawer of a family; the electric one when none is named. */
export function drawerOf(family?: Family): Drawer {
  if (!family) return electric;
  const made = others.get(family) ?? drawerFrom(families[family]);
  others.set(family, made);
  return made;
}

/** Whether a drawer that ships has it just so, with nothing else known of it. */
export const isShipped = ({ kind, gauge, unitWeight, family }: Gauge): boolean =>
  unitWeight === undefined && drawerOf(family).byGauge.has(`${kind} ${gauge}`);

/** The gauges of a kind that the drawer for electric instruments holds, in thousandths, from thin to thick. */
export const { gauges } = electric;

/** What the physics calls a kind of string of a family: some families' wound ones are known by their weight alone. */
export const physicalKind = (kind: Kind, family?: Family): Construction['kind'] =>
  kind === 'wound' && isWeighed(family) ? 'measured' : kind;

/** The drawer's gauge nearest to a wanted one, in thousandths. */
export function nearestGauge(kind: Kind, gauge: number, family?: Family): number {
  const list = drawerOf(family).gauges[kind];
  return list.reduce(
    (best, g) => (Math.abs(g - gauge) < Math.abs(best - gauge) ? g : best),
    list[0] ?? gauge,
  );
}

/** The construction of a gauge: measured when its unit weight is given, otherwise the drawer's, or a typical one between two of its. */
export function constructionOf(of: Gauge): Construction {
  const { kind, gauge, unitWeight, doubt, family } = of;
  if (unitWeight !== undefined) {
    return {
      kind: 'measured',
      diameter: fromThousandths(gauge),
      linearDensity: unitWeight,
      linearDensityDoubt: doubt,
    };
  }
  const { byGauge } = drawerOf(family);
  const construction =
    byGauge.get(`${kind} ${gauge}`) ??
    brought.make?.(of) ??
    byGauge.get(`${kind} ${nearestGauge(kind, gauge, family)}`);
  if (!construction)
    throw new RangeError(`gauge is ${gauge} ${kind}; permitted: a gauge of the drawer`);
  return construction;
}

/** A gauge of a drawer, with nothing else known of it. */
const gaugeFrom = (kind: Kind, gauge: number, family: Family | undefined): Gauge =>
  family ? { kind, gauge, family } : { kind, gauge };

const names = new WeakMap<Construction, Gauge>();

/** Has a construction that is in no drawer go by this gauge from now on. */
export function nameAs(construction: Construction, gauge: Gauge): Construction {
  names.set(construction, gauge);
  return construction;
}

/** The drawer's name for one of its constructions, or the name that was given to it. */
export function gaugeOf(construction: Construction, family?: Family): Gauge {
  const kind = kindOf(construction);
  return (
    names.get(construction) ??
    gaugeFrom(kind, nearestGauge(kind, thousandths(construction.diameter), family), family)
  );
}

/** The same gauge as the drawer has it: without a weight that the reader gave. */
export const bareGauge = ({ kind, gauge, family }: Gauge): Gauge => gaugeFrom(kind, gauge, family);

/** The gauge so many steps lighter (negative) or heavier in its drawer, held at the drawer's ends. */
export function stepGauge({ kind, gauge, family }: Gauge, steps: number): Gauge {
  const list = drawerOf(family).gauges[kind];
  const near = nearestGauge(kind, gauge, family);
  // From between two of the drawer's the first step leads to the nearer one, where that lies ahead.
  const first = steps * (near - gauge) > 0 ? Math.sign(steps) : 0;
  const at = list.indexOf(near) + steps - first;
  const to = Math.min(list.length - 1, Math.max(0, at));
  return gaugeFrom(kind, list[to] ?? gauge, family);
}
