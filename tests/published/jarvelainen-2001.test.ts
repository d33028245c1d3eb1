/**
 * The inharmonicity that an ear begins to hear: ln B = 2.54 ln f0 - 24.6.
 * Source: H. Järveläinen, V. Välimäki, M. Karjalainen, Acoustics Research Letters Online 2(3) 79 (2001). Status: second-hand,
 * as five public programs quote it.
 * M. Karjalainen and H. Järveläinen (read) found it near the threshold on the four lowest strings of a guitar and not heard on the
 * two highest. Of an electric guitar's plain steel only the order is held here: its second string lies above this line.
 */
import { expect, test } from 'vitest';

import {
  bendingStiffness,
  fromThousandths,
  inharmonicity,
  linearDensity,
  noteFrequency,
  tension,
  type Construction,
} from '../../src/physics/index.ts';

const plain = (thou: number): Construction => ({
  kind: 'plain',
  diameter: fromThousandths(thou),
  material: 'musicWire',
});
const wound = (thou: number, core: number): Construction => ({
  kind: 'wound',
  diameter: fromThousandths(thou),
  core: { shape: 'hex', diameter: fromThousandths(core), material: 'musicWire' },
  wraps: [{ material: 'nickelPlatedSteel' }],
});
const strings = [
  ['E4', plain(10)],
  ['B3', plain(13)],
  ['G3', plain(17)],
  ['D3', wound(26, 12.8)],
  ['A2', wound(36, 14.8)],
  ['E2', wound(46, 16.6)],
] as const;

test('a guitar’s two highest strings come nearest to not being heard as stiff, and the first is not', () => {
  const aboveThreshold = strings.map(([note, construction]) => {
    const [speakingLength, frequency] = [0.648, noteFrequency(note)];
    const pull = tension({ speakingLength, frequency, linearDensity: linearDensity(construction) });
    const b = inharmonicity({
      speakingLength,
      tension: pull,
      bendingStiffness: bendingStiffness(construction),
    });
    return Math.log(b) - (2.54 * Math.log(frequency) - 24.6);
  });
  const [first = NaN, second = NaN, ...lower] = aboveThreshold;
  expect(first).toBeLessThan(0);
  expect(second).toBeLessThan(Math.min(...lower));
});
