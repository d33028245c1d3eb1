/**
 * The make of a gauge that no drawer holds, between those of its neighbours: a plain wire is what its diameter says, a wound string
 * a typical make. Brings itself into the drawer, so that what never meets such a gauge loads none of this.
 */
import {
  fromThousandths,
  thousandths,
  type Construction,
  type WoundString,
} from '../physics/index.ts';
import { brought } from './brought.ts';
import { drawerOf, nearestGauge } from './drawer.ts';
import type { Family } from './family-names.ts';
import { limits } from './limits.ts';
import type { Gauge, Kind } from './schema.ts';

// How far beyond the drawer's thinnest and thickest a make can be guessed at: some steps either way, common practice.
const BELOW: Readonly<Record<Kind, number>> = { plain: 0.6, wound: 0.85 };
const ABOVE: Readonly<Record<Kind, number>> = { plain: 1.4, wound: 1.35 };

/** The gauges of a kind that can be typed, in thousandths. */
export function typicalRange(kind: Kind, family?: Family): { min: number; max: number } {
  const list = drawerOf(family).gauges[kind];
  const [first = limits.gauge.min] = list;
  return {
    min: Math.max(limits.gauge.min, Math.ceil(first * BELOW[kind])),
    max: Math.min(limits.gauge.max, Math.floor((list.at(-1) ?? limits.gauge.max) * ABOVE[kind])),
  };
}

/** A gauge in mm is a rounded one: half a hundredth of a millimetre either way is the same string. m */
const METRIC_SLACK = 5e-6;

/** Thousandths of a gauge that was given in mm: the drawer's, where it is that one rounded. */
export function fromMetricGauge(millimetres: number, kind: Kind, family?: Family): number {
  const thou = thousandths(millimetres / 1000);
  const near = nearestGauge(kind, thou, family);
  return Math.abs(near - thou) <= thousandths(METRIC_SLACK) ? near : thou;
}

/** The two of a list between which a value lies, or the two at the end beyond which it lies. */
function around(list: readonly number[], value: number): readonly [number, number] {
  const above = list.findIndex((each) => each > value);
  const at = above < 0 ? list.length - 1 : Math.max(1, above);
  return [list[at - 1] ?? value, list[at] ?? value];
}

function typicalMake({ kind, gauge: asked, family }: Gauge): Construction {
  const { gauges, byGauge } = drawerOf(family);
  const { min, max } = typicalRange(kind, family);
  const gauge = Math.min(max, Math.max(min, asked));
  const pair = around(gauges[kind], gauge);
  const [thin, thick] = pair.map((each) => byGauge.get(`${kind} ${each}`));
  if (!thin || !thick) throw new RangeError('the drawer is empty; permitted: two gauges or more');
  const diameter = fromThousandths(gauge);
  const share = (gauge - pair[0]) / (pair[1] - pair[0]);
  const between = (a: number, b: number): number => a + share * (b - a);
  if (thin.kind === 'wound' && thick.kind === 'wound') return wound(thin, thick, gauge, between);
  if (thin.kind === 'measured' && thick.kind === 'measured') {
    // A string's weight grows nearly as the square of its gauge: what is left over changes slowly.
    const solid = between(
      thin.linearDensity / thin.diameter ** 2,
      thick.linearDensity / thick.diameter ** 2,
    );
    return { ...thin, diameter, linearDensity: solid * diameter ** 2 };
  }
  return { ...thin, diameter } as Construction;
}

/** Core and inner wraps between those of the neighbours; the last wrap's wire follows from the gauge. */
function wound(
  thin: WoundString,
  thick: WoundString,
  gauge: number,
  between: (a: number, b: number) => number,
): WoundString {
  const diameter = fromThousandths(gauge);
  // Between two builds the nearer one's holds, in proportion.
  const near =
    Math.abs(gauge - thousandths(thin.diameter)) <= Math.abs(thousandths(thick.diameter) - gauge)
      ? thin
      : thick;
  const alike = thin.wraps.length === thick.wraps.length;
  const scaled = diameter / near.diameter;
  return {
    ...near,
    diameter,
    core: {
      ...near.core,
      diameter: alike
        ? between(thin.core.diameter, thick.core.diameter)
        : near.core.diameter * scaled,
    },
    wraps: near.wraps.map((wrap, i) => {
      if (wrap.diameter === undefined) return wrap;
      const [a, b] = [thin.wraps[i]?.diameter, thick.wraps[i]?.diameter];
      return {
        ...wrap,
        diameter:
          alike && a !== undefined && b !== undefined ? between(a, b) : wrap.diameter * scaled,
      };
    }),
  };
}

/** Whether no drawer has it, so that its make is put between two others. */
export const isBetween = (gauge: Gauge): boolean =>
  gauge.unitWeight === undefined &&
  !drawerOf(gauge.family).byGauge.has(`${gauge.kind} ${gauge.gauge}`);

brought.make = typicalMake;
