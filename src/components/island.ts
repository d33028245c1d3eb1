/** Brings an island to life. An island's props never change, so nothing watches them, as Astro's own entry does. */
import { createRawSnippet, hydrate, unmount, type Component } from 'svelte';

export default (element: HTMLElement) =>
  (
    component: Component<Record<string, unknown>>,
    props: Record<string, unknown>,
    slots: Record<string, string>,
  ): void => {
    if (!element.hasAttribute('ssr')) return;
    const snippets = Object.entries(slots).map(([name, html]) => [
      name,
      createRawSnippet(() => ({ render: () => `<astro-slot name="${name}">${html}</astro-slot>` })),
    ]);
    const shown = hydrate(component, {
      target: element,
      props: { ...props, ...Object.fromEntries(snippets) },
    });
    element.addEventListener('astro:unmount', () => void unmount(shown), { once: true });
  };
