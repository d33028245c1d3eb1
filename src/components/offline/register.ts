/** Brings the service worker, and offers a newer version of the site when one has arrived. */
import { takeOver } from './message.ts';

function offer(waiting: ServiceWorker, notice: HTMLElement): void {
  notice.hidden = false;
  notice.querySelector('button')?.addEventListener('click', () => waiting.postMessage(takeOver));
}

/** `notice` is the element that offers a newer version and names the worker. */
export async function register(notice: HTMLElement): Promise<void> {
  const { serviceWorker } = navigator;
  const registration = await serviceWorker.register(notice.dataset.worker ?? '', {
    updateViaCache: 'none',
  });
  // The first worker takes a page up as it is; a later one brings another build, which wants its own page.
  let followed = serviceWorker.controller !== null;
  serviceWorker.addEventListener('controllerchange', () => {
    if (followed) window.location.reload();
    followed = true;
  });
  if (registration.waiting && serviceWorker.controller) offer(registration.waiting, notice);
  registration.addEventListener('updatefound', () => {
    const { installing } = registration;
    installing?.addEventListener('statechange', () => {
      if (installing.state === 'installed' && serviceWorker.controller) offer(installing, notice);
    });
  });
}
