/**
 * The one state of a page, shared by all its figures: reactive, undoable, remembered on the device and kept in the link.
 * Snapshots are immutable; a figure reads `store.state` and writes through `set`, `commit` and `change`.
 */
import { encode } from './link.ts';
import { atBeat } from './moving.svelte.ts';
import type { State } from './schema.ts';
import { recall, remember } from './storage.ts';
import { initialState } from './workshop.ts';

const MOST_UNDO = 200;
const MEMORY = 'state';

class Store {
  /** What every figure draws. Replaced, never mutated. */
  #state: State = $state.raw(initialState);
  /** What the last commit left, to which undo returns. */
  #settled: State = $state.raw(initialState);
  #past: readonly State[] = $state.raw([]);
  #future: readonly State[] = $state.raw([]);
  #notice: string = $state('');
  #turned: string = $state('');
  /** What stood at an address that names no state, for as long as it names none. */
  #unnamed: State | undefined;
  #opened = false;
  #awake = false;
  #toldOfMemory = false;

  get state(): State {
    return this.#state;
  }

  /** What words and numbers tell: `state`, but in a drag at every beat only. */
  get lettered(): State {
    return atBeat(() => this.#state);
  }

  /** What the last commit left: for what need not be worked out at every step of a drag. */
  get settled(): State {
    return this.#settled;
  }

  /** A quiet sentence for the reader, empty when there is none. */
  get notice(): string {
    return this.#notice;
  }

  /** What undo or redo has just done, for those who don't see it. */
  get turned(): string {
    return this.#turned;
  }

  get canUndo(): boolean {
    return this.#past.length > 0;
  }

  get canRedo(): boolean {
    return this.#future.length > 0;
  }

  /** Shows a state without settling it: every step of a drag. */
  set(next: State): void {
    this.#state = next;
  }

  /** Settles what is shown: one step of undo, remembered, in the link. `visit` makes a step of the browser's history. */
  commit({ visit = false }: { visit?: boolean } = {}): void {
    if (this.#state === this.#settled) return;
    // A drag that was given up has put back what was there: to undo it would do nothing.
    if (encode(this.#state) === encode(this.#settled)) {
      this.#state = this.#settled;
      return;
    }
    this.#past = [...this.#past.slice(-MOST_UNDO + 1), this.#settled];
    this.#future = [];
    // The place that is left must name its state, or Back would find nothing there to return to.
    if (visit) this.#address(this.#settled, false);
    this.#settle(visit);
  }

  /** One change at once. */
  change(next: State, options: { visit?: boolean } = {}): void {
    this.set(next);
    this.commit(options);
  }

  undo(): void {
    const previous = this.#past.at(-1);
    if (!previous) return;
    this.#past = this.#past.slice(0, -1);
    this.#future = [...this.#future, this.#settled];
    this.#state = previous;
    this.#turned = this.#again('Taken back.');
    this.#settle(false);
  }

  redo(): void {
    const next = this.#future.at(-1);
    if (!next) return;
    this.#future = this.#future.slice(0, -1);
    this.#past = [...this.#past, this.#settled];
    this.#state = next;
    this.#turned = this.#again('Done again.');
    this.#settle(false);
  }

  /** The same words twice would be heard once. */
  #again = (words: string): string => (this.#turned === words ? `${words}\u00a0` : words);

  tell(notice: string): void {
    this.#notice = notice;
  }

  /** Takes up the link's state or the device's memory, once a page. Call it in the browser only. */
  async open(): Promise<void> {
    if (this.#opened) return;
    this.#opened = true;
    window.addEventListener('popstate', () => void this.#readLink({ push: true }));
    window.addEventListener('hashchange', () => void this.#readLink({ push: true }));
    window.addEventListener('keydown', (event) => this.#shortcut(event));
    const remembered = recall(MEMORY);
    if (remembered !== undefined) await this.#readMemory(remembered);
    this.#unnamed = this.#settled;
    await this.#readLink({ push: remembered !== undefined });
    this.#wake();
    this.#shown();
  }

  /** What waited for the state to be read may be seen from now on: see components/unread.ts. */
  #shown(): void {
    if (typeof document === 'undefined') return;
    const { dataset } = document.documentElement;
    if (this.#awake) {
      if ('unread' in dataset) dataset.unread = 'asleep';
      return;
    }
    delete dataset.unread;
    delete dataset.asleep;
  }

  /** The page was built for the workshop's instrument. Once it is to show another, all of it must come alive, or paper would show two. */
  #wake(): void {
    if (this.#awake || this.#settled === initialState) return;
    this.#awake = true;
    import('./awake.ts').then(
      ({ awaken }) => awaken(),
      () => {
        this.#awake = false;
        delete document.documentElement.dataset.unread;
      },
    );
  }

  async #readMemory(remembered: string): Promise<void> {
    const decode = await this.#reader();
    // A reader who was quicker than the memory has chosen already.
    if (!decode || this.#state !== initialState) return;
    const { state } = decode(remembered, initialState);
    if (state) this.#state = this.#settled = state;
    else
      this.tell(
        'What this device remembered could not be read; the workshop’s instrument stands in.',
      );
  }

  /** The part that reads links comes when there is one to read: a first visit does without it. */
  async #reader(): Promise<typeof import('./link-read.ts').decode | undefined> {
    try {
      return (await import('./link-read.ts')).decode;
    } catch {
      this.tell(
        'A part of this page did not arrive, so the link could not be read. Load it again.',
      );
      return undefined;
    }
  }

  async #readLink({ push }: { push: boolean }): Promise<void> {
    const text = window.location.hash.slice(1);
    if (text === encode(this.#settled)) return;
    if (text === '') {
      if (this.#unnamed) this.#adopt(this.#unnamed, push);
      return;
    }
    const decode = await this.#reader();
    if (!decode) return;
    const { state, notes } = decode(text, this.#settled);
    if (!state && notes.length > 0) this.tell(notes.join(' '));
    if (state && this.#adopt(state, push) && notes.length > 0) this.tell(notes.join(' '));
  }

  /** Takes a state up from an address; false when it is the one that stands. */
  #adopt(state: State, push: boolean): boolean {
    if (encode(state) === encode(this.#settled)) return false;
    if (push) {
      this.#past = [...this.#past.slice(-MOST_UNDO + 1), this.#settled];
      this.#future = [];
    }
    this.#state = this.#settled = state;
    this.#keep();
    return true;
  }

  #settle(visit: boolean): void {
    this.#settled = this.#state;
    this.#keep();
    this.#address(this.#state, visit);
  }

  #address(state: State, push: boolean): void {
    const link = `#${encode(state)}`;
    if (!push && window.location.hash === '') this.#unnamed = undefined;
    try {
      if (push) window.history.pushState(null, '', link);
      else window.history.replaceState(window.history.state, '', link);
    } catch {
      // A browser may refuse many changes in a short time; the next one brings the link up to date.
    }
  }

  #keep(): void {
    this.#wake();
    // Once a page: a reader who has dismissed the sentence knows it.
    if (!remember(MEMORY, encode(this.#state)) && !this.#toldOfMemory) {
      this.#toldOfMemory = true;
      this.tell(
        'This device keeps nothing between visits. Copy the link to come back to this state.',
      );
    }
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

export const store = new Store();
