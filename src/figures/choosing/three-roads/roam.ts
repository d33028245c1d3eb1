/** What slides in two directions at once: a pointer moves it over the drawing, left and right keys along, up and down keys across. */
import type { Attachment } from 'svelte/attachments';
import { grip } from '../../kit/grip.ts';
import { keyedValue, type Span } from '../../kit/slide.ts';
import { keyedStop } from '../../kit/stops.ts';

export interface Roam {
  /** Where it stands, in the drawing's units */
  readonly x: number;
  readonly y: number;
  /** The drawing's width in its own units */
  readonly stage: number;
  readonly along: Span;
  /** The only values across, rising, and the present one */
  readonly stops: readonly number[];
  readonly across: number;
  readonly onplace: (x: number, y: number) => void;
  readonly onalong: (value: number) => void;
  readonly onacross: (value: number) => void;
  readonly ondone: () => void;
  readonly oncancel: () => void;
}

/** The keys that move it across; all others move it along. */
const upright: ReadonlySet<string> = new Set(['ArrowUp', 'ArrowDown']);

/** `get` is asked at every event, so it always sees the present place. */
export function roam(get: () => Roam): Attachment<HTMLElement> {
  return grip({
    begin: (press, element) => {
      const { x, y, stage } = get();
      const width = element.parentElement?.getBoundingClientRect().width ?? stage;
      const unit = stage / width;
      const dx = x - press.clientX * unit;
      const dy = y - press.clientY * unit;
      return {
        move: (event) => get().onplace(event.clientX * unit + dx, event.clientY * unit + dy),
        cancel: () => get().oncancel(),
      };
    },
    key: ({ key, shiftKey }) => {
      const { along, across, stops, onalong, onacross } = get();
      if (upright.has(key)) {
        const value = keyedStop(key, { value: across, page: 4, stops });
        if (value !== undefined && value !== across) onacross(value);
        return true;
      }
      const value = keyedValue(key, shiftKey, along);
      if (value === undefined) return false;
      if (Math.abs(value - along.value) > along.fine * 1e-6) onalong(value);
      return true;
    },
    done: () => get().ondone(),
  });
}
