/**
 * What a page holds: what it shows, what is the reader's own, the steps of undo; and how each change of it is remembered on the
 * device and put in the address. `store.svelte.ts` is its face; `arrive.ts`, which comes when it is wanted, fills it.
 */
import { encode } from './link.ts';
import { differs, untried } from './own.ts';
import type { State } from './schema.ts';
import type { Page, Step } from './page.ts';
import { recall, remember } from './storage.ts';
import { initialState } from './workshop.ts';

const MOST_UNDO = 200;

type Late = typeof import('./arrive.ts');

export class Held implements Page {
  /** What every figure draws. Replaced, never mutated. */
  state: State = $state.raw(initialState);
  /** What the last commit left, to which undo returns. */
  settled: State = $state.raw(initialState);
  /** The reader's own, with nothing tried on it. Nothing follows it: what changes it changes what is shown too. */
  own: State = initialState;
  visiting: boolean = $state.raw(false);
  /** What the address says behind the state: which job it is of. Empty for none. */
  tail: string = $state.raw('');
  past: readonly Step[] = $state.raw([]);
  future: readonly Step[] = $state.raw([]);
  notice: string = $state.raw('');
  turned: string = $state.raw('');
  /** What stood at an address that names no state, for as long as it names none. */
  unnamed: State | undefined;
  /** Whether something was remembered, or has been done here */
  begun = false;
  awake = false;
  #late: Promise<Late | undefined> | undefined;

  /** One step of undo more, from what was settled last; with the reader's own before, where the step changes that. */
  push(own?: State): void {
    const { settled: state, visiting, tail } = this;
    this.past = [...this.past.slice(-MOST_UNDO + 1), { state, visiting, own, tail }];
    this.future = [];
  }

  /** Makes a state the reader's own; its instrument is a new entry of the book when it comes from a visit. */
  adopt(next: State): void {
    const { own, visiting } = this;
    const changes = differs(next, own);
    const was = encode(own);
    const kept = recall('state') ?? was;
    this.push(changes ? own : undefined);
    this.visiting = false;
    this.tail = '';
    this.own = untried(next);
    this.keep();
    if (!changes) return;
    // For the next page, where this one is left before what remembers the steps back has arrived.
    const isNew = visiting || kept !== was;
    remember('step', `${recall('step') ?? ''} ${kept}${isNew ? ' new' : ''}`);
    this.bookkeep(visiting);
  }

  /** Remembers the reader's own, to come back to. */
  keep(): void {
    if (!remember('state', encode(this.own))) void this.late((late) => late.tellNothingKept(this));
  }

  /** Has the reader's own put in the book, and the steps back remembered. */
  bookkeep(isNew: boolean, undone = false): void {
    void this.late((late) => late.bookkeep(this, isNew, undone));
  }

  settle(push = false): void {
    this.settled = this.state;
    this.begun = true;
    this.wake();
    this.address(this.state, push);
  }

  address(state: State, push: boolean): void {
    const { history, location } = window;
    const link = `#${encode(state)}${this.tail}`;
    if (!push && location.hash === '') this.unnamed = undefined;
    // An entry that shows the reader's own will show it as it is then.
    const mark = this.visiting ? null : 'own';
    try {
      if (push) history.pushState(mark, '', link);
      else history.replaceState(mark, '', link);
    } catch {
      // A browser may refuse many changes in a short time; the next one brings the link up to date.
    }
  }

  /** The page was built for the workshop's instrument. Once it is to show another, all of it must come alive, or paper would show two. */
  wake(): void {
    if (this.awake || this.settled === initialState) return;
    this.awake = true;
    import('./awake.ts').then(
      ({ awaken }) => awaken(),
      () => {
        this.awake = false;
        delete document.documentElement.dataset.unread;
      },
    );
  }

  /** What comes only when there is a link or a memory to read, or an instrument to keep. */
  async late(then: (late: Late) => unknown): Promise<void> {
    // Asked for once: later, what is pressed is done before the page can be left.
    const late = await (this.#late ??= import('./arrive.ts').catch(() => (this.#late = undefined)));
    if (late) await then(late);
    else this.notice = 'Part of this page didn’t load. Load it again.';
  }
}
