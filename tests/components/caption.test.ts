/** A caption taken apart: what to do before the drawing, the key after it. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

import { takenApart } from '../../src/components/caption.ts';

test.each([
  [
    'a full stop within the stressed words',
    '<p><strong>Drag the corner by its grip.</strong> Each small square is 1 %.</p>',
    '<strong>Drag the corner by its grip.</strong>',
    '<p>Each small square is 1 %.</p>',
  ],
  [
    'a comma, a tag and a number with a point',
    '<p><strong>Drag the saddle</strong> to <span>25.5 in</span>, or <a href="#">tap a row</a>. The ticks show the rest. And so on.</p>\n<p>More.</p>',
    '<strong>Drag the saddle</strong> to <span>25.5 in</span>, or <a href="#">tap a row</a>.',
    '<p>The ticks show the rest. And so on.</p><p>More.</p>',
  ],
  [
    'a sentence that is alone',
    '<p><strong>Drag the line</strong> to another rise.</p>',
    '<strong>Drag the line</strong> to another rise.',
    '',
  ],
  [
    'two sentences in the stressed words, kept together',
    '<p><strong>Drag it. Then look.</strong> The rest.</p>',
    '<strong>Drag it. Then look.</strong>',
    '<p>The rest.</p>',
  ],
])('the first sentence ends behind %s', (_, html, act, key) => {
  expect(takenApart(html)).toEqual({ act, key });
});

test('a caption that says nothing to do is all key', () => {
  const html = '<p>The straight line is Mersenne’s law.</p>';
  expect(takenApart(html)).toEqual({ act: '', key: html });
});

const wrappers = readdirSync('src/components/figures').filter((name) =>
  /<Figure[^>]* id="/.test(readFileSync(`src/components/figures/${name}`, 'utf8')),
);
const tags = new Set(wrappers.map((name) => name.replace('.astro', '')));

describe.each(readdirSync('content/course'))('%s', (name) => {
  test('begins the caption of each figure that moves with what to do', () => {
    const text = readFileSync(`content/course/${name}`, 'utf8');
    const wrong = [...text.matchAll(/^<([A-Z]\w+)[^>/]*>\n\s*(.*)$/gm)].filter(
      ([, tag = '', first = '']) => tags.has(tag) && !first.startsWith('**'),
    );
    expect(wrong.map(([, tag, first]) => `${tag}: ${first}`)).toEqual([]);
  });
});
