/** What the home page says once its saddle has moved: its title and answer, and what is told at the end of a drag. */
import { hand } from '../../../instrument/hand.svelte.ts';
import type { State } from '../../../instrument/schema.ts';
import { headline } from './headline.ts';
import { pullsIn } from './hung.ts';
import { shownLength } from '../../kit/scale-length/frame.ts';

export { describeShort } from './describe-short.ts';

/** Puts the words of a state where the page has its first ones. */
export function say(state: State): void {
  const { mine, units } = state;
  const words = headline(mine, shownLength(state), units, hand.thresholds.pull, pullsIn(state));
  for (const [name, text] of Object.entries(words)) {
    // As it was built, the place holds one text: another in its stead would be styled and laid out from its beginning.
    const place = document.querySelector(`[data-headline="${name}"]`)?.firstChild;
    if (place instanceof Text && place.data !== text) place.data = text;
  }
}

/** Keeps the title's room while the saddle is dragged: nothing else on the page is laid out for new words, or moves under the hand. */
export function hold(isHeld: boolean): void {
  const room = document.querySelector<HTMLElement>('[data-headline]')?.closest<HTMLElement>('div');
  if (room) room.style.cssText = isHeld ? `height:${room.offsetHeight}px;contain:layout size` : '';
}
