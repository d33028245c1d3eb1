import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';

import { encode } from '../../src/instrument/link.ts';
import type { State } from '../../src/instrument/schema.ts';
import { initialState, workshopInstrument } from '../../src/instrument/workshop.ts';
import { FakeStorage, openWindow, type FakeWindow } from './fake-window.ts';

type Store = (typeof import('../../src/instrument/store.svelte.ts'))['store'];

/** A reader's own instrument of that scale. */
const withLength = (length: number): State => ({
  ...initialState,
  mine: { ...initialState.mine, name: 'Dunlin', scale: { treble: length, bass: length } },
});
/** A length tried, and nothing changed. */
const trying = (state: State, length: number): State => ({
  ...state,
  trial: { ...state.trial, length },
});
const [first, second, third] = [0.6, 0.61, 0.62].map(withLength) as [State, State, State];
const kept = (window: FakeWindow) =>
  (window.localStorage as FakeStorage).kept.get('speaking-length.state');

let window: FakeWindow;
let store: Store;

/** A page that has loaded: its own store, at an address, on a device that remembers something. */
async function load(hash = '', memory?: string): Promise<void> {
  window = openWindow(hash);
  if (memory !== undefined)
    (window.localStorage as FakeStorage).setItem('speaking-length.state', memory);
  vi.resetModules();
  ({ store } = await import('../../src/instrument/store.svelte.ts'));
}

/** The part that reads links comes late: until it has done its work. */
const read = () => vi.dynamicImportSettled();

const late = () => import('../../src/instrument/arrive.ts');
const held = async () => (await import('../../src/instrument/store.svelte.ts')).held;
const show = async (next: State) => (await late()).show(await held(), next);
const leaveVisit = async () => (await late()).leaveVisit(await held());
const keepVisit = async () => (await late()).keepVisit(await held());

beforeEach(() => load());
afterEach(async () => {
  await vi.dynamicImportSettled();
  vi.unstubAllGlobals();
});

describe('a drag', () => {
  it('shows every step and settles once', async () => {
    await store.open();
    store.set(first);
    store.set(second);
    expect(store.state).toBe(second);
    expect(store.canUndo).toBe(false);
    expect(window.location.hash).toBe('');
    expect(kept(window)).toBeUndefined();
    store.commit();
    expect(window.location.hash).toBe(`#${encode(second)}`);
    expect(kept(window)).toBe(encode(second));
    store.undo();
    expect(store.state).toEqual(initialState);
    expect(store.canUndo).toBe(false);
  });

  it('that ends where it began leaves no step', async () => {
    await store.open();
    store.commit();
    expect(store.canUndo).toBe(false);
    store.change(first);
    store.set(second);
    store.set({ ...first });
    store.commit();
    expect(store.state).toBe(first);
    store.undo();
    expect(store.state).toEqual(initialState);
    expect(store.canUndo).toBe(false);
  });
});

describe('undo', () => {
  it('goes back step by step, and forward again', async () => {
    await store.open();
    for (const state of [first, second, third]) store.change(state);
    store.undo();
    store.undo();
    expect(store.state).toBe(first);
    expect(store.canRedo).toBe(true);
    expect(kept(window)).toBe(encode(first));
    expect(window.location.hash).toBe(`#${encode(first)}`);
    store.redo();
    expect(store.state).toBe(second);
    store.redo();
    expect(store.state).toBe(third);
    expect(store.canRedo).toBe(false);
  });

  it('does nothing at either end', async () => {
    await store.open();
    store.undo();
    store.redo();
    expect(store.state).toEqual(initialState);
  });

  it('gives up what was undone when something else is done', async () => {
    await store.open();
    store.change(first);
    store.undo();
    store.change(second);
    expect(store.canRedo).toBe(false);
    store.undo();
    expect(store.state).toEqual(initialState);
  });

  it('forgets the oldest of very many steps', async () => {
    await store.open();
    for (let i = 0; i < 250; i += 1) store.change(withLength(0.5 + i / 1000));
    let steps = 0;
    for (; store.canUndo; steps += 1) store.undo();
    expect(steps).toBe(200);
    expect(store.state.mine.scale.treble).toBeCloseTo(0.549, 9);
  });

  it.each([
    ['Ctrl+Z', { ctrlKey: true }],
    ['Cmd+Z', { metaKey: true }],
  ])('is %s, and Shift with it redoes', async (_, keys) => {
    await store.open();
    store.change(first);
    expect(window.press('z', keys)).toBe(true);
    expect(store.state).toEqual(initialState);
    expect(window.press('Z', { ...keys, shiftKey: true })).toBe(true);
    expect(store.state).toBe(first);
  });

  it('leaves the same keys to a field, and other keys alone', async () => {
    await store.open();
    store.change(first);
    for (const field of ['input', 'textarea', 'select', '[contenteditable]']) {
      expect(window.press('z', { ctrlKey: true }, field), field).toBe(false);
    }
    expect(window.press('z')).toBe(false);
    expect(window.press('y', { ctrlKey: true })).toBe(false);
    expect(window.press('z', { ctrlKey: true, altKey: true })).toBe(false);
    expect(store.state).toBe(first);
  });
});

describe('the address', () => {
  const curlew: State = { ...initialState, mine: workshopInstrument('curlew') };

  it('is read when the page opens, and remembered', async () => {
    await load(`#${encode(curlew)}`);
    await store.open();
    expect(store.state.mine).toEqual(curlew.mine);
    expect(kept(window)).toBe(encode(curlew));
    expect(store.notice).toBe('');
    expect(store.canUndo).toBe(false);
  });

  it('wins over what the device remembers, which undo brings back', async () => {
    await load(`#${encode(curlew)}`, encode(first));
    await store.open();
    expect(store.state.mine).toEqual(curlew.mine);
    store.undo();
    expect(encode(store.state)).toBe(encode(first));
  });

  it('is read again when the reader pastes another', async () => {
    await store.open();
    window.follow(`#${encode(curlew).toUpperCase()}`);
    await read();
    expect(store.state.mine.strings).toEqual(curlew.mine.strings);
    store.undo();
    expect(store.state).toEqual(initialState);
  });

  it('may be an anchor of the page, which changes nothing', async () => {
    await store.open();
    store.change(first);
    window.follow('#main');
    window.follow('');
    await read();
    expect(store.state).toBe(first);
    expect(store.notice).toBe('');
  });

  it('tells what had to be changed to fit', async () => {
    await load(`#${encode(curlew).replace('l-685.8', 'l-1685.8')}`);
    await store.open();
    expect(store.state.mine.scale.treble).toBe(1.1);
    expect(store.notice).toMatch(/Scale length 1685.8 mm .* 1100 mm\.$/);
    store.tell('');
    expect(store.notice).toBe('');
  });

  it('of another version is told and leaves the state', async () => {
    await load(`#${encode(curlew).replace('v1', 'v7')}`);
    await store.open();
    expect(store.state).toEqual(initialState);
    expect(store.notice).toMatch(/another version/);
  });

  it('becomes a step of the history for a visit, and Back returns', async () => {
    await store.open();
    store.change(first);
    await show(curlew);
    expect(window.entries.map((e) => e.hash)).toEqual([`#${encode(first)}`, `#${encode(curlew)}`]);
    window.travel(-1);
    await read();
    expect(encode(store.state)).toBe(encode(first));
    window.travel(1);
    await read();
    expect(store.state.mine).toEqual(curlew.mine);
  });

  it('names the place that a visit leaves, even when nothing was changed there', async () => {
    await store.open();
    await show(curlew);
    expect(window.entries[0]?.hash).toBe(`#${encode(initialState)}`);
    window.travel(-1);
    await read();
    expect(encode(store.state)).toBe(encode(initialState));
  });

  it('may be refused by the browser without harm', async () => {
    await store.open();
    window.history.replaceState = () => {
      throw new DOMException('too often', 'SecurityError');
    };
    store.change(first);
    expect(store.state).toBe(first);
    expect(kept(window)).toBe(encode(first));
  });
});

describe('the device', () => {
  it('brings back what it remembers, once a page', async () => {
    await load('', encode(second));
    await store.open();
    expect(encode(store.state)).toBe(encode(second));
    store.change(third);
    await store.open();
    expect(store.state).toBe(third);
  });

  it('that remembers nonsense is told, and the workshop’s instrument stands in', async () => {
    await load('', '{"mine": 7');
    await store.open();
    expect(store.state).toEqual(initialState);
    expect(store.notice).toMatch(/could not be read/);
  });

  it('that is full is told once', async () => {
    await store.open();
    window.localStorage.setItem = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
    store.change(first);
    expect(store.state).toBe(first);
    await read();
    expect(store.notice).toMatch(/keeps nothing between visits/);
    store.tell('');
    store.change(second);
    await read();
    expect(store.notice).toBe('');
  });

  it('that has no storage at all loses nothing else', async () => {
    Object.defineProperty(window, 'localStorage', {
      get: () => {
        throw new DOMException('blocked', 'SecurityError');
      },
    });
    await store.open();
    store.change(first);
    store.undo();
    expect(store.state).toEqual(initialState);
    await read();
    expect(store.notice).toMatch(/Copy the link/);
  });
});

describe('what is tried', () => {
  it('is in the link and in undo, and never the reader’s own', async () => {
    await load('', encode(first));
    await store.open();
    store.change(trying(store.state, 0.7));
    expect(store.state.trial.length).toBe(0.7);
    expect(window.location.hash).toContain('/tl-700/');
    expect(kept(window)).toBe(encode(first));
    expect(encode(store.own)).toBe(encode(first));
    store.undo();
    expect(store.state.trial).toEqual({ string: 0 });
  });

  it('is there again after a reload, from the address', async () => {
    await load(`#${encode(trying(first, 0.7))}`, encode(first));
    await store.open();
    expect(store.state.trial.length).toBe(0.7);
    expect(store.visiting).toBe(false);
  });
});

describe('a visit', () => {
  const friend: State = {
    ...initialState,
    mine: { ...workshopInstrument('curlew'), name: 'Turnstone' },
    units: 'mm-kg',
  };

  it('shows a link’s instrument in the reader’s units, and keeps nothing', async () => {
    await load(`#${encode(friend)}`, encode(first));
    await store.open();
    expect(store.visiting).toBe(true);
    expect(store.state.mine.name).toBe('Turnstone');
    expect(store.state.units).toBe('in-lb');
    expect(kept(window)).toBe(encode(first));
    await leaveVisit();
    expect(store.visiting).toBe(false);
    expect(encode(store.state)).toBe(encode(first));
    store.undo();
    expect(store.visiting).toBe(true);
    expect(store.state.mine.name).toBe('Turnstone');
    expect(kept(window)).toBe(encode(first));
  });

  it('takes the link’s units where the reader has chosen none yet', async () => {
    await load(`#${encode(friend)}`);
    await store.open();
    expect(store.state.units).toBe('mm-kg');
    expect(store.visiting).toBe(true);
    expect(kept(window)).toBeUndefined();
  });

  it('is kept when the reader says so; undo takes that back', async () => {
    await load(`#${encode(friend)}`, encode(first));
    await store.open();
    await keepVisit();
    expect(store.visiting).toBe(false);
    expect(kept(window)).toBe(encode({ ...friend, units: 'in-lb' }));
    store.undo();
    expect(store.visiting).toBe(true);
    expect(kept(window)).toBe(encode(first));
  });

  it('in which the instrument is changed gives the reader one of their own', async () => {
    await load(`#${encode(friend)}`, encode(first));
    await store.open();
    store.change({ ...store.state, mine: { ...store.state.mine, a4: 432 } });
    expect(store.visiting).toBe(false);
    expect(store.own.mine).toMatchObject({ name: 'Turnstone', a4: 432 });
    store.undo();
    expect(kept(window)).toBe(encode(first));
  });

  it('in which the aim or the units are changed keeps the units alone', async () => {
    await load(`#${encode(friend)}`, encode(first));
    await store.open();
    store.change({ ...store.state, aim: { ...store.state.aim, factor: 0.9 } });
    store.change({ ...store.state, units: 'mm-N' });
    expect(store.visiting).toBe(true);
    expect(store.state.aim.factor).toBe(0.9);
    expect(kept(window)).toBe(encode({ ...first, units: 'mm-N' }));
  });

  it('to an example leaves alone what is the reader’s', async () => {
    await load('', encode(first));
    await store.open();
    await show({ ...store.state, mine: workshopInstrument('curlew') });
    expect(store.visiting).toBe(true);
    expect(kept(window)).toBe(encode(first));
    window.travel(-1);
    await read();
    expect(store.visiting).toBe(false);
    expect(encode(store.state)).toBe(encode(first));
  });

  it('is none where nothing can be kept: the link is all that there is', async () => {
    await load(`#${encode(friend)}`);
    window.localStorage.setItem = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
    await store.open();
    expect(store.state.mine.name).toBe('Turnstone');
    expect(store.visiting).toBe(false);
  });
});

describe('a job', () => {
  const friend: State = {
    ...initialState,
    mine: { ...workshopInstrument('curlew'), name: 'Turnstone' },
  };
  const note = (state: State, a4: number): State => ({ ...state, other: { ...state.other, a4 } });
  const book = async () => (await import('../../src/instrument/book/open.ts')).openBook();
  /** What lies in the book once all that was changed has reached it. */
  const jobs = async () => {
    await read();
    await expect
      .poll(() => (window.localStorage as FakeStorage).kept.get('speaking-length.job'))
      .toBeUndefined();
    const { isJob } = await import('../../src/instrument/book/schema.ts');
    return (await book()).records.filter(isJob);
  };
  const keepAsJob = async () => (await late()).keepAsJob(await held());
  beforeEach(async () => {
    vi.stubGlobal('indexedDB', new IDBFactory());
    await load('', encode(first));
    await store.open();
  });

  it('is made of the bench at a press: what is the reader’s own stays, and goes on by itself', async () => {
    await keepAsJob();
    expect(store.visiting).toBe(true);
    expect(window.location.hash).toContain('/j-');
    store.change(note(store.state, 432));
    expect(kept(window)).toBe(encode(first));
    const [job, more] = await jobs();
    expect(more).toBeUndefined();
    expect(job).toMatchObject({
      name: 'Whimbrel, like Dunlin',
      other: { a4: 432 },
      right: { name: 'Dunlin' },
    });
    await leaveVisit();
    expect(encode(store.state)).toBe(encode(first));
    expect(window.location.hash).not.toContain('/j-');
  });

  it('takes in what is changed of the instrument that feels right, too', async () => {
    await keepAsJob();
    store.change({ ...store.state, mine: { ...store.state.mine, a4: 415 } });
    expect(store.visiting).toBe(true);
    expect(store.own.mine.a4).toBe(440);
    expect((await jobs())[0]).toMatchObject({ right: { a4: 415 } });
    store.undo();
    expect((await jobs())[0]).toMatchObject({ right: { a4: 440 } });
  });

  it('goes when its making is taken back, and comes again', async () => {
    await keepAsJob();
    await jobs();
    store.undo();
    expect(store.visiting).toBe(false);
    await expect.poll(async () => (await jobs()).length).toBe(0);
    store.redo();
    expect(store.visiting).toBe(true);
    await expect.poll(async () => (await jobs()).length).toBe(1);
  });

  it('stays when its making is taken back after something was written on its card', async () => {
    await keepAsJob();
    const [job] = await jobs();
    await (await book()).change(job?.id ?? '', { note: 'Buzzes' });
    store.undo();
    await vi.dynamicImportSettled();
    await new Promise((done) => setTimeout(done, 50));
    expect(await jobs()).toHaveLength(1);
  });

  it('is made of a visit in which the instrument to be strung is changed', async () => {
    window.follow(`#${encode(friend)}`);
    await read();
    store.change(note(store.state, 432));
    await expect.poll(() => window.location.hash).toContain('/j-');
    expect(kept(window)).toBe(encode(first));
    expect((await jobs())[0]).toMatchObject({ right: { name: 'Turnstone' }, other: { a4: 432 } });
  });

  it('is not made of a visit in which only the aim is changed', async () => {
    window.follow(`#${encode(friend)}`);
    await read();
    store.change({ ...store.state, aim: { ...store.state.aim, factor: 0.9 } });
    await read();
    expect(await jobs()).toEqual([]);
  });

  it('is there again at its address, as the book has it, and what a page left too soon is in it', async () => {
    await keepAsJob();
    const [job] = await jobs();
    const address = window.location.hash;
    const device = window.localStorage as FakeStorage;
    const left = note(store.state, 428);
    const closing = (await book()).close();
    void closing;
    window = openWindow(address);
    window.localStorage = device;
    device.setItem('speaking-length.job', JSON.stringify({ id: job?.id, text: encode(left) }));
    vi.resetModules();
    ({ store } = await import('../../src/instrument/store.svelte.ts'));
    await store.open();
    await expect.poll(() => store.state.other.a4).toBe(428);
    expect(store.visiting).toBe(true);
    expect(store.tail).toBe(`/j-${job?.id}`);
  });

  it('that this device doesn’t have is a visit of what its address shows', async () => {
    window.follow(`#${encode(friend)}/j-123-4`);
    await expect.poll(() => store.visiting).toBe(true);
    await expect.poll(() => store.tail).toBe('');
    expect(store.visiting).toBe(true);
    expect(store.state.mine.name).toBe('Turnstone');
  });

  it('from another device is shown with its picks, and is kept by a press or by the first change', async () => {
    const tail = '/jn-Ticket-9/jp-p11q70.5q71-p12q60q60/jt-Buzzes/jba1-1.2e.6.20.mm/jz-0';
    window.follow(`#${encode(friend)}${tail}`);
    await expect.poll(() => store.state.other.strings[0]?.pick?.gauge).toBe(11);
    expect(await jobs()).toEqual([]);
    store.change(note(store.state, 432));
    await expect.poll(async () => (await jobs()).length).toBe(1);
    expect((await jobs())[0]).toMatchObject({
      name: 'Ticket 9',
      note: 'Buzzes',
      before: { action: ['1.6 mm'] },
      other: { a4: 432 },
    });
    expect(kept(window)).toBe(encode(first));
  });
});

describe('an example that is changed', () => {
  it('becomes a copy with a name of its own', async () => {
    await store.open();
    store.change({ ...initialState, mine: { ...initialState.mine, a4: 432 } });
    await read();
    expect(store.state.mine.name).toBe('My Redshank');
    expect(store.own.mine).toMatchObject({ name: 'My Redshank', a4: 432 });
    store.change({ ...store.state, mine: { ...store.state.mine, a4: 430 } });
    expect(store.state.mine.name).toBe('My Redshank');
  });
});

describe('undo on another page', () => {
  /** The next page on the same device. */
  async function next(): Promise<void> {
    const device = window.localStorage;
    window = openWindow('');
    window.localStorage = device;
    vi.resetModules();
    ({ store } = await import('../../src/instrument/store.svelte.ts'));
    await store.open();
  }

  it('takes back what changed the reader’s own, step by step', async () => {
    await store.open();
    store.change(first);
    store.change(trying(first, 0.7));
    store.change(trying(second, 0.7));
    await next();
    expect(encode(store.state)).toBe(encode(second));
    store.undo();
    expect(encode(store.state)).toBe(encode(first));
    expect(kept(window)).toBe(encode(first));
    await next();
    store.undo();
    expect(encode(store.state)).toBe(encode(initialState));
    expect(store.canUndo).toBe(false);
  });

  it('is nothing where what was remembered of it is spoilt', async () => {
    await load('', encode(first));
    window.localStorage.setItem?.('speaking-length.undo', '[1, {"text": 7}, "x"');
    await store.open();
    expect(store.canUndo).toBe(false);
    await load('', encode(first));
    window.localStorage.setItem?.('speaking-length.undo', '[{"text": "v1/nonsense"}]');
    await store.open();
    store.undo();
    expect(store.state.mine.name).toBe('Dunlin');
  });
});

describe('another window', () => {
  const elsewhere = (state: State) => {
    window.localStorage.setItem?.('speaking-length.state', encode(state));
    const event = new Event('storage');
    Object.assign(event, { key: 'speaking-length.state', newValue: encode(state) });
    window.dispatchEvent(event);
  };

  it('that changes the reader’s own is followed, and what is tried here stays', async () => {
    await load('', encode(first));
    await store.open();
    store.change(trying(store.state, 0.7));
    elsewhere(second);
    await read();
    expect(store.state.mine.scale.treble).toBe(0.61);
    expect(store.state.trial.length).toBe(0.7);
  });

  it('that changes one thing while a drag changes another loses neither', async () => {
    await load('', encode(first));
    await store.open();
    store.set({ ...store.state, aim: { ...store.state.aim, factor: 0.9 } });
    elsewhere({ ...first, units: 'mm-N' });
    await read();
    store.commit();
    expect(store.state.units).toBe('mm-N');
    expect(store.state.aim.factor).toBe(0.9);
    expect(kept(window)).toBe(encode(store.state));
  });

  it('doesn’t end a visit here', async () => {
    await load(`#${encode({ ...first, mine: { ...first.mine, name: 'Knot' } })}`, encode(first));
    await store.open();
    elsewhere(second);
    await read();
    expect(store.state.mine.name).toBe('Knot');
    await leaveVisit();
    expect(encode(store.state)).toBe(encode(second));
  });
});
