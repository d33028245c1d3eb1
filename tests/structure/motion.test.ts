/**
 * One way to animate: what moves goes by `vibrate.ts`, which stands still for a reader who wants no motion and asks for no frame out of
 * sight; its own tests hold that. So no page can move by anything else.
 */
import { globSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

const root = fileURLToPath(new URL('../../src/', import.meta.url));
const all = globSync('**/*.{svelte,ts,astro,css}', { cwd: root });
const moves =
  /requestAnimationFrame\(|setInterval\(|\.animate\(|startViewTransition|<animate|<set\b|@keyframes|svelte\/(?:motion|transition|animate)|(?:^|[\s;{])(?:animation|transition)(?:-[a-z]+)?\s*:/m;

/** What asks for a frame and moves nothing. */
const asks: Readonly<Record<string, string>> = {
  'figures/kit/live/vibrate.ts': 'the one way to move',
  'components/large-text/words.ts': 'one frame, in which words below drawings are set anew',
  'figures/page/menu/project.ts': 'one frame, in which the whole screen is measured anew',
  'figures/labs/kit/painted.ts': 'one frame, so that what a pluck changes is drawn piece by piece',
  'styles/base.css': 'takes all of it away for a reader who wants no motion',
};

test('the search finds what it is for', () => {
  expect(all.length).toBeGreaterThan(400);
  for (const way of [
    'requestAnimationFrame(step)',
    'place.animate([])',
    '@keyframes a {}',
    'a { transition: color 1s; }',
    "import { fade } from 'svelte/transition';",
  ])
    expect(way).toMatch(moves);
  for (const none of ['requestAnimationFrame === undefined', 'a { overscroll-behavior: contain; }'])
    expect(none).not.toMatch(moves);
});

test('nothing moves but by the one way', () => {
  const found = all.filter((path) => moves.test(readFileSync(root + path, 'utf8')));
  expect(found.sort()).toEqual(Object.keys(asks).sort());
});
