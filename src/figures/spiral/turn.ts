/** As kit/slide.ts, for a handle that goes round a middle: a turn of the pointer is `perTurn` of the value, however often round. */
import type { Attachment } from 'svelte/attachments';
import { moving } from '../kit/moving.svelte.ts';
import { keyedValue, type Slide } from '../kit/slide.ts';

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
  return (element) => {
    let drag:
      | { pointer: number; x: number; y: number; from: number; value: number; turned: number }
      | undefined;
    let keyed = false;

    const down = (event: PointerEvent): void => {
      if (event.button !== 0) return;
      const { x, y } = get().middle(element);
      const from = Math.atan2(event.clientY - y, event.clientX - x);
      drag = { pointer: event.pointerId, x, y, from, value: get().value, turned: 0 };
      element.setPointerCapture(event.pointerId);
      element.dataset.dragging = '';
      moving.begin();
    };
    const move = (event: PointerEvent): void => {
      if (!drag || drag.pointer !== event.pointerId) return;
      const to = Math.atan2(event.clientY - drag.y, event.clientX - drag.x);
      drag.turned += shorterArc(drag.from, to);
      drag.from = to;
      const { value, min, max, fine, perTurn, onmove } = get();
      const asked = drag.value + drag.turned * perTurn;
      const next = Math.min(max, Math.max(min, Math.round(asked / fine) * fine));
      if (next !== value) onmove(next);
    };
    const stop = (): void => {
      drag = undefined;
      delete element.dataset.dragging;
      moving.end();
      get().ondone();
    };
    const up = (event: PointerEvent): void => {
      if (drag?.pointer === event.pointerId) stop();
    };
    const key = (event: KeyboardEvent): void => {
      if (event.key === 'Escape' && drag) {
        get().onmove(drag.value);
        stop();
        return;
      }
      if (event.ctrlKey || event.metaKey || event.altKey) return;
      const value = keyedValue(event.key, event.shiftKey, get());
      if (value === undefined) return;
      event.preventDefault();
      keyed = true;
      if (value !== get().value) get().onmove(value);
    };
    const settle = (): void => {
      if (keyed) get().ondone();
      keyed = false;
    };

    element.addEventListener('pointerdown', down);
    element.addEventListener('pointermove', move);
    element.addEventListener('pointerup', up);
    element.addEventListener('pointercancel', up);
    element.addEventListener('keydown', key);
    element.addEventListener('keyup', settle);
    element.addEventListener('blur', settle);
    return () => {
      element.removeEventListener('pointerdown', down);
      element.removeEventListener('pointermove', move);
      element.removeEventListener('pointerup', up);
      element.removeEventListener('pointercancel', up);
      element.removeEventListener('keydown', key);
      element.removeEventListener('keyup', settle);
      element.removeEventListener('blur', settle);
    };
  };
}
