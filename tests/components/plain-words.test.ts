/** The words that made the course sound translated stay out of it; "rule" means one thing. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

const folder = join(import.meta.dirname, '../../content');
const texts = [
  ...['course', 'labs'].flatMap((room) =>
    readdirSync(join(folder, room)).map((file) => `${room}/${file}`),
  ),
  'data/glossary.yaml',
].map((file) => ({ file, text: readFileSync(join(folder, file), 'utf8') }));

const translated =
  /\b(asks? for|reckon\w*|in hand|at hand|whoever|stuff|rub(bed|s)? out|what of|become of)\b/gi;
/** Subject and verb the wrong way round, for rhythm */
const reversed =
  /(?:^|[.:;] )(?:Beside|Below|Above|Behind|Dashed|Dotted|Shaded|Filled|Only then) (?:it |them |which |that )?(?:stands?|lies?|hangs?|is|are|comes?)\b/gm;
/** A tool is a ruler; a slide rule is one, too; anything else is a rule of thumb, and named so once. */
const rule = /(?<!slide )\brule\b(?! of thumb)/g;

test.each(texts)('$file says it in plain English', ({ text }) => {
  expect(text.match(translated) ?? []).toEqual([]);
  expect(text.match(reversed) ?? []).toEqual([]);
});

/** What a reader may see of the code: strings and what stands between tags, without comments and styles. */
const source = join(import.meta.dirname, '../../src');
const visible = (code: string): string =>
  code.replace(
    /\/\*[^]*?\*\/|<!--[^]*?-->|<style[^]*?<\/style>|(?<=^|\s)\/\/ .*$|^import .*$/gm,
    ' ',
  );

test('buttons, messages and labels say it in plain English', () => {
  const files = readdirSync(source, { recursive: true, encoding: 'utf8' }).filter(
    (file) =>
      // One holds the headings of readers' own tables.
      /\.(ts|svelte|astro)$/.test(file) && !file.endsWith('table-columns.ts'),
  );
  expect(files.length).toBeGreaterThan(500);
  const found = files.flatMap((file) => {
    const code = visible(readFileSync(join(source, file), 'utf8'));
    return [...code.matchAll(translated), ...code.matchAll(reversed)].map(
      ([words]) => `${file}: ${words.trim()}`,
    );
  });
  expect(found).toEqual([]);
});

test.each(texts)('$file has one meaning for a rule', ({ file, text }) => {
  const prose = text.replace(/<[^>]*>|^title.*$/gm, ' ');
  // Chapter 9 has explained the rule of thumb when it calls it the rule.
  const allowed = file.includes('two-guitars') ? 3 : 0;
  expect(prose.match(rule)?.length ?? 0).toBeLessThanOrEqual(allowed);
});
