import { vitePreprocess } from '@astrojs/svelte';

// Runes everywhere: a component that happens to use none would else bring the code of the older way.
export default { preprocess: vitePreprocess(), compilerOptions: { runes: true } };
