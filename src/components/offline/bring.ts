// Fetches what keeps the site on the device, once the page has settled: what the reader came for goes first.
const notice = document.querySelector<HTMLElement>('[data-worker]');
if (notice && import.meta.env.PROD && 'serviceWorker' in navigator) {
  const bring = async () => {
    try {
      await (await import('./register.ts')).register(notice);
    } catch {
      // A private window may refuse it: the site then needs a network, as before.
    }
  };
  window.addEventListener('load', () => setTimeout(bring, 4000));
}
