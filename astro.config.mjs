import { unified } from '@astrojs/markdown-remark';
import mdx from '@astrojs/mdx';
import sitemap from '@astrojs/sitemap';
import svelte from '@astrojs/svelte';
import { defineConfig } from 'astro/config';
import { createHash } from 'node:crypto';
import rehypeKatex from 'rehype-katex';
import remarkMath from 'remark-math';

import { katexCss } from './.tools/katex-css.mjs';
import { later } from './.tools/later.mjs';
import { leanerRuntime } from './.tools/leaner-runtime.mjs';
import { offline } from './.tools/offline.mjs';
import { oneSheet } from './.tools/one-sheet.mjs';
import { yamlData } from './.tools/yaml-plugin.mjs';
import { themeBoot } from './src/components/theme.ts';

// SITE_URL: where the folder will be served from; SITE_BASE: the sub-path there, if any.
const site = process.env.SITE_URL ?? 'https://speaking-length.example';
const base = process.env.SITE_BASE ?? '/';

// What every page needs comes as one file, and what most figures need as another: many small ones compress worse and ask
// more often. What compares two instruments is a third; what bends a string stays with the figures that do so.
const chunks = [
  // Whoever asks for a part that comes later needs it, also where nothing else of the core is.
  { name: 'later', test: /preload-helper/, priority: 3 },
  {
    name: 'core',
    test: /node_modules\/svelte|src\/components\/island\.|content\/data\/instruments|src\/instrument\/(store|held|own\.|moving|link\.|storage|workshop|usual|format|limits|once)|src\/physics\/(guard|pitch|units)|src\/figures\/kit\/Said/,
    priority: 2,
  },
  {
    name: 'figures',
    test: /src\/(figures\/(trial|kit\/(grip|slide|stops|Ring|Handle|Stage|follower|figure\.svelte|StringBar|WrapPattern|neck|strings))|content\/data\/strings|instrument\/(drawer|families|pulls)|physics\/(construction|materials|strength|tension))/,
    minShareCount: 6,
    priority: 1,
  },
  // A field alone needs nothing of what figures have in common.
  { name: 'fields', test: /src\/figures\/kit\/Field\./, minShareCount: 2, priority: 2 },
  {
    name: 'lengths',
    test: /src\/figures\/kit\/scale-length\/LengthControls/,
    minShareCount: 2,
    priority: 1,
  },
  // A group takes along what it needs: what others need of that as well has a place of its own before it.
  { name: 'stiffness', test: /src\/physics\/stiffness\./, minShareCount: 2, priority: 1 },
  {
    name: 'progress',
    test: /src\/exercises\/(progress|memory|Boxes|ChapterDone)/,
    minShareCount: 2,
    priority: 1,
  },
  {
    name: 'prose',
    test: /src\/figures\/kit\/(LiveText|DragNumber)/,
    minShareCount: 2,
    priority: 1,
  },
  { name: 'data', test: /src\/figures\/kit\/(FigureData|ask-data)/, minShareCount: 2, priority: 1 },
  // What is plucked, and what sounds as it is dragged. A tone alone is asked for by figures without them.
  {
    name: 'live',
    test: /src\/figures\/kit\/live\/(PluckString\.|PluckHint|slowed)/,
    minShareCount: 2,
    priority: 1,
  },
  {
    name: 'sound',
    test: /src\/figures\/kit\/live\/(SoundSwitch|sound\.)/,
    minShareCount: 2,
    priority: 1,
  },
  // The four kinds of exercise: a chapter has three of them at the least.
  {
    name: 'exercises',
    test: /src\/exercises\/(Verdict|Choices|Numeric|Choose|Order|FindMistake|say|attempt|judge|offset|order|shuffle|load)/,
    minShareCount: 2,
    priority: 1,
  },
  {
    name: 'pair',
    test: /src\/(instrument\/(plan|pair)|physics\/(nearest-pull|entries)|figures\/kit\/pair\/sheet)/,
    minShareCount: 2,
    priority: 1,
  },
];

// A part that comes later asks itself for what it needs: a list of that in whatever loads the part would weigh on every page,
// also where the part never comes. Its styles are asked for before it is drawn.
const ahead = (file, needed) =>
  /\/(arrive|visit)\./.test(file) ? [] : needed.filter((name) => name.endsWith('.css'));
const leaner = {
  name: 'leaner-preloads',
  // Astro sets its own, after the configuration.
  configResolved(config) {
    for (const { build } of [config, ...Object.values(config.environments)])
      if (build.modulePreload) build.modulePreload.resolveDependencies = ahead;
  },
};

// `client:sign`: src/components/sign.ts says what it is.
const signs = {
  name: 'client-sign',
  hooks: {
    'astro:config:setup': ({ addClientDirective }) =>
      addClientDirective({ name: 'sign', entrypoint: './src/components/sign.ts' }),
  },
};

// Nothing comes from elsewhere and nothing goes there; a script stands in a page only if its hash is named. Figures place
// their parts by style attributes, which carry no code.
const csp = {
  directives: [
    "default-src 'self'",
    "img-src 'self' data: blob:",
    "object-src 'none'",
    "base-uri 'none'",
    "form-action 'none'",
  ],
  scriptDirective: {
    hashes: [`sha256-${createHash('sha256').update(themeBoot).digest('base64')}`],
  },
  styleDirective: {
    resources: [
      { resource: "'self'", kind: 'element' },
      { resource: "'unsafe-inline'", kind: 'attribute' },
    ],
  },
};

export default defineConfig({
  site,
  base,
  outDir: process.env.SITE_OUT ?? './dist',
  trailingSlash: 'always',
  markdown: {
    processor: unified({
      remarkPlugins: [remarkMath],
      rehypePlugins: [[rehypeKatex, { output: 'htmlAndMathml' }]],
    }),
  },
  integrations: [
    svelte(),
    mdx(),
    sitemap({ filter: (page) => !page.includes('/embed/') }),
    signs,
    oneSheet(),
    offline(),
  ],
  security: { csp },
  vite: {
    resolve: {
      alias: {
        '@astrojs/svelte/client.js': new URL('src/components/island.ts', import.meta.url).pathname,
      },
    },
    plugins: [yamlData(), katexCss(), leaner, later(), leanerRuntime()],
    build: {
      rollupOptions: { output: { codeSplitting: { groups: chunks } } },
    },
  },
  build: { inlineStylesheets: 'never' },
  devToolbar: { enabled: false },
});
