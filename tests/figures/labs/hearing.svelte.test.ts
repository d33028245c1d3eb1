// @vitest-environment happy-dom
/** A pluck is shown while it rings and counted once it is whole, however slowly the worker listens. */
import { afterEach, beforeEach, expect, test, vi } from 'vitest';

import { Ear } from '../../../src/figures/labs/kit/hear/ear.ts';
import { Hearing } from '../../../src/figures/labs/kit/hear/hearing.svelte.ts';
import type { Asked } from '../../../src/figures/labs/kit/hear/listen.worker.ts';
import type * as microphone from '../../../src/figures/labs/kit/hear/microphone.ts';
import { LOOKS, TAKEN } from '../../../src/figures/labs/kit/hear/plucks.ts';
import type { Heard } from '../../../src/physics/listen.ts';

/** A worker that answers when it is told to, and lists what it has been asked, by the length of each sound */
class SlowWorker {
  static asked: number[] = [];
  static answer: (heard: Heard) => void = () => undefined;
  addEventListener(_: string, hear: (event: { data: Heard }) => void): void {
    SlowWorker.answer = (data) => hear({ data });
  }
  postMessage({ samples }: Asked): void {
    SlowWorker.asked.push(samples.length);
  }
  terminate(): void {
    SlowWorker.asked = [];
  }
}

const RATE = 1000;
let onpiece: (piece: Float32Array, rate: number) => void = () => undefined;
vi.mock(import('../../../src/figures/labs/kit/hear/microphone.ts'), async (original) => ({
  ...(await original()),
  listenIn: ((next) => {
    onpiece = next;
    return Promise.resolve({ sampleRate: RATE, meddles: [], stop: () => undefined });
  }) satisfies typeof microphone.listenIn,
}));

beforeEach(() => {
  SlowWorker.asked = [];
  vi.stubGlobal('Worker', SlowWorker);
});
afterEach(() => void vi.unstubAllGlobals());

const sound = (length: number): Asked => ({
  samples: new Float32Array(length),
  sampleRate: RATE,
  near: undefined,
});
const string = (fundamental: number): Heard => ({
  ok: true,
  fundamental,
  fundamentalDoubt: 0.01,
  inharmonicity: 1e-5,
  inharmonicityDoubt: 1e-7,
  partials: [{ n: 1, frequency: fundamental, level: -20 }],
  residual: 0.1,
});
const noise: Heard = { ok: false, reason: 'noise' };
async function answers(heard: Heard): Promise<void> {
  SlowWorker.answer(heard);
  await new Promise((done) => setTimeout(done));
}

test('the worker has one sound at a time; of glances that wait only the newest is left, and none once the whole is there', async () => {
  const ear = new Ear();
  const told: [string, Heard | undefined][] = [];
  const tell = (name: string) => (heard: Heard | undefined) => void told.push([name, heard]);
  void ear.glance(sound(1)).then(tell('first'));
  void ear.glance(sound(2)).then(tell('second'));
  void ear.glance(sound(3)).then(tell('third'));
  expect(SlowWorker.asked).toEqual([1]);
  await answers(string(100));
  expect(told).toEqual([
    ['second', undefined],
    ['first', string(100)],
  ]);
  expect(SlowWorker.asked).toEqual([1, 3]);

  // The third is on its way when the whole comes, then another whole.
  void ear.glance(sound(4)).then(tell('fourth'));
  void ear.listen(sound(5)).then(tell('whole'));
  void ear.listen(sound(6)).then(tell('another'));
  await answers(string(101));
  expect(told.slice(2)).toEqual([
    ['fourth', undefined],
    ['third', undefined],
  ]);
  await answers(string(102));
  await answers(string(103));
  expect(told.slice(4)).toEqual([
    ['whole', string(102)],
    ['another', string(103)],
  ]);
  expect(SlowWorker.asked).toEqual([1, 3, 5, 6]);
});

/** Sends so many seconds of sound that is as loud as this, in pieces of a fiftieth of a second. */
async function sounds(seconds: number, level: number): Promise<void> {
  for (let i = 0; i < Math.round(50 * seconds); i += 1)
    onpiece(new Float32Array(RATE / 50).fill(level), RATE);
  await new Promise((done) => setTimeout(done));
}

test('what is heard while a string rings is shown, counts for nothing, and gives way to the whole', async () => {
  const hearing = new Hearing();
  const plucks: number[] = [];
  const heard: (number | undefined)[] = [];
  const near = (): number => 100;
  const listen = () =>
    hearing.turn((pluck) => {
      plucks.push(pluck.samples.length);
      void hearing.hear(pluck, 100).then((each) => heard.push(each?.fundamental));
    }, near);
  const shows = () => hearing.shown && [hearing.shown.heard.fundamental, hearing.shown.isWhole];
  await listen();
  const before = hearing.said;
  await sounds(0.2, 0);
  expect(SlowWorker.asked).toEqual([]);

  await sounds((LOOKS[0] ?? 0) + 0.02, 0.5);
  await answers(noise);
  expect([shows(), hearing.said]).toEqual([undefined, before]);
  await sounds((LOOKS[1] ?? 0) - (LOOKS[0] ?? 0), 0.5);
  await answers(string(98));
  expect([shows(), hearing.said]).toEqual([[98, false], before]);
  // One that can't be read leaves the ladder as it was.
  await sounds((LOOKS[2] ?? 0) - (LOOKS[1] ?? 0), 0.5);
  await answers(noise);
  expect(shows()).toEqual([98, false]);
  await sounds((LOOKS[3] ?? 0) - (LOOKS[2] ?? 0), 0.5);
  await answers(string(99));
  expect([shows(), plucks, heard]).toEqual([[99, false], [], []]);
  await sounds(TAKEN - (LOOKS[3] ?? 0), 0.5);
  expect(plucks.length).toBe(1);
  await answers(string(100));
  expect([shows(), heard]).toEqual([[100, true], [100]]);
  expect(SlowWorker.asked.length).toBe(LOOKS.length + 1);

  // A second one is begun and refused: the first stands again, and the reason is said.
  await sounds(1, 0);
  await sounds(0.1, 0);
  await hearing.turn(() => undefined, near);
  await listen();
  await sounds(0.2, 0);
  await sounds((LOOKS[0] ?? 0) + 0.02, 0.5);
  await answers(string(97));
  expect(shows()).toEqual([97, false]);
  await sounds(TAKEN - (LOOKS[0] ?? 0), 0.5);
  await answers(noise);
  await answers(noise);
  expect([shows(), heard]).toEqual([
    [100, true],
    [100, undefined],
  ]);
  expect(hearing.said).toMatch(/^A pluck was left out\./);

  // Turned off in the middle of one, or another string picked: what was on its way is not shown.
  await hearing.turn(() => undefined, near);
  await listen();
  await sounds(0.2, 0);
  await sounds((LOOKS[0] ?? 0) + 0.02, 0.5);
  await hearing.turn(() => undefined, near);
  await answers(string(90));
  expect(shows()).toEqual([100, true]);
  await listen();
  await sounds(0.2, 0);
  await sounds((LOOKS[0] ?? 0) + 0.02, 0.5);
  hearing.forget();
  await answers(string(90));
  expect(shows()).toBeUndefined();
  expect(heard).toEqual([100, undefined]);
  hearing.close();
});
