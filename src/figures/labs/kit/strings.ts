/** The string that a lab is about: one of the reader's instrument, with what the model predicts of it. */
import { doubtsOf } from '../../../instrument/doubts.ts';
import { formatGauge, formatNote } from '../../../instrument/format.ts';
import { lengthOf, pullOf, type Pull } from '../../../instrument/pulls.ts';
import type { Instrument, Units } from '../../../instrument/schema.ts';
import {
  axialStiffness,
  bendingStiffness,
  estimateString,
  type Estimate,
} from '../../../physics/index.ts';

export interface LabString {
  /** How its readings are filed: they belong to this gauge on this instrument */
  readonly key: string;
  /** "E4, a plain 10" */
  readonly name: string;
  /** As a class's row has it: "E4 10" */
  readonly short: string;
  readonly pull: Pull;
  /** kg/m */
  readonly unitWeight: Estimate;
  /** N at pitch */
  readonly tension: Estimate;
  /** N m², 0 where it is not known */
  readonly bendingStiffness: number;
  /** B at pitch; undefined where its stiffness is not known */
  readonly inharmonicity: Estimate | undefined;
  /** N, where it is known */
  readonly axialStiffness: number | undefined;
  /** N that it may break at, at the least; where it is known */
  readonly strength: number | undefined;
}

/** What is read of a string is kept by its gauge in thousandths, whatever units it is shown in. */
export function labString(instrument: Instrument, index: number, units: Units): LabString {
  const at = Math.min(index, instrument.strings.length - 1);
  const string = instrument.strings[at];
  if (!string) throw new RangeError('an instrument without strings; permitted: at least one');
  const speakingLength = lengthOf(instrument, at);
  const pull = pullOf({ gauge: string, note: string.note, a4: instrument.a4, speakingLength });
  const { construction, frequency } = pull;
  const doubts = doubtsOf(construction);
  const told = estimateString({ construction, speakingLength, frequency, doubts });
  const known = construction.kind !== 'measured';
  return {
    key: `${instrument.name} · ${string.note} · ${formatGauge(string, 'in-lb')}`,
    name: `${formatNote(string.note)}, ${formatGauge(string, units)}`,
    short: `${string.note} ${formatGauge(string, units)}`,
    pull,
    unitWeight: told.linearDensity ?? { value: pull.linearDensity, uncertainty: 0 },
    tension: told.pull ?? { value: pull.tension, uncertainty: 0 },
    bendingStiffness:
      known || construction.bendingStiffness !== undefined ? bendingStiffness(construction) : 0,
    inharmonicity: told.inharmonicity,
    axialStiffness:
      known || construction.axialStiffness !== undefined ? axialStiffness(construction) : undefined,
    strength: pull.share ? pull.tension / pull.share : undefined,
  };
}
