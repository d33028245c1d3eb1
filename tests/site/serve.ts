/** Serves the built site while the browser tests run. */
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';

import { serve } from '../../.tools/serve.mjs';
import { dist } from './pages.ts';

declare module 'vitest' {
  interface ProvidedContext {
    /** Address of the site's home, with a slash at the end. */
    origin: string;
  }
}

export default async function setup(project: TestProject) {
  if (!existsSync(join(dist, 'index.html'))) {
    throw new Error('There is no built site to test: run `npm run build` first.');
  }
  const server = await serve({ folder: dist });
  project.provide('origin', server.url);
  return server.close;
}
