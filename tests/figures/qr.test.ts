import { expect, test } from 'vitest';

import { codeOf } from '../../src/figures/kit/code/qr.ts';
import { encode } from '../../src/instrument/link.ts';
import {
  asTarget,
  initialState,
  workshop,
  workshopInstrument,
} from '../../src/instrument/workshop.ts';
import { readCode } from './read-code.ts';

test.each(workshop.map(({ id }) => id))('the code of a sheet for %s is read back whole', (id) => {
  const mine = workshopInstrument(id);
  const address = `https://strings.example/bench/#${encode({ ...initialState, mine, other: asTarget(mine) })}`;
  expect(readCode(codeOf(address))).toBe(address);
});
