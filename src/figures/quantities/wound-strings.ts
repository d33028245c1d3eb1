/** The numbers of the chapter "Wound strings". */
import {
  formatDensity,
  formatDifference,
  formatForce,
  formatNote,
  formatShare,
  gaugeNumber,
} from '../../instrument/format.ts';
import { formatThickness } from '../../instrument/thickness-text.ts';
import { pullOf } from '../../instrument/pulls.ts';
import type { State } from '../../instrument/schema.ts';
import { remade, woundInHand, type WoundPull } from '../../instrument/wound-in-hand.ts';
import {
  bendingStiffness,
  bendingStiffnessBounds,
  centsOfPartial,
  coreArea,
  fromInches,
  gramsPerMetre,
  inharmonicity,
  layers,
  linearDensity,
  linearDensityBounds,
  material,
  millimetres,
  seatDiameter,
  STANDARD_A4,
  stoppedLength,
  thousandths,
  wrapLengthRatio,
  type MaterialId,
} from '../../physics/index.ts';
import { formatCents } from '../kit/bend/words.ts';
import { made, makeOf, weighed } from '../pull/the-section/make.ts';
import { wrapShare } from '../pull/the-section/describe.ts';
import { ratioText } from '../pull/the-vice/describe.ts';
import { asHeavy, pairOf } from '../pull/the-vice/vice.ts';
import type { Quantity } from './common.ts';

const pull = (s: State): WoundPull => woundInHand(s).pull;
const last = (s: State) => {
  const found = layers(pull(s).construction).at(-1);
  if (!found) throw new RangeError('wraps is empty; permitted: at least one wrap');
  return found;
};
/** The same string with its core thinner or thicker by a share, or with another wrap. */
const other = (s: State, core: number, wrap?: MaterialId): WoundPull => {
  const { construction } = pull(s);
  const make = makeOf(construction);
  return remade(
    pull(s),
    made(construction, { ...make, core: make.core * core, wrap: wrap ?? make.wrap }),
  );
};
const against = (s: State, tried: WoundPull): string =>
  formatDifference(tried.linearDensity / pull(s).linearDensity - 1);
const shareOf = ({ share }: WoundPull): string =>
  share === undefined ? 'an unknown share' : formatShare(share);
const stressOf = ({ construction, tension }: WoundPull): number => tension / coreArea(construction);
const grams = (density: number): number => Number(gramsPerMetre(density).toFixed(3));
const mm = (metres: number): string => millimetres(metres).toFixed(4);
/** Cents at partial 10 of a bass's low B at fret 12, as measured. Source: Kemp 2020, its abstract. */
const KEMP_CENTS = 100;
/** The same of the drawer's low B, by its core alone. */
function lowBDrift(): number {
  const scale = fromInches(34);
  const at = { gauge: { kind: 'wound', gauge: 130 }, note: 'B0', a4: STANDARD_A4 } as const;
  const { construction, tension } = pullOf({ ...at, speakingLength: scale });
  const speakingLength = stoppedLength({ scaleLength: scale, fret: 12 });
  const stiff = { tension, speakingLength, bendingStiffness: bendingStiffness(construction) };
  return centsOfPartial({ inharmonicity: inharmonicity(stiff), partial: 10 });
}
const THIN = 0.9;
const THICK = 1.1;

export const quantities: Readonly<Record<string, Quantity>> = {
  'wound.which': (s) => {
    const { as } = woundInHand(s);
    const note = formatNote(pull(s).note);
    return as === 'stand-in'
      ? `a wound ${gaugeNumber(pull(s).gauge.gauge, s.units)} with a steel core, in the place of the ${note} string`
      : `the ${note} string of ${s.mine.name || 'your instrument'}`;
  },
  'wound.gauge': (s) => gaugeNumber(pull(s).gauge.gauge, s.units),
  'wound.core': (s) => formatThickness(makeOf(pull(s).construction).core, s.units),
  'wound.wrapShare': (s) => formatShare(wrapShare(pull(s))),
  'wound.weight': (s) => formatDensity(pull(s).linearDensity),
  'wound.pull': (s) => formatForce(pull(s).tension, s.units),
  'wound.share': (s) => shareOf(pull(s)),
  'wound.ratio': (s) => ratioText(pairOf(woundInHand(s)).ratio),
  'wound.plain': (s) => formatThickness(thousandths(asHeavy(woundInHand(s)).diameter), s.units),
  'wound.turned': (s) =>
    s.units === 'in-lb' ? 'A thousandth of an inch is 0.0254\u00a0mm, so it comes' : 'It comes',
  'wound.plainRatio': (s) =>
    ratioText(bendingStiffness(asHeavy(woundInHand(s))) / bendingStiffness(pull(s).construction)),
  'wound.wrapAdds': (s) => {
    const { high, low } = bendingStiffnessBounds(pull(s).construction);
    // What is left of the upper bound without the doubt about the core's own modulus.
    return formatShare(high + low, 1);
  },
  'wound.bassMeasured': () => `about ${formatCents(KEMP_CENTS)}`,
  'wound.bassModel': () => formatCents(lowBDrift()),
  'wound.thinCore': (s) => formatThickness(makeOf(pull(s).construction).core * THIN, s.units),
  'wound.thickCore': (s) => formatThickness(makeOf(pull(s).construction).core * THICK, s.units),
  'wound.thinWeight': (s) => against(s, other(s, THIN)),
  'wound.thickWeight': (s) => against(s, other(s, THICK)),
  'wound.thinStress': (s) => formatDifference(stressOf(other(s, THIN)) / stressOf(pull(s)) - 1),
  'wound.thickStress': (s) => formatDifference(stressOf(other(s, THICK)) / stressOf(pull(s)) - 1),
  'wound.thickStiff': () => formatDifference(THICK ** 4 - 1),
  'wound.nickel': (s) => against(s, other(s, 1, 'nickel')),
  'wound.stainless': (s) => against(s, other(s, 1, 'stainless430')),
  'wound.bronze': (s) => against(s, other(s, 1, 'phosphorBronze')),
  'wound.low': (s) => formatDifference(linearDensityBounds(pull(s).construction).low),
  'wound.high': (s) => formatDifference(linearDensityBounds(pull(s).construction).high),
  'wound.ring': () => formatShare(Math.PI / 4),
  'wound.air': () => formatShare(1 - Math.PI / 4),

  'wound.eqS': (s) => mm(pull(s).construction.core.diameter),
  'wound.eqC': (s) => mm(seatDiameter(pull(s).construction.core)),
  'wound.eqInner': (s) => mm(last(s).inner),
  'wound.eqW': (s) => mm(last(s).wire),
  'wound.eqTurns': (s) => wrapLengthRatio(last(s)).toFixed(2),
  'wound.eqRho': (s) => material(pull(s).construction.core.material).density.value.toFixed(0),
  'wound.eqCore': (s) => grams(weighed(pull(s).construction).core).toFixed(3),
  'wound.eqWraps': (s) =>
    (grams(pull(s).linearDensity) - grams(weighed(pull(s).construction).core)).toFixed(3),
  'wound.eqWhole': (s) => grams(pull(s).linearDensity).toFixed(3),
  'wound.count': (s) => {
    const count = pull(s).construction.wraps.length;
    return count === 1 ? 'one wrap' : `${['no', 'one', 'two', 'three'][count] ?? count} wraps`;
  },

  'wound.coreWeight': (s) => formatDensity(weighed(pull(s).construction).core),
  'wound.plainArea': (s) =>
    `${((1e6 * linearDensity(asHeavy(woundInHand(s)))) / material('musicWire').density.value).toPrecision(4)}\u00a0mm²`,
};
