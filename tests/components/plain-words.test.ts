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
/** A tool is a ruler; a slide rule is one, too; anything else is a rule of thumb, and named so once. */
const rule = /(?<!slide )\brule\b(?! of thumb)/g;

test.each(texts)('$file says it in plain English', ({ text }) => {
  expect(text.match(translated) ?? []).toEqual([]);
});

test.each(texts)('$file has one meaning for a rule', ({ file, text }) => {
  const prose = text.replace(/<[^>]*>|^title.*$/gm, ' ');
  // Chapter 9 has explained the rule of thumb when it calls it the rule.
  const allowed = file.includes('two-guitars') ? 3 : 0;
  expect(prose.match(rule)?.length ?? 0).toBeLessThanOrEqual(allowed);
});
