/** A mark that a pointer drags both ways at once. Keys have a handle for each way, so this one is for pointers alone. */
import type { Attachment } from 'svelte/attachments';
import { grip } from '../../kit/grip.ts';

export interface BothWays {
  /** Of the drawing, in its own units */
  readonly stage: number;
  /** By how much it was dragged since it was gripped, in the drawing's units */
  readonly onmove: (dx: number, dy: number) => void;
  readonly onstart: () => void;
  readonly ondone: () => void;
}

export function bothWays(get: () => BothWays): Attachment<HTMLElement> {
  return grip({
    begin: ({ clientX, clientY }, element) => {
      const { stage, onstart } = get();
      const width = element.parentElement?.getBoundingClientRect().width ?? stage;
      const scale = stage / width;
      onstart();
      return {
        move: (event) =>
          get().onmove((event.clientX - clientX) * scale, (event.clientY - clientY) * scale),
      };
    },
    done: () => get().ondone(),
  });
}
