/** The hanging lab: from weights and pitches to the unit weight and to the law itself. */
import { STANDARD_GRAVITY } from '../../../physics/index.ts';
import { heaviestWeight, hung } from '../../../physics/labs.ts';
import type { LabString } from '../kit/strings.ts';
import type { Reading } from '../kit/rows.svelte.ts';

/** SI: clamp to clip, the ruler's doubt, a weight's and a pitch's relative doubt */
export const usual = { hangingLength: 0.5, lengthDoubt: 5e-4 } as const;
const MASS_DOUBT = 0.002;
const PITCH_DOUBT = 0.001;
/** No further than half of what the string may break at */
export const SHARE = 0.5;

export interface Hung {
  readonly id: string;
  readonly mass: number;
  readonly frequency: number;
}

export const wholeReadings = (readings: readonly Reading[]): readonly Hung[] =>
  readings.flatMap(({ id, values: { mass, frequency } }) =>
    mass !== undefined && frequency !== undefined ? [{ id, mass, frequency }] : [],
  );

export function hang(
  readings: readonly Hung[],
  { bendingStiffness }: Pick<LabString, 'bendingStiffness'>,
  settings: Readonly<Record<string, number>>,
) {
  const { hangingLength = usual.hangingLength, lengthDoubt = usual.lengthDoubt } = settings;
  if (readings.length < 3 || new Set(readings.map(({ mass }) => mass)).size < 2) return undefined;
  return hung({
    readings: readings.map(({ mass, frequency }) => ({
      mass,
      massDoubt: MASS_DOUBT * mass,
      frequency,
      frequencyDoubt: PITCH_DOUBT * frequency,
    })),
    speakingLength: hangingLength,
    lengthDoubt,
    bendingStiffness,
  });
}

/** kg that may hang on it, rounded down to a tenth; undefined where no strength is known. */
export function heaviest(
  string: LabString,
  settings: Readonly<Record<string, number>>,
): number | undefined {
  if (string.strength === undefined) return undefined;
  const mass = heaviestWeight({
    strength: string.strength,
    share: SHARE,
    linearDensity: string.pull.linearDensity,
    length: settings.hangingLength ?? usual.hangingLength,
  });
  return Math.floor(10 * mass) / 10;
}

/** Hz that a weight in kg should give, by the model. */
export const expectedPitch = (
  string: LabString,
  mass: number,
  settings: Readonly<Record<string, number>>,
): number =>
  Math.sqrt((STANDARD_GRAVITY * mass) / string.pull.linearDensity) /
  (2 * (settings.hangingLength ?? usual.hangingLength));

/** kg that pull as the string does at its pitch: what hangs on one of unknown strength is no more. */
export const asAtPitch = ({ tension }: LabString): number => tension.value / STANDARD_GRAVITY;
