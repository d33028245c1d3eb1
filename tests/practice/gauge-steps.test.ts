/** What one thousandth does, on a thin string and on a thick one. Common practice, no source. */
import { expect, test } from 'vitest';

import { fromDrawer, pull } from './compare.ts';

test('from nine to ten thousandths changes the pull several times as much as from 46 to 47', () => {
  const thin = pull(fromDrawer('plain', 10), 'E4', 25.5) / pull(fromDrawer('plain', 9), 'E4', 25.5);
  const thick =
    pull(fromDrawer('wound', 47), 'E2', 25.5) / pull(fromDrawer('wound', 46), 'E2', 25.5);
  expect(thick).toBeGreaterThan(1);
  expect((thin - 1) / (thick - 1)).toBeGreaterThan(3);
});
