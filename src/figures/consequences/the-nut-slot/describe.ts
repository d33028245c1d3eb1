/** The slot in words. */
import { formatDifference, formatGauge, formatTotal } from '../../../instrument/format.ts';
import type { State } from '../../../instrument/schema.ts';
import { triedOf } from '../../trial.ts';
import { loadOf } from './load.ts';
import { seatOf, slotFor } from './slot.ts';

const thousandths = (value: number): string =>
  `${value.toFixed(1)}\u00a0${value.toFixed(1) === '1.0' ? 'thousandth' : 'thousandths'}`;

export function verdictOf(own: number, gauge: number): string {
  const { lie, raised, play } = seatOf(slotFor(own), gauge);
  switch (lie) {
    case 'binds':
      return `It binds: the walls hold it ${thousandths(raised)} above the bottom. It will ping and stick when you tune it. Have the slot filed wider.`;
    case 'sits':
      return `It sits on the bottom, with ${play < 0.05 ? 'nothing' : thousandths(play)} to spare.`;
    case 'lies loose':
      return `It’s loose, with ${thousandths(play)} of play: it may buzz, or shift when you bend it.`;
  }
}

export function loadText(state: State): string {
  const { change, broken, after } = loadOf(state);
  if (broken) return 'It would break at its note.';
  const total = formatTotal(
    after.reduce((a, b) => a + b, 0),
    state.units,
  );
  const same = Math.abs(change.relative) < 5e-4;
  return `All strings together: ${total}, ${same ? 'as before' : formatDifference(change.relative)}.`;
}

export function describe(state: State): string {
  const { own, tried } = triedOf(state);
  return `A nut slot from its end, cut for gauge ${formatGauge(own.gauge)}, with gauge ${formatGauge(tried.gauge)} in it. ${verdictOf(own.gauge.gauge, tried.gauge.gauge)} ${loadText(state)}`;
}
