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
import { planOf } from './plan.ts';
import { lengthOf, pullOf, pullsOf, totalPull, type Pull } from './pulls.ts';
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
const known = new Map<string, Usual>();

/** The pulls of the trade's strings of a family's sort, on the instruments of the workshop. */
export function usualPulls(family: Family | undefined): Usual {
  const sort = sortOf(family);
  const before = known.get(sort);
  if (before) return before;
  const strung = workshop
    .filter(({ strings }) => sortOf(strings[0]?.family) === sort)
    .flatMap((instrument): (readonly Pull[])[] => {
      const sets = setsOf(instrument.strings[0]?.family).filter(
        ({ gauges }) => gauges.length === instrument.strings.length,
      );
      return [
        pullsOf(instrument),
        ...sets.map(({ gauges }) =>
          instrument.strings.map(({ note }, i) =>
            pullOf({
              gauge: gauges[i] ?? { kind: 'plain', gauge: 10 },
              note,
              a4: instrument.a4,
              speakingLength: lengthOf(instrument, i),
            }),
          ),
        ),
      ];
    });
  const all = strung.flat().filter(({ strain }) => strain !== 'broken');
  const tensions = all.map(({ tension }) => tension);
  const usual = {
    least: Math.min(...tensions),
    most: Math.max(...tensions),
    total: Math.max(...strung.map(totalPull)),
  };
  known.set(sort, usual);
  return usual;
}

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
  const usualOf = ({ gauge }: Pull): Usual => usualPulls(gauge.family);
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
  if (heavy.first)
    says.push(
      `${listed(heavy.which)} of ${name} would pull ${formatForce(heavy.first.tension, units)}. Such strings pull ${formatForce(usualOf(heavy.first).most, units)} at most.`,
    );
  const slack = found((p) => p.tension < BELOW * usualOf(p).least);
  if (slack.first)
    says.push(
      `${listed(slack.which)} of ${name} would pull only ${formatForce(slack.first.tension, units)}, and hang slack.`,
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
  const soft = other.builtFor === 'nylon';
  const steel = strung.some(({ construction }) =>
    steelOnNylon(other.builtFor ?? 'steel', construction),
  );
  const load = totalPull(strung.filter(({ strain }) => strain !== 'broken'));
  // Both may go by one name: then what is said of both is said once.
  return [
    ...new Set([
      ...(steel
        ? [
            `Don’t string it so: ${name} is built for nylon, and here it would get steel. Its pull can tear the bridge off and fold the top.`,
          ]
        : soft && load > LOAD_OF_NYLON * usualPulls('classical, nylon').total
          ? [
              `Don’t string it so: ${name} is built for nylon, and ${formatTotal(load, units)} is the load of steel. It can tear the bridge off and fold the top.`,
            ]
          : []),
      ...stringAlarms(name, pulls, units),
      ...ownAlarms(mine, units),
    ]),
  ];
}
