/** A browser for the tests: Debian's Chromium without windows where it can be had, since it does the same work in two thirds of the time, or else one that is installed. */
import { existsSync } from 'node:fs';
import { basename, delimiter, join } from 'node:path';

import { Advice, isProgram, run } from './toolchain.mjs';

const shell = 'chromium-headless-shell';

const names = [
  shell,
  'chromium',
  'chromium-browser',
  'google-chrome',
  'google-chrome-stable',
  'microsoft-edge',
  'microsoft-edge-stable',
];
const macApplications = ['Google Chrome', 'Chromium', 'Microsoft Edge'];
const windowsPrograms = [
  'Google\\Chrome\\Application\\chrome.exe',
  'Microsoft\\Edge\\Application\\msedge.exe',
];

function candidates() {
  if (process.platform === 'win32') {
    const folders = ['PROGRAMFILES', 'PROGRAMFILES(X86)', 'LOCALAPPDATA'].map(
      (key) => process.env[key],
    );
    return folders
      .filter(Boolean)
      .flatMap((at) => windowsPrograms.map((program) => join(at, program)));
  }
  const folders = new Set([
    ...(process.env.PATH ?? '').split(delimiter),
    '/usr/bin',
    '/usr/local/bin',
    '/snap/bin',
  ]);
  const onPath = [...folders].filter(Boolean).flatMap((at) => names.map((name) => join(at, name)));
  if (process.platform !== 'darwin') return onPath;
  const applications = macApplications.map(
    (name) => `/Applications/${name}.app/Contents/MacOS/${name}`,
  );
  return [...applications, ...onPath];
}

/** Path of a Chromium-like browser, or undefined. The variable CHROME, when set, decides. */
export function findBrowser() {
  const { CHROME } = process.env;
  if (!CHROME) return candidates().find(isProgram);
  if (isProgram(CHROME)) return CHROME;
  throw new Advice(`CHROME is set to ${CHROME}, and no program is there.`);
}

/** Like findBrowser, but installs Debian's Chromium without windows where that is possible; says what to install where there is none at all. */
export async function ensureBrowser() {
  const found = findBrowser();
  if (found && (process.env.CHROME || basename(found) === shell)) return found;
  const isDebian = existsSync('/etc/debian_version') && process.getuid?.() === 0;
  if (isDebian) {
    const env = { DEBIAN_FRONTEND: 'noninteractive' };
    console.log(`Installing ${shell} for the browser tests`);
    const install = ['install', '-y', '-qq', '--no-install-recommends', shell];
    if ((await run('apt-get', ['update', '-qq'], { env })) === 0)
      await run('apt-get', install, { env });
  }
  const installed = findBrowser();
  if (installed) return installed;
  throw new Advice(
    'The browser tests need Chrome, Chromium or Edge. Install one (on Debian: apt-get install chromium), ' +
      'or set the variable CHROME to the path of its program.',
  );
}
