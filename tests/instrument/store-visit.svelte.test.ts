import { describe, expect, it } from 'vitest';

import { encode } from '../../src/instrument/link.ts';
import type { State } from '../../src/instrument/schema.ts';
import { initialState, workshopInstrument } from '../../src/instrument/workshop.ts';
import {
  first,
  keepVisit,
  kept,
  leaveVisit,
  load,
  onFreshPages,
  read,
  show,
  store,
  window,
} from './store-page.ts';

onFreshPages();

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
