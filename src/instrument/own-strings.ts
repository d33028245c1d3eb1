/** The reader's own strings, from the book to the picks, for as long as a page is open. */
import type { Book } from './book/book.ts';
import { isString, type BookRecord } from './book/schema.ts';
import { openBook } from './book/open.ts';
import { gaugeOf } from './drawer.ts';
import './own-picks.ts';
import { fieldsOf, gaugeOfOwn, ownOf, type OwnString } from './own-string.ts';
import type { Page } from './page.ts';
import { planOf } from './plan.ts';
import type { Gauge, OwnDrawer, State } from './schema.ts';

export interface KeptString {
  readonly id: string;
  readonly own: OwnString;
  /** ms since 1970 */
  readonly changed: number;
}

/** Those of the book that this version can read. */
export const stringsOf = (records: readonly BookRecord[]): readonly KeptString[] =>
  records.flatMap((record) => {
    const own = isString(record) ? ownOf(record) : undefined;
    return own ? [{ id: record.id, own, changed: record.changed }] : [];
  });

/** Changes a string of the book; what a newer version wrote beside it stays. */
export async function changeString(book: Book, id: string, own: OwnString): Promise<void> {
  const lying = book.get(id);
  if (!lying || !isString(lying)) return;
  const { string, ...fields } = fieldsOf(own);
  await book.change(id, { ...fields, string: { ...lying.string, ...string } });
}

/** What picks may come from, for a reader who picks so. */
export const gaugesFor = (kept: readonly KeptString[], from: OwnDrawer['from']): readonly Gauge[] =>
  kept.flatMap(({ own }) => (from === 'stock' && !own.inStock ? [] : (gaugeOfOwn(own) ?? [])));

/** The reader's strings as a state picks from them. */
export async function ownDrawer(from: OwnDrawer['from']): Promise<OwnDrawer> {
  const { records } = await openBook();
  return { from, strings: gaugesFor(stringsOf(records), from) };
}

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);

let follows: Promise<() => void> | undefined;

/** Keeps the picks of a page with the book from now on. */
export async function follow(held: Page): Promise<void> {
  follows ??= openBook().then((book) => {
    const look = (): void => fill(held, stringsOf(book.records));
    book.listen(look);
    return look;
  });
  (await follows)();
}

function fill(held: Page, kept: readonly KeptString[]): void {
  const { drawer } = held.own;
  if (!drawer) return;
  const strings = gaugesFor(kept, drawer.from);
  if (same(strings, drawer.strings)) return;
  const next: OwnDrawer = { ...drawer, strings };
  held.own = { ...held.own, drawer: next };
  held.keep();
  if (held.visiting) return;
  const { state, settled } = held;
  held.settled = { ...settled, drawer: next };
  held.state = state === settled ? held.settled : { ...state, drawer: next };
  held.address(held.settled, false);
}

/** What a visit picks from somebody else's strings, as picks that stand; the reader's own choice of drawer stays. */
export function frozen(state: State, drawer: OwnDrawer | undefined): State {
  const { strings } = planOf(state);
  const { other } = state;
  return {
    ...state,
    drawer,
    other: {
      ...other,
      strings: other.strings.map((string, i) => {
        const best = strings[i]?.best;
        const pick = string.pick ?? (best && gaugeOf(best.construction, other.family));
        return pick ? { ...string, pick } : string;
      }),
    },
  };
}
