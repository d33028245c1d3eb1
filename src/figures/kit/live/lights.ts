/** How bright each partial of a pluck is over time: as loud as it is heard, the loudest at first 1. */
import { pluckedPartials } from '../../../physics/voice.ts';
import { USUAL_PLUCK, usualLosses } from '../samples.ts';
import type { Tone } from '../tone.ts';

/** For each partial its brightness after so many seconds; a very quiet one is lifted, so that it can be seen at all. */
export function lightsOf(tone: Tone, count: number): readonly ((seconds: number) => number)[] {
  const partials = pluckedPartials({ pluckAt: USUAL_PLUCK, losses: usualLosses, ...tone, count });
  const loudest = Math.max(...partials.map(({ amplitude }) => Math.abs(amplitude)));
  return partials.map(
    ({ amplitude, decay }) =>
      (seconds) =>
        Math.sqrt((Math.abs(amplitude) / loudest) * Math.exp(-decay * seconds)),
  );
}
