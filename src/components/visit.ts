// Brings the bar of a visit once a page shows one.
const bring = (): void => {
  import('../figures/page/bar/visit.ts').catch(() => undefined);
};

if ('visit' in document.documentElement.dataset) bring();
else window.addEventListener('visit', bring, { once: true });
