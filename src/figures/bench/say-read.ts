/** What a saved sheet brought, in words: what was measured beside what the sheet said, and what could not be read. */
import { formatForce } from '../../instrument/format.ts';
import { judgedPulls } from '../../instrument/judged.ts';
import { planOf } from '../../instrument/plan.ts';
import type { Units } from '../../instrument/schema.ts';
import type { SheetRead } from '../../instrument/sheet-read.ts';

export function sayRead({ state, measured, notes, problems }: SheetRead, units: Units): string {
  if (!state) return problems.join(' ');
  const plan = planOf(state);
  const judged = judgedPulls(state);
  const lines = plan.strings.flatMap(({ pull }, i) => {
    const found = measured[i];
    const note = notes[i] ? ` (${notes[i]})` : '';
    if (found === undefined) return note ? [`String ${i + 1}${note}.`] : [];
    if (!pull) return [];
    const doubt = judged[i]?.doubt ?? 0;
    const off = Math.abs(found - pull.tension);
    const verdict =
      off <= 2 * doubt
        ? 'they agree, as far as the prediction can tell'
        : 'they differ by more than the prediction can be off';
    return [
      `String ${i + 1}: measured ${formatForce(found, units)}, predicted ${formatForce(pull.tension, units)}; ${verdict}${note}.`,
    ];
  });
  return ['The saved sheet is open.', ...lines, ...problems].join(' ');
}
