/** Four plain steel strings on one length, tuned up until they snap. */
import { drawerOf } from '../../../instrument/drawer.ts';
import {
  highestFrequency,
  linearDensity,
  tension,
  type Construction,
} from '../../../physics/index.ts';
import { toneOf, type Tone } from '../../kit/tone.ts';

/** Thousandths; the standard for music wire lists the strength of each. */
export const gaugesUp = [9, 12, 16, 20] as const;

/** Semitones: from where they start, an octave and more below the edge, to where the drawing ends */
export const START = -14;
export const TOP = 6;

export interface Wire {
  readonly gauge: number;
  /** Note number, not rounded, at which it may break */
  readonly snaps: number;
  /** How it sounds at so many Hz, while it holds */
  readonly sounds: (hertz: number) => Tone;
}

/** Note number, not rounded, of a frequency in Hz. */
export const numberAt = (hertz: number, a4: number): number => 69 + 12 * Math.log2(hertz / a4);
export const hertzAt = (number: number, a4: number): number => a4 * 2 ** ((number - 69) / 12);

/** The four, on a length in m, with the reader's A4 in Hz. */
export function wiresOn(speakingLength: number, a4: number): readonly Wire[] {
  const { byGauge } = drawerOf();
  return gaugesUp.flatMap((gauge): Wire[] => {
    const construction: Construction | undefined = byGauge.get(`plain ${gauge}`);
    const edge = construction && highestFrequency({ construction, speakingLength, share: 1 });
    if (!edge) return [];
    const mass = linearDensity(construction);
    const sounds = (frequency: number): Tone => {
      const pull = tension({ speakingLength, frequency, linearDensity: mass });
      return toneOf({ construction, speakingLength, tension: pull, linearDensity: mass });
    };
    return [{ gauge, snaps: numberAt(edge.low, a4), sounds }];
  });
}
