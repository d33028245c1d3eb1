import astro from 'eslint-plugin-astro';
import svelte from 'eslint-plugin-svelte';
import { defineConfig, globalIgnores } from 'eslint/config';
import globals from 'globals';
import { join } from 'node:path';
import typescript from 'typescript-eslint';

import svelteConfig from '../svelte.config.js';

export default defineConfig(
  globalIgnores(['dist/', '.astro/', '.cache/', 'node_modules/']),
  typescript.configs.recommended,
  svelte.configs.recommended,
  astro.configs.recommended,
  {
    languageOptions: { globals: { ...globals.browser, ...globals.node } },
    linterOptions: { reportUnusedDisableDirectives: 'error' },
    rules: {
      eqeqeq: 'error',
      'no-console': 'error',
      'no-constant-condition': 'error',
      'no-self-compare': 'error',
      'no-unreachable': 'error',
      'no-useless-concat': 'error',
      'object-shorthand': 'error',
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_' }],
    },
  },
  {
    files: ['**/*.svelte', '**/*.svelte.ts'],
    languageOptions: { parserOptions: { parser: typescript.parser, svelteConfig } },
    rules: {
      // Types are checked by svelte-check, which knows the names that a component may use.
      'no-undef': 'off',
      // State here is an immutable snapshot; a Map or URL that one function holds need not react, and the rule can't tell.
      'svelte/prefer-svelte-reactivity': 'off',
    },
  },
  {
    // The one rule that asks for types. A component or a page's script, which only brings modules, would need a program of its own.
    files: ['**/*.ts'],
    ignores: ['**/*.svelte.ts', '**/*.astro/*.ts'],
    languageOptions: {
      parserOptions: { projectService: true, tsconfigRootDir: join(import.meta.dirname, '..') },
    },
    rules: { '@typescript-eslint/no-floating-promises': 'error' },
  },
  {
    files: ['**/*.js', '**/*.mjs'],
    rules: { 'no-undef': 'error' },
  },
  {
    files: ['.tools/**', 'tests/**'],
    rules: { 'no-console': 'off' },
  },
);
