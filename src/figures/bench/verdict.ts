/** What the sheet says of a difference: of pull alone until the reader looks at the bends, then of all three. */
import type { BentString } from '../../instrument/bends.ts';
import { feltWords } from '../../instrument/format.ts';
import type { Plan } from '../../instrument/plan.ts';
import type { Sensation } from '../../physics/index.ts';

type Bends = readonly (BentString | undefined)[];

const sensations: readonly Sensation[] = ['pull', 'push', 'travel'];

/** The verdict on one string, with what speaks for it: "travel: depends on the hand". */
export function verdictText(bent: BentString): string {
  if (bent.breaks) return 'may break in the bend';
  const { verdict } = bent;
  if (!verdict) return 'bend not judged';
  if (verdict === 'probably not felt') return verdict;
  const by = sensations.filter((s) => bent[s]?.felt === verdict);
  return `${listed(by)}: ${verdict}`;
}

const listed = (words: readonly string[]): string =>
  words.length > 1 ? `${words.slice(0, -1).join(', ')} and ${words.at(-1)}` : (words[0] ?? '');

/** Once pull, push and travel are judged. */
function bentVerdict(bends: readonly (BentString | undefined)[]): string {
  const strung = bends.filter((b) => b !== undefined);
  const breaking = strung.filter((b) => b.breaks).length;
  if (breaking > 0)
    return `${strings(breaking, strung.length)} may break in this bend; the sheet says which.`;
  const judged = strung.filter((b) => b.verdict);
  if (judged.length === 0) return 'No bend can be judged here.';
  const outside = judged.filter((b) => b.verdict !== 'probably not felt').length;
  const found =
    outside === 0
      ? 'Pull, push and travel lie inside their inner bands.'
      : `${strings(outside, strung.length)} ${outside === 1 ? 'lies' : 'lie'} outside an inner band, in pull, push or travel; the sheet says which.`;
  const rest = strung.length - judged.length;
  return rest === 0
    ? found
    : `${found} ${rest === 1 ? 'One bend' : `${rest} bends`} can’t be judged.`;
}

/** So many of them, as a sentence begins. */
const strings = (count: number, of: number): string =>
  count === 1 ? 'One string' : count === of ? `All ${of} strings` : `${count} strings`;

function pullVerdict({ strings: all }: Plan): string {
  const outside = all.filter((s) => s.felt && s.felt !== 'probably not felt').length;
  if (outside === 0) return 'Every string’s pull is within 7\u00a0% of the aim.';
  return `${strings(outside, all.length)} ${outside === 1 ? 'lies' : 'lie'} outside the inner band; the sheet says which.`;
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
