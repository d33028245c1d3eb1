import jsQR from 'jsqr';
import { expect, test } from 'vitest';

import { codeOf } from '../../src/figures/kit/code/qr.ts';
import { encode } from '../../src/instrument/link.ts';
import {
  asTarget,
  initialState,
  workshop,
  workshopInstrument,
} from '../../src/instrument/workshop.ts';

/** What a camera would see: some pixels a module, with the blank around that the standard asks for. */
function photographed({ size, path }: { size: number; path: string }) {
  const scale = 3;
  const quiet = 4;
  const side = (size + 2 * quiet) * scale;
  const pixels = new Uint8ClampedArray(side * side * 4).fill(255);
  for (const [, x, y] of path.matchAll(/M(\d+) (\d+)/g)) {
    for (let dy = 0; dy < scale; dy += 1) {
      for (let dx = 0; dx < scale; dx += 1) {
        const at = ((Number(y) + quiet) * scale + dy) * side + (Number(x) + quiet) * scale + dx;
        pixels.fill(0, 4 * at, 4 * at + 3);
      }
    }
  }
  return { pixels, side };
}

test.each(workshop.map(({ id }) => id))('the code of a sheet for %s is read back whole', (id) => {
  const mine = workshopInstrument(id);
  const address = `https://strings.example/bench/#${encode({ ...initialState, mine, other: asTarget(mine) })}`;
  const { pixels, side } = photographed(codeOf(address));
  expect(jsQR(pixels, side, side)?.data).toBe(address);
});
