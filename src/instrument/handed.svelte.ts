/** Which hand a page's drawings are for: the stylesheet turns them over by it (`figures/kit/sided.ts`). */
import type { Page } from './page.ts';

let followed = false;

/**
 * From now on the page says for which hand its state is. Comes with what reads a memory or a link and with what keeps a change, without
 * which no page is set for the left hand.
 */
export function followHand(held: Page): void {
  if (followed || typeof document === 'undefined') return;
  followed = true;
  const { dataset } = document.documentElement;
  $effect.root(() => {
    $effect(() => {
      dataset.hand = held.settled.hand ?? 'right';
    });
  });
}
