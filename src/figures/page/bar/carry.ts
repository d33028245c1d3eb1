/** Links to other pages of the site carry the reader's state, so that it travels even where the device keeps nothing. */
import { encode } from '../../../instrument/link.ts';
import type { State } from '../../../instrument/schema.ts';

/** Adds the state to a link of the site at the moment it is followed. Returns the way to stop. */
export function carryLink(state: () => State): () => void {
  const carry = (event: Event): void => {
    const link = event.target instanceof Element ? event.target.closest('a') : null;
    if (!(link instanceof HTMLAnchorElement) || link.origin !== window.location.origin) return;
    // A link within this page, or to a marked place on another, needs its own # .
    if (link.hash !== '' && !link.hash.startsWith('#v1/')) return;
    // One that takes another instrument in hand names that one.
    if (link.dataset.instrument !== undefined) return;
    if (/\.[a-z0-9]+$/i.test(link.pathname) || link.hasAttribute('download')) return;
    link.hash = encode(state());
  };
  document.addEventListener('pointerdown', carry);
  document.addEventListener('click', carry, { capture: true });
  return () => {
    document.removeEventListener('pointerdown', carry);
    document.removeEventListener('click', carry, { capture: true });
  };
}
