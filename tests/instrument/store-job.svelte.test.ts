import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { beforeEach, describe, expect, it, vi } from 'vitest';

import { encode } from '../../src/instrument/link.ts';
import type { State } from '../../src/instrument/schema.ts';
import { FakeStorage } from './fake-window.ts';
import {
  first,
  held,
  kept,
  late,
  leaveVisit,
  load,
  loadNext,
  onFreshPages,
  read,
  store,
  window,
} from './store-page.ts';
import { initialState, workshopInstrument } from '../../src/instrument/workshop.ts';

onFreshPages();

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
    device.setItem('speaking-length.job', JSON.stringify({ id: job?.id, text: encode(left) }));
    await loadNext(address);
    await store.open();
    await expect.poll(() => store.state.other.a4).toBe(428);
    expect(store.visiting).toBe(true);
    expect(store.tail).toBe(`/j-${job?.id}`);
  });

  it('of a page left too soon is in the book though its reader has nothing of their own', async () => {
    await load(`#${encode(note(friend, 428))}/j-12-34`);
    const left = JSON.stringify({ id: '12-34', text: encode(note(friend, 428)) });
    window.localStorage.setItem?.('speaking-length.job', left);
    await store.open();
    await expect.poll(async () => (await jobs()).length).toBe(1);
    expect((await jobs())[0]).toMatchObject({ id: '12-34', other: { a4: 428 } });
    expect(store.tail).toBe('/j-12-34');
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
