/**
 * What can't be, or must not be: said before anything else. A string that breaks, a weight that no such string has, a pull far
 * beyond or below what such strings pull anywhere, and steel, or its load, on an instrument that was built for nylon.
 *
 * What such strings pull is measured on the trade's own sets on the workshop's instruments, and left generous room.
 */
import { fromThousandths, materials } from '../physics/index.ts';
import { steelOnNylon } from './carrier.ts';
import { isSoft, isWeighed, sortOf, type Family } from './family-names.ts';
import { densityNumber, formatForce, formatLength, formatNote, formatTotal } from './format.ts';
import { moreInstruments } from './more-instruments.ts';
import { once } from './once.ts';
import { planOf } from './plan.ts';
import { lengthOf, pullsOf, totalPull, type Pull } from './pulls.ts';
import type { Gauge, Instrument, State, Units } from './schema.ts';
import { setsOf } from './sets.ts';
import { workshop } from './workshop.ts';

/** Common sense, no source: so far beyond all that the trade strings, something is wrong. */
const BEYOND = 1.75;
const BELOW = 0.5;
/** Nylon's load is what an instrument that was built for it carries; steel's is about twice that. */
const LOAD_OF_NYLON = 1.3;

interface Usual {
  /** N, of one string */
  readonly least: number;
  readonly most: number;
  /** N, of all strings together */
  readonly total: number;
}
/** The trade's strings of a family's sort on the instruments of the workshop, instrument by instrument. */
const strungOf = once((sort: { readonly name: string }): readonly (readonly Pull[])[] => {
  const isOf = ({ strings }: Instrument): boolean => sortOf(strings[0]?.family) === sort.name;
  // A set that goes by its number of strings alone is made for guitars and basses: on a banjo, one for a bass would count.
  const others = moreInstruments.flatMap(({ instrument }) =>
    isOf(instrument) ? [pullsOf(instrument)] : [],
  );
  const guitars = workshop.filter(isOf).flatMap((instrument) => [
    pullsOf(instrument),
    ...setsOf(instrument.strings[0]?.family)
      .filter(({ gauges }) => gauges.length === instrument.strings.length)
      .map(({ gauges }) =>
        pullsOf({
          ...instrument,
          strings: instrument.strings.map((string, i) => ({ ...string, ...gauges[i] })),
        }),
      ),
  ]);
  return [...guitars, ...others];
});
const sorts = new Map<string, { readonly name: string }>();

/** So near in length are two instruments of one kind: a ukulele carries less than a guitar with the same strings. */
const ALIKE = 1.3;

/** The pulls of the trade's strings of a family's sort, on the workshop's instruments about as long (m); on all of them where none is. */
export function usualPulls(family: Family | undefined, speakingLength?: number): Usual {
  const name = sortOf(family);
  const sort = sorts.get(name) ?? { name };
  sorts.set(name, sort);
  const strung = strungOf(sort);
  const near = strung.filter((pulls) =>
    pulls.some((p) => ratio(p.speakingLength, speakingLength ?? p.speakingLength) < ALIKE),
  );
  const counted = near.length > 0 ? near : strung;
  const tensions = counted
    .flat()
    .filter(({ strain }) => strain !== 'broken')
    .map(({ tension }) => tension);
  return {
    least: Math.min(...tensions),
    most: Math.max(...tensions),
    total: Math.max(...counted.map(totalPull)),
  };
}

const ratio = (a: number, b: number): number => Math.max(a / b, b / a);

const densities = (family: 'metal' | 'polymer'): readonly number[] =>
  Object.values(materials).flatMap((m) => (m.family === family ? [m.density.value] : []));
const heaviest = Math.max(...densities('metal'));
const lightestMetal = Math.min(...densities('metal'));
const lightestPolymer = Math.min(...densities('polymer'));
const heaviestPolymer = Math.max(...densities('polymer'));
/** Air between the turns, and a core of filaments, leave no less than so much of a wound string. */
const FULL = 0.55;
const ROOM = 1.1;

/** The least and the most that a string of this gauge can weigh, kg/m, whatever it is made of. */
export function possibleWeights({ kind, gauge, family }: Gauge): { low: number; high: number } {
  const area = (Math.PI / 4) * fromThousandths(gauge) ** 2;
  const soft = isSoft(family);
  const low =
    kind === 'plain'
      ? soft
        ? lightestPolymer
        : lightestMetal
      : isWeighed(family)
        ? lightestPolymer
        : FULL * lightestMetal;
  const high = kind === 'plain' && soft ? heaviestPolymer : heaviest;
  return { low: (low * area) / ROOM, high: high * area * ROOM };
}

const listed = (which: readonly number[]): string =>
  which.length === 1
    ? `String ${which[0]}`
    : `Strings ${which.slice(0, -1).join(', ')} and ${which.at(-1)}`;

/** Alarms on the strings of one instrument; undefined stands for a string that isn't there. */
function stringAlarms(
  name: string,
  pulls: readonly (Pull | undefined)[],
  units: Units,
): readonly string[] {
  const found = (holds: (pull: Pull) => boolean): { which: number[]; first: Pull | undefined } => {
    const which = pulls.flatMap((pull, i) => (pull && holds(pull) ? [i + 1] : []));
    return { which, first: pulls[(which[0] ?? 0) - 1] };
  };
  const impossible = ({ gauge }: Pull): boolean => {
    if (gauge.unitWeight === undefined) return false;
    const { low, high } = possibleWeights(gauge);
    return gauge.unitWeight < low || gauge.unitWeight > high;
  };
  const usualOf = ({ gauge, speakingLength }: Pull): Usual =>
    usualPulls(gauge.family, speakingLength);
  const says: string[] = [];

  const weight = found(impossible);
  if (weight.first) {
    const { gauge } = weight.first;
    const { low, high } = possibleWeights(gauge);
    says.push(
      `${listed(weight.which)} of ${name} can’t weigh ${densityNumber(gauge.unitWeight ?? 0)}\u00a0g/m: a ${gauge.kind} string ${gauge.gauge} thousandths thick weighs ${densityNumber(low, 2)} to ${densityNumber(high, 2)}.`,
    );
  }
  const broken = found(({ strain }) => strain === 'broken');
  if (broken.first)
    says.push(
      `${listed(broken.which)} of ${name} ${broken.which.length === 1 ? 'breaks' : 'break'}: ${formatNote(broken.first.note)} is too high for ${formatLength(broken.first.speakingLength, units)}.`,
    );
  const heavy = found((p) => p.strain !== 'broken' && p.tension > BEYOND * usualOf(p).most);
  const most = (which: readonly number[]): string =>
    formatForce(Math.max(...which.map((number) => pulls[number - 1]?.tension ?? 0)), units);
  if (heavy.first) {
    const each = heavy.which.length > 1 ? 'each pull up to' : 'pull';
    says.push(
      `${listed(heavy.which)} of ${name} would ${each} ${most(heavy.which)}. On an instrument of that length such strings pull ${formatForce(usualOf(heavy.first).most, units)} at most.`,
    );
  }
  const slack = found((p) => p.tension < BELOW * usualOf(p).least);
  if (slack.first)
    says.push(
      `${listed(slack.which)} of ${name} would ${slack.which.length > 1 ? 'each pull no more than' : 'pull only'} ${most(slack.which)}, and hang slack.`,
    );
  const strung = pulls.flatMap((pull) => (pull && pull.strain !== 'broken' ? [pull] : []));
  const [first] = strung;
  if (first && totalPull(strung) > BEYOND * usualOf(first).total)
    says.push(
      `All strings of ${name} together would pull ${formatTotal(totalPull(strung), units)}. No set that we know of pulls more than ${formatTotal(usualOf(first).total, units)}.`,
    );
  return says;
}

/** What is wrong with the instrument that feels right, as it is described. */
export const ownAlarms = (mine: Instrument, units: Units): readonly string[] =>
  stringAlarms(mine.name || 'your instrument', pullsOf(mine), units);

/** What must be said before any verdict; empty where all is well. */
export function alarmsOf(state: State): readonly string[] {
  const { mine, other, units } = state;
  const { strings } = planOf(state);
  const name = other.name || 'the instrument to be strung';
  const pulls = strings.map(({ pull }) => pull);
  const strung = pulls.flatMap((pull) => pull ?? []);
  const { builtFor = 'steel' } = other;
  const soft = builtFor !== 'steel';
  const steel = strung.some(({ construction }) => steelOnNylon(builtFor, construction));
  const load = totalPull(strung.filter(({ strain }) => strain !== 'broken'));
  // Both may go by one name: then what is said of both is said once.
  return [
    ...new Set([
      ...(steel
        ? [
            `Don’t string it like that: ${name} is built for ${builtFor}, and here it would get steel. Its pull can tear the bridge off and fold the top.`,
          ]
        : soft &&
            load >
              LOAD_OF_NYLON *
                usualPulls(
                  builtFor === 'gut' ? 'violin, gut' : 'classical, nylon',
                  lengthOf(other, 0),
                ).total
          ? [
              `Don’t string it like that: ${name} is built for ${builtFor}, and ${formatTotal(load, units)} is the load of steel. It can tear the bridge off and fold the top.`,
            ]
          : []),
      ...stringAlarms(name, pulls, units),
      ...ownAlarms(mine, units),
    ]),
  ];
}
