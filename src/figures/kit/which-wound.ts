/** Which wound string is drawn, in words. */
import type { WoundInHand } from '../../instrument/wound-in-hand.ts';

/** Which string is drawn, where it is not the one in hand. */
export function whichText({ pull, as, hand }: WoundInHand): string {
  if (as === 'in hand') return '';
  const gauge = `${pull.gauge.gauge}`;
  return as === 'another'
    ? `The string in hand ${hand === 'plain' ? 'is plain' : 'is known by its weight alone'}. Drawn is the wound ${gauge} of the same instrument.`
    : `No string of this instrument has a core that can be reckoned with. Drawn in its place is a wound ${gauge} with a steel core, as on an electric guitar: it does not belong on this instrument.`;
}
