/** What the home page says first, of the saddle as it stands. */
import { formatDifference, formatLength, formatShare } from '../../../instrument/format.ts';
import { pullChange } from '../../../instrument/length-law.ts';
import { pullsOf, type Pull } from '../../../instrument/pulls.ts';
import type { Instrument, Units } from '../../../instrument/schema.ts';
import { felt, INCH, type Felt, type Lines } from '../../../physics/index.ts';

export interface Headline {
  readonly claim: string;
  readonly question: string;
  readonly answer: string;
}

/** m; the next hundredth of an inch, or tenth of a millimetre, is another length */
const SAME = 5e-5;

const answers: Readonly<Record<Felt, string>> = {
  'you’d be guessing': 'You’d be guessing.',
  'some hands would tell': 'Some hands would.',
  'nearly any hand would tell': 'Nearly any hand would.',
};

const amountOf = (metres: number, units: Units): string =>
  units === 'in-lb' && Math.abs(metres - INCH) < SAME ? 'one inch' : formatLength(metres, units);

/** Without its sign, and from one per cent on without a decimal: it is said, not measured. */
const perCent = (change: number): string => {
  const size = Math.abs(change);
  return size < 0.01 ? formatDifference(size).replace('+', '') : formatShare(size);
};

/** `length`: of the treble side, in m; `lines`: of the felt band of a pull; `pulls`: of the strings at that length. */
export function headline(
  mine: Instrument,
  length: number,
  units: Units,
  lines: Lines,
  pulls: readonly Pull[] = pullsOf(mine, length / mine.scale.treble),
): Headline {
  const by = length - mine.scale.treble;
  if (Math.abs(by) < SAME)
    return {
      claim: 'Same strings, same length: the same pull.',
      question: 'How far before your hand notices?',
      answer: `A hand can just tell ${formatShare(lines.low.value)} of pull.`,
    };
  const change = pullChange(length / mine.scale.treble);
  const way = by > 0 ? 'longer' : 'shorter';
  const start = `Same strings, ${amountOf(Math.abs(by), units)} ${way}`;
  const broken = pulls.filter(({ strain }) => strain === 'broken').length;
  if (broken > 0)
    return {
      claim: `${start}: too tight.`,
      question: broken === 1 ? 'One string would break.' : `${broken} strings would break.`,
      answer: 'Drag the saddle back.',
    };
  return {
    claim: `${start}: ${perCent(change)} ${by > 0 ? 'more' : 'less'} pull.`,
    question: 'Would your hand notice?',
    answer: answers[felt(change, 'pull', lines)],
  };
}
