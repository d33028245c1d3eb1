/** A hand in Firefox, over WebDriver BiDi. */
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import puppeteer from 'puppeteer-core';

import { findFirefox } from '../../.tools/engines.mjs';
import { viewport, type Hand } from './hand.ts';

export async function firefox(): Promise<Hand> {
  const folder = mkdtempSync(join(tmpdir(), 'speaking-length-saved-'));
  const browser = await puppeteer.launch({
    browser: 'firefox',
    executablePath: findFirefox(),
    headless: true,
    defaultViewport: viewport,
    extraPrefsFirefox: {
      'browser.download.folderList': 2,
      'browser.download.dir': folder,
      'browser.download.useDownloadDir': true,
    },
  });
  const page = (await browser.pages())[0] ?? (await browser.newPage());
  return {
    open: async (url) => {
      await page.goto(url, { waitUntil: 'load' });
    },
    run: (inPage, ...args) => page.evaluate(inPage as never, ...args) as never,
    press: async (x, y) => {
      await page.mouse.move(x, y);
      await page.mouse.down();
    },
    move: (x, y) => page.mouse.move(x, y),
    release: () => page.mouse.up(),
    type: (text) => page.keyboard.type(text),
    key: (name) => page.keyboard.press(name),
    saved: () => readdirSync(folder),
    read: (name) => readFileSync(join(folder, name), 'utf8'),
    close: async () => {
      await browser.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
