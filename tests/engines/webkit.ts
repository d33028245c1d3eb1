/** A hand in WebKit, over WebDriver, on a screen that nobody sees. */
import { spawn, type ChildProcess } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

import { findWebKit } from '../../.tools/engines.mjs';
import { acts, inJson } from './acts.ts';
import { viewport, type Hand } from './hand.ts';

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

type Send = (method: 'POST' | 'DELETE', path: string, body?: object) => Promise<unknown>;

/** A way to send commands to the driver, https://www.w3.org/TR/webdriver2/, as soon as it listens. */
async function connect(port: number): Promise<Send> {
  const driver = `http://127.0.0.1:${port}`;
  for (const end = Date.now() + 20_000; ;) {
    try {
      const status = await fetch(`${driver}/status`);
      if (status.ok) break;
    } catch (error) {
      if (Date.now() > end) throw error;
    }
    await new Promise((done) => setTimeout(done, 50));
  }
  return async (method, path, body) => {
    const answer = await fetch(driver + path, {
      method,
      ...(body && { body: JSON.stringify(body), headers: { 'content-type': 'application/json' } }),
    });
    const { value } = (await answer.json()) as { value: unknown };
    if (answer.ok) return value;
    const { error, message } = value as { error: string; message: string };
    throw new Error(`${path}: ${error} ${message}`);
  };
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
    const send = await connect(port);
    const alwaysMatch = {
      browserName: 'MiniBrowser',
      'webkitgtk:browserOptions': { binary: found.browser, args: ['--automation'] },
    };
    const begun = await send('POST', '/session', { capabilities: { alwaysMatch } });
    const session = `/session/${(begun as { sessionId: string }).sessionId}`;
    await send('POST', `${session}/window/rect`, { x: 0, y: 0, ...viewport });
    return {
      open: async (url) => {
        await send('POST', `${session}/url`, { url });
      },
      run: async (inPage, ...args) => {
        const script = `return (${inJson(inPage)})(arguments[0])`;
        const result = await send('POST', `${session}/execute/sync`, {
          script,
          args: [JSON.stringify(args)],
        });
        return JSON.parse(result as string) as never;
      },
      ...acts((actions) => send('POST', `${session}/actions`, { actions })),
      saved: () => readdirSync(home),
      read: (name) => readFileSync(join(home, name), 'utf8'),
      close: async () => {
        await send('DELETE', session).finally(end);
      },
    };
  } catch (error) {
    end();
    throw error;
  }
}
