/** What the sheet says of a difference: of pull alone until the reader looks at the bends, then of all three. */
import type { BentString } from '../../instrument/bends.ts';
import { feltWords } from '../../instrument/format.ts';
import { planOf, type Plan } from '../../instrument/plan.ts';
import type { State } from '../../instrument/schema.ts';
import type { Sensation } from '../../physics/index.ts';

type Bends = readonly (BentString | undefined)[];

const sensations: readonly Sensation[] = ['pull', 'push', 'travel'];

/** The verdict on one string, with what speaks for it: "travel: some hands would tell". */
export function verdictText(bent: BentString): string {
  if (bent.breaks) return 'may break in the bend';
  const { verdict } = bent;
  if (!verdict) return 'bend not judged';
  if (verdict === 'you’d be guessing') return verdict;
  const by = sensations.filter((s) => bent[s]?.felt === verdict);
  return `${listed(by)}: ${verdict}`;
}

const listed = (words: readonly string[]): string =>
  words.length > 1 ? `${words.slice(0, -1).join(', ')} and ${words.at(-1)}` : (words[0] ?? '');

/** Once pull, push and travel are judged. */
function bentVerdict(bends: readonly (BentString | undefined)[]): string {
  const strung = bends.filter((b) => b !== undefined);
  const breaking = numbers(bends, (b) => b?.breaks);
  if (breaking.length > 0) return `${strings(breaking, strung.length)} may break in this bend.`;
  const judged = strung.filter((b) => b.verdict);
  if (judged.length === 0) return 'No bend can be judged here.';
  const outside = numbers(bends, (b) => b?.verdict && b.verdict !== 'you’d be guessing');
  const found =
    outside.length === 0
      ? 'Pull, push and travel lie inside their inner bands.'
      : `${strings(outside, strung.length)} ${outside.length === 1 ? 'lies' : 'lie'} outside an inner band, in pull, push or travel.`;
  const rest = strung.length - judged.length;
  return rest === 0
    ? found
    : `${found} ${rest === 1 ? 'One bend' : `${rest} bends`} can’t be judged.`;
}

/** Which strings it holds of, numbered as the sheet numbers them. */
const numbers = <T>(all: readonly T[], holds: (one: T) => unknown): readonly number[] =>
  all.flatMap((one, i) => (holds(one) ? [i + 1] : []));

/** These of them, as a sentence begins. */
function strings(which: readonly number[], of: number): string {
  if (which.length === of && of > 1) return `All ${of} strings`;
  return `${which.length === 1 ? 'String' : 'Strings'} ${listed(which.map(String))}`;
}

const outsideOf = (plan: Plan): readonly number[] =>
  numbers(plan.strings, (s) => s.felt && s.felt !== 'you’d be guessing');

/** What would come of letting plain and wound change places; empty where that brings no string inside. */
export function changingPlaces(state: State): string {
  if (state.aim.kinds === 'any') return '';
  const now = outsideOf(planOf(state)).length;
  const left = outsideOf(planOf({ ...state, aim: { ...state.aim, kinds: 'any' } })).length;
  if (left >= now) return '';
  return `Let plain and wound change places, and ${left === 0 ? 'none does' : left === 1 ? 'only one does' : `only ${left} do`}.`;
}

function pullVerdict(plan: Plan): string {
  const { strings: all } = plan;
  const outside = outsideOf(plan);
  if (outside.length === 0) return 'Every string’s pull is within 7\u00a0% of the aim.';
  return `${strings(outside, all.length)} ${outside.length === 1 ? 'lies' : 'lie'} outside the inner band of pull.`;
}

/** One sentence for the whole sheet; `bends` is left out while only the pull is judged. */
export function sheetVerdict(plan: Plan, bends?: Bends): string {
  const missing = plan.strings.filter((s) => !s.pull).length;
  if (missing > 0)
    return `No string of the drawer holds at ${missing === 1 ? 'one place' : `${missing} places`}.`;
  return bends ? bentVerdict(bends) : pullVerdict(plan);
}

/** What stands beside one string under “Felt?”. */
export function feltText(plan: Plan, index: number, bends?: Bends): string {
  const { felt, pull } = plan.strings[index] ?? {};
  if (!felt || pull?.strain === 'broken') return '';
  const bent = bends?.[index];
  return bent ? verdictText(bent) : feltWords[felt];
}
