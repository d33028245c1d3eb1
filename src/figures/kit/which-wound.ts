/** Which wound string is drawn, in words. */
import { gaugeNumber } from '../../instrument/format.ts';
import type { Units } from '../../instrument/schema.ts';
import type { WoundInHand } from '../../instrument/wound-in-hand.ts';

/** Which string is drawn, where it is not the one in hand. */
export function whichText({ pull, as, hand }: WoundInHand, units: Units): string {
  if (as === 'own') return '';
  const gauge = gaugeNumber(pull.gauge.gauge, units);
  return as === 'another'
    ? `${hand === 'plain' ? 'Your string is plain' : 'We know only the weight of your string'}, so the drawing shows the wound ${gauge} of the same instrument.`
    : `We don’t know the core of any string on this instrument. The drawing shows a wound ${gauge} with a steel core instead, as on an electric guitar. It doesn’t belong on this instrument.`;
}
