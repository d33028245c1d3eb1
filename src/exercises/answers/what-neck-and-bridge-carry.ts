/** Exercises of the chapter "What neck and bridge carry". */
import { benchBridge, benchRounds } from '../../instrument/bench-bridge.ts';
import { formatTotal } from '../../instrument/format.ts';
import type { State, Units } from '../../instrument/schema.ts';
import { bridgeBalance, millimetres, turnsToLevel } from '../../physics/index.ts';
import type { Answers } from '../types.ts';

const { stringArm, springArm, rate, count, pitch } = benchBridge;
const { before, after } = benchRounds;
const springs = bridgeBalance({ ...benchBridge, pull: before }).springForce;
const turns = turnsToLevel({ ...benchBridge, from: before, to: after });

/** A whole tone down, per cent. */
const DOWN = 100 * (2 ** (-2 / 6) - 1);

const newtons = (value: number): string => `${value.toFixed(0)}\u00a0N`;
/** A sheet in SI, whatever the reader's units: it copies no instrument. */
const difference = after - before;
/** In newtons too, from which the sheet goes on: rounded pounds would give another difference. */
const inBoth = (value: number, units: Units): string =>
  units === 'mm-N' ? newtons(value) : `${formatTotal(value, units)} or ${newtons(value)}`;
const atSprings = (difference * stringArm) / springArm;

export const answers: Answers = {
  'what-neck-and-bridge-carry.springs': {
    kind: 'numeric',
    quantity: 'force',
    answer: () => springs,
    tolerance: 0.02,
    mistakes: [
      {
        value: () => (before * springArm) / stringArm,
        hint: 'It’s the other way round: the longer arm needs the smaller force.',
      },
      {
        value: () => springs / count,
        hint: 'That’s one spring’s share. The question is about all of them together.',
      },
      {
        value: () => before,
        hint: 'That would be right if both arms were equal. Which pull has the longer one?',
      },
    ],
  },
  'what-neck-and-bridge-carry.down': {
    kind: 'numeric',
    quantity: 'percent',
    answer: () => DOWN,
    tolerance: 0.6,
    mistakes: [
      {
        value: () => 100 * (2 ** (-2 / 12) - 1),
        hint: 'That’s how far the pitch falls. The pull falls with its square.',
      },
      {
        value: () => 100 * (2 ** (2 / 6) - 1),
        hint: 'That’s a whole tone up.',
      },
    ],
  },
  'what-neck-and-bridge-carry.turns': {
    kind: 'numeric',
    quantity: 'number',
    answer: () => turns,
    tolerance: 0.03,
    mistakes: [
      {
        value: () => turns * count,
        hint: 'One spring alone would need that. How many share the new load?',
      },
      {
        value: () => (turns * springArm) / stringArm,
        hint: 'You put the whole change on the springs. But their arm is longer than the strings’.',
      },
      {
        value: () => turnsToLevel({ ...benchBridge, from: 1e-9, to: after }),
        hint: 'That many turns would be for the whole pull. Only the change is new.',
      },
      {
        value: () => turns * millimetres(pitch),
        hint: 'That’s how far the claw moves, in millimetres. How many turns of the screws is it?',
      },
    ],
  },
  'what-neck-and-bridge-carry.order': {
    kind: 'order',
    items: () => [
      { id: 'bridge', label: 'Level the floating bridge', value: 1 },
      { id: 'relief', label: 'Let the neck settle and set the relief', value: 2 },
      { id: 'action', label: 'Set the height of the strings', value: 3 },
      { id: 'intonation', label: 'Set the saddles for intonation', value: 4 },
    ],
    ends: ['first', 'last'],
    hint: 'Each job changes what comes after it. Which one would undo all the others?',
  },
  'what-neck-and-bridge-carry.sheet': {
    kind: 'mistake',
    lines: (s: State) => [
      'The bridge has to float where it did before, so strings and springs have to balance again.',
      `The old set pulls ${inBoth(before, s.units)}, the new one ${inBoth(after, s.units)}.`,
      `In newtons the change is ${newtons(difference)}.`,
      `The springs must pull ${newtons(difference)} more, since forces balance.`,
      `${count} springs of ${(rate / 1000).toFixed(1)}\u00a0N/mm share it, so each opens by ${millimetres(difference / (count * rate)).toFixed(1)}\u00a0mm more.`,
    ],
    wrong: 3,
    hints: [
      'That’s what levelling it means.',
      'Those are the two totals, as given.',
      'It’s the difference of the two, in newtons.',
      undefined,
      'It follows from the line before, by Hooke’s law. The mistake is earlier.',
    ],
    right: () =>
      `It is the moments that balance. The springs pull on the longer arm, so ${newtons(difference)} × ${millimetres(stringArm).toFixed(0)} / ${millimetres(springArm).toFixed(0)} = ${newtons(atSprings)} more is enough. The rest is taken by the knife edge.`,
  },
};
