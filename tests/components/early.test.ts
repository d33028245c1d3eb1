// @vitest-environment happy-dom
/** What a reader does to an island before its script comes, in a simulated DOM: done again afterwards, in its order, once. */
import { afterEach, beforeAll, beforeEach, expect, test, vi } from 'vitest';

import { keepEarly } from '../../src/components/early.ts';

let island: HTMLElement;
/** What reached the island's hands once it was alive */
let heard: string[];

beforeAll(keepEarly);
beforeEach(() => {
  vi.useFakeTimers();
  island = document.createElement('astro-island');
  island.setAttribute('ssr', '');
  island.innerHTML =
    '<div role="slider"></div><button><i></i></button><input><select><option>a</option><option>b</option></select><input type="checkbox"><p></p>';
  document.body.append(island);
  heard = [];
});
afterEach(() => {
  island.remove();
  vi.useRealTimers();
});

const part = <T extends HTMLElement>(selector: string): T => {
  const found = island.querySelector<T>(selector);
  if (!found) throw new Error(`no ${selector}`);
  return found;
};

/** The island's script comes: it puts back what stood in the page, and its hands take hold a moment later. */
async function come(): Promise<void> {
  part<HTMLInputElement>('input').value = '';
  part<HTMLSelectElement>('select').value = 'a';
  part<HTMLInputElement>('[type=checkbox]').checked = false;
  island.removeAttribute('ssr');
  island.dispatchEvent(new Event('astro:hydrate'));
  for (const type of ['pointerdown', 'pointermove', 'pointerup', 'keydown', 'keyup', 'click'])
    island.addEventListener(type, (event) => {
      const what =
        event instanceof PointerEvent && type !== 'click'
          ? ` ${event.pointerId} ${event.clientX}`
          : event instanceof KeyboardEvent
            ? ` ${event.key}`
            : '';
      heard.push(`${(event.target as Element).tagName} ${type}${what}`);
    });
  for (const type of ['input', 'change'])
    island.addEventListener(type, ({ target }) => {
      const { tagName, value, checked } = target as HTMLInputElement;
      heard.push(`${tagName} ${type} ${value}${checked ? ' checked' : ''}`);
    });
  await vi.runAllTimersAsync();
}

const point = (on: EventTarget, type: string, clientX: number, pointerId = 1) =>
  on.dispatchEvent(new PointerEvent(type, { bubbles: true, pointerId, clientX }));
const press = (on: EventTarget, type: string, key: string) => {
  const event = new KeyboardEvent(type, { bubbles: true, cancelable: true, key });
  on.dispatchEvent(event);
  return event.defaultPrevented;
};

test('a finger that is still down goes on from where it came down', async () => {
  const slider = part('[role=slider]');
  point(slider, 'pointerdown', 10);
  point(document.body, 'pointermove', 30);
  await come();
  expect(heard).toEqual(['DIV pointerdown 1 10', 'DIV pointermove 1 30']);
});

test('a press beside a handle drags nothing, though the pointer had one before', async () => {
  point(part('[role=slider]'), 'pointerdown', 10);
  point(part('p'), 'pointerdown', 40);
  point(part('p'), 'pointermove', 50);
  await come();
  expect(heard).toEqual(['DIV pointerdown 1 10']);
});

test('a drag that is over is done from its press to its release', async () => {
  const slider = part('[role=slider]');
  point(slider, 'pointerdown', 10);
  point(slider, 'pointermove', 30, 2);
  point(slider, 'pointermove', 20);
  point(document.body, 'pointerup', 25);
  point(slider, 'pointermove', 99);
  await come();
  expect(heard).toEqual(['DIV pointerdown 1 10', 'DIV pointermove 1 20', 'DIV pointerup 1 25']);
});

test('keys of a slider are kept, and scroll nothing meanwhile', async () => {
  const slider = part('[role=slider]');
  expect(press(slider, 'keydown', 'ArrowUp')).toBe(true);
  press(slider, 'keyup', 'ArrowUp');
  expect(press(slider, 'keydown', 'Tab')).toBe(false);
  expect(press(part('button'), 'keydown', 'ArrowUp')).toBe(false);
  await come();
  expect(heard).toEqual(['DIV keydown ArrowUp', 'DIV keyup ArrowUp']);
});

test('each act finds what the one before has set off', async () => {
  const slider = part('[role=slider]');
  for (let i = 0; i < 3; i += 1) press(slider, 'keydown', 'ArrowUp');
  const found: number[] = [];
  let value = 0;
  slider.addEventListener('keydown', () => {
    found.push(value);
    // As a page is drawn anew.
    queueMicrotask(() => (value += 1));
  });
  await come();
  expect(found.slice(-3)).toEqual([0, 1, 2]);
});

test('what was pressed, typed, chosen and ticked is so again, though the script put back what stood there', async () => {
  part('i').dispatchEvent(new MouseEvent('click', { bubbles: true }));
  const input = part<HTMLInputElement>('input');
  input.value = '26';
  input.dispatchEvent(new Event('input', { bubbles: true }));
  input.dispatchEvent(new Event('change', { bubbles: true }));
  const select = part<HTMLSelectElement>('select');
  select.value = 'b';
  select.dispatchEvent(new Event('change', { bubbles: true }));
  const box = part<HTMLInputElement>('[type=checkbox]');
  box.checked = true;
  box.dispatchEvent(new Event('change', { bubbles: true }));
  part('p').dispatchEvent(new MouseEvent('click', { bubbles: true }));
  await come();
  expect(heard).toEqual([
    'BUTTON click',
    'INPUT input 26',
    'INPUT change 26',
    'SELECT change b',
    'INPUT change on checked',
  ]);
});

test('what is done to a living island, or to none, is done once', async () => {
  await come();
  point(part('[role=slider]'), 'pointerdown', 10);
  document.body.dispatchEvent(new MouseEvent('click', { bubbles: true }));
  vi.runAllTimers();
  expect(heard).toEqual(['DIV pointerdown 1 10']);
});

test('steps of a pointer are listened to for as long as something asleep is held, whatever another pointer does', async () => {
  const [added, removed] = [
    vi.spyOn(document, 'addEventListener'),
    vi.spyOn(document, 'removeEventListener'),
  ];
  const lastOf = ({ mock }: typeof added | typeof removed): number =>
    Math.max(
      0,
      ...mock.calls.map(([type], i) =>
        type === 'pointermove' ? (mock.invocationCallOrder[i] ?? 0) : 0,
      ),
    );
  const listening = (): boolean => lastOf(added) > lastOf(removed);
  const awake = document.createElement('div');
  awake.setAttribute('role', 'slider');
  document.body.append(awake);
  point(awake, 'pointerdown', 5);
  expect(listening()).toBe(false);
  point(part('[role=slider]'), 'pointerdown', 10, 2);
  expect(listening()).toBe(true);
  point(awake, 'pointermove', 6);
  point(document.body, 'pointermove', 14, 2);
  expect(listening()).toBe(true);
  await come();
  expect(heard).toEqual(['DIV pointerdown 2 10', 'DIV pointermove 2 14']);
  point(part('[role=slider]'), 'pointermove', 20, 2);
  expect(listening()).toBe(false);
  awake.remove();
  added.mockRestore();
  removed.mockRestore();
});
