/** A string as it would sound if it were plucked. */
import { bendingStiffness, type Plucked } from '../../physics/index.ts';
import type { Pull } from '../../instrument/pulls.ts';

/** A plucked string; where it is plucked and how it loses its sound have usual values. */
export interface Tone extends Omit<Plucked, 'pluckAt' | 'losses'> {
  readonly pluckAt?: number;
  readonly losses?: Plucked['losses'];
}

/** The tone of a tuned string; one whose stiffness is not known sounds as a flexible one. */
export function toneOf({
  construction,
  speakingLength,
  tension,
  linearDensity,
}: Pick<Pull, 'construction' | 'speakingLength' | 'tension' | 'linearDensity'>): Tone {
  const known = construction.kind !== 'measured' || construction.bendingStiffness !== undefined;
  return {
    speakingLength,
    tension,
    linearDensity,
    bendingStiffness: known ? bendingStiffness(construction, tension) : 0,
  };
}
