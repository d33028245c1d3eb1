import { afterEach, expect, it, vi } from 'vitest';

import {
  forgetGiven,
  forgetGuess,
  recallGiven,
  recallGuess,
  recallPicked,
  rememberGiven,
  rememberGuess,
} from '../../src/exercises/memory.ts';
import { remember } from '../../src/instrument/storage.ts';

function openDevice(): void {
  const kept = new Map<string, string>();
  vi.stubGlobal('window', {
    localStorage: {
      getItem: (key: string) => kept.get(key) ?? null,
      setItem: (key: string, text: string) => kept.set(key, text),
      removeItem: (key: string) => kept.delete(key),
    },
  });
}
afterEach(() => vi.unstubAllGlobals());

const given = { typed: '16.3 lb', value: 72.5, answer: 72.6 };

it('an answer is remembered under its key until it is cleared', () => {
  openDevice();
  expect(recallGiven('pull.own')).toBeUndefined();
  rememberGiven('pull.own', given);
  expect(recallGiven('pull.own')).toEqual(given);
  expect(recallGiven('pull.other')).toBeUndefined();
  forgetGiven('pull.own');
  expect(recallGiven('pull.own')).toBeUndefined();
});

it.each([
  'nonsense',
  'null',
  '7',
  '[]',
  '{}',
  '{"typed":"8","value":"8","answer":8}',
  '{"typed":8,"value":8,"answer":8}',
  '{"typed":"8","value":8}',
])('an answer that reads %s is none', (text) => {
  openDevice();
  remember('answer.pull.own', text);
  expect(recallGiven('pull.own')).toBeUndefined();
});

it('what was picked is remembered like what was typed', () => {
  openDevice();
  const picked = { picked: ['b', 'a'], right: '["a","b"]' };
  rememberGiven('pull.order', picked);
  expect(recallPicked('pull.order')).toEqual(picked);
  expect(recallGiven('pull.order')).toBeUndefined();
  rememberGiven('pull.order', given);
  expect(recallPicked('pull.order')).toBeUndefined();
});

it.each([
  'nonsense',
  'null',
  '{"picked":"a","right":""}',
  '{"picked":[1],"right":""}',
  '{"picked":[]}',
])('an order that reads %s is none', (text) => {
  openDevice();
  remember('answer.pull.order', text);
  expect(recallPicked('pull.order')).toBeUndefined();
});

it('a guess is remembered as long as it is one of the options', () => {
  openDevice();
  rememberGuess('half', 'Half');
  expect(recallGuess('half', ['A quarter', 'Half'])).toBe('Half');
  expect(recallGuess('half', ['A quarter', 'Double'])).toBeUndefined();
  expect(recallGuess('other', ['Half'])).toBeUndefined();
  forgetGuess('half');
  expect(recallGuess('half', ['A quarter', 'Half'])).toBeUndefined();
});

it('a device without memory costs the memory only', () => {
  expect(rememberGiven('pull.own', given)).toBe(false);
  expect(recallGiven('pull.own')).toBeUndefined();
  expect(rememberGuess('half', 'Half')).toBe(false);
  expect(recallGuess('half', ['Half'])).toBeUndefined();
});
