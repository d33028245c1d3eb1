/** The lab that weighs a string at its pitch: from weights and sags to the pull. */
import { lengthOf, scaleOf } from '../../../instrument/pulls.ts';
import type { Instrument } from '../../../instrument/schema.ts';
import { expectedSag, pushedAside, sagUnder, type PushedString } from '../../../physics/labs.ts';
import type { LabString } from '../kit/strings.ts';
import type { Reading } from '../kit/rows.svelte.ts';

/** m: a sag read with a ruler and a pointer */
export const usual = { sagDoubt: 2e-4 } as const;
/** m that a string goes on beyond nut and saddle, taken where nothing is known */
const BEYOND = 0.1;

export interface Pushed {
  readonly id: string;
  readonly mass: number;
  readonly sag: number;
}

export const wholeReadings = (readings: readonly Reading[]): readonly Pushed[] =>
  readings.flatMap(({ id, values: { mass, sag } }) =>
    mass !== undefined && sag !== undefined ? [{ id, mass, sag }] : [],
  );

/** From the neck's twelfth fret to either end; a string may begin at a fret of its own. */
export const endsAt12 = (instrument: Instrument, index: number) => {
  const at = Math.min(index, instrument.strings.length - 1);
  const toSaddle = scaleOf(instrument, at) / 2;
  return { toNut: lengthOf(instrument, at) - toSaddle, toSaddle };
};

const stretchOf = ({ axialStiffness, pull }: LabString) =>
  axialStiffness === undefined
    ? undefined
    : {
        axialStiffness,
        // Its modulus, and how much of it slides over nut and saddle, are known to a seventh.
        doubt: 0.15 * axialStiffness,
        length: pull.speakingLength + BEYOND,
      };

export function push(
  readings: readonly Pushed[],
  ends: ReturnType<typeof endsAt12>,
  string: LabString,
  settings: Readonly<Record<string, number>>,
) {
  const stretch = stretchOf(string);
  if (readings.length < 3) return undefined;
  if (!stretch && new Set(readings.map(({ mass }) => mass)).size < 2) return undefined;
  return pushedAside({
    readings,
    ends,
    sagDoubt: settings.sagDoubt ?? usual.sagDoubt,
    massDoubt: 0.005,
    lengthDoubt: 1e-3,
    ...(stretch && { stretch }),
  });
}

/** What three weights should do, and how good that can be: m, and the share of the pull that a reading leaves open. */
export function before(
  string: LabString,
  ends: ReturnType<typeof endsAt12>,
  settings: Readonly<Record<string, number>>,
) {
  const sagDoubt = settings.sagDoubt ?? usual.sagDoubt;
  const stretch = stretchOf(string);
  const sags = [0.1, 0.2, 0.3].map((mass) => ({
    mass,
    sag: expectedSag({ tension: string.tension.value, mass, ends, ...(stretch && { stretch }) }),
  }));
  // Three readings, each as good as its own sag is large.
  const share = 1 / Math.sqrt(sags.reduce((sum, { sag }) => sum + (sag / sagDoubt) ** 2, 0));
  return { sags, share };
}

/** The fitted curve as it is drawn: mm that the string gives under so many g. */
export const curveOf =
  ({ slope, cube }: PushedString) =>
  (grams: number): number =>
    1000 * sagUnder({ mass: grams / 1000, slope, cube: cube.value });
