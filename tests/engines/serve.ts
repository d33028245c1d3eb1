/** Installs the engines that are missing, then serves the built site. */
import type { TestProject } from 'vitest/node';

import { ensureEngines } from '../../.tools/engines.mjs';
import serveSite from '../site/serve.ts';

export default async function setup(project: TestProject) {
  for (const name of await ensureEngines()) {
    console.warn(`LEFT OUT: ${name} is not installed and could not be; its tests are skipped.`);
  }
  return serveSite(project);
}
