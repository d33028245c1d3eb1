/** Unit weights of the drawer as the lines of a table: value, and how far a real string may be off. */
import { formatGauge } from '../../instrument/format.ts';
import { drawer, gaugeOf } from '../../instrument/drawer.ts';
import { families } from '../../instrument/families.ts';
import { type Family } from '../../instrument/family-names.ts';
import {
  fromHalfWidth,
  gramsPerMetre,
  layers,
  linearDensity,
  linearDensityBounds,
  millimetres,
  poundsPerInch,
  propagate,
  thousandths,
  wireTolerance,
  type Construction,
} from '../../physics/index.ts';

export interface WeightLine {
  readonly gauge: string;
  /** mm */
  readonly diameter: string;
  /** thousandths; empty for a plain string */
  readonly core: string;
  /** Wire of each wrap in thousandths, from the core outwards */
  readonly wraps: string;
  readonly gramsPerMetre: string;
  readonly poundsPerInch: string;
  /** Bounds of the model, per cent, signed */
  readonly low: string;
  readonly high: string;
  /** Standard uncertainty with the permitted variation of plain wire, per cent; empty where none is known */
  readonly standard: string;
}

const signed = (share: number): string => {
  const text = Math.abs(100 * share).toFixed(1);
  return `${share < 0 ? '−' : '+'}${text}`;
};

/**
 * Standard uncertainty of a plain wire's unit weight, relative: its density's tolerance and the permitted variation of its
 * diameter, both taken as evenly spread (JCGM 100:2008, 4.3.7 and equation 10). Undefined for other strings: no standard says
 * how far their diameters may vary.
 */
export function plainUncertainty(c: Construction): number | undefined {
  if (c.kind !== 'plain' || c.material !== 'musicWire') return undefined;
  const variation = wireTolerance(c.diameter);
  if (variation === undefined) return undefined;
  const { high } = linearDensityBounds(c);
  const { value, uncertainty } = propagate(
    ({ diameter, density }) => linearDensity({ ...c, diameter }) * density,
    {
      diameter: { value: c.diameter, uncertainty: fromHalfWidth(variation) },
      density: { value: 1, uncertainty: fromHalfWidth(high) },
    },
  );
  return uncertainty / value;
}

/** Four significant digits, written out. */
const fourDigits = (value: number): string => {
  const decimals = Math.max(0, 3 - Math.floor(Math.log10(value)));
  return value.toFixed(decimals);
};

function weightLine(c: Construction): WeightLine {
  const density = linearDensity(c);
  const { low, high } = linearDensityBounds(c);
  const standard = plainUncertainty(c);
  const wound = c.kind === 'wound';
  const gauge = {
    kind: wound ? 'wound' : 'plain',
    gauge: Number(thousandths(c.diameter).toFixed(1)),
  } as const;
  return {
    gauge: c.kind === 'measured' ? `${gauge.gauge}\u00a0w` : formatGauge(gauge, 'in-lb'),
    diameter: millimetres(c.diameter).toFixed(3),
    core: wound ? thousandths(c.core.diameter).toFixed(1) : '',
    wraps: wound
      ? layers(c)
          .map(({ wire }) => thousandths(wire).toFixed(1))
          .join(' + ')
      : '',
    gramsPerMetre: gramsPerMetre(density).toFixed(wound || c.kind === 'measured' ? 2 : 3),
    poundsPerInch: fourDigits(poundsPerInch(density)),
    low: signed(low),
    high: signed(high),
    standard: standard === undefined ? '' : (100 * standard).toFixed(1),
  };
}

export const plainLines = drawer.filter((c) => c.kind === 'plain').map(weightLine);
export const woundLines = drawer.filter((c) => c.kind === 'wound').map(weightLine);

export const linesOf = (family: Family, kind: Construction['kind']): readonly WeightLine[] =>
  families[family].filter((c) => c.kind === kind).map(weightLine);

/** Strings whose sections are drawn side by side, thin to thick: of each construction the drawer holds, one or two. */
export const drawnSections: readonly Construction[] = [
  ['plain', 10],
  ['plain', 17],
  ['wound', 26],
  ['wound', 46],
  ['wound', 65],
  ['wound', 105],
].flatMap(([kind, gauge]) => {
  const found = drawer.find((c) => {
    const own = gaugeOf(c);
    return own.kind === kind && own.gauge === gauge;
  });
  if (!found) throw new RangeError(`the drawer has no ${kind} ${gauge}`);
  return [found];
});
