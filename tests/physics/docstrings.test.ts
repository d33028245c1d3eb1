import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

import { root } from '../structure/imports.ts';

const folder = join(root, 'src/physics');
const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((f) =>
  f.endsWith('.ts'),
);

/** Exported functions without a comment right above them. */
const bare = (code: string): readonly string[] =>
  [...code.matchAll(/(\*\/\n)?export function (\w+)/g)].flatMap(([, doc, name = '']) =>
    doc ? [] : [name],
  );

test.each(files)(
  '%s says at its head what it is, and above each function what that does',
  (file) => {
    const code = readFileSync(join(folder, file), 'utf8');
    expect(code).toMatch(/^\/\*\*/);
    expect(bare(code)).toEqual([]);
  },
);

test('a function without a comment would be found', () => {
  expect(bare('/** a */\nexport function a() {}\n\nexport function b() {}')).toEqual(['b']);
});
