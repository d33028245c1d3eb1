import { describe, expect, it } from 'vitest';

import { moved, placeAt } from '../../src/exercises/order.ts';
import { askChoice, askMistake, askOrder } from '../../src/exercises/picked.ts';
import type { ChooseExercise, MistakeExercise, OrderExercise } from '../../src/exercises/types.ts';
import { initialState } from '../../src/instrument/workshop.ts';

const refused = (): never => {
  throw new RangeError('tension is 0');
};
const faulty = (): never => {
  throw new TypeError('undefined is not a function');
};
const named = (...ids: string[]) => ids.map((id) => ({ id, label: id.toUpperCase() }));

describe('a choice', () => {
  const choice: ChooseExercise = {
    kind: 'choose',
    options: () => named('9', '10', '11'),
    answer: () => '10',
    hints: (_, id) => (id === '9' ? 'Too light.' : undefined),
  };
  const ask = (change: Partial<ChooseExercise> = {}) =>
    askChoice({ ...choice, ...change }, initialState);

  it('is right for the right id, and gives the hint of a wrong one', () => {
    expect(ask()?.judge(['10'])).toEqual({ kind: 'right' });
    expect(ask()?.judge(['9'])).toEqual({ kind: 'wrong', hint: 'Too light.' });
    expect(ask()?.judge(['11'])).toMatchObject({ kind: 'wrong', hint: /^Not this one/ });
    expect(ask()?.judge([])?.kind).toBe('wrong');
  });

  it('may have several right ones', () => {
    const both = ask({ answer: () => ['10', '11'] });
    expect(both?.judge(['11'])).toEqual({ kind: 'right' });
    expect(both?.judge(['9'])?.kind).toBe('wrong');
  });

  it('is another question once its options or its answer have changed', () => {
    expect(ask()?.right).toBe(ask()?.right);
    expect(ask({ answer: () => '11' })?.right).not.toBe(ask()?.right);
    expect(ask({ options: () => named('8', '10', '11') })?.right).not.toBe(ask()?.right);
  });

  it('is none without a right option, without a wrong one, or where the physics refuses', () => {
    expect(ask({ answer: () => '12' })).toBeUndefined();
    expect(ask({ options: () => named('10') })).toBeUndefined();
    expect(ask({ answer: () => ['9', '10', '11'] })).toBeUndefined();
    expect(ask({ answer: refused })).toBeUndefined();
    expect(() => ask({ options: faulty })).toThrow(TypeError);
  });
});

describe('an order', () => {
  const items = (values: readonly number[]) =>
    values.map((value, i) => ({ id: `i${i}`, label: `item ${i}`, value }));
  const order = (values: readonly number[]): OrderExercise => ({
    kind: 'order',
    ends: ['least', 'most'],
    items: () => items(values),
    hint: 'Square it.',
  });
  const ask = (values: readonly number[], seed = 'seed') =>
    askOrder(order(values), initialState, seed);

  it('is right when the values rise', () => {
    expect(ask([3, 1, 2])?.judge(['i1', 'i2', 'i0'])).toEqual({ kind: 'right' });
  });

  it('says how many stand in their places, or that the whole is turned round', () => {
    const by = (...ids: string[]) => ask([3, 1, 2, 4])?.judge(ids);
    expect(by('i2', 'i1', 'i0', 'i3')).toMatchObject({ hint: /^Square it\. .*2 of 4\.$/ });
    expect(by('i3', 'i1', 'i2', 'i0')).toMatchObject({ hint: /^Square it\. None/ });
    expect(by('i3', 'i0', 'i2', 'i1')).toMatchObject({ hint: /turned round: “least”/ });
    expect(by()).toMatchObject({ kind: 'wrong' });
    expect(by('i1', 'i2', 'i0')).toMatchObject({ kind: 'wrong' });
  });

  it('takes equal values either way, also when rounding parts them', () => {
    const by = (...ids: string[]) => ask([1, 0.1 + 0.2, 0.3, 2])?.judge(ids)?.kind;
    expect(by('i1', 'i2', 'i0', 'i3')).toBe('right');
    expect(by('i2', 'i1', 'i0', 'i3')).toBe('right');
    expect(by('i2', 'i0', 'i1', 'i3')).toBe('wrong');
  });

  it('never shows the right order turned round first, whatever the seed', () => {
    for (const values of [
      [1, 2, 3],
      [1, 1, 2, 2],
      [4, 3, 2, 1, 0],
    ]) {
      for (let seed = 0; seed < 200; seed += 1) {
        const asked = ask(values, `seed ${seed}`);
        const shown = asked?.options.map(({ id }) => id) ?? [];
        expect(asked?.judge(shown.toReversed()).kind, `${values} ${seed}`).toBe('wrong');
      }
    }
  });

  it('never shows the right order first, whatever the seed', () => {
    for (const values of [
      [1, 2],
      [1, 2, 3],
      [1, 1, 2, 2],
      [4, 3, 2, 1, 0],
    ]) {
      for (let seed = 0; seed < 200; seed += 1) {
        const asked = ask(values, `seed ${seed}`);
        const shown = asked?.options.map(({ id }) => id) ?? [];
        expect(shown.toSorted()).toEqual(items(values).map(({ id }) => id));
        expect(asked?.judge(shown).kind, `${values} ${seed}`).toBe('wrong');
      }
    }
  });

  it('shows the same order for the same seed, and others for others', () => {
    const shown = (seed: string) =>
      ask([1, 2, 3, 4, 5], seed)
        ?.options.map(({ id }) => id)
        .join();
    expect(shown('a')).toBe(shown('a'));
    expect(new Set(['a', 'b', 'c', 'd', 'e', 'f'].map(shown)).size).toBeGreaterThan(2);
  });

  it('is none where all are alike or one has no value', () => {
    expect(ask([2, 2, 2])).toBeUndefined();
    expect(ask([1, NaN, 2])).toBeUndefined();
    expect(askOrder({ ...order([]), items: refused }, initialState, '')).toBeUndefined();
    expect(() => askOrder({ ...order([]), items: faulty }, initialState, '')).toThrow(TypeError);
  });
});

describe('a worked sheet', () => {
  const sheet: MistakeExercise = {
    kind: 'mistake',
    lines: () => ['a', 'b', 'c'],
    wrong: 1,
    hints: ['So it is.', undefined, undefined],
    right: () => 'b put right',
  };

  it('is solved by its wrong line, and gives a reason for the others', () => {
    const by = (id: string) => askMistake(sheet, initialState)?.judge([id]);
    expect(by('1')).toEqual({ kind: 'right' });
    expect(by('0')).toEqual({ kind: 'wrong', hint: 'So it is.' });
    expect(by('2')).toMatchObject({ kind: 'wrong', hint: /^That line follows/ });
  });

  it('stays the same question whatever its numbers', () => {
    const changed = askMistake({ ...sheet, lines: () => ['d', 'e', 'f'] }, initialState);
    expect(changed?.right).toBe(askMistake(sheet, initialState)?.right);
    expect(askMistake({ ...sheet, lines: refused }, initialState)).toBeUndefined();
  });
});

describe('moving', () => {
  it.each<[string, number, string]>([
    ['a', 2, 'bcad'],
    ['d', 0, 'dabc'],
    ['b', 1, 'abcd'],
    ['a', 9, 'bcda'],
    ['c', -1, 'cabd'],
  ])('%s to place %d makes %s', (id, to, result) => {
    expect(moved(['a', 'b', 'c', 'd'], id, to).join('')).toBe(result);
  });

  it('by dragging changes places past the middle of a neighbour', () => {
    const rows = [0, 44, 110, 154].map((top, i, all) => ({ top, bottom: all[i + 1] ?? 198 }));
    expect(placeAt(rows, 60, 0)).toBe(0);
    expect(placeAt(rows, 80, 0)).toBe(1);
    expect(placeAt(rows, 500, 0)).toBe(3);
    expect(placeAt(rows, 30, 2)).toBe(1);
    expect(placeAt(rows, -50, 2)).toBe(0);
    expect(placeAt(rows, 120, 2)).toBe(2);
  });
});
