import { svelte } from '@sveltejs/vite-plugin-svelte';
import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

import { leanerRuntime } from '../.tools/leaner-runtime.mjs';
import { yamlData } from '../.tools/yaml-plugin.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));

const rooms = '{physics,published,practice,instrument,figures,exercises,components,structure}';

/** Begins with what takes longest, or waits longest, so that no worker is left with it at the end. A fresh clone knows only how long a file is. */
class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const sorted = await super.sort(files);
    const isShare = ({ moduleId }: TestSpecification) =>
      /\/(\d|late-\w+)\.test\.ts$/.test(moduleId);
    return [...sorted.filter(isShare), ...sorted.filter((each) => !isShare(each))];
  }
}

export default defineConfig({
  root,
  test: {
    sequence: { sequencer: LongestFirst },
    projects: [
      {
        root,
        plugins: [svelte(), yamlData()],
        test: {
          name: 'unit',
          // The tests of pure functions share nothing that one could spoil for another.
          isolate: false,
          // One for each processor: by itself Vitest leaves one idle.
          maxWorkers: availableParallelism(),
          include: [`tests/${rooms}/**/*.test.ts`],
          exclude: ['**/*.svelte.test.ts'],
          setupFiles: ['tests/seed.ts'],
        },
      },
      {
        root,
        plugins: [svelte(), yamlData(), leanerRuntime({ inTests: true })],
        // What reacts is tested as the browser runs it: Svelte's client code, as lean as readers load it, though without a DOM.
        resolve: { conditions: ['browser'] },
        test: {
          name: 'unit-runes',
          environment: './tests/environment.ts',
          maxWorkers: availableParallelism(),
          include: [`tests/${rooms}/**/*.svelte.test.ts`],
          // A drawing of all sheets takes its time where other work is going on.
          testTimeout: 30_000,
          setupFiles: ['tests/seed.ts'],
        },
      },
      {
        root,
        plugins: [yamlData()],
        // Needs a package of sounds: npm run recordings.
        test: {
          name: 'recordings',
          include: ['tests/recordings/**/*.test.ts'],
          testTimeout: 30_000,
        },
      },
      {
        root,
        // A browser test computes what it expects with the site's own modules and data.
        plugins: [svelte(), yamlData()],
        test: {
          name: 'site',
          include: ['tests/site/**/*.test.ts'],
          globalSetup: 'tests/site/serve.ts',
          // The files of a worker share its browser.
          isolate: false,
          setupFiles: ['tests/site/left-open.ts'],
          testTimeout: 120_000,
          hookTimeout: 180_000,
          // A second, which is the rule, is over too soon on a busy machine.
          expect: { poll: { timeout: 10_000 } },
          // Half of a visit is waiting: two workers for each processor.
          maxWorkers: Math.min(8, 2 * availableParallelism()),
          // A browser on a busy machine stalls now and then: a check that fails twice has failed.
          retry: 1,
        },
      },
      {
        root,
        plugins: [svelte(), yamlData()],
        test: {
          name: 'engines',
          include: ['tests/engines/**/*.test.ts'],
          globalSetup: 'tests/site/serve.ts',
          testTimeout: 60_000,
          hookTimeout: 120_000,
          expect: { poll: { timeout: 10_000 } },
          retry: 1,
        },
      },
    ],
  },
});
