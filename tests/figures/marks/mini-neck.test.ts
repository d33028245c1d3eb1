/** The small neck beside an instrument’s description: one scale for all of them, frets and ends where its two sides have them. */
import { describe, expect, test } from 'vitest';

import MiniNeck from '../../../src/figures/kit/MiniNeck.svelte';
import { lengthOf } from '../../../src/instrument/pulls.ts';
import { workshopInstrument } from '../../../src/instrument/workshop.ts';
import { all, drawn, only } from './drawn.ts';
import { sheetOf, tall, type Sheet } from './sheet.ts';
import { three } from './states.ts';

const neckOf = (id: string): Sheet => {
  const { root } = drawn(MiniNeck as never, { instrument: workshopInstrument(id) });
  return sheetOf(root, only(all(root, (e) => e.tagName === 'svg')));
};
/** Units of drawing for a metre, by the six-string's highest string. */
const perMetre = tall(neckOf('redshank').of('line')[0] ?? neckOf('redshank').one('line')) / 0.6477;

describe.each(three)('%s', (id) => {
  const mine = workshopInstrument(id);
  const sheet = neckOf(id);

  test('has every string as long as it is', () => {
    const strings = sheet.of('line');
    expect(strings.map((line) => tall(line) / perMetre)).toEqual(
      mine.strings.map((_, i) => expect.closeTo(lengthOf(mine, i), 9)),
    );
    // From the highest at the right to the lowest at the left.
    strings.forEach((line, i) => expect(line.left).toBeLessThan(strings[i - 1]?.left ?? Infinity));
  });

  test('has its frets where equal division puts them, on either side', () => {
    const [nut, saddle] = sheet.of('path.end').map((mark) => mark.lines[0] ?? []);
    const frets = sheet.one('path.fret').lines;
    expect(frets).toHaveLength(20);
    for (const side of [0, 1]) {
      const at = (line: typeof nut): number => line?.[side]?.[1] ?? NaN;
      const length = side === 0 ? mine.scale.treble : mine.scale.bass;
      expect((at(saddle) - at(nut)) / perMetre).toBeCloseTo(length, 9);
      frets.forEach((fret, i) =>
        expect((at(fret) - at(nut)) / (at(saddle) - at(nut))).toBeCloseTo(
          1 - 2 ** (-(i + 1) / 12),
          9,
        ),
      );
    }
  });
});
