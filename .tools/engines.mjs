/**
 * Two more browsers for the tests, each with an engine of its own: Firefox, and WebKit as GTK programs use it. One that
 * is not there is installed on Debian where that is possible, and else left out. FIREFOX, when set, decides.
 */
import { existsSync, readdirSync } from 'node:fs';
import { delimiter, join } from 'node:path';

import { isProgram, run } from './toolchain.mjs';

const onPath = (name) =>
  [...(process.env.PATH ?? '').split(delimiter), '/usr/bin', '/usr/local/bin']
    .filter(Boolean)
    .map((folder) => join(folder, name))
    .find(isProgram);

/** Paths of what a folder holds; none where it is no folder. */
function entriesOf(folder) {
  try {
    return readdirSync(folder).map((name) => join(folder, name));
  } catch {
    return [];
  }
}

/** Path of Firefox, or undefined. */
export function findFirefox() {
  if (process.env.FIREFOX) return process.env.FIREFOX;
  if (process.platform === 'darwin') {
    return ['/Applications/Firefox.app/Contents/MacOS/firefox'].find(isProgram);
  }
  if (process.platform === 'win32') {
    return [process.env.PROGRAMFILES, process.env['PROGRAMFILES(X86)']]
      .filter(Boolean)
      .map((folder) => join(folder, 'Mozilla Firefox', 'firefox.exe'))
      .find(isProgram);
  }
  return onPath('firefox-esr') ?? onPath('firefox');
}

/** A WebKit browser, the driver that steers it, and the program that gives them a screen; undefined if one is missing. */
export function findWebKit() {
  if (process.platform !== 'linux') return undefined;
  const driver = onPath('WebKitWebDriver');
  const screen = onPath('Xvfb');
  const browser = ['/usr/libexec', ...entriesOf('/usr/lib')]
    .flatMap((folder) => entriesOf(folder).filter((each) => /webkit2gtk-4\.\d+$/.test(each)))
    .map((folder) => join(folder, 'MiniBrowser'))
    .find(isProgram);
  return driver && screen && browser ? { driver, browser, screen } : undefined;
}

const engines = [
  { name: 'Firefox', find: findFirefox, packages: ['firefox-esr'] },
  { name: 'WebKit', find: findWebKit, packages: ['webkit2gtk-driver', 'xvfb'] },
];

/** Installs the engines that are missing, if that can be done; returns the names of those that are missing still. */
export async function ensureEngines() {
  const missing = () => engines.filter(({ find }) => !find());
  const wanted = missing();
  if (wanted.length === 0) return [];
  if (existsSync('/etc/debian_version') && process.getuid?.() === 0) {
    console.log(`Installing ${wanted.map(({ name }) => name).join(' and ')} for the tests`);
    const env = { DEBIAN_FRONTEND: 'noninteractive' };
    // Old package lists may do: the installation tells.
    await run('apt-get', ['update', '-qq'], { env });
    // One by one: what can't be had of the one keeps the other from nothing.
    for (const { packages } of wanted) {
      const install = ['install', '-y', '-qq', '--no-install-recommends', ...packages];
      await run('apt-get', install, { env });
    }
  }
  return missing().map(({ name, packages }) => `${name} (Debian: ${packages.join(', ')})`);
}
