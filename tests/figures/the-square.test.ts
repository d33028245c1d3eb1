import { expect, test } from 'vitest';

import { dataHead, dataRows } from '../../src/figures/pull/the-square/data.ts';
import { describe as say, formatSigned } from '../../src/figures/pull/the-square/describe.ts';
import { liveText } from '../../src/figures/quantities.ts';
import { fromInches } from '../../src/physics/index.ts';

test('the parts are written so that they add up on the page', () => {
  expect(
    [0.081, -0.0431, 0.169, 0, 0.0002].map(formatSigned).map((s) => s.replace(/\s/, ' ')),
  ).toEqual(['+8.1 %', '−4.3 %', '+16.9 %', '0.0 %', '0.0 %']);
});

test('the square says its parts, and proposes an inch where nothing is tried', () => {
  expect(say(fromInches(25.5), fromInches(26.5), 'in-lb').replace(/\s/g, ' ')).toMatch(
    /\+1 in .*\+3\.9 % .*\+0\.2 %.*\+8\.0 %/,
  );
  expect(say(fromInches(25.5), fromInches(25.5), 'in-lb')).toMatch(/Proposed: \+1\s/);
});

test.each([
  ['speaking.inchOf25', '3.9'],
  ['speaking.cornerOf25', '0.2'],
  ['speaking.inchOn25', '8.0'],
  ['speaking.shortOn25', '22'],
  ['speaking.longOn25', '12'],
])('the chapter’s %s is %s per cent', (key, value) => {
  expect(liveText(key, 'speaking-length')).toMatch(
    new RegExp(`^${value.replace('.', '\\.')}\\s%$`),
  );
});

test('its data add up: two strips and a corner', () => {
  const [row] = dataRows(fromInches(25.5), fromInches(26.5), 'in-lb');
  expect(row).toHaveLength(dataHead('in-lb').length);
  const [, , strip, corner, whole] = (row ?? []).map(Number);
  expect(2 * (strip ?? NaN) + (corner ?? NaN)).toBeCloseTo(whole ?? NaN, 1);
});
