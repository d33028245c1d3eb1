/** What slides in two directions at once: a pointer moves it over the drawing, left and right keys along, up and down keys across. */
import type { Attachment } from 'svelte/attachments';
import { moving } from '../kit/moving.svelte.ts';
import { keyedValue } from '../kit/slide.ts';
import { keyedStop } from '../kit/stops.ts';

export interface Along {
  readonly value: number;
  readonly min: number;
  readonly max: number;
  readonly step: number;
  readonly fine: number;
  readonly page: number;
}

export interface Roam {
  /** Where it stands, in the drawing's units */
  readonly x: number;
  readonly y: number;
  /** The drawing's width in its own units */
  readonly stage: number;
  readonly along: Along;
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
  return (element) => {
    let drag:
      | {
          readonly pointer: number;
          readonly dx: number;
          readonly dy: number;
          readonly unit: number;
        }
      | undefined;
    let keyed = false;

    const down = (event: PointerEvent): void => {
      if (event.button !== 0) return;
      const { x, y, stage } = get();
      // The only time geometry is read: while dragging nothing forces a layout.
      const width = element.parentElement?.getBoundingClientRect().width ?? stage;
      const unit = stage / width;
      drag = {
        pointer: event.pointerId,
        dx: x - event.clientX * unit,
        dy: y - event.clientY * unit,
        unit,
      };
      element.setPointerCapture(event.pointerId);
      element.dataset.dragging = '';
      moving.begin();
    };
    const move = (event: PointerEvent): void => {
      if (drag?.pointer !== event.pointerId) return;
      get().onplace(event.clientX * drag.unit + drag.dx, event.clientY * drag.unit + drag.dy);
    };
    const stop = (): void => {
      drag = undefined;
      delete element.dataset.dragging;
      moving.end();
    };
    const up = (event: PointerEvent): void => {
      if (drag?.pointer !== event.pointerId) return;
      stop();
      get().ondone();
    };
    const key = (event: KeyboardEvent): void => {
      if (event.key === 'Escape' && drag) {
        stop();
        get().oncancel();
        return;
      }
      if (event.ctrlKey || event.metaKey || event.altKey) return;
      const { along, across, stops, onalong, onacross } = get();
      if (upright.has(event.key)) {
        const value = keyedStop(event.key, { value: across, page: 4, stops });
        event.preventDefault();
        keyed = true;
        if (value !== undefined && value !== across) onacross(value);
        return;
      }
      const value = keyedValue(event.key, event.shiftKey, along);
      if (value === undefined) return;
      event.preventDefault();
      keyed = true;
      if (Math.abs(value - along.value) > along.fine * 1e-6) onalong(value);
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
