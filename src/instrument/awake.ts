/**
 * Brings to life all of a page that shows another instrument than the one it was built for: what is far down would else be
 * printed with the workshop's numbers beside the reader's own. A print that comes too early says so, and shows nothing.
 */

type Island = HTMLElement & { readonly start: () => void };

const SLEEPS = 'astro-island[ssr], [data-sleeping]';

/** Between two of them the page draws and hears its reader. */
const breathe = (): Promise<void> =>
  new Promise((done) => {
    if ('requestIdleCallback' in globalThis) requestIdleCallback(() => done(), { timeout: 300 });
    else setTimeout(done, 50);
  });

interface Window {
  Astro?: { load?: (load: () => Promise<() => Promise<void>>) => Promise<void> };
}

/** Most pages have no island that comes at once, so they lack the directive for it. */
function bringDirective(page: Window): void {
  (page.Astro ??= {}).load ??= async (load) => (await load())();
}

async function wakeOne(island: Island): Promise<void> {
  await new Promise<void>((done) => {
    for (const event of ['astro:hydrate', 'astro:hydration-error'])
      island.addEventListener(event, () => done(), { once: true });
    // As if it need not be seen first; when it comes into sight it is awake already.
    island.setAttribute('client', 'load');
    island.start();
  });
}

/** Wakes one island after the other, from the top, and holds back a print until all are awake. Call it once a page. */
export async function awaken(): Promise<void> {
  // The store may be used without a page, as its own tests do.
  if (typeof document === 'undefined') return;
  // Asked of the page that it began on: between two breaths a page may have gone.
  const root = document.documentElement;
  const tell = (): void =>
    void root.toggleAttribute('data-asleep', root.querySelector(SLEEPS) !== null);
  addEventListener('beforeprint', tell);
  addEventListener('afterprint', tell);
  bringDirective(window as Window);
  const tried = new Set<Island>();
  for (;;) {
    await breathe();
    const next = [...root.querySelectorAll<Island>('astro-island[ssr]')].find(
      (island) => !tried.has(island),
    );
    if (!next) break;
    tried.add(next);
    await wakeOne(next);
  }
  while (root.querySelector('[data-sleeping]')) await breathe();
  delete root.dataset.unread;
  tell();
}
