import { expect, test } from 'vitest';

import { sentences, withoutDragOnPaper } from '../../src/components/print/without-drag.ts';

const screen = (text: string) => `<span class="screen-only">${text}</span>`;

test('sentences end outside of tags, and are the paragraph again when joined', () => {
  const html =
    '<strong>Drag it by its grip.</strong> The square is <em>25.5 in. wide</em> now. Is it? <b>Yes</b>.';
  const found = sentences(html);
  expect(found.join('')).toBe(html);
  expect(found).toEqual([
    '<strong>Drag it by its grip.</strong>',
    ' The square is <em>25.5 in. wide</em> now.',
    ' Is it?',
    ' <b>Yes</b>.',
  ]);
});

test('what tells a finger to drag is for the screen, the rest of its paragraph for paper too', () => {
  expect(
    withoutDragOnPaper(
      '<p><strong>Drag the saddle</strong>, or tap a row. Each row is a neck.</p>',
    ),
  ).toBe(`<p>${screen('<strong>Drag the saddle</strong>, or tap a row.')} Each row is a neck.</p>`);
});

test('what is to be done then is for the screen too, until a sentence stands for itself', () => {
  expect(
    withoutDragOnPaper(
      '<p><strong>Drag the jaw</strong> to ten. Then pluck it. Then listen. The tick stays. Then it rains.</p>',
    ),
  ).toBe(
    `<p>${screen('<strong>Drag the jaw</strong> to ten.')}${screen(' Then pluck it.')}${screen(' Then listen.')} The tick stays. Then it rains.</p>`,
  );
  expect(withoutDragOnPaper('<p>Slide the line to a fret. A slide rule is one.</p>')).toBe(
    `<p>${screen('Slide the line to a fret.')} A slide rule is one.</p>`,
  );
});

test('what only an attribute, a script or a name of a tag says is left alone', () => {
  const html =
    '<p>At <drag-number data-what="drag"><script>drag()</script>25.5</drag-number> it pulls 102 lb. So.</p>';
  expect(withoutDragOnPaper(html)).toBe(html);
});

test('what an island draws is left as its script will find it, and what a chapter puts into one is not', () => {
  const drawn = '<astro-island ssr><p class="task">Drag each peg up.</p></astro-island>';
  const put = (text: string) =>
    `<astro-island ssr><p>Drag it.</p><astro-slot><p>${text}</p></astro-slot></astro-island>`;
  expect(withoutDragOnPaper(`${drawn}${put('Drag it.')}<p>Drag that.</p>`)).toBe(
    `${drawn}${put(screen('Drag it.'))}<p>${screen('Drag that.')}</p>`,
  );
});
