/** What a figure draws: every step of a drag while it can be seen, and otherwise only what a drag has left. */
import type { Attachment } from 'svelte/attachments';
import type { State } from '../../instrument/schema.ts';
import { store } from '../../instrument/store.svelte.ts';

export class Sight {
  // A figure counts as seen until the browser says otherwise, so that nothing is missed before it does.
  #seen = $state(true);

  get state(): State {
    return this.#seen ? store.state : store.settled;
  }

  /** Goes on the figure's outermost element. */
  readonly watch: Attachment<Element> = (element) => {
    const watcher = new IntersectionObserver(
      (entries) => (this.#seen = entries.at(-1)?.isIntersecting ?? true),
    );
    watcher.observe(element);
    return () => watcher.disconnect();
  };
}
