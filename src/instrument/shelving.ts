/** What is the reader's own goes into the book, and follows what another window does to it. */
import { followHand } from './handed.svelte.ts';
import { decode } from './link-read.ts';
import { differs, untried } from './own.ts';
import type { Page } from './page.ts';
import { ids, readPast, rememberPast, whenReady } from './past.ts';
import type { Instrument, State } from './schema.ts';
import { forget, isGuest, recall, remember, whenRemembered } from './storage.ts';
import { exampleOf, initialState } from './workshop.ts';

/** ms; what is changed several times in a row goes into the book once */
export const SOON = 400;

/** Entries that a change on this page made; to undo the change puts them away. */
const made = new Set<string>();
/** Of the reader's own instrument, as the book was last told. */
let current: string | undefined;

/** Whether the reader's own instrument has an entry in the book. */
export const isInBook = (): boolean => current !== undefined;

/** Of an entry of the book. */
export const newId = (): string => crypto.getRandomValues(new Uint32Array(4)).join('-');

/** Whose entry of the book the remembered instrument is. */
export function identify({ own }: Page): void {
  current = recall('own-id');
  if (current !== undefined) ids.set(own.mine, current);
}

/** What came of a visit, or was done before this was read, is no entry of the book yet. */
export function startAnew({ own }: Page): void {
  current = undefined;
  ids.delete(own.mine);
}

/** Picks of the reader's own come from the strings of the book as they are now. */
export function refill(held: Page): void {
  if (!held.own.drawer || isGuest()) return;
  void import('./own-strings.ts').then(
    ({ follow }) => follow(held),
    () => undefined,
  );
}

/** Remembers the steps back, and puts the reader's own instrument in the book, under its id or as a new entry. */
export function bookkeep(held: Page, isNew: boolean, undone: boolean): void {
  followHand(held);
  if (isGuest()) return;
  listen(held);
  refill(held);
  if (!undone) nameCopy(held);
  const { mine } = held.own;
  const before = current;
  if (exampleOf(mine)) current = undefined;
  else if (ids.has(mine)) current = ids.get(mine);
  else {
    if (isNew || current === undefined) made.add((current = newId()));
    ids.set(mine, current);
  }
  if (current === undefined) forget('own-id');
  else remember('own-id', current);
  rememberPast(held);
  if (undone && before !== undefined && before !== current && made.has(before))
    void putAway(before);
  if (current !== undefined) shelve(held, current, mine);
}

/** A changed example goes by a name of its own. */
function nameCopy(held: Page): void {
  const { mine } = held.own;
  const was = held.past.at(-1)?.state.mine;
  if (!was || mine.name !== was.name || !exampleOf(was) || exampleOf(mine)) return;
  const named = { ...mine, name: `My ${mine.name}` };
  held.own = { ...held.own, mine: named };
  held.keep();
  // A drag may have begun meanwhile.
  const isMoving = held.state !== held.settled;
  const { state } = held;
  held.settled = { ...held.settled, mine: named };
  held.state =
    isMoving && state.mine !== mine
      ? { ...state, mine: { ...state.mine, name: named.name } }
      : { ...state, mine: named };
  if (!isMoving) held.state = held.settled;
  held.address(held.settled, false);
}

let listens = false;

/** What happens elsewhere, and at the end of the page. */
export function listen(held: Page): void {
  if (listens || isGuest()) return;
  listens = true;
  whenRemembered((name, text) => {
    if (name === 'state') followOtherWindow(held, text);
    if (name === 'undo' && !held.visiting) readPast(held, undefined, held.past);
  });
  // What stands in a field when the page is left is entered as if the reader had left the field.
  // It comes before what else is done then: what the field brings is to be kept too.
  const enter = (): void =>
    void document.activeElement?.dispatchEvent(new Event('change', { bubbles: true }));
  window.addEventListener('pagehide', enter, { capture: true });
}

/** Another window has changed the reader's own: what is shown here follows, unless it is a visit. */
const followOtherWindow = (held: Page, text: string): void =>
  void whenReady(text, () => takeFollowed(held, text));

function takeFollowed(held: Page, text: string): void {
  const { state } = decode(text, initialState);
  if (!state) return;
  const before = held.own;
  held.own = untried(state);
  identify(held);
  refill(held);
  if (held.visiting || !differs(held.own, before)) return;
  const { state: shown, settled } = held;
  held.settled = { ...held.own, trial: settled.trial };
  held.state = shown === settled ? held.settled : rebased(shown, settled, held.own);
}

/** A drag goes on from `before`: what it has not changed is taken from `own`. */
export function rebased(next: State, before: State, own: State): State {
  let state = next;
  for (const part of ['mine', 'other', 'units', 'hand', 'drawer', 'aim', 'bend'] as const)
    if (next[part] === before[part] && next[part] !== own[part])
      state = { ...state, [part]: own[part] };
  return state;
}

let timer: ReturnType<typeof setTimeout> | undefined;

function shelve(held: Page, id: string, mine: Instrument): void {
  remember('unshelved', 'x');
  clearTimeout(timer);
  const turn = setTimeout(async () => {
    // Where the book does not arrive, the next page puts it in.
    const book = await import('./book/keep-own.ts').catch(() => undefined);
    if (!book) return;
    const trouble = await book.keepOwn(id, mine);
    if (trouble === undefined && timer === turn) forget('unshelved');
    else held.notice ||= trouble ?? '';
  }, SOON);
  timer = turn;
}

/** Puts an instrument away whose making was taken back. */
async function putAway(id: string): Promise<void> {
  clearTimeout(timer);
  const book = await import('./book/keep-own.ts').catch(() => undefined);
  await book?.putAwayOwn(id);
}
