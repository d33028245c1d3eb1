/**
 * Every number that stands in prose or in an equation and follows the reader's state, by name: `<Q k="trial.pull" />` in a
 * chapter, `\live{eq.T}` in an equation. Worked out from the same physics as the figures; rendered at build for the
 * workshop's instrument.
 */
import { initialState } from '../instrument/workshop.ts';
import { quantities as scaleForEveryString } from './quantities/a-scale-for-every-string.ts';
import { quantities as bending } from './quantities/bending.ts';
import { quantities as common, type Quantity } from './quantities/common.ts';
import { quantities as inTuneUpTheNeck } from './quantities/in-tune-up-the-neck.ts';
import { quantities as goingLow } from './quantities/going-low.ts';
import { quantities as gaugeAndMass } from './quantities/gauge-and-mass.ts';
import { quantities as woundStrings } from './quantities/wound-strings.ts';
import { quantities as pitch } from './quantities/pitch.ts';
import { quantities as speakingLength } from './quantities/speaking-length.ts';
import { quantities as stiffStrings } from './quantities/stiff-strings.ts';
import { quantities as threeThings } from './quantities/three-things-set-the-pull.ts';
import { quantities as whatNeckAndBridgeCarry } from './quantities/what-neck-and-bridge-carry.ts';
import { quantities as whatTheHandFeels } from './quantities/what-the-hand-feels.ts';
import { quantities as whenStringsBreak } from './quantities/when-strings-break.ts';
import { quantities as twoGuitars } from './quantities/two-guitars-one-feel.ts';

/** All of them, for the build; in the browser a chapter loads its own. */
const all: Readonly<Record<string, Quantity>> = {
  ...common,
  ...whatTheHandFeels,
  ...stiffStrings,
  ...bending,
  ...threeThings,
  ...speakingLength,
  ...pitch,
  ...gaugeAndMass,
  ...woundStrings,
  ...twoGuitars,
  ...goingLow,
  ...scaleForEveryString,
  ...whatNeckAndBridgeCarry,
  ...whenStringsBreak,
  ...inTuneUpTheNeck,
};

/** What a quantity reads before the reader acts; throws RangeError for a name that is not there. */
export function liveText(key: string): string {
  const quantity = all[key];
  if (!quantity) throw new RangeError(`key is "${key}"; permitted: ${Object.keys(all).join(', ')}`);
  return quantity(initialState);
}
