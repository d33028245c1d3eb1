/** What is imported for what it does alone must be named in the manifest, or a build leaves it out. */
import { readFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import { expect, test } from 'vitest';

import { root, sources } from './imports.ts';

const { sideEffects } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as {
  sideEffects: readonly string[];
};

const named = (path: string): boolean =>
  sideEffects.some((pattern) => posix.matchesGlob(`/${path}`, pattern));

test('every file that is imported for its effect is named as having one', () => {
  const found = sources().flatMap((path) => {
    const text = readFileSync(join(root, path), 'utf8');
    return [...text.matchAll(/^\s*import '(\.[^']+\.ts)';/gm)].map(([, specifier = '']) =>
      posix.join(posix.dirname(path), specifier),
    );
  });
  expect(found).toContain('src/instrument/link-now.ts');
  expect([...new Set(found)].filter((path) => !named(path))).toEqual([]);
});
