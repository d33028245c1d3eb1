/**
 * The pull of a string that thins as it is brought to pitch.
 *
 * Mass is conserved: stretched by the strain T/(E A), the same mass lies on more length, so the slack string's linear density is
 * divided by 1 + T/(E A). With T = mu (2 L f)² that makes a quadratic in the strain. A plain polymer string stretches by some
 * per cent; steel by less than one, and that is left out, as the model's page says. A measured string's weight is taken as its
 * weight at pitch. Source: Hooke's law and Mersenne's.
 */
import { axialStiffness, linearDensity, type Construction } from './construction.ts';
import { frequencyRange, inPositive, inRange, speakingLengthRange } from './guard.ts';
import { material } from './materials.ts';

export interface AtPitch {
  readonly construction: Construction;
  /** m */
  readonly speakingLength: number;
  /** Hz */
  readonly frequency: number;
}

/** Whether a string stretches so far on its way to pitch that its unit weight changes noticeably. */
export const thins = (c: Construction): boolean =>
  c.kind === 'plain' && material(c.material).family === 'polymer';

/**
 * Strain at pitch of a string whose slack pull, linear density times the square of twice length times pitch, would be `slackPull` N
 * on an axial stiffness of `stiffness` N: the root of y (1 + y) = slackPull/stiffness. Dimensionless. Source: Hooke's law.
 */
export function strainAtPitch({
  slackPull,
  stiffness,
}: {
  slackPull: number;
  stiffness: number;
}): number {
  inRange('slackPull', slackPull, { min: 0, unit: 'N' });
  inRange('stiffness', stiffness, { min: 0, open: true, unit: 'N' });
  return (Math.sqrt(1 + (4 * slackPull) / stiffness) - 1) / 2;
}

/** Linear density in kg/m of a string at its pitch. Throws RangeError naming what lies outside. Source: conservation of mass. */
export function densityAtPitch({ construction, speakingLength, frequency }: AtPitch): number {
  inPositive('speakingLength', speakingLength, speakingLengthRange);
  inPositive('frequency', frequency, frequencyRange);
  const slack = linearDensity(construction);
  if (!thins(construction)) return slack;
  const slackPull = slack * (2 * speakingLength * frequency) ** 2;
  return slack / (1 + strainAtPitch({ slackPull, stiffness: axialStiffness(construction) }));
}

/** Pull in N of a string at its pitch. Throws RangeError naming what lies outside. Source: Mersenne's law and `densityAtPitch`. */
export function pullAtPitch(at: AtPitch): number {
  return densityAtPitch(at) * (2 * at.speakingLength * at.frequency) ** 2;
}
