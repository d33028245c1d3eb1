/** As kit/slide.ts, for a handle that goes round a middle: a turn of the pointer is `perTurn` of the value, however often round. */
import type { Attachment } from 'svelte/attachments';
import { grip } from '../../kit/grip.ts';
import { keyedValue, type Slide } from '../../kit/slide.ts';

export interface Turn extends Pick<
  Slide,
  'value' | 'min' | 'max' | 'step' | 'fine' | 'page' | 'onmove' | 'ondone'
> {
  readonly perTurn: number;
  /** The middle on the screen. Asked once a drag. */
  readonly middle: (element: HTMLElement) => { readonly x: number; readonly y: number };
}

/** The way from one angle to another by the shorter arc, in turns: from -1/2 to 1/2. */
export function shorterArc(from: number, to: number): number {
  const turns = (to - from) / (2 * Math.PI);
  return turns - Math.round(turns);
}

export function turn(get: () => Turn): Attachment<HTMLElement> {
  return grip({
    begin: (press, element) => {
      const { value: before, middle } = get();
      const { x, y } = middle(element);
      const bearing = (event: PointerEvent): number =>
        Math.atan2(event.clientY - y, event.clientX - x);
      let from = bearing(press);
      let turned = 0;
      return {
        move: (event) => {
          const to = bearing(event);
          turned += shorterArc(from, to);
          from = to;
          const { value, min, max, fine, perTurn, onmove } = get();
          const asked = before + turned * perTurn;
          const next = Math.min(max, Math.max(min, Math.round(asked / fine) * fine));
          if (next !== value) onmove(next);
        },
        cancel: () => {
          get().onmove(before);
          get().ondone();
        },
      };
    },
    key: ({ key, shiftKey }) => {
      const now = get();
      const value = keyedValue(key, shiftKey, now);
      if (value === undefined) return false;
      if (value !== now.value) now.onmove(value);
      return true;
    },
    done: () => get().ondone(),
  });
}
