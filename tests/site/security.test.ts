import { expect, inject, test } from 'vitest';

import { encode } from '../../src/instrument/link.ts';
import { initialState } from '../../src/instrument/workshop.ts';
import { browser } from './browser.ts';
import { open, scrollThrough } from './kit.ts';
import { htmlOf, pages } from './pages.ts';

test.each(pages())('/%s lets no script in but its own', (path) => {
  const policy = /<meta http-equiv="content-security-policy" content="([^"]+)"/.exec(htmlOf(path));
  const directives = new Map(
    (policy?.[1] ?? '').split(';').map((each) => {
      const [name = '', ...sources] = each.trim().split(/\s+/);
      return [name, sources];
    }),
  );
  const scripts = directives.get('script-src') ?? [];
  expect(scripts.length).toBeGreaterThan(1);
  expect(scripts.filter((source) => !/^('self'|'sha256-[\w+/]+=*')$/.test(source))).toEqual([]);
  expect(directives.get('default-src')).toEqual(["'self'"]);
  expect(directives.get('object-src')).toEqual(["'none'"]);
  expect(directives.get('style-src-elem')?.join(' ')).not.toContain('unsafe');
});

test('a script that is put into the page does not run', async () => {
  const { page, problems, close } = await open(browser, inject('origin'));
  await page.evaluate(() => {
    const script = document.createElement('script');
    script.textContent = 'document.title = "broken into"';
    document.body.append(script);
    document.body.insertAdjacentHTML('beforeend', '<img src="data:," onerror="document.title=1">');
  });
  await page.waitForTimeout(300);
  expect(await page.title()).toContain('Speaking Length');
  expect(problems.join(' ')).toContain('Content Security Policy');
  await close();
});

test('a name that carries markup is written as it is typed', async () => {
  const name = '<b id=got>x</b><img src=x>';
  const state = { ...initialState, mine: { ...initialState.mine, name } };
  const address = `${inject('origin')}bench/#${encode(state)}`;
  const { page, close } = await open(browser, address);
  await scrollThrough(page);
  await expect
    .poll(() => page.locator('body').innerText(), { timeout: 10_000 })
    .toContain('<b id=got>');
  expect(await page.locator('#got').count()).toBe(0);
  await close();
});
