/** Every figure of the course and the bench, to be mounted. */
import type { Component } from 'svelte';

import { figuresAmong } from './found.ts';

const modules = import.meta.glob<{ default: Component }>(
  '../../src/figures/{pull,feel,choosing,consequences,bench}/**/*.svelte',
  { eager: true },
);
const sources = import.meta.glob<string>(
  '../../src/figures/{pull,feel,choosing,consequences,bench}/**/*.svelte',
  { eager: true, query: '?raw', import: 'default' },
);

/** By their names; which they are, figuresAmong tells. */
export const everyFigure = (which?: Parameters<typeof figuresAmong>[2]) =>
  figuresAmong(modules, sources, which);
