/** The slot in words. */
import { formatDifference, formatGauge, formatTotal } from '../../../instrument/format.ts';
import { formatThickness } from '../../../instrument/thickness-text.ts';
import type { State, Units } from '../../../instrument/schema.ts';
import { triedOf } from '../../trial.ts';
import { loadOf } from './load.ts';
import { seatOf, slotFor } from './slot.ts';

const thickness = (value: number, units: Units): string =>
  units === 'in-lb' && value.toFixed(1) === '1.0'
    ? '1.0\u00a0thousandth'
    : formatThickness(value, units);

export function verdictOf(own: number, gauge: number, units: Units): string {
  const { lie, raised, play } = seatOf(slotFor(own), gauge);
  switch (lie) {
    case 'binds':
      return `It binds: the walls hold it ${thickness(raised, units)} above the bottom. It will ping and stick when you tune it. Have the slot filed wider.`;
    case 'sits':
      return `It sits on the bottom, with ${play < 0.05 ? 'nothing' : thickness(play, units)} to spare.`;
    case 'lies loose':
      return `It’s loose, with ${thickness(play, units)} of play: it may buzz, or shift when you bend it.`;
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
  const { units } = state;
  return `A nut slot from its end, cut for gauge ${formatGauge(own.gauge, units)}, with gauge ${formatGauge(tried.gauge, units)} in it. ${verdictOf(own.gauge.gauge, tried.gauge.gauge, units)} ${loadText(state)}`;
}
