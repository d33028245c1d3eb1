/** A hand in Firefox, over WebDriver BiDi. */
import { spawn, type ChildProcess } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

import { findFirefox } from '../../.tools/engines.mjs';
import { acts, inJson } from './acts.ts';
import { bidi } from './bidi.ts';
import { viewport, type Hand } from './hand.ts';

const PATIENCE = 30_000;

/** The address that Firefox prints once it listens. */
const listening = (browser: ChildProcess): Promise<string> =>
  new Promise((done, failed) => {
    let said = '';
    const fail = (why: string) => failed(new Error(`Firefox ${why}: ${said.slice(-500)}`));
    const late = setTimeout(() => fail('does not listen'), PATIENCE);
    browser.once('exit', () => fail('did not start'));
    browser.stderr?.on('data', (chunk) => {
      said += String(chunk);
      const [, address] = /WebDriver BiDi listening on (ws:\S+)/.exec(said) ?? [];
      if (!address) return;
      clearTimeout(late);
      done(`${address}/session`);
    });
  });

export async function firefox(): Promise<Hand> {
  const program = findFirefox();
  if (!program) throw new Error('Firefox is not installed.');
  const folder = mkdtempSync(join(tmpdir(), 'speaking-length-saved-'));
  const profile = mkdtempSync(join(tmpdir(), 'speaking-length-firefox-'));
  const preferences = {
    'browser.download.folderList': 2,
    'browser.download.dir': folder,
    'browser.download.useDownloadDir': true,
    // A panel that opens on a download would take the keys.
    'browser.download.alwaysOpenPanel': false,
    'browser.shell.checkDefaultBrowser': false,
    'datareporting.policy.dataSubmissionEnabled': false,
    'toolkit.telemetry.reportingpolicy.firstRun': false,
  };
  const lines = Object.entries(preferences).map(
    ([name, value]) => `user_pref(${JSON.stringify(name)}, ${JSON.stringify(value)});\n`,
  );
  writeFileSync(join(profile, 'user.js'), lines.join(''));
  const args = ['--headless', '--no-remote', '--profile', profile, '--remote-debugging-port', '0'];
  const browser = spawn(program, args, { stdio: ['ignore', 'ignore', 'pipe'] });
  const gone = new Promise((done) => browser.once('exit', done));
  const end = async (): Promise<void> => {
    browser.kill();
    await gone;
    for (const each of [folder, profile]) rmSync(each, { recursive: true, force: true });
  };
  try {
    const { send, close } = await bidi(await listening(browser));
    await send('session.new', { capabilities: {} });
    const { contexts } = await send('browsingContext.getTree', {});
    const [{ context } = {}] = contexts as { context?: string }[];
    await send('browsingContext.setViewport', { context, viewport });
    return {
      open: async (url) => {
        await send('browsingContext.navigate', { context, url, wait: 'complete' });
      },
      run: async (inPage, ...args) => {
        const { result, exceptionDetails } = await send('script.callFunction', {
          functionDeclaration: inJson(inPage),
          arguments: [{ type: 'string', value: JSON.stringify(args) }],
          target: { context },
          awaitPromise: false,
        });
        if (exceptionDetails) throw new Error((exceptionDetails as { text: string }).text);
        return JSON.parse((result as { value: string }).value) as never;
      },
      ...acts((actions) => send('input.performActions', { context, actions })),
      saved: () => readdirSync(folder),
      read: (name) => readFileSync(join(folder, name), 'utf8'),
      close: async () => {
        close();
        await end();
      },
    };
  } catch (error) {
    await end();
    throw error;
  }
}
