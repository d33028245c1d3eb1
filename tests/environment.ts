import type { Environment } from 'vitest/runtime';

/** Node, with modules compiled as for the browser, so that runes react. */
export default {
  name: 'runes',
  viteEnvironment: 'client',
  setup: () => ({ teardown: () => {} }),
} satisfies Environment;
