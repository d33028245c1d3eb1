/** `npm test`: every check of the project in order, the quick ones first. Stops at the first that fails. */
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

import { ensureBrowser } from './browser.mjs';
import { ensureEngines } from './engines.mjs';
import { machine } from './machine.mjs';
import { setup } from './setup.mjs';
import { Advice, tool, writings } from './toolchain.mjs';

const reports = mkdtempSync(join(tmpdir(), 'speaking-length-tests-'));
const retried = join(reports, 'retried.txt');
const count = { passed: 0, failed: 0 };

/** Runs one project of tests/vitest.config.ts and adds its tests to the count. */
async function vitest(project, env) {
  const report = join(reports, `${project.replace('*', '')}.json`);
  const reporters = [
    '--reporter=default',
    '--reporter=json',
    '--reporter=./.tools/retried.mjs',
    `--outputFile.json=${report}`,
  ];
  const args = ['run', '--config', 'tests/vitest.config.ts', '--project', project, ...reporters];
  const code = await tool('vitest', args, { env: { ...env, RETRIED: retried } });
  const { numPassedTests = 0, numFailedTests = 0 } = JSON.parse(readFileSync(report, 'utf8'));
  count.passed += numPassedTests;
  count.failed += numFailedTests;
  return code;
}

let again = [];

async function step(name, task) {
  console.log(`\n--- ${name}`);
  const start = Date.now();
  const code = await task();
  const seconds = ((Date.now() - start) / 1000).toFixed(1);
  console.log(`--- ${name}: ${code === 0 ? 'done' : 'failed'} in ${seconds} s`);
  if (code !== 0) throw new Advice(`${name} failed; what it found stands above.`);
}

/** A step beside others: what its programs write is printed when it ends, in one piece. */
async function besides(name, task) {
  const list = [];
  const start = Date.now();
  const code = await writings.run(list, task);
  const seconds = ((Date.now() - start) / 1000).toFixed(1);
  process.stdout.write(`\n--- ${name}\n${Buffer.concat(list).toString()}`);
  console.log(`--- ${name}: ${code === 0 ? 'done' : 'failed'} in ${seconds} s`);
  if (code !== 0) throw new Advice(`${name} failed; what it found stands above.`);
}

/** Steps one after the other. */
async function lane(...steps) {
  for (const [name, task] of steps) await besides(name, task);
}

/** Waits for all of them, also when one fails, so that nothing goes on behind the last line. */
async function all(...tasks) {
  for (const { reason } of await Promise.allSettled(tasks)) if (reason) throw reason;
}

try {
  await step('packages', async () => {
    await setup();
    return 0;
  });
  let browser = '';
  let leftOut = [];
  // Mostly waits for the net: the rest goes on meanwhile.
  const browsers = lane([
    'browsers',
    async () => {
      browser = await ensureBrowser();
      leftOut = await ensureEngines();
      return 0;
    },
  ]);
  browsers.catch(() => undefined);
  // Each of these keeps one processor busy, and one lane takes as long as the other.
  await all(
    lane(
      ['formatting', () => tool('prettier', ['--check', '--log-level=warn', '.'])],
      ['types of pages and modules', () => tool('astro', ['check'])],
    ),
    lane(
      ['lint', () => tool('eslint', ['-c', '.tools/eslint.config.js', '.'])],
      [
        'types of components',
        () =>
          tool('svelte-check', ['--tsconfig', '.tools/tsconfig.svelte.json', '--output', 'human']),
      ],
    ),
  );
  await step('unit tests', () => vitest('unit*'));
  console.warn(
    'LEFT OUT: the recorded strings, 148 MB of sounds; `npm run recordings` listens to them.',
  );
  await step('build', () => tool('astro', ['build']));
  await browsers;
  for (const name of leftOut)
    console.warn(`LEFT OUT: ${name} is not installed and could not be; its tests are skipped.`);
  console.log(machine(browser));
  // The other engines mostly wait for their browsers.
  await all(
    step('browser tests', () => vitest('site', { CHROME: browser })),
    lane(['other engines', () => vitest('engines')]),
  );
} catch (error) {
  console.error(error instanceof Advice ? error.message : error);
  // A step without tests of its own counts as one failure.
  count.failed ||= 1;
  process.exitCode = 1;
} finally {
  again = existsSync(retried) ? readFileSync(retried, 'utf8').trim().split('\n') : [];
  rmSync(reports, { recursive: true, force: true });
}
// A check that passes at its second try only has a cause that wants finding.
if (again.length)
  console.log(`\nPassed at a later try only: ${again.length}\n  ${again.join('\n  ')}`);
console.log(`\n${count.passed} passed, ${count.failed} failed`);
