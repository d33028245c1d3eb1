/** What a page takes up: the device's memory, an address, another window's changes; and how a visit ends or is kept. */
import { followHand } from './handed.svelte.ts';
import { encode } from './link.ts';
import { jobId, jobTail } from './job-tail.ts';
import { decode } from './link-read.ts';
import type { Page } from './page.ts';
import { differs, untried } from './own.ts';
import type { Instrument, State } from './schema.ts';
import { canRemember, forget, isGuest, recall, remember, whenRemembered } from './storage.ts';
import { ids, leftPast, pastOf, readPast, rememberPast, whenReady } from './past.ts';
import { asTarget, exampleOf, initialState, workshop } from './workshop.ts';

/** ms; what is changed several times in a row goes into the book once */
const SOON = 400;

/** Entries that a change on this page made; to undo the change puts them away. */
const made = new Set<string>();
/** Of the reader's own instrument, as the book was last told. */
let current: string | undefined;

const newId = (): string => crypto.getRandomValues(new Uint32Array(4)).join('-');

/** Takes up what the device remembers. Where the reader was quicker, it is what undo comes back to. */
export function readMemory(held: Page, remembered: string): void | Promise<void> {
  followHand(held);
  const id = recall('own-id');
  const past = pastOf(recall('undo'));
  return whenReady(remembered, () => {
    if (held.settled === initialState) return takeMemory(held, remembered);
    readPast(held, [...past, { text: remembered, ...(id !== undefined && { id }) }]);
    bookkeep(held, false, false);
  });
}

function takeMemory(held: Page, remembered: string): void {
  const { state } = decode(remembered, initialState);
  if (!state) {
    held.notice =
      'What this device remembered could not be read; the workshop’s instrument stands in.';
    return;
  }
  held.begun = true;
  const { state: shown } = held;
  held.own = held.settled = untried(state);
  // A drag may have begun meanwhile.
  held.state = shown === initialState ? held.own : rebased(shown, initialState, held.own);
  identify(held);
  const { list, isNew } = leftPast();
  readPast(held, [...pastOf(recall('undo')), ...list]);
  if (isNew) startAnew(held);
  listen(held);
  refill(held);
  if (recall('job') !== undefined) void import('./book/keep-job.ts').then((m) => m.saveLeft());
  // What an earlier version, or a page that was left too soon, has not put in the book.
  const isMissing =
    !exampleOf(state.mine) && (current === undefined || recall('unshelved') !== undefined);
  if (isMissing || list.length > 0) bookkeep(held, current === undefined, false);
}

/** Whose entry of the book the remembered instrument is. */
function identify({ own }: Page): void {
  current = recall('own-id');
  if (current !== undefined) ids.set(own.mine, current);
}

/** What came of a visit, or was done before this was read, is no entry of the book yet. */
function startAnew({ own }: Page): void {
  current = undefined;
  ids.delete(own.mine);
}

/** Picks of the reader's own come from the strings of the book as they are now. */
function refill(held: Page): void {
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

let told = false;

/** Once a page: a reader who has dismissed the sentence knows it. */
export function tellNothingKept(held: Page): void {
  if (!told)
    held.notice =
      'This device keeps nothing between visits. Copy the link to come back to this state.';
  told = true;
}

let listens = false;

/** What happens elsewhere, and at the end of the page. */
function listen(held: Page): void {
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
function rebased(next: State, before: State, own: State): State {
  let state = next;
  for (const part of ['mine', 'other', 'units', 'hand', 'drawer', 'aim', 'bend'] as const)
    if (next[part] === before[part] && next[part] !== own[part])
      state = { ...state, [part]: own[part] };
  return state;
}

/** Whether a state shows something else than the reader's own does, in whatever units and for whichever hand. */
const showsOther = (shown: State, own: State): boolean =>
  differs({ ...shown, units: own.units, hand: own.hand }, own);

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);

/** Whether somebody has described or strung something in it: it is more than the workshop's instruments. */
const isOwn = ({ mine, other }: State): boolean =>
  !exampleOf(mine) || !workshop.some((w) => same(asTarget(w), other));

/** Takes up the address. */
export function readLink(held: Page, isFirst: boolean): void | Promise<void> {
  followHand(held);
  return whenReady(window.location.hash, () => takeLink(held, isFirst));
}

function takeLink(held: Page, isFirst: boolean): void {
  const text = window.location.hash.slice(1);
  if (text === encode(held.settled) + held.tail) return;
  if (text === '') {
    if (held.unnamed) arrive(held, held.unnamed, isFirst);
    return;
  }
  const { state, notes } = decode(text, held.settled);
  const arrived = state && arrive(held, asHere(held, state), isFirst, jobTail(text));
  if ((arrived || !state) && notes.length > 0) held.notice = notes.join(' ');
}

/** A link never changes the reader's units or hand; an entry of the history that showed the reader's own shows it as it is now. */
function asHere({ begun, own }: Page, state: State): State {
  if (!begun) return state;
  return isOwn(own) && window.history.state === 'own'
    ? { ...own, trial: state.trial }
    : { ...state, units: own.units, hand: own.hand };
}

/** Takes a state up from an address; false when it is the one that stands. */
function arrive(held: Page, state: State, isFirst: boolean, tail = ''): boolean {
  if (encode(state) === encode(held.settled) && tail === held.tail) return false;
  const { own, begun } = held;
  // On a device that remembers nothing there is nothing to come back to.
  const isVisit =
    tail !== '' || (canRemember() && showsOther(state, own) && (isOwn(own) || isOwn(state)));
  const isStep = begun || !isFirst;
  if (isVisit || held.visiting) {
    if (isStep) held.push();
    held.visiting = isVisit;
  } else if (isStep) held.adopt(state);
  else {
    held.own = untried(state);
    held.keep();
  }
  held.tail = tail;
  held.state = held.settled = state;
  held.wake();
  announce(held);
  if (tail !== '') void openJob(held);
  return true;
}

/** Has the bar of a visit brought, now or as soon as what brings it is there. */
function announce({ visiting }: Page): void {
  if (!visiting || typeof document === 'undefined') return;
  document.documentElement.dataset.visit = '';
  window.dispatchEvent(new Event('visit'));
}

/** Shows another instrument, as a step of the browser's history. What the reader has described is left alone. */
export function show(held: Page, next: State): void {
  const { settled, own } = held;
  if (encode(next) === encode(settled)) return;
  // The place that is left must name its state, or Back would find nothing there to return to.
  held.address(settled, false);
  if (held.visiting || isOwn(own)) {
    held.push();
    held.tail = '';
    held.visiting = showsOther(next, own);
  } else held.adopt(next);
  held.state = next;
  held.settle(true);
  announce(held);
}

/** Makes what is visited the reader's own. */
export function keepVisit(held: Page): void | Promise<void> {
  const { settled } = held;
  if (!settled.drawer && !held.own.drawer) return adoptVisit(held, settled);
  return import('./own-strings.ts').then(
    ({ frozen }) => adoptVisit(held, frozen(settled, held.own.drawer)),
    () => void (held.notice = 'A part of this page did not arrive. Press again.'),
  );
}

function adoptVisit(held: Page, state: State): void {
  held.adopt(state);
  held.state = state;
  held.settle();
}

/** Ends a visit. */
export function leaveVisit(held: Page): void {
  held.push();
  held.tail = '';
  held.visiting = false;
  held.state = held.own;
  held.settle(true);
}

/** Takes an instrument of the book as the reader's own. */
export function take(held: Page, mine: Instrument, id: string): void {
  const next = { ...held.own, mine, trial: { string: 0 } };
  ids.set(mine, id);
  held.adopt(next);
  held.state = next;
  held.settle(true);
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

/** Jobs that a change on this page made; to undo the change puts them away. */
const madeJobs = new Set<string>();
let jobTimer: ReturnType<typeof setTimeout> | undefined;
const theJobs = () => import('./book/keep-job.ts');

/** Takes up the job that the address names or carries: its picks as they were made. */
async function openJob(held: Page): Promise<void> {
  const { tail, settled } = held;
  const jobs = await theJobs().catch(() => undefined);
  const found = await jobs?.jobAt(tail, settled);
  // The reader was quicker.
  if (held.tail !== tail || held.settled !== settled || held.state !== settled) return;
  if (!found) {
    // Of another device, or gone from the book: what the address shows is a visit all the same.
    held.tail = '';
    held.visiting = canRemember() && showsOther(settled, held.own);
  } else held.state = held.settled = found;
  held.address(held.settled, false);
}

/** Keeps what stands on the bench as a job, and goes on in that. */
export async function keepAsJob(held: Page): Promise<void> {
  const { tail, settled } = held;
  held.push();
  await newJob(held, tail, settled);
}

/** `tail` may carry a job that somebody sent, in which `sent` was set up. */
async function newJob(held: Page, tail: string, sent: State): Promise<void> {
  const id = newId();
  madeJobs.add(id);
  held.tail = `/j-${id}`;
  held.visiting = true;
  held.settle(true);
  announce(held);
  const { settled } = held;
  const left = leave(id, settled);
  const jobs = await theJobs().catch(() => undefined);
  if (jobs) tellTrouble(held, left, await jobs.makeJob(id, settled, tail, sent));
}

/** After a change on the bench: what is open is kept as a job, or made one. `was` says what was open before. */
export function saveJob(held: Page, was: string): void {
  if (isGuest()) return;
  const { tail, settled } = held;
  const id = jobId(tail);
  const before = jobId(was);
  if (before !== undefined && before !== id && madeJobs.has(before))
    void theJobs().then((jobs) => jobs.putAwayJob(before));
  if (id !== undefined) {
    const left = leave(id, settled);
    clearTimeout(jobTimer);
    jobTimer = setTimeout(async () => {
      const jobs = await theJobs().catch(() => undefined);
      if (jobs) tellTrouble(held, left, await jobs.saveJob(id, settled));
    }, SOON);
  } else if (tail === was && held.visiting)
    void newJob(held, tail, held.past.at(-1)?.state ?? settled);
}

/** What is on its way into the book: the next page puts it there where this one is left too soon. */
function leave(id: string, state: State): string {
  const left = JSON.stringify({ id, text: encode(state) });
  remember('job', left);
  return left;
}

function tellTrouble(held: Page, left: string, trouble: string | undefined): void {
  if (trouble !== undefined) held.notice ||= trouble;
  // What was changed meanwhile is still on its way.
  else if (recall('job') === left) forget('job');
}
