// @vitest-environment happy-dom
/** The one contract of everything that slides, in a simulated DOM: by pointer, by keys, given up, taken away. */
import { afterEach, beforeEach, describe, expect, test } from 'vitest';

import { grip } from '../../src/figures/kit/grip.ts';
import { slide, type Slide } from '../../src/figures/kit/slide.ts';
import { moving } from '../../src/instrument/moving.svelte.ts';

let element: HTMLElement;
let detach: (() => void) | undefined;
let value: number;
/** Every value that was asked for, and 'done' where it was settled. */
let told: (number | 'done')[];

const usual: Slide = {
  value: 0,
  min: 0,
  max: 100,
  step: 5,
  fine: 1,
  page: 20,
  axis: 'x',
  pixelsPerUnit: () => 2,
  onmove: (next) => {
    value = next;
    told.push(next);
  },
  ondone: () => told.push('done'),
};

function attach(change: Partial<Slide> = {}): void {
  detach?.();
  const off = slide(() => ({ ...usual, ...change, value }))(element);
  detach = typeof off === 'function' ? off : undefined;
}

beforeEach(() => {
  element = document.createElement('div');
  element.setPointerCapture = () => undefined;
  document.body.append(element);
  value = 50;
  told = [];
  attach();
});
afterEach(() => {
  detach?.();
  detach = undefined;
  element.remove();
  expect(moving.any, 'a hand was left on').toBe(false);
});

function pointer(type: string, x: number, y: number, { id = 1, button = 0 } = {}): void {
  const event = new Event(`pointer${type}`, { bubbles: true });
  Object.assign(event, { clientX: x, clientY: y, pointerId: id, button });
  element.dispatchEvent(event);
}
function key(name: string, more: KeyboardEventInit = {}): boolean {
  const event = new KeyboardEvent('keydown', { key: name, cancelable: true, ...more });
  element.dispatchEvent(event);
  return event.defaultPrevented;
}
const keyUp = (): boolean => element.dispatchEvent(new KeyboardEvent('keyup'));

describe('on a drawing that is turned over for a left hand', () => {
  beforeEach(() => {
    document.documentElement.dataset.hand = 'left';
    element.className = 'sided';
  });
  afterEach(() => {
    delete document.documentElement.dataset.hand;
  });

  test('a finger that goes to the right goes against what is written from left to right', () => {
    pointer('down', 10, 10);
    pointer('move', 30, 99);
    pointer('up', 30, 99);
    expect(told).toEqual([40, 'done']);
  });

  test('the arrow to the right moves the handle to the right all the same, whichever way its value grows', () => {
    key('ArrowRight');
    expect(value).toBe(45);
    key('ArrowLeft');
    expect(value).toBe(50);
    attach({ pixelsPerUnit: () => -2 });
    key('ArrowRight');
    expect(value).toBe(55);
    keyUp();
  });

  test('up and down, the ends, and drawings that have no left hand stay as they are', () => {
    key('ArrowUp');
    expect(value).toBe(55);
    key('End');
    expect(value).toBe(100);
    keyUp();
    attach({ axis: 'y' });
    pointer('down', 0, 0);
    pointer('move', 0, -20);
    pointer('up', 0, -20);
    expect(value).toBe(90);
    element.className = '';
    attach();
    key('ArrowLeft');
    expect(value).toBe(85);
    keyUp();
  });
});

describe('a pointer', () => {
  test('moves the value with it, by the pixels of one unit, and settles it once when it leaves', () => {
    pointer('down', 10, 10);
    pointer('move', 30, 99);
    expect(told).toEqual([60]);
    expect(element.dataset.dragging).toBe('');
    pointer('move', 16, 0);
    pointer('up', 16, 0);
    expect(told).toEqual([60, 53, 'done']);
    expect(element.dataset.dragging).toBeUndefined();
    pointer('move', 90, 0);
    expect(told).toHaveLength(3);
  });

  test('moves along its axis only', () => {
    attach({ axis: 'y' });
    pointer('down', 0, 0);
    pointer('move', 40, 20);
    pointer('up', 40, 20);
    expect(told).toEqual([60, 'done']);
  });

  test('moves the value the other way where it grows against the axis', () => {
    attach({ pixelsPerUnit: () => -2 });
    pointer('down', 0, 0);
    pointer('move', 20, 0);
    pointer('up', 20, 0);
    expect(told).toEqual([40, 'done']);
  });

  test('keeps to the ends and to the finer step', () => {
    pointer('down', 0, 0);
    pointer('move', 1000, 0);
    pointer('move', -1000, 0);
    pointer('move', 2.9, 0);
    pointer('up', 2.9, 0);
    expect(told).toEqual([100, 0, 51, 'done']);
  });

  test('goes to the nearest of the stops, and says nothing while it stays there', () => {
    attach({ stops: [40, 50, 80] });
    pointer('down', 0, 0);
    pointer('move', 8, 0);
    expect(told).toEqual([]);
    pointer('move', 44, 0);
    pointer('up', 44, 0);
    expect(told).toEqual([80, 'done']);
  });

  test('is the only one: a second finger and another button change nothing', () => {
    pointer('down', 0, 0, { button: 2 });
    pointer('move', 20, 0);
    expect(told).toEqual([]);
    pointer('down', 0, 0);
    pointer('down', 0, 0, { id: 2 });
    pointer('move', 60, 0, { id: 2 });
    pointer('up', 60, 0, { id: 2 });
    expect(told).toEqual([]);
    pointer('move', 20, 0);
    pointer('up', 20, 0);
    expect(told).toEqual([60, 'done']);
  });

  test('that the browser takes away leaves what stood before', () => {
    pointer('down', 0, 0);
    pointer('move', 20, 0);
    pointer('cancel', 20, 0);
    expect(told).toEqual([60, 50, 'done']);
    pointer('up', 20, 0);
    expect(told).toHaveLength(3);
  });

  test('that is lost settles where it is', () => {
    pointer('down', 0, 0);
    pointer('move', 20, 0);
    element.dispatchEvent(Object.assign(new Event('lostpointercapture'), { pointerId: 1 }));
    expect(told).toEqual([60, 'done']);
  });

  test('asks for the scale once, when it takes hold', () => {
    let asked = 0;
    attach({ pixelsPerUnit: () => ((asked += 1), 2) });
    pointer('down', 0, 0);
    for (const x of [10, 20, 30]) pointer('move', x, 0);
    pointer('up', 30, 0);
    expect(asked).toBe(1);
  });
});

describe('Escape', () => {
  test('during a drag puts back what stood before, settles it once, and lets go', () => {
    pointer('down', 0, 0);
    pointer('move', 20, 0);
    key('Escape');
    expect(told).toEqual([60, 50, 'done']);
    pointer('move', 40, 0);
    pointer('up', 40, 0);
    expect(told).toHaveLength(3);
  });

  test('without a drag is not the handle’s', () => {
    expect(key('Escape')).toBe(false);
    expect(told).toEqual([]);
  });
});

describe('keys', () => {
  test.each([
    ['ArrowRight', {}, 55],
    ['ArrowUp', {}, 55],
    ['ArrowLeft', {}, 45],
    ['ArrowDown', {}, 45],
    ['ArrowRight', { shiftKey: true }, 51],
    ['ArrowLeft', { shiftKey: true }, 49],
    ['PageUp', {}, 70],
    ['PageDown', {}, 30],
    ['Home', {}, 0],
    ['End', {}, 100],
  ] as const)('%s %o leads to %d, and is settled when the key comes up', (name, more, to) => {
    expect(key(name, more)).toBe(true);
    expect(told).toEqual([to]);
    keyUp();
    expect(told).toEqual([to, 'done']);
  });

  test('held down move on, and are settled once', () => {
    key('ArrowRight');
    key('ArrowRight');
    keyUp();
    keyUp();
    expect(told).toEqual([55, 60, 'done']);
  });

  test('are settled when the handle loses the keys', () => {
    key('End');
    element.dispatchEvent(new Event('blur'));
    expect(told).toEqual([100, 'done']);
  });

  test('at an end say nothing more, but stay the handle’s', () => {
    value = 100;
    expect(key('ArrowRight')).toBe(true);
    expect(told).toEqual([]);
  });

  test('of the browser and of words are not the handle’s', () => {
    for (const more of [{ ctrlKey: true }, { metaKey: true }, { altKey: true }])
      expect(key('ArrowRight', more)).toBe(false);
    expect(key('a')).toBe(false);
    keyUp();
    expect(told).toEqual([]);
  });

  test('walk from stop to stop', () => {
    attach({ stops: [40, 50, 80, 90], page: 2 });
    key('ArrowRight');
    key('End');
    key('Home');
    key('PageUp');
    keyUp();
    expect(told).toEqual([80, 90, 40, 80, 'done']);
  });
});

test('a handle that goes away lets go of its pointer and hears nothing more', () => {
  pointer('down', 0, 0);
  expect(moving.any).toBe(true);
  detach?.();
  detach = undefined;
  expect(moving.any).toBe(false);
  pointer('move', 20, 0);
  key('End');
  expect(told).toEqual([]);
});

test('a grip without a way back settles where the browser takes the pointer away', () => {
  detach?.();
  const seen: string[] = [];
  const off = grip({
    begin: () => ({ move: () => seen.push('move') }),
    done: () => seen.push('done'),
  })(element);
  detach = typeof off === 'function' ? off : undefined;
  pointer('down', 0, 0);
  pointer('move', 1, 1);
  key('Escape');
  pointer('cancel', 1, 1);
  expect(seen).toEqual(['move', 'done']);
});
