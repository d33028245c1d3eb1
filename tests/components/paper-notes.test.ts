import { expect, test } from 'vitest';

import { withPaperNotes } from '../../src/components/paper-notes.ts';

const link = (address: string, attributes = '') => `<a ${attributes}href="${address}">there</a>`;
const note = (number: number) => `<sup class="paper-only" aria-hidden="true">${number}</sup>`;

test('links that lead out are numbered in the order of the text, an address once', () => {
  const [a, b] = ['https://example.org/a?x=1&amp;y=2', 'http://example.org/b'];
  const { html, addresses } = withPaperNotes(
    `<p>${link(a)}, ${link(b, 'class="x" ')}, again ${link(a)}.</p>`,
  );
  expect(addresses).toEqual([a, b]);
  expect(html).toBe(
    `<p>${link(a)}${note(1)}, ${link(b, 'class="x" ')}${note(2)}, again ${link(a)}${note(1)}.</p>`,
  );
});

test('links within the site stay as they are', () => {
  const html = `<p>${link('#source-x')} ${link('/sources/#x')} <a id="https://example.org">x</a></p>`;
  expect(withPaperNotes(html)).toEqual({ html, addresses: [] });
});
