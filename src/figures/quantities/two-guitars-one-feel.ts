/** Numbers of the chapter on choosing strings for a second instrument. */
import {
  formatDensity,
  formatDifference,
  formatForce,
  formatGauge,
  formatLength,
  formatNote,
  lengthNumber,
} from '../../instrument/format.ts';
import { exactGauge, thicknessNumber } from '../../instrument/thickness-text.ts';
import { constructionOf } from '../../instrument/drawer.ts';
import { topString } from '../../instrument/ideal-gauge.ts';
import { lowestPick } from '../../instrument/lowest-pick.ts';
import { compared } from '../../instrument/pair.ts';
import type { Gauge, State } from '../../instrument/schema.ts';
import { fromInches, linearDensity, tensionRatio } from '../../physics/index.ts';
import { residualsOf, summaryOf } from '../choosing/two-necks/residuals.ts';
import type { Quantity } from './common.ts';

const name = (text: string): string => text || 'your instrument';
const thou = (gauge: number): string => gauge.toFixed(2);
/** With all the digits that the reader needs to work on from it. */
const exact = ({ kind, gauge }: Gauge, { units }: State): string =>
  `${exactGauge(gauge, units)}${kind === 'wound' ? '\u00a0w' : ''}`;

const pair: Readonly<Record<string, Quantity>> = {
  'pair.mine': (s) => name(s.mine.name),
  'pair.other': (s) => name(compared(s).other.name),
  'pair.mineScale': (s) => formatLength(s.mine.scale.treble, s.units),
  'pair.otherScale': (s) => formatLength(compared(s).other.scale.treble, s.units),
  'pair.count': (s) => String(s.mine.strings.length),
  'pair.within': (s) => String(summaryOf(residualsOf(s)).within),
  'pair.worst': (s) => {
    const { worst } = summaryOf(residualsOf(s));
    return worst?.picked === undefined
      ? 'none'
      : `${formatNote(worst.note)}, ${formatDifference(worst.picked)}`;
  },
};

const strung: Readonly<Record<string, Quantity>> = {
  'pair.strung': (s) => {
    const pick = residualsOf(s)[0]?.pick;
    return pick ? formatGauge(pick, s.units) : 'none that holds';
  },
  'pair.strungOff': (s) => {
    const picked = residualsOf(s)[0]?.picked;
    return picked === undefined ? 'no difference to give' : formatDifference(picked);
  },
};

const top: Readonly<Record<string, Quantity>> = {
  'pair.note': (s) => formatNote(topString(s).own.note),
  'pair.otherNote': (s) => formatNote(topString(s).left.note),
  'pair.gauge': (s) => exact(topString(s).own.gauge, s),
  'pair.pull': (s) => formatForce(topString(s).own.tension, s.units),
  'pair.left': (s) => formatDifference(topString(s).left.tension / topString(s).own.tension - 1),
  'pair.ratio': (s) => topString(s).ratio.toFixed(4),
  'pair.ideal': (s) => thicknessNumber(topString(s).ideal, s.units, 2),
  'pair.pick': (s) => {
    const { pick } = topString(s);
    return pick ? exact(pick.gauge, s) : 'none that holds';
  },
  'pair.pickPull': (s) => {
    const { pick } = topString(s);
    return pick ? formatForce(pick.tension, s.units) : 'none';
  },
  'pair.difference': (s) => {
    const { difference } = topString(s);
    return difference === undefined ? 'no difference to give' : formatDifference(difference);
  },
  'pair.next': (s) => exact(topString(s).next, s),
  'pair.precision': (s) =>
    s.units === 'in-lb' ? 'thousandths with two decimals' : 'millimetres with three decimals',
  'pair.nextScale': (s) => formatLength(topString(s).nextScale, s.units),
};

const low: Readonly<Record<string, Quantity>> = {
  'pair.lowNote': (s) => formatNote(lowestPick(s).own.note),
  'pair.lowOtherNote': (s) => formatNote(lowestPick(s).left.note),
  'pair.lowGauge': (s) => formatGauge(lowestPick(s).own.gauge, s.units),
  'pair.lowDensity': (s) => formatDensity(lowestPick(s).own.linearDensity),
  'pair.lowLength': (s) => formatLength(lowestPick(s).own.speakingLength, s.units),
  'pair.lowOtherLength': (s) => formatLength(lowestPick(s).left.speakingLength, s.units),
  'pair.lowRatio': (s) => lowestPick(s).ratio.toFixed(4),
  'pair.lowIdeal': (s) => formatDensity(lowestPick(s).own.linearDensity * lowestPick(s).ratio),
  'pair.lowPick': (s) => formatGauge(lowestPick(s).best.gauge, s.units),
  'pair.lowDifference': (s) =>
    formatDifference(lowestPick(s).best.tension / lowestPick(s).own.tension - 1),
};

/** Bare numbers for the equations, lengths in the reader's unit on both sides. */
const equation: Readonly<Record<string, Quantity>> = {
  'eq.pair.L1': (s) => lengthNumber(topString(s).own.speakingLength, s.units),
  'eq.pair.L2': (s) => lengthNumber(topString(s).left.speakingLength, s.units),
  'eq.pair.f1': (s) => topString(s).own.frequency.toFixed(1),
  'eq.pair.f2': (s) => topString(s).left.frequency.toFixed(1),
  // In mm with all the digits that the exact one has, so that the line can be worked out again.
  'eq.pair.d1': (s) => exactGauge(topString(s).own.gauge.gauge, s.units),
  'eq.pair.d2': (s) => thicknessNumber(topString(s).ideal, s.units, 2),
};

const density = (gauge: Gauge): number => linearDensity(constructionOf(gauge));
const step = (kind: Gauge['kind'], from: number, to: number): string =>
  formatDifference(density({ kind, gauge: to }) / density({ kind, gauge: from }) - 1);
/** A wound string's mass with its wraps of phosphor bronze, over its mass as the drawer has it. */
function inBronze(gauge: Gauge): number {
  const construction = constructionOf(gauge);
  if (construction.kind !== 'wound') return 1;
  const wraps = construction.wraps.map((wrap) => ({
    ...wrap,
    material: 'phosphorBronze' as const,
  }));
  return linearDensity({ ...construction, wraps }) / linearDensity(construction);
}
const longer = tensionRatio({ speakingLength: fromInches(27) / fromInches(25.5) });

/** What the prose claims of no instrument in particular. */
const constant: Readonly<Record<string, Quantity>> = {
  'const.tensOn27': () => formatDifference(longer - 1),
  'const.tenIdealOn27': () => thou(10 * (25.5 / 27)),
  'const.nineHalfOn27': () =>
    formatDifference(
      (longer * density({ kind: 'plain', gauge: 9.5 })) / density({ kind: 'plain', gauge: 10 }) - 1,
    ),
  'const.nineToTen': () => step('plain', 9, 10),
  'const.twelveToThirteen': () => step('plain', 12, 13),
  'const.26to28': () => step('wound', 26, 28),
  'const.46to47': () => step('wound', 46, 47),
  'const.16to17': () => step('plain', 16, 17),
  'const.tenTo9half': () => step('plain', 10, 9.5),
  'const.13to12': () => step('plain', 13, 12),
  'const.wound20': () =>
    formatDifference(
      density({ kind: 'wound', gauge: 20 }) / density({ kind: 'plain', gauge: 20 }) - 1,
    ),
  'const.bronze46': () => formatDifference(inBronze({ kind: 'wound', gauge: 46 }) - 1),
  /** How far a wound string's mass strays from the square of its gauge, from 26 to 46 */
  'const.woundGrade': () =>
    formatDifference(
      density({ kind: 'wound', gauge: 46 }) /
        density({ kind: 'wound', gauge: 26 }) /
        (46 / 26) ** 2 -
        1,
    ),
};

export const quantities: Readonly<Record<string, Quantity>> = {
  ...pair,
  ...strung,
  ...top,
  ...low,
  ...equation,
  ...constant,
};
