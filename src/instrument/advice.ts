/** What a plan asks the person at the bench to check and to beware of: a pure function, so that page, print and test agree. */
import { CAUTION_SHARE, felt, noteFrequency } from '../physics/index.ts';
import { steelOnNylon } from './carrier.ts';
import { formatDifference } from './format.ts';
import type { Plan } from './plan.ts';
import type { State } from './schema.ts';

export interface Advice {
  /** What to check after the change, in the order of the work */
  readonly checks: readonly { readonly what: string; readonly why: string }[];
  /** What can hurt somebody or something */
  readonly cautions: readonly string[];
}

const ALWAYS = [
  'Wear eye protection, and slacken a string before it is cut: a string under tension whips, and cut ends are sharp.',
] as const;
const NO_STEEL = 'Steel strings never go on an instrument that was built for nylon.';

const LOADS =
  'What neck, top and bridge may carry is for their maker to say; ask before the load grows.';
const OLD = 'Have a vintage, cracked or unknown instrument seen by a qualified repairer first.';

/** Advice for what the plan strings, against the reference instrument. */
export function adviceFor(state: State, plan: Plan): Advice {
  const strung = plan.strings.flatMap((s) => (s.pull ? [{ ...s, pull: s.pull }] : []));
  const thicker = strung.filter(
    (s) => s.pull.gauge.gauge > (state.mine.strings[s.referenceIndex]?.gauge ?? 0),
  );
  const load = strung.length > 0 ? plan.total / plan.referenceTotal - 1 : 0;
  const near = strung.filter((s) => (s.pull.share ?? 0) > CAUTION_SHARE);
  const tunedUp = strung.some(
    (s) => s.pull.frequency > (noteOn(state, s.referenceIndex) ?? Infinity) * 1.001,
  );

  const builtFor = state.other.builtFor ?? 'steel';
  const steel = strung.filter((s) => steelOnNylon(builtFor, s.pull.construction));

  const checks = [
    {
      what: 'Nut slots',
      why:
        thicker.length > 0
          ? `${stringNumbers(thicker, plan)} thicker than on ${nameOf(state)}; a slot cut for a thinner string pinches, and the string pings or sticks.`
          : 'A thinner string may sit low or rattle in a slot cut for a thicker one.',
    },
    {
      what: 'Relief',
      why: `All strings together pull ${comparedWith(load, nameOf(state))}. Let the neck settle, then look at the relief again.`,
    },
    {
      what: 'Action',
      why: 'It follows the relief: measure it at the twelfth fret only when the relief is right.',
    },
    {
      what: 'Intonation',
      why: 'Another gauge wants another saddle place. Set each string against its octave, fretted as it is played.',
    },
    {
      what: 'Springs',
      why: 'A floating bridge balances the pull. Level it with its springs before anything else is judged.',
    },
    {
      what: 'The prediction',
      why: 'Tune up, weigh or play: write down what differs from this sheet.',
    },
  ];
  const cautions = [
    ...ALWAYS,
    ...(steel.length > 0 ? [] : [NO_STEEL]),
    ...(near.length > 0
      ? [
          `${stringNumbers(near, plan)} above ${CAUTION_SHARE * 100}\u00a0% of the least strength that the standard asks of its wire: tune up slowly, with the face turned away.`,
        ]
      : []),
    ...(load > 0 || tunedUp || felt(load) !== 'you’d be guessing' ? [LOADS] : []),
    OLD,
  ];
  return { checks, cautions };
}

/** "2.1 % more than Redshank’s"; what would be written as nothing is said as alike. */
function comparedWith(load: number, name: string): string {
  const size = formatDifference(Math.abs(load)).replace(/^[+±]/, '');
  if (Number.parseFloat(size) === 0) return `as much as ${name}’s`;
  return `${size} ${load > 0 ? 'more' : 'less'} than ${name}’s`;
}

const nameOf = ({ mine }: State): string => mine.name || 'your instrument';

function noteOn(state: State, index: number): number | undefined {
  const note = state.mine.strings[index]?.note;
  return note === undefined ? undefined : noteFrequency(note, state.mine.a4);
}

function stringNumbers(some: readonly { readonly pull: unknown }[], plan: Plan): string {
  const numbers = some.map((s) => plan.strings.findIndex((p) => p.pull === s.pull) + 1);
  if (numbers.length === plan.strings.length) return 'All strings are';
  const list =
    numbers.length > 1
      ? `${numbers.slice(0, -1).join(', ')} and ${numbers.at(-1)}`
      : String(numbers[0]);
  return numbers.length > 1 ? `Strings ${list} are` : `String ${list} is`;
}
