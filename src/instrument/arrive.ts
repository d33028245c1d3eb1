/** What a page takes up: what the device remembers, and the address. `held.svelte.ts` reaches all that comes late through it. */
import { followHand } from './handed.svelte.ts';
import { openJob } from './job-here.ts';
import { jobTail } from './job-tail.ts';
import { encode } from './link.ts';
import { decode } from './link-read.ts';
import { untried } from './own.ts';
import type { Page } from './page.ts';
import { leftPast, pastOf, readPast, whenReady } from './past.ts';
import type { State } from './schema.ts';
import { bookkeep, identify, isInBook, listen, rebased, refill, startAnew } from './shelving.ts';
import { canRemember, recall } from './storage.ts';
import { announce, isOwn, showsOther } from './visits.ts';
import { exampleOf, initialState } from './workshop.ts';

export { keepAsJob, saveJob } from './job-here.ts';
export { bookkeep } from './shelving.ts';
export { show } from './visits.ts';

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
      'We couldn’t read what this device remembered, so you see the workshop’s instrument.';
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
  const isMissing = !exampleOf(state.mine) && (!isInBook() || recall('unshelved') !== undefined);
  if (isMissing || list.length > 0) bookkeep(held, !isInBook(), false);
}

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
  // One that changes nothing has been told of before, unless it opened the page.
  if ((arrived || isFirst || !state) && notes.length > 0) held.notice = notes.join(' ');
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

let told = false;

/** Once a page: a reader who has dismissed the sentence knows it. */
export function tellNothingKept(held: Page): void {
  if (!told)
    held.notice =
      'This device keeps nothing between visits. Copy the link to come back to this state.';
  told = true;
}
