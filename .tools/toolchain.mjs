/**
 * Which Node runs the tools, and how a tool is called. The site's tools need Node 22.12 or later; on Linux and Windows
 * the lock file brings a Node of its own, so that any Node from 20 on can start the commands.
 */
import { AsyncLocalStorage } from 'node:async_hooks';
import { spawn } from 'node:child_process';
import { accessSync, constants, existsSync, readFileSync, realpathSync } from 'node:fs';
import { delimiter, dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('..', import.meta.url));
const modules = join(root, 'node_modules');

/** An error whose message is meant for the reader of the terminal: no stack is printed for it. */
export class Advice extends Error {}

/** Path of the Node that runs the tools. Throws Advice when there is none. */
export function toolNode() {
  const binary = process.platform === 'win32' ? 'node.exe' : 'node';
  const system = process.platform === 'win32' ? 'win' : process.platform;
  const own = join(modules, `node-${system}-${process.arch}`, 'bin', binary);
  if (existsSync(own)) return own;
  const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
  if (major > 22 || (major === 22 && minor >= 12)) return process.execPath;
  throw new Advice(
    `Node ${process.versions.node} is too old here, and no newer one can be installed by npm on this ` +
      `system. Install Node 24 (22.12 or later will do) and run the command again.`,
  );
}

/** Path of the script behind a package's command, so that no shell is needed on any system. */
function commandPath(name, packageName = name) {
  const folder = join(modules, packageName);
  const { bin } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  return join(folder, typeof bin === 'string' ? bin : bin[name]);
}

/** The list that takes what programs write, for tasks that run beside each other; the terminal takes it where none is set. */
export const writings = new AsyncLocalStorage();

/** Runs a program from the project's root; resolves to its exit code. `env` is added to the present one. */
export function run(program, args, { env = {}, ...options } = {}) {
  return new Promise((resolve, reject) => {
    const list = writings.getStore();
    const to = list ? 'pipe' : 'inherit';
    const child = spawn(program, args, {
      cwd: root,
      stdio: ['ignore', to, to],
      env: { ...process.env, ...env },
      ...options,
    });
    for (const stream of [child.stdout, child.stderr])
      stream?.on('data', (chunk) => list?.push(chunk));
    child.once('error', reject);
    child.once('close', (code, signal) => resolve(signal ? 1 : code));
  });
}

/** Runs the command of an installed package on the tools' Node; resolves to its exit code. */
export function tool(name, args, { packageName = name, env = {} } = {}) {
  const node = toolNode();
  const path = [dirname(node), process.env.PATH].join(delimiter);
  const quiet = { ASTRO_TELEMETRY_DISABLED: '1', PATH: path };
  return run(node, [commandPath(name, packageName), ...args], { env: { ...quiet, ...env } });
}

/** True when `path` is a program that can be run. */
export function isProgram(path) {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/** True when the module at `url` is the script that Node was started with. */
export function isMain(url) {
  return process.argv[1] !== undefined && fileURLToPath(url) === realpathSync(process.argv[1]);
}

/** Runs a script's main function; a failure ends the process with one sentence or, if unforeseen, its stack. */
export async function main(task) {
  try {
    await task();
  } catch (error) {
    console.error(error instanceof Advice ? error.message : error);
    process.exitCode = 1;
  }
}
