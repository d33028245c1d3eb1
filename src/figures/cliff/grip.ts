/** A mark that a pointer drags both ways at once. Keys have a handle for each way, so this one is for pointers alone. */
import type { Attachment } from 'svelte/attachments';
import { moving } from '../kit/moving.svelte.ts';

export interface Grip {
  /** Of the drawing, in its own units */
  readonly stage: number;
  /** By how much it was dragged since it was gripped, in the drawing's units */
  readonly onmove: (dx: number, dy: number) => void;
  readonly onstart: () => void;
  readonly ondone: () => void;
}

export function grip(get: () => Grip): Attachment<HTMLElement> {
  return (element) => {
    let from: { pointer: number; x: number; y: number; scale: number } | undefined;
    const down = (event: PointerEvent): void => {
      if (event.button !== 0) return;
      // The only time geometry is read: while dragging nothing forces a layout.
      const width = element.parentElement?.getBoundingClientRect().width ?? get().stage;
      const scale = get().stage / width;
      from = { pointer: event.pointerId, x: event.clientX, y: event.clientY, scale };
      element.setPointerCapture(event.pointerId);
      moving.begin();
      get().onstart();
    };
    const move = (event: PointerEvent): void => {
      if (from?.pointer !== event.pointerId) return;
      get().onmove((event.clientX - from.x) * from.scale, (event.clientY - from.y) * from.scale);
    };
    const up = (event: PointerEvent): void => {
      if (from?.pointer !== event.pointerId) return;
      from = undefined;
      moving.end();
      get().ondone();
    };
    element.addEventListener('pointerdown', down);
    element.addEventListener('pointermove', move);
    element.addEventListener('pointerup', up);
    element.addEventListener('pointercancel', up);
    return () => {
      element.removeEventListener('pointerdown', down);
      element.removeEventListener('pointermove', move);
      element.removeEventListener('pointerup', up);
      element.removeEventListener('pointercancel', up);
    };
  };
}
