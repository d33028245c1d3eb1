/** Installs what the lock file names, unless it is installed already. `node .tools/setup.mjs`, or imported. */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

import { Advice, isMain, main, root, run } from './toolchain.mjs';

/** npm writes its hidden lock file last: when every version in it agrees, the installation is whole. */
function isInstalled() {
  const hidden = join(root, 'node_modules', '.package-lock.json');
  if (!existsSync(hidden)) return false;
  const packages = (file) => JSON.parse(readFileSync(file, 'utf8')).packages;
  const installed = packages(hidden);
  return Object.entries(packages(join(root, 'package-lock.json'))).every(([path, wanted]) => {
    if (path === '') return true;
    const found = installed[path];
    return found ? found.version === wanted.version : wanted.optional || wanted.devOptional;
  });
}

export async function setup() {
  if (isInstalled()) return;
  console.log('Installing the packages that package-lock.json names');
  const args = ['ci', '--include=dev', '--include=optional', '--no-audit', '--no-fund'];
  // Some packages want a newer Node than the one outside, which is among them: a warning for each would mislead.
  args.push('--loglevel=error');
  // Inside an npm script, npm tells where it is; called alone, it is looked up on the PATH.
  const npm = process.env.npm_execpath;
  const code = npm?.endsWith('.js')
    ? await run(process.execPath, [npm, ...args])
    : await run('npm', args, { shell: process.platform === 'win32' });
  if (code !== 0) throw new Advice('The packages could not be installed; npm said why above.');
}

if (isMain(import.meta.url)) await main(setup);
