/** The steps back that the device remembers: those that changed the reader's own, with the book's entries that they were. */
import { encode } from './link.ts';
import { decode } from './link-read.ts';
import type { Page, Step } from './page.ts';
import type { Instrument, State } from './schema.ts';
import { forget, recall, remember } from './storage.ts';

const MOST_REMEMBERED = 30;

/** Of instruments that are the reader's own: the id in the book. */
export const ids = new WeakMap<Instrument, string>();

// Weights that somebody knows, and picks from the reader's own strings.
const needsMore = /x\d|\/from-/;
let hasMore = false;

/** Goes on as soon as all that a state of this text needs is there: at once, for most. */
export function whenReady(text: string, then: () => void): void | Promise<void> {
  if (hasMore || !needsMore.test(text)) return then();
  return import('./own-picks.ts').then(() => (hasMore = true)).then(then, () => undefined);
}

/** Steps back that are remembered, until what reads them is there; what the page held before is replaced by them. */
let waiting: { readonly list: readonly Past[]; readonly before: readonly Step[] } | undefined;

/** What was done since the remembered steps were asked for: it comes after them. */
const doneSince = ({ past }: Page): readonly Step[] =>
  past.filter((step) => !waiting?.before.includes(step));

/** The steps back that are remembered: those that changed the reader's own. */
export function readPast(
  held: Page,
  list = pastOf(recall('undo')),
  before: readonly Step[] = [],
): void {
  const asked = (waiting = { list, before });
  void whenReady(list.map(({ text }) => text).join(), () => {
    // Another window may have changed them once more.
    if (waiting !== asked) return;
    held.past = [...list.map((past) => stepOf(held, past)), ...doneSince(held)];
    waiting = undefined;
  });
}

export function pastOf(text = '[]'): readonly Past[] {
  try {
    const list: unknown = JSON.parse(text);
    return Array.isArray(list) ? list.filter(isPast) : [];
  } catch {
    return [];
  }
}

/** The steps of a page that was left before it could remember them, and whether what came of them is a new entry of the book. */
export function leftPast(): { readonly list: readonly Past[]; readonly isNew: boolean } {
  const words = recall('step')?.split(' ').filter(Boolean) ?? [];
  const id = recall('own-id');
  const list: Past[] = [];
  let isNew = false;
  for (const text of words)
    if (text === 'new') isNew = true;
    else list.push({ text, ...(id !== undefined && !isNew && { id }) });
  return { list, isNew };
}

interface Past {
  readonly text: string;
  readonly id?: string;
}
const isPast = (value: unknown): value is Past =>
  value !== null && typeof value === 'object' && 'text' in value && typeof value.text === 'string';

/** Read only when it is wanted. */
function stepOf(held: Page, { text, id }: Past): Step {
  let state: State | undefined;
  const read = (): State => {
    state ??= decode(text, held.own).state ?? held.own;
    if (id !== undefined) ids.set(state.mine, id);
    return state;
  };
  return {
    visiting: false,
    tail: '',
    get state() {
      return read();
    },
    get own() {
      return read();
    },
  };
}

/** Remembers the steps back, those too that are still to be read. */
export function rememberPast(held: Page): void {
  const steps = doneSince(held).flatMap(({ own }) => own ?? []);
  const texts = steps.map((own) => ({ text: encode(own), id: ids.get(own.mine) }));
  const past = [...(waiting?.list ?? []), ...texts].slice(-MOST_REMEMBERED);
  forget('step');
  remember('undo', JSON.stringify(past));
}
