/**
 * A figure's way to the store. What the figure drags itself it follows at every step; what another figure drags, at every
 * beat; and what moves while it can't be seen, at the end. Everything else is the store's.
 */
import type { Attachment } from 'svelte/attachments';
import { moving } from '../../instrument/moving.svelte.ts';
import type { State } from '../../instrument/schema.ts';
import { store } from '../../instrument/store.svelte.ts';

export class Follower {
  // A figure counts as seen until the browser says otherwise, so that nothing is missed before it does.
  #seen = $state(true);
  readonly #places = new Map<Element, boolean>();

  get state(): State {
    // Whoever makes the next state out of this one needs it as it is.
    if (!$effect.tracking()) return store.state;
    if (!this.#seen) return store.settled;
    return moving.any && moving.by && moving.by !== this ? store.told : store.state;
  }

  get settled(): State {
    return store.settled;
  }

  get told(): State {
    return this.#seen ? store.told : store.settled;
  }

  set(next: State): void {
    moving.by = this;
    store.set(next);
  }

  commit(): void {
    store.commit();
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
