// @vitest-environment happy-dom
/** All saddles in one table: what was read at the twelfth fret, what the model has there, and how far each saddle moves. */
import { mount, unmount } from 'svelte';
import { expect, test } from 'vitest';

import { inTune, turning } from '../../../src/figures/labs/in-tune/in-tune.ts';
import { modelOf } from '../../../src/figures/labs/in-tune/predicted.ts';
import Saddles from '../../../src/figures/labs/in-tune/Saddles.svelte';
import { withDoubt } from '../../../src/figures/labs/kit/agree.ts';
import type { Rows } from '../../../src/figures/labs/kit/rows.svelte.ts';
import { labString } from '../../../src/figures/labs/kit/strings.ts';
import { usualHeight } from '../../../src/instrument/intoned.ts';
import { workshop } from '../../../src/instrument/workshop.ts';

const [redshank] = workshop;
if (!redshank) throw new Error('no example');
const instrument = redshank;
const height = usualHeight(instrument);
/** Cents at the twelfth fret of the strings that were read */
const read = [6, 0.2, -7];
const strings = read.map((_, i) => labString(instrument, i, 'in-lb'));
const readings = (key: string) => {
  const at = strings.findIndex((string) => string.key === key);
  const off = read[at];
  return off === undefined
    ? []
    : [
        { id: '0', values: { fret: 0, frequency: 200 } },
        { id: '1', values: { fret: 12, frequency: 400 * 2 ** (off / 1200) } },
      ];
};

test('each string that was read has its cents beside the model’s and the way its saddle goes', async () => {
  const rows = { of: readings } as unknown as Rows;
  const table = mount(Saddles, {
    target: document.body,
    props: { instrument, units: 'in-lb', rows, height },
  });
  const lines = [...document.querySelectorAll('tbody tr')].map((line) =>
    [...line.children].map((cell) => cell.textContent.trim()),
  );
  expect(lines.map(([name]) => name)).toEqual(strings.map(({ name }) => name));
  const ways = strings.map((string, i) => {
    const model = modelOf(string, height);
    const found = inTune(readings(string.key), string, model);
    expect(lines[i]?.[2]).toBe(model && withDoubt(model.at(12)));
    expect(Number(lines[i]?.[1]?.split(/\s/)[0]?.replace('\u2212', '-'))).toBeCloseTo(
      read[i] ?? NaN,
      0,
    );
    return found?.back && turning(found.back);
  });
  expect(ways).toEqual(['back', 'stay', 'forward']);
  expect(lines.map((line) => line[3]?.replace(/^.* mm /, ''))).toEqual([
    expect.stringMatching(/back$/),
    'leave it',
    expect.stringMatching(/forward$/),
  ]);
  await unmount(table);
});
