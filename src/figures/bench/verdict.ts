/** What the sheet says of a difference: of what the aim weighs, whatever is unfolded on the page. */
import { aimedBends, type BentString } from '../../instrument/bends.ts';
import { withPicks } from '../../instrument/edit.ts';
import { formatDifference, formatTotal } from '../../instrument/format.ts';
import { hand, percentOf } from '../../instrument/hand.svelte.ts';
import { judgedPulls } from '../../instrument/judged.ts';
import { planOf, type Plan } from '../../instrument/plan.ts';
import { pullsOf } from '../../instrument/pulls.ts';
import type { Gauge, State } from '../../instrument/schema.ts';
import type { Judgement, Sensation } from '../../physics/index.ts';

const sensations: readonly Sensation[] = ['pull', 'push', 'travel'];

/** The inner line of the felt band, as it is written. */
const inner = (): string => `${percentOf(hand.low)}\u00a0%`;

/** What a verdict on the pull is called on the sheet. */
export const pullWords = (judgement: Judgement): string =>
  judgement === 'within' ? `pull within ${inner()}` : judgement;

/** The verdict on one string's bend, with what speaks for it: "travel: some hands would tell". */
export function verdictText(bent: BentString): string {
  if (bent.breaks) return 'may break in the bend';
  const { verdict } = bent;
  if (!verdict) return 'bend not judged';
  if (verdict === 'within') return 'all within';
  const by = sensations.filter((s) => bent[s]?.judgement === verdict);
  return `${listed(by)}: ${verdict}`;
}

const listed = (words: readonly string[]): string =>
  words.length > 1 ? `${words.slice(0, -1).join(', ')} and ${words.at(-1)}` : (words[0] ?? '');

/** Which strings it holds of, numbered as the sheet numbers them. */
const numbers = <T>(all: readonly T[], holds: (one: T) => unknown): readonly number[] =>
  all.flatMap((one, i) => (holds(one) ? [i + 1] : []));

/** These of them, as they stand in a sentence. */
function strings(which: readonly number[], of: number): string {
  if (which.length === of && of > 1) return `all ${of} strings`;
  return `string${which.length === 1 ? '' : 's'} ${listed(which.map(String))}`;
}
const begun = (sentence: string): string => sentence.charAt(0).toUpperCase() + sentence.slice(1);

/** Once pull, push and travel are judged. */
function bentVerdict(bends: readonly (BentString | undefined)[]): string {
  const strung = bends.filter((b) => b !== undefined);
  const breaking = numbers(bends, (b) => b?.breaks);
  if (breaking.length > 0)
    return begun(`${strings(breaking, strung.length)} may break in this bend.`);
  const judged = strung.filter((b) => b.verdict);
  if (judged.length === 0) return 'No bend can be judged here.';
  const found = summed(
    bends.map((b) => b?.verdict),
    'Pull, push and travel of every string are within their bands.',
  );
  const rest = strung.length - judged.length;
  return rest === 0
    ? found
    : `${found} ${rest === 1 ? 'One bend' : `${rest} bends`} can’t be judged.`;
}

/** What a hand would make of it: those outside, then those that are too close to tell. */
function summed(all: readonly (Judgement | undefined)[], within: string): string {
  const those = (judgement: Judgement): readonly number[] => numbers(all, (j) => j === judgement);
  const edge = those('close to the edge');
  const near =
    edge.length === 0
      ? ''
      : begun(
          `${strings(edge, all.length)} ${edge.length === 1 ? 'is' : 'are'} close to the edge.`,
        );
  const [nearly, some] = [those('nearly any hand would tell'), those('some hands would tell')];
  const by = (hands: string, which: readonly number[]): readonly string[] =>
    which.length > 0 ? [`${hands} on ${strings(which, all.length)}`] : [];
  const [first, ...rest] = [
    ...by('nearly any hand would notice a difference', nearly),
    ...by(nearly.length > 0 ? 'some hands' : 'some hands would notice a difference', some),
  ];
  if (!first)
    return near ? `No string is clearly off. ${near}` : `You’d probably not notice. ${within}`;
  return `${begun([first, ...rest].join(', '))}. ${near}`.trimEnd();
}

/** How many strings are not surely within the inner band of pull. */
const strayingOf = (state: State): number =>
  judgedPulls(state).filter((j) => j && j.judgement !== 'within').length;

/** What would come of letting plain and wound change places; empty where that brings no string inside. */
export function changingPlaces(state: State): string {
  if (state.aim.kinds === 'any') return '';
  const now = strayingOf(state);
  if (now === 0) return '';
  const left = strayingOf({ ...state, aim: { ...state.aim, kinds: 'any' } });
  if (left >= now) return '';
  return `Let plain and wound change places, and ${left === 0 ? 'none does' : left === 1 ? 'only one does' : `only ${left} do`}.`;
}

const nowhere = (plan: Plan): number => plan.strings.filter((s) => !s.pull).length;

/** What a ceiling on all strings together does; empty without one. */
function ceilingText(state: State): string {
  const { ceiling, total } = planOf(state);
  const { units, aim } = state;
  if (!ceiling)
    return aim.ceiling === 'now'
      ? 'No more than now can’t be kept: what is on now isn’t entered.'
      : '';
  const most = formatTotal(ceiling.most, units);
  return total <= ceiling.most * (1 + 1e-9)
    ? `Together they pull ${formatTotal(total, units)}, no more than ${most}.`
    : `${ceiling.fits ? 'The strings you set yourself pull' : 'Even the lightest strings you can buy pull'} ${formatTotal(total, units)} together, more than ${most}.`;
}

/** A sentence or two for the whole sheet. */
export function sheetVerdict(state: State): string {
  return `${feltVerdict(state)} ${ceilingText(state)}`.trimEnd();
}

function feltVerdict(state: State): string {
  const missing = nowhere(planOf(state));
  if (missing > 0)
    return `No string of the drawer holds at ${missing === 1 ? 'one place' : `${missing} places`}.`;
  const plan = planOf(state);
  const broken = numbers(plan.strings, (s) => s.pull?.strain === 'broken');
  if (broken.length > 0)
    return begun(
      `${strings(broken, plan.strings.length)} ${broken.length === 1 ? 'breaks' : 'break'} as strung here.`,
    );
  if (pullsOf(state.mine).some(({ strain }) => strain === 'broken'))
    return 'A string of the instrument that feels right would break, so there’s no feel to match.';
  const bends = aimedBends(state);
  if (bends) return bentVerdict(bends);
  return `${pullVerdict(state)} ${changingPlaces(state)}`.trimEnd();
}

const pullVerdict = (state: State): string =>
  summed(
    judgedPulls(state).map((j) => j?.judgement),
    `Every string’s pull is within ${inner()} of the aim.`,
  );

/** What a whole set would be like: its heaviest and its lightest difference, and which strings a hand would tell. */
export function setVerdict(state: State, gauges: readonly Gauge[]): string {
  const strung = { ...state, other: withPicks(state.other, gauges) };
  const off = planOf(strung).strings.flatMap(({ difference }) => difference ?? []);
  const [low, high] = [Math.min(...off), Math.max(...off)].map(formatDifference);
  return `${pullVerdict(strung)} ${low === high ? `All at ${low}` : `From ${low} to ${high}`}.`;
}

/** What stands beside one string under “Felt?”. */
export function feltText(state: State, index: number): string {
  const bent = aimedBends(state)?.[index];
  if (bent) return verdictText(bent);
  const judged = judgedPulls(state)[index];
  return judged ? pullWords(judged.judgement) : '';
}
