/**
 * An `onpointermove` attribute is heard for the whole page: the framework then looks through the path of every move of every
 * pointer, also while another figure is dragged. What moves attaches its own listener.
 */
import { globSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

const root = fileURLToPath(new URL('../../src/', import.meta.url));
const all = globSync('**/*.svelte', { cwd: root });
const everyMove = /\bon(?:pointer|mouse|touch)(?:move|over|out)\s*=/;

test('there are components to look at, and the search finds what it is for', () => {
  expect(all.length).toBeGreaterThan(100);
  expect('<i onpointermove={x}>').toMatch(everyMove);
  expect('<i onpointerdown={x}>').not.toMatch(everyMove);
});

test.each(all)('%s listens to no move by an attribute', (path) => {
  expect(readFileSync(root + path, 'utf8')).not.toMatch(everyMove);
});
