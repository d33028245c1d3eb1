// @vitest-environment happy-dom
/** A link handed on: the phone's own sheet before the clipboard, and a refusal that is told. */
import { afterEach, expect, test, vi } from 'vitest';

import { passLabel, passOn } from '../../src/figures/kit/pass-on.ts';

const written: string[] = [];
function device({
  share,
  coarse = true,
  clipboard = true,
}: {
  share?: () => Promise<void>;
  coarse?: boolean;
  clipboard?: boolean;
}): void {
  written.length = 0;
  vi.stubGlobal('matchMedia', () => ({ matches: coarse }));
  vi.stubGlobal('navigator', {
    ...(share && { share }),
    clipboard: {
      writeText: (text: string) => {
        if (!clipboard) return Promise.reject(new Error('closed'));
        written.push(text);
        return Promise.resolve();
      },
    },
  });
}
afterEach(() => vi.unstubAllGlobals());
const pass = () => passOn('https://example.org/#v1', 'A page');

test('a phone opens its own sheet, with the address', async () => {
  const share = vi.fn(() => Promise.resolve());
  device({ share });
  expect(passLabel()).toBe('Share a link');
  expect(await pass()).toBe('shared');
  expect(share.mock.calls).toEqual([[{ title: 'A page', url: 'https://example.org/#v1' }]]);
  expect(written).toEqual([]);
});

test('a sheet that the reader closes copies nothing behind their back; one that fails leaves the clipboard', async () => {
  device({ share: () => Promise.reject(new DOMException('', 'AbortError')) });
  expect(await pass()).toBe('stopped');
  expect(written).toEqual([]);
  device({ share: () => Promise.reject(new DOMException('', 'NotAllowedError')) });
  expect(await pass()).toBe('copied');
  expect(written).toEqual(['https://example.org/#v1']);
});

test('a desk copies, and a closed clipboard is told', async () => {
  device({ share: () => Promise.resolve(), coarse: false });
  expect(passLabel()).toBe('Copy a link');
  expect(await pass()).toBe('copied');
  device({ clipboard: false });
  expect(await pass()).toBe('refused');
});
