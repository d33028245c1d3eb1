/** The numbers of the chapter "Gauge and mass". */
import { drawerOf, constructionOf } from '../../instrument/drawer.ts';
import {
  formatDifference,
  formatForce,
  formatGauge,
  formatNote,
  formatShare,
  forceNumber,
} from '../../instrument/format.ts';
import { exactGauge, formatThickness, thicknessUnit } from '../../instrument/thickness-text.ts';
import { pullDoubt } from '../../instrument/doubts.ts';
import { lengthOf, pullOf, type Pull } from '../../instrument/pulls.ts';
import type { Gauge, State } from '../../instrument/schema.ts';
import {
  fromInches,
  fromMillimetres,
  linearDensity,
  material,
  millimetres,
  STANDARD_A4,
  thousandths,
} from '../../physics/index.ts';
import { measured, wireInHand } from '../pull/the-caliper/caliper.ts';
import { materialName } from '../pull/the-caliper/describe.ts';
import { rulingOf } from '../pull/the-caliper/frame.ts';
import { triedOf } from '../trial.ts';
import type { Quantity } from './common.ts';

const own = (s: State) => triedOf(s).own;
const massOf = (gauge: Gauge): number => linearDensity(constructionOf(gauge));
const change = (from: Gauge, to: Gauge): number => massOf(to) / massOf(from) - 1;

const plain = (gauge: number): Gauge => ({ kind: 'plain', gauge });
const wound = (gauge: number): Gauge => ({ kind: 'wound', gauge });

/** The plain string that the derivation works with: the one in hand, the first plain one, or a ten in its place. */
function plainPull(s: State): Pull {
  const { wire, string } = wireInHand(s);
  const index = string ?? 0;
  const spec = s.mine.strings[index];
  if (!spec) throw new RangeError('strings is empty; permitted: 4 to 12');
  const gauge: Gauge =
    string === undefined
      ? plain(10)
      : { kind: 'plain', gauge: thousandths(wire.diameter), family: spec.family };
  return pullOf({ gauge, note: spec.note, a4: s.mine.a4, speakingLength: lengthOf(s.mine, index) });
}
const plainGauge = (s: State): number =>
  Number(thousandths(wireInHand(s).wire.diameter).toFixed(2));

/** A string a thousandth thicker, of the same make, whether or not somebody draws it. */
const gaugeAt = (s: State, index: number): Gauge => s.mine.strings.at(index) ?? plain(10);
const upGauge = ({ kind, gauge }: Gauge): Gauge => ({ kind, gauge: gauge + 1 });
const upChange = ({ gauge }: Gauge): string => formatDifference((1 + 1 / gauge) ** 2 - 1);

/** The farthest that rounding to the nearest plain gauge can be off: half the step, as a share of its middle. */
const worstHalf = (from: number, to: number): number => {
  const list = drawerOf().gauges.plain.filter((g) => g >= from && g <= to);
  return Math.max(
    ...list.slice(1).map((g, i) => {
      const [a, b] = [(list[i] ?? g) ** 2, g ** 2];
      return (b - a) / (a + b);
    }),
  );
};

export const quantities: Readonly<Record<string, Quantity>> = {
  'gauge.tenEleven': () => formatShare(change(plain(10), plain(11))),
  'gauge.nineTen': () => formatShare(change(plain(9), plain(10)), 1),
  'gauge.nineRule': () => formatShare(2 / 9, 1),
  'gauge.lowRule': () => formatShare(2 / 46, 1),
  'gauge.low': () => formatShare(change(wound(46), wound(47)), 1),
  'gauge.wound20': () => formatShare(1 - massOf(wound(20)) / massOf(plain(20))),
  'gauge.worstHalf': () => formatShare(worstHalf(8, 14)),
  'gauge.worstThick': () => formatShare(worstHalf(14, 26)),

  'gauge.topOwn': (s) => formatGauge(gaugeAt(s, 0), s.units),
  'gauge.topUp': (s) => formatGauge(upGauge(gaugeAt(s, 0)), s.units),
  'gauge.topChange': (s) => upChange(gaugeAt(s, 0)),
  'gauge.lastOwn': (s) => formatGauge(gaugeAt(s, -1), s.units),
  'gauge.lastUp': (s) => formatGauge(upGauge(gaugeAt(s, -1)), s.units),
  'gauge.lastChange': (s) => upChange(gaugeAt(s, -1)),

  'gauge.pull': (s) =>
    triedOf(s).tried.strain === 'broken'
      ? 'more than it can hold'
      : formatForce(triedOf(s).tried.tension, s.units),

  'gauge.wire': (s) => {
    const { string } = wireInHand(s);
    const note = formatNote(s.mine.strings[string ?? 0]?.note ?? 'E4');
    return string === undefined
      ? `a plain ten instead of the ${note} string`
      : `the ${note} string, gauge ${exactGauge(plainGauge(s), s.units)}`;
  },
  'gauge.material': (s) => materialName(wireInHand(s).wire),
  'gauge.steel': () => material('musicWire').density.value.toFixed(0),
  'gauge.density': (s) => material(wireInHand(s).wire.material).density.value.toFixed(0),
  'gauge.eqD': (s) => millimetres(wireInHand(s).wire.diameter).toFixed(4),
  'gauge.eqL': (s) => plainPull(s).speakingLength.toFixed(4),
  'gauge.eqF': (s) => plainPull(s).frequency.toFixed(1),
  'gauge.eqT': (s) => forceNumber(plainPull(s).tension, 'mm-N'),
  'gauge.plainPull': (s) => formatForce(plainPull(s).tension, s.units),
  'gauge.plainGauge': (s) => exactGauge(plainGauge(s), s.units),
  'gauge.plainNext': (s) => exactGauge(plainGauge(s) + 1, s.units),
  'gauge.thousandth': (s) => (s.units === 'in-lb' ? 'one thousandth' : '0.0254\u00a0mm'),
  'gauge.turn': ({ units }) => {
    const { letter, marksPerTurn } = rulingOf(units);
    return `${letter(marksPerTurn)}\u00a0${thicknessUnit(units)}`;
  },
  'gauge.stepRule': (s) => formatShare(2 / plainGauge(s), 1),
  'gauge.stepExact': (s) => formatShare((1 + 1 / plainGauge(s)) ** 2 - 1, 1),

  'gauge.tolerance': (s) => {
    const { tolerance } = measured(wireInHand(s).wire, wireInHand(s).wire.diameter);
    return tolerance === undefined
      ? `no standard says so for ${materialName(wireInHand(s).wire)} strings`
      : `for this wire it is up to ${formatThickness(thousandths(tolerance), s.units, s.units === 'in-lb' ? 1 : 2)} either way`;
  },
  'gauge.toleranceMass': () => {
    const { massTolerance = 0 } = measured(
      { kind: 'plain', diameter: fromMillimetres(0.254), material: 'musicWire' },
      fromMillimetres(0.254),
    );
    return formatShare(massTolerance, 1);
  },
  'gauge.tenDoubt': () =>
    formatShare(
      pullDoubt(
        pullOf({
          gauge: plain(10),
          note: 'E4',
          a4: STANDARD_A4,
          speakingLength: fromInches(25.5),
        }),
      ),
      1,
    ),
  'gauge.millimetres': (s) => `${millimetres(wireInHand(s).wire.diameter).toFixed(3)}\u00a0mm`,
  'gauge.hundredth': (s) => {
    const d = millimetres(wireInHand(s).wire.diameter);
    return formatShare((1 + 0.01 / d) ** 2 - 1, 1);
  },

  'gauge.less': (s) => formatForce(own(s).tension * 0.88, s.units),
};
