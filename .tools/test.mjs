/** `npm test`: every check of the project in order, the quick ones first. Stops at the first that fails. */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

import { ensureBrowser } from './browser.mjs';
import { setup } from './setup.mjs';
import { Advice, tool } from './toolchain.mjs';

const reports = mkdtempSync(join(tmpdir(), 'speaking-length-tests-'));
const count = { passed: 0, failed: 0 };

/** Runs one project of tests/vitest.config.ts and adds its tests to the count. */
async function vitest(project, env) {
  const report = join(reports, `${project.replace('*', '')}.json`);
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${report}`];
  const args = ['run', '--config', 'tests/vitest.config.ts', '--project', project, ...reporters];
  const code = await tool('vitest', args, { env });
  const { numPassedTests = 0, numFailedTests = 0 } = JSON.parse(readFileSync(report, 'utf8'));
  count.passed += numPassedTests;
  count.failed += numFailedTests;
  return code;
}

async function step(name, task) {
  console.log(`\n--- ${name}`);
  const start = Date.now();
  const code = await task();
  const seconds = ((Date.now() - start) / 1000).toFixed(1);
  console.log(`--- ${name}: ${code === 0 ? 'done' : 'failed'} in ${seconds} s`);
  if (code !== 0) throw new Advice(`${name} failed; what it found stands above.`);
}

/** For the preparations, which throw when they fail. */
const prepared = async (task) => {
  await task();
  return 0;
};

try {
  let browser = '';
  await step('packages', () => prepared(setup));
  await step('browser', () => prepared(async () => (browser = await ensureBrowser())));
  await step('formatting', () => tool('prettier', ['--check', '--log-level=warn', '.']));
  await step('lint', () => tool('eslint', ['-c', '.tools/eslint.config.js', '.']));
  await step('types of pages and modules', () => tool('astro', ['check']));
  await step('types of components', () =>
    tool('svelte-check', ['--tsconfig', '.tools/tsconfig.svelte.json', '--output', 'human']),
  );
  await step('unit tests', () => vitest('unit*'));
  await step('build', () => tool('astro', ['build']));
  await step('browser tests', () => vitest('site', { CHROME: browser }));
  await step('other engines', () => vitest('engines'));
} catch (error) {
  console.error(error instanceof Advice ? error.message : error);
  // A step without tests of its own counts as one failure.
  count.failed ||= 1;
  process.exitCode = 1;
} finally {
  rmSync(reports, { recursive: true, force: true });
}
console.log(`\n${count.passed} passed, ${count.failed} failed`);
