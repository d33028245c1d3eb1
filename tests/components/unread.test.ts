/** What the typesetter could not read it sets in red instead of failing: no chapter may hold such a place. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

const folder = join(import.meta.dirname, '../../content/course');

test.each(readdirSync(folder).filter((file) => file.endsWith('.mdx')))(
  '%s keeps live numbers out of the equations between dollar signs, which know none',
  (file) => {
    const text = readFileSync(join(folder, file), 'utf8').replace(/<Eq[^>]*?\/>/gs, '');
    expect(text).not.toContain('\\live');
  },
);
