/**
 * What others measured, beside what the model makes of it. Each row names its source; what is modelled is worked out here from the
 * module and the site's own strings, and why the two part is said in a sentence.
 */
import data from '../../../content/data/recorded-strings.yaml';
import { notes as firstString, scaleLength } from '../../figures/feel/recorded-string/recorded.ts';
import { constructionOf, CORE_SPREAD } from '../../instrument/drawer.ts';
import { formatDifference, formatShare } from '../../instrument/format.ts';
import type { Gauge } from '../../instrument/schema.ts';
import {
  axialStiffness,
  bendingStiffness,
  bendingStiffnessBounds,
  centsOfPartial,
  fromInches,
  fromMillimetres,
  fromThousandths,
  inharmonicity,
  linearDensity,
  materials,
  minimumStrength,
  noteFrequency,
  pullAtPitch,
  responseOf,
  stoppedLength,
  tension,
  thousandths,
  type Construction,
} from '../../physics/index.ts';

export interface Beside {
  readonly what: string;
  readonly source: string;
  readonly unit: string;
  readonly measured: number;
  /** One standard uncertainty, where the source gives one or a fit does */
  readonly doubt?: number;
  readonly modelled: number;
  /** How far the model's own bounds reach, where it has some */
  readonly reach?: { readonly low: number; readonly high: number };
  /** Digits after the point that both deserve */
  readonly digits: number;
  readonly why: string;
}

interface Recorded {
  readonly sample: string;
  readonly note: string;
  readonly gauge: string | number;
  readonly fundamental: number;
  /** Millionths */
  readonly inharmonicity: number;
  readonly doubt: number;
}

const recordedStrings = data as { readonly source: string; readonly strings: readonly Recorded[] };
const MILLIONTH = 1e-6;
const B = 'millionths';

interface Sounding {
  readonly construction: Construction;
  /** m */
  readonly speakingLength: number;
  /** Hz */
  readonly frequency: number;
  readonly stiffness?: number;
}

/** Inharmonicity of a string that sounds `frequency` on this length. */
function inharmonicityOf({ construction, speakingLength, frequency, stiffness }: Sounding): number {
  const pull = tension({
    speakingLength,
    frequency,
    linearDensity: linearDensity(construction),
  });
  return inharmonicity({
    speakingLength,
    tension: pull,
    bendingStiffness: stiffness ?? bendingStiffness(construction, pull),
  });
}

const twelve = constructionOf({ kind: 'plain', gauge: 12 });
const firstRows: readonly Beside[] = firstString.map(({ note, fret, speakingLength, fit }) => ({
  what: `Inharmonicity of a steel guitar’s first string, ${fret === 0 ? 'open' : `at fret ${fret}`} (${note})`,
  source: recordedStrings.source,
  unit: B,
  measured: fit.inharmonicity / MILLIONTH,
  doubt: fit.inharmonicityDoubt / MILLIONTH,
  modelled:
    inharmonicityOf({ construction: twelve, speakingLength, frequency: fit.fundamental }) /
    MILLIONTH,
  digits: 1,
  why: 'A steel 12 on 25.4 in is assumed: the recording gives gauge and length only together.',
}));

function recordedRow({ note, gauge, fundamental, ...heard }: Recorded): Beside {
  const wound = String(gauge).endsWith('w');
  const asked: Gauge = {
    kind: wound ? 'wound' : 'plain',
    gauge: Number.parseFloat(String(gauge)),
    ...(wound ? { family: 'acoustic, phosphor bronze' as const } : {}),
  };
  const construction = constructionOf(asked);
  const at = { construction, speakingLength: scaleLength, frequency: fundamental };
  const modelled = inharmonicityOf(at) / MILLIONTH;
  const { low, high } = bendingStiffnessBounds(construction, CORE_SPREAD);
  return {
    what: `Inharmonicity of its ${note} string, open`,
    source: recordedStrings.source,
    unit: B,
    measured: heard.inharmonicity,
    doubt: heard.doubt,
    modelled,
    reach: { low: modelled * (1 + low), high: modelled * (1 + high) },
    digits: 1,
    why: wound
      ? `A wound ${Number.parseFloat(String(gauge))} with the drawer’s typical core is assumed. Cores differ from maker to maker, and stiffness goes with their fourth power.`
      : `A plain ${gauge} on the same length is assumed.`,
  };
}

/** “Around 100 cents”, at both frets. */
const KEMP_CENTS = 100;
/** The lowest string of a five-string bass, as the drawer has it. */
const lowB = constructionOf({ kind: 'wound', gauge: 130 });
const bassRow = (fret: number, partial: number): Beside => {
  const scale = fromInches(34);
  const speakingLength = stoppedLength({ scaleLength: scale, fret });
  const frequency = noteFrequency('B0') * 2 ** (fret / 12);
  const at = { construction: lowB, speakingLength, frequency };
  const cents = (stiffness: number) =>
    centsOfPartial({ inharmonicity: inharmonicityOf({ ...at, stiffness }), partial });
  const core = bendingStiffness(lowB);
  const { low, high } = bendingStiffnessBounds(lowB, CORE_SPREAD);
  // B n² is the square of the partial's factor less one, and goes with the fourth power of the core.
  const square = (c: number): number => 2 ** (c / 600) - 1;
  const thicker = (square(KEMP_CENTS) / square(cents(core))) ** 0.25 - 1;
  return {
    what: `How sharp partial ${partial} of a bass’s low B is at fret ${fret}`,
    source: 'kemp-2020',
    unit: 'cents',
    measured: KEMP_CENTS,
    modelled: cents(core),
    reach: { low: cents(core * (1 + low)), high: cents(core * (1 + high)) },
    digits: 0,
    why: `“Around 100”, of strings of another make than the drawer’s. A core ${formatShare(thicker)} thicker than the drawer’s would explain it; so would wraps that press on each other. The range takes in cores up to ${formatShare(CORE_SPREAD)} thinner or thicker.`,
  };
};

const WIRE = fromMillimetres(0.56);
const minimum = minimumStrength(WIRE) ?? NaN;
const megapascals = (pascals: number): number => pascals / 1e6;

const nylonFirst = {
  construction: constructionOf({ kind: 'plain', gauge: 28, family: 'classical, nylon' }),
  speakingLength: fromMillimetres(650),
  frequency: noteFrequency('E4'),
};

/** Wound strings of other guitars, whose gauge and length aren't told: a common gauge on 25.5 in is assumed. */
function elsewhereRow(
  note: string,
  gauge: number,
  millionths: number,
  guitar: 'steel' | 'electric' = 'steel',
): Beside {
  const family = guitar === 'steel' ? ({ family: 'acoustic, phosphor bronze' } as const) : {};
  const construction = constructionOf({ kind: 'wound', gauge, ...family });
  const frequency = noteFrequency(note);
  const modelled =
    inharmonicityOf({ construction, speakingLength: fromInches(25.5), frequency }) / MILLIONTH;
  const { low, high } = bendingStiffnessBounds(construction, CORE_SPREAD);
  return {
    what: `Inharmonicity of the ${note} string of ${guitar === 'steel' ? 'another steel guitar' : 'electric guitars'}, open`,
    source: guitar === 'steel' ? 'jarvelainen-2006' : 'barbancho-2012',
    unit: B,
    measured: millionths,
    modelled,
    reach: { low: modelled * (1 + low), high: modelled * (1 + high) },
    digits: 0,
    why: `Gauge, length and core aren’t given in the source; a wound ${gauge} on 25.5 in is assumed.`,
  };
}

/** What a single modulus would say, against what was measured. */
const withOne = (off: number): string => `it would be off by ${formatDifference(off)}`;

/** A plain nylon string on 650 mm whose stretch constant was measured: mean of three sets, with half of their spread. */
function stretchedRow(
  order: string,
  note: string,
  gauge: number,
  kappa: number,
  doubt: number,
): Beside {
  const construction = constructionOf({ kind: 'plain', gauge, family: 'classical, nylon' });
  const at = { construction, speakingLength: fromMillimetres(650) };
  const pull = pullAtPitch({ ...at, frequency: noteFrequency(note) * 2 ** (-2 / 12) });
  return {
    what: `How a nylon guitar’s ${order} string takes stretch: change of pull over change of length, both as shares`,
    source: 'anderson-beausoleil-2024',
    unit: '',
    measured: kappa,
    doubt,
    modelled: responseOf({ construction, tension: pull }).stretch,
    digits: 0,
    why: `Nylon’s modulus grows with its stress; the model’s line was fitted to these very strings, so this row shows only how well it fits. With the one modulus that the model had at first, ${withOne(axialStiffness(construction) / pull / kappa - 1)}.`,
  };
}

/** Bending stiffness of a nylon string that sounds, in millionths of N m²: of the string that pulls as hard. */
function bendingRow(note: string, diameter: number, measured: number): Beside {
  const construction = { kind: 'plain', diameter, material: 'nylon' } as const;
  const pull = pullAtPitch({
    construction,
    speakingLength: fromMillimetres(650),
    frequency: noteFrequency(note),
  });
  return {
    what: `Bending stiffness of a nylon guitar’s ${note} string while it sounds`,
    source: 'woodhouse-2004-strings',
    unit: 'millionths of N m²',
    measured,
    modelled: bendingStiffness(construction, pull) / MILLIONTH,
    digits: 0,
    why: `Its diameter isn’t given. We assume the one that pulls as hard, ${thousandths(diameter).toFixed(1)} thousandths. The law was found on strings of harps. With the one modulus that the model had at first, ${withOne((axialStiffness(construction) * diameter ** 2) / 16 / MILLIONTH / measured - 1)}.`,
  };
}

/** All rows, in the order of the page. */
export const beside: readonly Beside[] = [
  ...firstRows,
  ...recordedStrings.strings.map(recordedRow),
  bassRow(12, 10),
  bassRow(21, 6),
  elsewhereRow('D3', 32, 50),
  elsewhereRow('A2', 42, 66),
  elsewhereRow('E2', 53, 108),
  elsewhereRow('E2', 46, 156, 'electric'),
  {
    what: 'Young’s modulus that fits measured bends of plain steel strings',
    source: 'grimes-2014',
    unit: 'GPa',
    // From 177.6 to 188.4 over the gauges of a set.
    measured: 183,
    doubt: 3.1,
    modelled: materials.musicWire.modulus.value / 1e9,
    digits: 0,
    why: 'Fitted as if nut and saddle held the string. One that slides over them shares its stretch with what lies beyond, and looks softer: 5 to 10 cm on 25.5 in would do it. The model takes those lengths where they are given.',
  },
  {
    what: 'Strength of music wire of 0.56 mm',
    source: 'sinha-levinson',
    unit: 'MPa',
    // It yielded at 1689 MPa, which was 70 % of its strength.
    measured: megapascals(1689e6 / 0.7),
    modelled: megapascals(minimum),
    digits: 0,
    why: 'The model takes the least that the standard allows; a wire that meets it is stronger.',
  },
  {
    what: 'Pull of a classical guitar’s first string of nylon',
    source: 'woodhouse-2004-strings',
    unit: 'N',
    measured: 70.3,
    modelled: pullAtPitch(nylonFirst),
    digits: 1,
    why: 'Its diameter isn’t given. We assume a 28, thinned by its stretch. A 26.3 would pull the same.',
  },
  bendingRow('E4', fromThousandths(26.3), 130),
  bendingRow('B3', fromThousandths(30.5), 160),
  stretchedRow('first', 'E4', 28, 49.6, 2.6),
  stretchedRow('second', 'B3', 32, 56.5, 9.7),
  stretchedRow('third', 'G3', 40, 58.8, 1.4),
];

/** By how much the model differs, relative to what was measured. */
export const difference = ({ measured, modelled }: Beside): number => modelled / measured - 1;
