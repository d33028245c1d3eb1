/** What the home page says once its saddle has moved: its title and answer, and what is told at the end of a drag. */
import { hand } from '../../../instrument/hand.svelte.ts';
import type { State } from '../../../instrument/schema.ts';
import { headline } from './headline.ts';
import { shownLength } from '../../kit/scale-length/frame.ts';

export { describeShort } from './describe-short.ts';

/** Puts the words of a state where the page has its first ones. */
export function say(state: State): void {
  const { mine, units } = state;
  const words = headline(mine, shownLength(state), units, hand.thresholds.pull);
  for (const [name, text] of Object.entries(words)) {
    const place = document.querySelector(`[data-headline="${name}"]`);
    if (place && place.textContent !== text) place.textContent = text;
  }
}
