/**
 * Mersenne's law for the fundamental of an ideal string, f = (1/2L) sqrt(T/mu), solved for each of its four quantities.
 * Source: Ling, Moebs, Sanny, University Physics Vol. 1 (OpenStax 2016), chapter 16; derived in the course's first chapter.
 */
import {
  frequencyRange,
  inPositive,
  linearDensityRange,
  speakingLengthRange,
  tensionRange,
} from './guard.ts';

interface Length {
  readonly speakingLength: number;
}
interface Frequency {
  readonly frequency: number;
}
interface Density {
  readonly linearDensity: number;
}
interface Tension {
  readonly tension: number;
}

const checkLength = (v: number) => inPositive('speakingLength', v, speakingLengthRange);
const checkFrequency = (v: number) => inPositive('frequency', v, frequencyRange);
const checkDensity = (v: number) => inPositive('linearDensity', v, linearDensityRange);
const checkTension = (v: number) => inPositive('tension', v, tensionRange);

/** Tension in N that brings a string of `linearDensity` kg/m and `speakingLength` m to `frequency` Hz. */
export function tension({
  speakingLength,
  frequency,
  linearDensity,
}: Length & Frequency & Density): number {
  checkLength(speakingLength);
  checkFrequency(frequency);
  checkDensity(linearDensity);
  const speed = 2 * speakingLength * frequency;
  return linearDensity * speed * speed;
}

/** Frequency in Hz of the fundamental at `tension` N. */
export function frequency({
  speakingLength,
  tension,
  linearDensity,
}: Length & Tension & Density): number {
  checkLength(speakingLength);
  checkTension(tension);
  checkDensity(linearDensity);
  return Math.sqrt(tension / linearDensity) / (2 * speakingLength);
}

/** Linear density in kg/m that needs `tension` N at this length and pitch. */
export function linearDensityFor({
  speakingLength,
  frequency,
  tension,
}: Length & Frequency & Tension): number {
  checkLength(speakingLength);
  checkFrequency(frequency);
  checkTension(tension);
  const speed = 2 * speakingLength * frequency;
  return tension / (speed * speed);
}

/** Speaking length in m at which this string sounds `frequency` Hz under `tension` N. */
export function speakingLengthFor({
  frequency,
  tension,
  linearDensity,
}: Frequency & Tension & Density): number {
  checkFrequency(frequency);
  checkTension(tension);
  checkDensity(linearDensity);
  return Math.sqrt(tension / linearDensity) / (2 * frequency);
}
