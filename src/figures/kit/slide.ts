/**
 * One contract for everything that can be dragged: a pointer moves it, and so do the keys.
 * Arrow: one step; Shift+arrow: a finer one; Page: a larger one; Home and End: the ends; Escape: back to before the drag.
 */
import type { Attachment } from 'svelte/attachments';
import { moving } from '../../instrument/moving.svelte.ts';
import { grip } from './grip.ts';
import { isTurned } from './sided.ts';
import { keyedBy, keyedStop, nearestStop } from './stops.ts';

/** Where a value stands and how far it may go. */
export interface Span {
  readonly value: number;
  readonly min: number;
  readonly max: number;
  /** What an arrow key adds */
  readonly step: number;
  /** What Shift and an arrow add, and what a pointer snaps to */
  readonly fine: number;
  /** What a Page key adds */
  readonly page: number;
}

export interface Slide extends Span {
  /** The only values that it takes, rising, where they are not evenly spaced: keys go from one to the next, Page keys `page` of them on */
  readonly stops?: readonly number[] | undefined;
  readonly axis: 'x' | 'y';
  /** Whether it is painted: then what bounds it is told at the beat, and asked for no more often */
  readonly isPainted?: boolean;
  /** Pixels of the screen for one unit of value; negative when the value grows against the axis. Asked once a drag. */
  readonly pixelsPerUnit: (element: HTMLElement) => number;
  readonly onmove: (value: number) => void;
  readonly ondone: () => void;
}

/** What a slide says of itself. */
export interface Told {
  readonly label: string;
  /** The value as it is shown, with its unit */
  readonly text: string;
  /** The value as it is spoken, where what is shown leaves out its unit, as gauges do */
  readonly spoken?: string | undefined;
}

/** Where a handle stands, in the drawing's units, its value, and how that is told where nothing that reacts does so. */
export interface Place {
  readonly x: number;
  readonly y: number;
  readonly value: number;
  readonly text?: () => string;
}

/** Is given what puts a handle at a place and says when; returns the way to stop. */
export type Painted = (place: (at: Place) => void) => () => void;

const clamp = (value: number, { min, max }: Pick<Slide, 'min' | 'max'>): number =>
  Math.min(max, Math.max(min, value));

// Rounding in decimals keeps 0.1 steps from drifting into 0.30000000000000004.
const snap = (value: number, to: number): number =>
  to > 0 ? Number((Math.round(value / to) * to).toPrecision(12)) : value;

// A value that was converted between units and back is still the same value.
const differs = (value: number, { value: old, fine }: Pick<Slide, 'value' | 'fine'>): boolean =>
  Math.abs(value - old) > Math.abs(fine) * 1e-6;

/** The value that a key asks for, or undefined when the key is not a slider's. */
export function keyedValue(
  key: string,
  shift: boolean,
  slide: Pick<Slide, 'value' | 'min' | 'max' | 'step' | 'fine' | 'page' | 'stops'>,
): number | undefined {
  const { value, step, fine, page, stops } = slide;
  if (stops) return keyedStop(key, { value, page, stops });
  const by = keyedBy(key, shift ? fine : step, page);
  return by === undefined ? undefined : clamp(snap(value + by, fine), slide);
}

/** A value as it stands in an attribute: without the last bits that only a conversion put there. */
export const tidy = (value: number): number => Number(value.toPrecision(6));

/** Whether what goes across goes the other way, as on a drawing that is turned over. */
const turns = (on: HTMLElement, { axis }: Slide): boolean => axis === 'x' && isTurned(on);

/** Makes an element slide. `get` is asked at every event, so it always sees the present value. */
export function slide(get: () => Slide): Attachment<HTMLElement> {
  return grip({
    begin: (press, element) => {
      let now = get();
      let beat = moving.count;
      const { value: before, axis, pixelsPerUnit } = now;
      const at = (event: PointerEvent): number => (axis === 'x' ? event.clientX : event.clientY);
      const from = at(press);
      const scale = pixelsPerUnit(element) * (turns(element, now) ? -1 : 1);
      // What a figure paints it is told at the beat, so the last value is remembered here.
      let last = before;
      return {
        move: (event) => {
          if (scale === 0) return;
          if (!now.isPainted || beat !== moving.count) now = get();
          beat = moving.count;
          const asked = before + (at(event) - from) / scale;
          const value = now.stops
            ? nearestStop(asked, now.stops)
            : clamp(snap(asked, now.fine), now);
          if (!differs(value, { value: last, fine: now.fine })) return;
          last = value;
          now.onmove(value);
        },
        cancel: () => {
          get().onmove(before);
          get().ondone();
        },
      };
    },
    key: ({ key, shiftKey, currentTarget }) => {
      const now = get();
      const on = currentTarget as HTMLElement;
      // On a drawing that is turned over, the key that points to the right goes on moving the handle there.
      const meant =
        turns(on, now) && now.pixelsPerUnit(on) > 0
          ? key.replace(/(Left)|Right/, (_, left) => (left ? 'Right' : 'Left'))
          : key;
      const value = keyedValue(meant, shiftKey, now);
      if (value === undefined) return false;
      if (differs(value, now)) now.onmove(value);
      return true;
    },
    done: () => get().ondone(),
  });
}
