/**
 * The one state of a page, shared by all its figures: reactive, undoable and kept in the link. Snapshots are immutable; a
 * figure reads `store.state` and writes through `set`, `commit` and `change`.
 *
 * A page shows the reader's own, or a visit: what a link, an example or a job brought, which changes nothing of the reader's
 * until it is kept. What figures try out (`trial`) is never the reader's own.
 */
import { Held } from './held.svelte.ts';
import { encode } from './link.ts';
import { fromAfar, moving } from './moving.svelte.ts';
import { untried } from './own.ts';
import type { State } from './schema.ts';
import { HAND } from './hand.svelte.ts';
import { recall } from './storage.ts';

class Store extends Held {
  #opened = false;

  /** What words and numbers tell: `state`, but in a drag at every beat only, and in a figure's at every third. */
  get told(): State {
    return fromAfar(() => this.state);
  }

  get canUndo(): boolean {
    return this.past.length > 0;
  }

  get canRedo(): boolean {
    return this.future.length > 0;
  }

  /** Shows a state without settling it: every step of a drag. */
  set(next: State): void {
    this.state = next;
  }

  /**
   * Settles what is shown: one step of undo, and in the link. What it changes of the reader's own is remembered. An instrument
   * that is changed during a visit becomes one of the reader's own; what is changed of a job, or of what is to be strung, is kept as a job.
   */
  commit(): void {
    const { settled: before, own, visiting, tail } = this;
    if (this.state === before) return;
    // A drag that was given up, or that came back by itself, has changed nothing: to undo it would do nothing.
    if (moving.givenUp || encode(this.state) === encode(before)) {
      this.state = before;
      return;
    }
    const { mine, other, units, hand } = this.state;
    const isJob = visiting && (tail || (mine === before.mine && other !== before.other));
    if (!isJob && (!visiting || mine !== before.mine)) this.adopt(this.state);
    else {
      this.push();
      if (units !== before.units || hand !== before.hand) {
        this.own = { ...own, units, hand };
        this.keep();
      }
    }
    this.settle();
    if (isJob) void this.late((late) => late.saveJob(this, tail));
  }

  /** One change at once. */
  change(next: State): void {
    this.set(next);
    this.commit();
  }

  undo(): void {
    this.#turn('past', 'future', 'Taken back.');
  }

  redo(): void {
    this.#turn('future', 'past', 'Done again.');
  }

  tell(notice: string): void {
    this.notice = notice;
  }

  /** Takes up the link's state or the device's memory, once a page. Call it in the browser only. */
  async open(): Promise<void> {
    if (this.#opened) return;
    this.#opened = true;
    const look = (): void => void this.#readLink(false);
    window.addEventListener('popstate', look);
    window.addEventListener('hashchange', look);
    window.addEventListener('keydown', (event) => this.#shortcut(event));
    const remembered = recall('state');
    if (remembered !== undefined) await this.late((late) => late.readMemory(this, remembered));
    if (recall(HAND) !== undefined)
      await import('./hand-memory.ts').then(
        (memory) => memory.recallHand(),
        () => undefined,
      );
    this.unnamed = this.settled;
    await this.#readLink(true);
    this.wake();
    this.#shown();
  }

  /** What waited for the state to be read may be seen from now on: see components/unread.ts. */
  #shown(): void {
    if (typeof document === 'undefined') return;
    const { dataset } = document.documentElement;
    if (this.awake) {
      if ('unread' in dataset) dataset.unread = 'asleep';
      return;
    }
    delete dataset.unread;
    delete dataset.asleep;
  }

  async #readLink(isFirst: boolean): Promise<void> {
    const text = window.location.hash.slice(1);
    if (text === encode(this.settled) + this.tail || (isFirst && text === '')) return;
    await this.late((late) => late.readLink(this, isFirst));
  }

  #turn(from: 'past' | 'future', to: 'past' | 'future', words: string): void {
    const step = this[from].at(-1);
    if (!step) return;
    const { state, visiting, own, tail } = step;
    // The step back to what is left here changes as much of the reader's own as this one does.
    const was = this.tail;
    const here = { state: this.settled, visiting: this.visiting, own: own && this.own, tail: was };
    this[from] = this[from].slice(0, -1);
    this[to] = [...this[to], here];
    this.visiting = visiting;
    this.tail = tail;
    if (own) {
      this.own = untried(own);
      this.keep();
      this.bookkeep(false, to === 'future');
    }
    // What another window has changed meanwhile stays, but for what this step takes back.
    this.state = visiting || own ? state : { ...this.own, trial: state.trial };
    // The same words twice would be heard once.
    this.turned = this.turned === words ? `${words}\u00a0` : words;
    this.settle();
    if (tail || was) void this.late((late) => late.saveJob(this, was));
  }

  #shortcut(event: KeyboardEvent): void {
    if (!(event.ctrlKey || event.metaKey) || event.altKey || event.key.toLowerCase() !== 'z')
      return;
    const target = event.target;
    // In a field the same keys undo typing, which is the browser's to do.
    if (
      target instanceof HTMLElement &&
      target.closest('input, textarea, select, [contenteditable]')
    )
      return;
    event.preventDefault();
    if (event.shiftKey) this.redo();
    else this.undo();
  }
}

/** What ends or keeps a visit, and what takes an instrument from the book, is given this. */
export const held: Held & Store = new Store();

/** Figures read it, and write through its methods alone. */
export const store: Readonly<Store> = held;
