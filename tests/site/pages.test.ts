import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

import { isFirstOfItsKind, pages, shareOf } from './pages.ts';

test.each(['every-page', 'random-play'])('the files in %s share out every page once', (folder) => {
  const place = join(import.meta.dirname, folder);
  const shared = readdirSync(place).flatMap((file) => shareOf(join(place, file)));
  expect(shared.sort()).toEqual(pages());
});

test('of each kind of page one is looked at in every way', () => {
  const first = pages().filter(isFirstOfItsKind);
  expect(first).toEqual(
    expect.arrayContaining(['', '404.html', 'bench/', 'course/', 'reference/']),
  );
  for (const room of ['course', 'reference'])
    expect(first.filter((path) => path.startsWith(`${room}/`) && path !== `${room}/`)).toHaveLength(
      1,
    );
});
