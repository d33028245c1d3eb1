import fc from 'fast-check';
import { fromHtml } from 'hast-util-from-html';
import { expect, test } from 'vitest';

import { frameAddress, frameCode, linkTo } from '../../src/figures/page/menu/share.ts';
import { decode } from '../../src/instrument/link-read.ts';
import { initialState } from '../../src/instrument/workshop.ts';

const state = { ...initialState, trial: { string: 1, length: 0.7 } };

test('a link to a figure carries the state, and names the figure behind it', () => {
  const link = linkTo('https://x.example/course/pitch/#the-capo', 'the-octave', state);
  const { origin, pathname, hash } = new URL(link);
  expect(origin + pathname).toBe('https://x.example/course/pitch/');
  expect(hash).toMatch(/\/at-the-octave$/);
  // Whoever reads the state leaves the figure aside.
  const read = decode(hash.slice(1), initialState);
  expect(read.state?.trial).toEqual(state.trial);
  expect(read.notes).toEqual([]);
});

test('a frame’s address asks for the drawing alone when its controls are left out', () => {
  const of = { home: 'https://x.example/sub/', figure: 'the-capo', state };
  const whole = new URL(frameAddress({ ...of, controls: true }));
  const alone = new URL(frameAddress({ ...of, controls: false }));
  expect(whole.pathname).toBe('/sub/embed/the-capo/');
  expect(whole.search).toBe('');
  expect(alone.search).toBe('?bare');
  expect(alone.hash).toBe(whole.hash);
});

test('the code is one frame, whatever stands in the title and the address', () => {
  const whatever = fc.string({ unit: 'grapheme' });
  fc.assert(
    fc.property(whatever, whatever, (title, address) => {
      const size = { width: 720, height: 500 };
      const { children } = fromHtml(frameCode(address, title, size), { fragment: true });
      expect(children).toHaveLength(1);
      const [frame] = children;
      if (frame?.type !== 'element') throw new Error('not an element');
      expect(frame.tagName).toBe('iframe');
      expect(Object.keys(frame.properties).sort()).toEqual(
        ['allow', 'height', 'loading', 'src', 'style', 'title', 'width'].sort(),
      );
      expect(frame.properties.height).toBe(500);
    }),
  );
});
