/** From a stream of sound to what the listening lab says, with plucks that were made of known numbers. */
import { expect, test } from 'vitest';

import { joined, type Heard } from '../../../src/figures/labs/listen/joined.ts';
import { examplePluck } from '../../../src/figures/labs/listen/example.ts';
import { LOOKS, Plucks, plucksOf, TAKEN } from '../../../src/figures/labs/kit/hear/plucks.ts';
import { centsOff, madeOf, noteSaid, pullHeard } from '../../../src/figures/labs/listen/told.ts';
import { labString } from '../../../src/figures/labs/kit/strings.ts';
import { workshop } from '../../../src/instrument/workshop.ts';
import { listen } from '../../../src/physics/listen.ts';
import { sound } from '../../physics/plucked.ts';

const RATE = 48_000;
const [redshank] = workshop;
if (!redshank) throw new Error('no example');

/** Plucks that begin at these seconds of a quiet room. */
function stream(at: readonly number[], seconds: number): Float32Array {
  const whole = Float32Array.from(
    { length: seconds * RATE },
    (_, i) => 3e-4 * Math.sin(i * 12.9898),
  );
  for (const [i, start] of at.entries()) {
    const { samples } = sound({ fundamental: 196, inharmonicity: 5e-5, noise: 0 }, i + 1);
    samples.forEach((x, j) => {
      const place = Math.round(start * RATE) + j;
      if (place < whole.length) whole[place] = (whole[place] ?? 0) + x;
    });
  }
  return whole;
}

test('each pluck of a stream is found, with its beginning and its ringing', () => {
  const found = plucksOf(stream([0.5, 2.7, 5], 7), RATE);
  expect(found.length).toBe(3);
  for (const pluck of found) {
    expect(pluck.length / RATE).toBeGreaterThanOrEqual(TAKEN);
    expect(pluck.length / RATE).toBeLessThan(TAKEN + 0.1);
    const heard = listen({ samples: pluck, sampleRate: RATE });
    expect(heard.ok && Math.abs(heard.fundamental - 196)).toBeLessThan(0.05);
  }
});

test('while a pluck rings, what has rung so far is given to look at a few times, each longer and none a pluck', () => {
  const whole = stream([0.5, 2.7], 5);
  const plucks = new Plucks(RATE);
  const looks: number[] = [];
  let taken = 0;
  for (let i = 0; i + 1024 <= whole.length; i += 1024) {
    const pluck = plucks.take(whole.subarray(i, i + 1024));
    const { soFar } = plucks;
    if (pluck) {
      taken += 1;
      expect(soFar).toBeUndefined();
    }
    if (!soFar) continue;
    looks.push(soFar.length / RATE);
    // It is the pluck from its beginning, and its pitch can be read already.
    const heard = listen({ samples: soFar, sampleRate: RATE });
    expect(heard.ok && Math.abs(heard.fundamental - 196)).toBeLessThan(0.2);
  }
  expect(taken).toBe(2);
  const due = [...LOOKS, ...LOOKS];
  expect(looks.length).toBe(due.length);
  for (const [i, look] of looks.entries()) {
    expect(look).toBeGreaterThanOrEqual(due[i] ?? NaN);
    expect(look).toBeLessThan((due[i] ?? NaN) + 0.05);
  }
  expect(Math.max(...LOOKS)).toBeLessThan(TAKEN);
});

test('a quiet room has no pluck, and says how quiet it is', () => {
  const plucks = new Plucks(RATE);
  const room = stream([], 2);
  for (let i = 0; i + 1024 <= room.length; i += 1024)
    expect(plucks.take(room.subarray(i, i + 1024))).toBeUndefined();
  expect(plucks.isTaking).toBe(false);
  expect(plucks.level).toBeGreaterThan(1e-4);
  expect(plucks.level).toBeLessThan(3e-4);
});

test('a sound that begins in the middle of a note is taken as one', () => {
  const whole = stream([0], 2).slice(RATE / 4);
  expect(plucksOf(whole, RATE).length).toBe(1);
});

const pluck = (id: string, fundamental: number, inharmonicity: number): Heard => ({
  id,
  fundamental,
  fundamentalDoubt: 0.01,
  inharmonicity,
  inharmonicityDoubt: 1e-7,
});

test('plucks are joined by their doubts; one far off is named and left out', () => {
  const good = [pluck('a', 330, 2e-5), pluck('b', 330.05, 2.02e-5), pluck('c', 329.97, 1.98e-5)];
  const all = joined([...good, pluck('d', 331.9, 2e-5), pluck('e', 330, 4e-5)]);
  expect(all?.dropped).toEqual(['d', 'e']);
  expect(all?.used).toEqual(['a', 'b', 'c']);
  expect(all?.fundamental.value).toBeCloseTo(330.007, 2);
  expect((all?.inharmonicity.value ?? NaN) * 1e5).toBeCloseTo(2, 1);
  const one = joined(good.slice(0, 1));
  expect(all?.fundamental.uncertainty).toBeLessThan(one?.fundamental.uncertainty ?? 0);
  expect(joined([])).toBeUndefined();
  // Of two that differ nobody knows which is wrong.
  expect(joined([pluck('a', 330, 2e-5), pluck('b', 340, 2e-5)])?.dropped).toEqual([]);
});

test('the made-up pluck is heard as the string it was made of, and a plain one as its own gauge', () => {
  // Listening takes a while: one plain string, one wound.
  for (const index of [1, 4]) {
    const string = redshank.strings[index];
    if (!string) throw new Error('no such string');
    const lab = labString(redshank, index, 'in-lb');
    const heard = listen({ ...examplePluck(lab), near: lab.pull.frequency });
    if (!heard.ok) throw new Error(`${string.note}: ${heard.reason}`);
    const tone = joined([{ id: 'a', ...heard }]);
    if (!tone) throw new Error('nothing joined');
    // The pitch of a string is its flexible one: a stiff string's first partial stands a little above.
    expect(Math.abs(centsOff(tone, lab.pull.frequency))).toBeLessThan(1);
    expect(tone.inharmonicity.value / (lab.inharmonicity?.value ?? NaN)).toBeCloseTo(1, 1);
    expect(pullHeard(tone, lab).value / lab.pull.tension).toBeCloseTo(1, 2);
    const said = madeOf(tone, lab, 'in-lb').join(' ');
    if (string.kind === 'plain')
      expect(said).toMatch(new RegExp(`\\b(?:only|gauge|or|,) ${string.gauge}\\b`));
    else expect(said).toMatch(/The core of this .* is between [\d.]+ and [\d.]+ thousandths/);
  }
});

test('a pitch is said as a tuner would', () => {
  expect(noteSaid('E4', 0.2)).toMatch(/^in tune, E/);
  expect(noteSaid('E4', -3.21)).toMatch(/^3\.2\u00a0cents below E/);
});
