/** A pluck of our own making, for a reader without a microphone: the model's own string, with a little noise. */
import { nylonLosses } from '../../../physics/index.ts';
import { pluckedTone } from '../../../physics/voice.ts';
import type { LabString } from '../kit/strings.ts';
import { TAKEN } from '../kit/hear/plucks.ts';

const RATE = 48_000;
/** Of an ordinary room, full scale 1 */
const NOISE = 5e-4;
/** Near the saddle, so that few partials are missing */
const PLUCK_AT = 0.13;

export function examplePluck({ pull, bendingStiffness }: LabString): {
  samples: Float32Array;
  sampleRate: number;
} {
  const { speakingLength, tension, linearDensity } = pull;
  const samples = pluckedTone({
    speakingLength,
    tension,
    linearDensity,
    bendingStiffness,
    pluckAt: PLUCK_AT,
    // Steel rings some ten times longer than the nylon that these were measured on; what air takes is the same.
    losses: {
      friction: nylonLosses.friction.value / 10,
      air: nylonLosses.air.value,
      bending: nylonLosses.bending.value / 10,
    },
    duration: TAKEN,
    sampleRate: RATE,
    level: 0.6,
  });
  // The noise is that of any room: it need not repeat.
  return { samples: samples.map((x) => x + NOISE * (2 * Math.random() - 1)), sampleRate: RATE };
}
