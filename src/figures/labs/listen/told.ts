/** What was heard, in words: the pitch, the gauge, the core, the pull. */
import { drawer } from '../../../instrument/drawer.ts';
import { formatGauge, formatNote, gaugeNumber } from '../../../instrument/format.ts';
import { formatThickness, thicknessNumber } from '../../../instrument/thickness-text.ts';
import type { Units } from '../../../instrument/schema.ts';
import type { LabString } from '../kit/strings.ts';
import {
  cents,
  millimetres,
  thousandths,
  type Estimate,
  type PlainString,
} from '../../../physics/index.ts';
import { bendingStiffnessHeard, coreHeard, gaugeHeard } from '../../../physics/heard.ts';
import { withDoubt } from '../kit/agree.ts';

/** m: what a rule tells of a length between nut and saddle, as a standard uncertainty */
export const LENGTH_DOUBT = 1e-3;

export interface Tone {
  readonly fundamental: Estimate;
  readonly inharmonicity: Estimate;
}

/** Cents of what sounds above the string's own note: a tuner hears the first partial. */
export const centsOff = ({ fundamental, inharmonicity: b }: Tone, target: number): number =>
  cents(target, fundamental.value * Math.sqrt(1 + b.value));

const doubtsOf = ({ fundamental, inharmonicity: b }: Tone) => ({
  fundamental: fundamental.uncertainty,
  inharmonicity: b.uncertainty,
  speakingLength: LENGTH_DOUBT,
});

const asHeard = (tone: Tone, speakingLength: number) => ({
  fundamental: tone.fundamental.value,
  inharmonicity: tone.inharmonicity.value,
  speakingLength,
  doubts: doubtsOf(tone),
});

/** The pull, from the pitch that was heard and the weight that the string is known or taken to have. */
export function pullHeard(tone: Tone, { pull, unitWeight }: LabString): Estimate {
  const f = tone.fundamental;
  const value = 4 * unitWeight.value * (pull.speakingLength * f.value) ** 2;
  const relative = Math.hypot(
    unitWeight.uncertainty / unitWeight.value,
    (2 * LENGTH_DOUBT) / pull.speakingLength,
    (2 * f.uncertainty) / f.value,
  );
  return { value, uncertainty: relative * value };
}

/** What the sound tells of how the string is made, one sentence each. */
export function madeOf(tone: Tone, string: LabString, units: Units): readonly string[] {
  const { construction, speakingLength, gauge } = string.pull;
  if (construction.kind === 'plain') {
    const plain = drawer.filter((each): each is PlainString => each.kind === 'plain');
    const heard = gaugeHeard({
      ...asHeard(tone, speakingLength),
      material: construction.material,
      drawer: plain,
    });
    const names = heard.remaining.map(({ diameter }) =>
      gaugeNumber(Number(thousandths(diameter).toFixed(1)), units),
    );
    const wire = `${withDoubt({ value: thousandths(heard.diameter), uncertainty: thousandths(heard.doubt) }, 'thousandths')} (${millimetres(heard.diameter).toFixed(3)}\u00a0mm)`;
    return [
      `The wire sounds ${wire} thick.`,
      names.length === 0
        ? 'No gauge in the drawer is that thick. Is the length right? An error of the length counts twice.'
        : names.length === 1
          ? `Of the gauges in the drawer only ${names[0]} fits.`
          : `Its sound fits gauge ${names.slice(0, -1).join(', ')} or ${names.at(-1)}.`,
    ];
  }
  const stiffness = bendingStiffnessHeard({
    ...asHeard(tone, speakingLength),
    doubts: { ...doubtsOf(tone), linearDensity: string.unitWeight.uncertainty },
    linearDensity: string.unitWeight.value,
  });
  const said = [
    `Its bending stiffness is ${withDoubt({ value: 1e6 * stiffness.value, uncertainty: 1e6 * stiffness.uncertainty }, 'N mm²')}.`,
  ];
  const wrap = construction.kind === 'wound' ? construction.wraps[0]?.material : undefined;
  if (
    construction.kind === 'wound' &&
    construction.wraps.length === 1 &&
    wrap &&
    stiffness.value > 0
  ) {
    const { thinnest, thickest } = coreHeard({
      bendingStiffness: stiffness,
      diameter: construction.diameter,
      core: construction.core,
      wrap,
    });
    said.push(
      `The core of this ${formatGauge(gauge, units)} is between ${thicknessNumber(thousandths(thinnest.value), units)} and ${formatThickness(thousandths(thickest.value), units)}: the thinner one if the wrap helps as much as it can, the thicker one if it adds nothing.`,
    );
  }
  return said;
}

export const noteSaid = (note: string, off: number): string =>
  Math.abs(off) < 0.5
    ? `in tune, ${formatNote(note)}`
    : `${Math.abs(off).toFixed(1)}\u00a0cents ${off < 0 ? 'below' : 'above'} ${formatNote(note)}`;
