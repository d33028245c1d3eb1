/**
 * What all handles have in common: one pointer holds it from the press to the release; Escape puts back what was there
 * before, and so does a browser that takes the pointer away; what the keys have changed is settled when the key comes up.
 * What a place or a key means, the handle says.
 */
import type { Attachment } from 'svelte/attachments';
import { giveUp, moving } from '../../instrument/moving.svelte.ts';

export interface Drag {
  readonly move: (event: PointerEvent) => void;
  /** Escape: puts back what was there before, and settles it. A handle that takes no focus has no use for it, nor for keys. */
  readonly cancel?: () => void;
}

export interface Grip {
  /** A pointer takes hold. The only time geometry is read: while dragging nothing forces a layout. */
  readonly begin: (event: PointerEvent, element: HTMLElement) => Drag;
  /** Does what a key asks for, and says whether the key is one of the handle's. */
  readonly key?: (event: KeyboardEvent) => boolean;
  readonly done: () => void;
}

export function grip({ begin, key, done }: Grip): Attachment<HTMLElement> {
  return (element) => {
    let held: { readonly pointer: number; readonly drag: Drag } | undefined;
    let keyed = false;

    const down = (event: PointerEvent): void => {
      // A second finger on it changes nothing.
      if (event.button !== 0 || (held && held.pointer !== event.pointerId)) return;
      // Of a pointer that came down again without having been seen to leave there was one beginning.
      if (!held) moving.begin();
      held = { pointer: event.pointerId, drag: begin(event, element) };
      try {
        element.setPointerCapture(event.pointerId);
      } catch {
        // It came down before the script came, and has left again: see components/early.ts.
      }
      element.dataset.dragging = '';
    };
    const move = (event: PointerEvent): void => {
      if (held?.pointer !== event.pointerId) return;
      held.drag.move(event);
      moving.step();
    };
    const release = (): void => {
      held = undefined;
      delete element.dataset.dragging;
      moving.end();
    };
    const up = (event: PointerEvent): void => {
      if (held?.pointer !== event.pointerId) return;
      release();
      done();
    };
    // The browser has taken the finger for itself, to scroll or to go back: what it moved on the way was not meant.
    const taken = (event: PointerEvent): void => {
      if (held?.pointer !== event.pointerId) return;
      const { cancel } = held.drag;
      release();
      if (cancel) giveUp(cancel);
      else done();
    };
    const press = (event: KeyboardEvent): void => {
      const cancel = held?.drag.cancel;
      if (event.key === 'Escape' && cancel) {
        release();
        giveUp(cancel);
        return;
      }
      if (event.ctrlKey || event.metaKey || event.altKey || !key?.(event)) return;
      event.preventDefault();
      keyed = true;
    };
    const settle = (): void => {
      if (keyed) done();
      keyed = false;
    };

    const attached = new AbortController();
    const hear = <T extends keyof HTMLElementEventMap>(
      type: T,
      heed: (event: HTMLElementEventMap[T]) => void,
    ): void => element.addEventListener(type, heed, attached);
    hear('pointerdown', down);
    hear('pointermove', move);
    hear('pointerup', up);
    hear('pointercancel', taken);
    hear('lostpointercapture', up);
    hear('keydown', press);
    hear('keyup', settle);
    hear('blur', settle);
    return () => {
      if (held) release();
      attached.abort();
    };
  };
}
