/** The common set that is on an instrument, those that would fit it, and how one goes on. */
import type { Family } from './family-names.ts';
import type { Instrument } from './schema.ts';
import { setsOf, type StringSet } from './sets.ts';
import { regauged } from './strung.ts';

/** Sets of its family, or of another, with as many strings as it has. */
export const fittingSets = (
  { strings }: Instrument,
  family: Family | undefined = strings[0]?.family,
): readonly StringSet[] => setsOf(family).filter((set) => set.gauges.length === strings.length);

/** The name of the set that is on it, or an empty text. */
export const setOn = (instrument: Instrument): string =>
  fittingSets(instrument).find((set) =>
    set.gauges.every((each, i) => {
      const string = instrument.strings[i];
      return each.kind === string?.kind && each.gauge === string.gauge;
    }),
  )?.name ?? '';

/** With that set of its family on it; as it is where no such set fits. */
export function withSet(instrument: Instrument, name: string): Instrument {
  const set = fittingSets(instrument).find((each) => each.name === name);
  if (!set) return instrument;
  return {
    ...instrument,
    strings: instrument.strings.map((string, i) =>
      regauged(string, set.gauges[i] ?? { kind: 'plain', gauge: 10 }),
    ),
  };
}
