/**
 * A figure's way to the store. What the figure drags itself it follows at every step; what another figure drags, at every
 * third beat; and what moves while it can't be seen, at the end. Everything else is the store's.
 *
 * What moves at every step may be painted: `paints` gives an attribute one function of the state, which the markup uses too.
 * In a drag of the figure's own it is then written at once, past all that reacts, and the state goes into the store at the beat.
 * `tells` does the same at the beat, for letters.
 */
import { untrack } from 'svelte';
import type { Attachment } from 'svelte/attachments';
import { atBeat, moving } from '../../instrument/moving.svelte.ts';
import type { State } from '../../instrument/schema.ts';
import { store } from '../../instrument/store.svelte.ts';

/** What a drag has painted and the store does not know yet; it holds for as long as nobody else has changed the state. */
let ahead: { readonly from: State; readonly to: State; readonly by: Follower } | undefined;

const shown = (): State => untrack(() => store.state);

/** The state as it is, painted or told. Units that were chosen while the hand moved on change nothing of what it has moved. */
function latest(): State {
  const now = shown();
  if (!ahead) return now;
  if (ahead.from === now) return ahead.to;
  if (!isSameButUnits(ahead.from, now)) return now;
  const { units, hand } = now;
  return { ...ahead.to, units, hand };
}

/** Whether two states show the same, in whatever units and for whichever hand. */
const isSameButUnits = (one: State, other: State): boolean =>
  (Object.keys({ ...one, ...other }) as (keyof State)[]).every(
    (part) => part === 'units' || part === 'hand' || one[part] === other[part],
  );

function catchUp(): void {
  const was = ahead;
  const next = latest();
  ahead = undefined;
  if (next === shown()) was?.by.paint(next);
  else store.set(next);
  was?.by.letter(next);
}
/**
 * Between the beats that reach all of the page a figure that letters itself need not pass through what reacts, and one that paints
 * tells nobody but itself.
 */
moving.beforeBeat = (isFar) => {
  const { by } = moving;
  const isPainted = by instanceof Follower && by.isPainted;
  if (isFar || !isPainted || (ahead && ahead.from !== shown())) {
    catchUp();
    return true;
  }
  // A hand that has moved nothing since the last beat has nothing to tell.
  if (!ahead) return false;
  if (ahead.by.isLettered) ahead.by.letter(ahead.to);
  else {
    catchUp();
    moving.near += 1;
  }
  return false;
};

type Paint = (state: State) => void;

export class Follower {
  // A figure counts as seen until the browser says otherwise, so that nothing is missed before it does.
  #seen = $state.raw(true);
  readonly #places = new Map<Element, boolean>();
  readonly #painters = new Set<Paint>();
  readonly #tellers = new Set<Paint>();

  get state(): State {
    // Whoever makes the next state out of this one needs it as it is.
    if (!$effect.tracking()) return latest();
    if (!this.#seen) return store.settled;
    if (!moving.any || !moving.by) return store.state;
    if (moving.by !== this) return store.told;
    // What is painted need not be worked out again at the beat: it is as it was painted, and reacts when the hand lets go.
    return this.isPainted ? latest() : store.state;
  }

  get settled(): State {
    return store.settled;
  }

  get told(): State {
    if (!this.#seen) return store.settled;
    // The same goes for what `tells` writes at the beat.
    if (!moving.any || moving.by !== this) return store.told;
    if (this.isLettered) return latest();
    void moving.near;
    return atBeat(() => store.state);
  }

  /** For words in the page's flow, which lay the page out: they follow a drag of the figure's own as all else on the page does. */
  get afar(): State {
    return this.#seen ? store.told : store.settled;
  }

  get isPainted(): boolean {
    return this.#painters.size > 0;
  }

  /** Whether it tells of its own drag by itself, with `tells`. */
  get isLettered(): boolean {
    return this.#tellers.size > 0;
  }

  set(next: State): void {
    moving.by = this;
    if (moving.any && this.isPainted) {
      ahead = { from: shown(), to: next, by: this };
      this.paint(next);
    } else {
      ahead = undefined;
      store.set(next);
      // The page was told of nothing if that comes before a beat, and would not write again what it has written.
      if (moving.givenUp) this.paint(next);
    }
  }

  /** Writes all that is painted as it is in a state. */
  paint(state: State): void {
    for (const paint of this.#painters) paint(state);
  }

  /** Writes all that is told, with `tells`. */
  letter(state: State): void {
    for (const tell of this.#tellers) tell(state);
  }

  /** Has something painted, or told; returns the way to stop. */
  painted(paint: Paint, isTold = false): () => void {
    const all = isTold ? this.#tellers : this.#painters;
    all.add(paint);
    return () => all.delete(paint);
  }

  /** Goes on an element, one of whose attributes is this function of the state, here as in the markup; `isTold` at the beat. */
  paints(name: string, value: (state: State) => string | number, isTold = false): Attachment {
    return (element) =>
      this.painted((state) => {
        const text = String(value(state));
        if (element.getAttribute(name) !== text) element.setAttribute(name, text);
      }, isTold);
  }

  /** The same for the one text in an element, told at the beat. */
  tells(value: (state: State) => string): Attachment {
    return ({ firstChild }) =>
      this.painted((state) => {
        const text = value(state);
        if (firstChild instanceof Text && firstChild.data !== text) firstChild.data = text;
      }, true);
  }

  commit(): void {
    catchUp();
    store.commit();
    // A drag that came back to where it began changes nothing that reacts, and may have been painted a hair beside it.
    this.paint(shown());
    this.letter(shown());
  }

  change(next: State): void {
    store.change(next);
  }

  open(): Promise<void> {
    return store.open();
  }

  /** Goes on what the figure draws. */
  readonly watch: Attachment<Element> = (element) => {
    const watcher = new IntersectionObserver((entries) => {
      this.#places.set(element, entries.at(-1)?.isIntersecting ?? true);
      this.#look();
    });
    watcher.observe(element);
    return () => {
      watcher.disconnect();
      this.#places.delete(element);
      this.#look();
    };
  };

  // A figure may hold two sheets and show one.
  #look(): void {
    const places = [...this.#places.values()];
    this.#seen = places.length === 0 || places.includes(true);
  }
}
