/** The section in words. */
import {
  letteredDensity,
  formatDifference,
  formatForce,
  formatShare,
  gaugeNumber,
  spokenNote,
} from '../../../instrument/format.ts';
import { formatThickness } from '../../../instrument/thickness-text.ts';
import type { Units } from '../../../instrument/schema.ts';
import type { WoundPull } from '../../../instrument/wound-in-hand.ts';
import { materialNames, type MaterialId } from '../../../physics/index.ts';
import { heavier, makeOf, weighed } from './make.ts';

/** A material's name without what stands in brackets behind it. */
export const nameOf = (id: MaterialId): string => materialNames[id].replace(/ \(.*$/, '');

/** Over the wrap, as gauges are given: whole and half thousandths, hundredths of a millimetre. */
export const outerText = gaugeNumber;

export const wrapShare = ({ construction }: Pick<WoundPull, 'construction'>): number => {
  const { wraps, whole } = weighed(construction);
  return wraps / whole;
};

export function describe(own: WoundPull, tried: WoundPull, units: Units): string {
  const { core, outer, shape } = makeOf(tried.construction);
  const start = `A wound string cut across and along: ${shape === 'hex' ? 'hexagonal' : 'round'} core of ${formatThickness(core, units)}, ${outerText(outer, units)} over the wrap. A metre weighs ${letteredDensity(tried.linearDensity)}, ${formatDifference(heavier(tried, own))} from the string as it is, and ${formatShare(wrapShare(tried))} of that is wrap.`;
  if (tried.strain === 'broken')
    return `${start} The core breaks before the string reaches ${spokenNote(tried.note)}.`;
  const share =
    tried.share === undefined ? '' : `, ${formatShare(tried.share)} of the core’s minimum strength`;
  return `${start} At ${spokenNote(tried.note)} it pulls ${formatForce(tried.tension, units)}${share}.`;
}

export function describeShort(own: WoundPull, tried: WoundPull, units: Units): string {
  const weight = `${letteredDensity(tried.linearDensity)}, ${formatDifference(heavier(tried, own))}`;
  return tried.strain === 'broken'
    ? `${weight}: the core breaks.`
    : `${weight}; pull ${formatForce(tried.tension, units)}.`;
}
