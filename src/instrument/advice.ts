/** What a plan asks the person at the bench to check and to beware of: a pure function, so that page, print and test agree. */
import { CAUTION_SHARE, reachable, stoppedLength } from '../physics/index.ts';
import { steelOnNylon } from './carrier.ts';
import { formatDifference, formatShare } from './format.ts';
import { nowOf } from './now.ts';
import { weighsBends, type Plan, type PlannedString } from './plan.ts';
import type { Pull } from './pulls.ts';
import type { State, Target } from './schema.ts';

export interface Advice {
  /** What to check after the change, in the order of the work */
  readonly checks: readonly { readonly what: string; readonly why: string }[];
  /** What can hurt somebody or something */
  readonly cautions: readonly string[];
}

const ALWAYS = [
  'Wear eye protection, and slacken a string before you cut it: a string under tension whips, and cut ends are sharp.',
] as const;
const NO_STEEL = 'Never put steel strings on an instrument that was built for nylon.';

const LOADS = 'The maker says what neck, top and bridge may carry. Ask before you add to the load.';
const OLD = 'Have a vintage, cracked or unknown instrument seen by a qualified repairer first.';

/** A string thinner than this share of the old one may rattle in its slot: common practice. */
const THINNER = 0.9;
/** Below this share of change nobody sees a neck move: common practice, about a tenth of what the next set makes. */
const SAME_LOAD = 0.01;

/** Advice for what the plan strings, against what is on the same instrument now: never against another one. */
export function adviceFor(state: State, plan: Plan): Advice {
  const { other } = state;
  const strung = plan.strings.flatMap((s, index) =>
    s.pull ? [{ ...s, pull: s.pull, index }] : [],
  );
  const now = nowOf({ other });
  const load =
    now?.total && plan.strings.length === strung.length ? plan.total / now.total - 1 : undefined;
  const near = strung.filter((s) => (s.pull.share ?? 0) > CAUTION_SHARE);
  const tunedUp = strung.some(({ index, pull }) => {
    const was = now?.pulls[index]?.frequency;
    return was !== undefined && pull.frequency > was * 1.001;
  });

  const builtFor = state.other.builtFor ?? 'steel';
  const steel = strung.filter((s) => steelOnNylon(builtFor, s.pull.construction));

  const checks = [
    ...slots(strung, other, plan),
    ...posts(strung, other, plan),
    {
      what: 'Relief',
      why: `${loadWords(load)} Let the neck settle, then look at the relief again.`,
    },
    {
      what: 'Action',
      why: `Set the relief first, then measure this at the ${other.fretless ? 'end of the board' : 'twelfth fret'}.`,
    },
    {
      what: 'Intonation',
      why: other.fretless ? UNFRETTED : INTONATION[other.bridge ?? 'unknown'],
    },
    ...bridgeCheck(other, load),
    ...beyondCheck(state, strung),
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
          `${stringNumbers(near, plan)} above ${CAUTION_SHARE * 100}\u00a0% of the minimum strength in the standard for such wire: tune up slowly, with your face turned away.`,
        ]
      : []),
    ...(load === undefined || load > 0 || tunedUp ? [LOADS] : []),
    OLD,
  ];
  return { checks, cautions };
}

type Strung = PlannedString & { readonly pull: Pull; readonly index: number };
type Check = Advice['checks'][number];

/** A slot is cut for what is on: a thicker string is pinched in it, a much thinner one rattles. */
function slots(strung: readonly Strung[], { strings }: Target, plan: Plan): readonly Check[] {
  if (!strings.some(({ on }) => on))
    return [
      {
        what: 'Nut slots',
        why: 'A slot cut for a thinner string pinches, and the string pings or sticks; in one cut for a thicker string it may rattle.',
      },
    ];
  const over = (s: Strung): number =>
    s.pull.gauge.gauge / (strings[s.index]?.on?.gauge ?? Infinity);
  const [narrow, wide] = [
    strung.filter((s) => strings[s.index]?.on && over(s) > 1),
    strung.filter((s) => strings[s.index]?.on && over(s) < THINNER),
  ];
  const why = [
    ...(narrow.length > 0
      ? [
          `${stringNumbers(narrow, plan)} thicker than what is on now; a slot that was cut for that pinches, and the string pings or sticks.`,
        ]
      : []),
    ...(wide.length > 0
      ? [`${stringNumbers(wide, plan)} much thinner, and may sit low or rattle in the old slot.`]
      : []),
  ];
  return why.length > 0 ? [{ what: 'Nut slots', why: why.join(' ') }] : [];
}

/** What has never gone through this instrument's posts and bridge may not go through them now. */
function posts(strung: readonly Strung[], { strings }: Target, plan: Plan): readonly Check[] {
  const thickest = Math.max(0, ...strings.map(({ on }) => on?.gauge ?? 0));
  if (thickest === 0) return [];
  const more = strung.filter((s) => s.pull.gauge.gauge > thickest);
  return more.length === 0
    ? []
    : [
        {
          what: 'Post and ball end',
          why: `${stringNumbers(more, plan)} thicker than any string on it now. Before you cut it, check that it goes through the post and that its end seats in the bridge.`,
        },
      ];
}

function loadWords(load: number | undefined): string {
  if (load === undefined) return 'A new set changes what the neck carries.';
  if (Math.abs(load) < SAME_LOAD) return 'All strings together pull as much as what is on it now.';
  const size = formatDifference(Math.abs(load)).replace(/^[+±]/, '');
  return `All strings together pull ${size} ${load > 0 ? 'more' : 'less'} than what is on it now.`;
}

const INTONATION = {
  saddles:
    'A different gauge needs its saddle in a different place. Set each string against its octave, fretted as it is played.',
  sprung:
    'A different gauge needs its saddle in a different place. Once the bridge is level, set each string against its octave, fretted as it is played.',
  glued:
    'The saddle stays where it is. Check each string against its octave. Where one is off, the crown of the saddle can be shaped under it.',
  standing:
    'Move the bridge until both outer strings agree with their octaves, then check the ones between.',
  unknown:
    'A different gauge needs its saddle in a different place. Set each string against its octave, fretted as it is played.',
} as const;

const UNFRETTED =
  'Without frets your finger or your bar sets each note. Stop two neighbouring strings at the same place, and check that they’re still in tune with each other.';

function bridgeCheck(
  { bridge: named, bowed }: Pick<Target, 'bridge' | 'bowed'>,
  load: number | undefined,
): readonly Check[] {
  // Under a bow the strings alone hold the bridge (common practice), whether or not somebody has said so.
  const bridge = named ?? (bowed ? 'standing' : undefined);
  if (bridge === 'sprung')
    return [
      {
        what: 'Springs',
        why: `The bridge balances the strings’ pull${load !== undefined && Math.abs(load) >= SAME_LOAD ? `, which is ${load > 0 ? 'more' : 'less'} than now` : ''}. Level it with its springs before you judge anything else.`,
      },
    ];
  if (bridge === 'standing')
    return [
      {
        what: 'Bridge',
        why: 'Only the strings hold it. Change them one at a time, and check that it stays upright and in its place.',
      },
    ];
  return bridge === undefined
    ? [
        {
          what: 'Bridge',
          why: 'If it floats on springs, level it before you judge anything else. Say under “What is on it now” what kind of bridge it is, and you’ll see only the lines for that kind.',
        },
      ]
    : [];
}

/** Where the bend counts, and the job brings the lengths beyond nut and saddle: how much further it goes when the string slips there. */
function beyondCheck(state: State, strung: readonly Strung[]): readonly Check[] {
  const { bend, other } = state;
  const { beyond } = other;
  if (!beyond || !(bend.shown || weighsBends(state))) return [];
  const further = strung.flatMap(({ pull }) => {
    const { construction, speakingLength, tension } = pull;
    if (pull.strain === 'broken' || construction.kind === 'measured') return [];
    const at = stoppedLength({ scaleLength: speakingLength, fret: bend.fret });
    const asked = { construction, speakingLength, tension, at, rise: bend.rise };
    const ends = { beyondNut: beyond.nut, beyondSaddle: beyond.saddle };
    const [held, slipping] = [reachable(asked), reachable({ ...asked, ends })];
    return held && slipping && held.travel > 0 ? [slipping.travel / held.travel - 1] : [];
  });
  if (further.length === 0) return [];
  return [
    {
      what: 'Beyond nut and saddle',
      why: `The bends are worked out with the strings held there. If they slip, you push up to ${formatShare(Math.max(...further))} further for the same rise.`,
    },
  ];
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
