/** An Astro integration that builds the service worker once the site stands: see src/components/offline/worker.ts. */
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';

import { root } from './toolchain.mjs';

const kept = /\.(html|js|css|woff2|svg|png|json|webmanifest)$/;
/** Astro names these by their content. */
const named = /^_astro\//;

/** The files of a built site as a service worker lists them, addresses from where it stands. */
export function builtFiles(folder) {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .map((file) => file.replaceAll('\\', '/'))
    .filter((file) => kept.test(file) && file !== 'sw.js')
    .sort()
    .map((file) => ({
      url: file === 'index.html' ? './' : file.replace(/(^|\/)index\.html$/, '$1'),
      revision: named.test(file)
        ? null
        : createHash('sha256')
            .update(readFileSync(join(folder, file)))
            .digest('hex')
            .slice(0, 16),
    }));
}

/** Writes the service worker of a built site into its folder. */
export async function buildWorker(folder) {
  await build({
    root,
    configFile: false,
    logLevel: 'warn',
    publicDir: false,
    define: {
      BUILT_FILES: JSON.stringify(builtFiles(folder)),
      'process.env.NODE_ENV': '"production"',
    },
    build: {
      outDir: folder,
      emptyOutDir: false,
      rollupOptions: {
        input: join(root, 'src/components/offline/worker.ts'),
        output: { entryFileNames: 'sw.js', format: 'iife' },
      },
    },
  });
}

/** @returns {import('astro').AstroIntegration} */
export function offline() {
  return {
    name: 'offline',
    hooks: { 'astro:build:done': ({ dir }) => buildWorker(fileURLToPath(dir)) },
  };
}
