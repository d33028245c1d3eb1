/** A hand in WebKit, over WebDriver, on a screen that nobody sees. */
import { spawn, type ChildProcess } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Builder, Capabilities, Key as Keys, Origin, type WebDriver } from 'selenium-webdriver';

import { findWebKit } from '../../.tools/engines.mjs';
import { viewport, type Hand, type Key } from './hand.ts';

const keys: Readonly<Record<Key, string>> = {
  Enter: Keys.ENTER,
  ArrowLeft: Keys.ARROW_LEFT,
  ArrowRight: Keys.ARROW_RIGHT,
  PageUp: Keys.PAGE_UP,
  Home: Keys.HOME,
  End: Keys.END,
};

const freePort = (): Promise<number> =>
  new Promise((done, failed) => {
    const server = createServer().once('error', failed);
    server.listen(0, '127.0.0.1', () => {
      const address = server.address();
      server.close(() => done(typeof address === 'object' && address ? address.port : 0));
    });
  });

/** Starts a screen and returns it with its name, which it chooses itself. */
async function startScreen(program: string): Promise<{ screen: ChildProcess; display: string }> {
  const size = `${viewport.width + 200}x${viewport.height + 200}x24`;
  const screen = spawn(program, ['-displayfd', '3', '-screen', '0', size, '-nolisten', 'tcp'], {
    stdio: ['ignore', 'ignore', 'ignore', 'pipe'],
  });
  const display = await new Promise<string>((done, failed) => {
    screen.once('error', failed);
    screen.once('exit', () => failed(new Error('the screen did not start')));
    screen.stdio[3]?.once('data', (name) => done(`:${String(name).trim()}`));
  });
  return { screen, display };
}

/** A session as soon as the driver listens. Its address is given, so that nothing looks for another driver. */
async function connect(port: number, binary: string): Promise<WebDriver> {
  const wanted = new Capabilities({
    browserName: 'MiniBrowser',
    'webkitgtk:browserOptions': { binary, args: ['--automation'] },
  });
  const end = Date.now() + 20_000;
  for (;;) {
    try {
      const status = await fetch(`http://127.0.0.1:${port}/status`);
      if (status.ok) break;
    } catch (error) {
      if (Date.now() > end) throw error;
    }
    await new Promise((done) => setTimeout(done, 50));
  }
  return new Builder().usingServer(`http://127.0.0.1:${port}`).withCapabilities(wanted).build();
}

export async function webkit(): Promise<Hand> {
  const found = findWebKit();
  if (!found) throw new Error('WebKit is not installed.');
  // Files are saved into the home folder where no other is named.
  const home = mkdtempSync(join(tmpdir(), 'speaking-length-webkit-'));
  const { screen, display } = await startScreen(found.screen);
  const port = await freePort();
  const driver = spawn(found.driver, [`--port=${port}`], {
    stdio: 'ignore',
    env: { ...process.env, DISPLAY: display, GDK_BACKEND: 'x11', HOME: home },
  });
  const end = (): void => {
    driver.kill();
    screen.kill();
    rmSync(home, { recursive: true, force: true });
  };
  try {
    const browser = await connect(port, found.browser);
    await browser
      .manage()
      .window()
      .setRect({ x: 0, y: 0, ...viewport });
    const at = (x: number, y: number) =>
      browser.actions({ async: true }).move({ x, y, duration: 0, origin: Origin.VIEWPORT });
    return {
      open: (url) => browser.get(url),
      run: (inPage, ...args) => browser.executeScript(inPage as never, ...args) as never,
      press: (x, y) => at(x, y).press().perform(),
      move: (x, y) => at(x, y).perform(),
      release: () => browser.actions({ async: true }).release().perform(),
      type: (text) => browser.actions({ async: true }).sendKeys(text).perform(),
      key: (name) => browser.actions({ async: true }).sendKeys(keys[name]).perform(),
      saved: () => readdirSync(home),
      read: (name) => readFileSync(join(home, name), 'utf8'),
      close: async () => {
        await browser.quit().finally(end);
      },
    };
  } catch (error) {
    end();
    throw error;
  }
}
