/** The ladder's data for a spreadsheet. */
import { driftOf, PARTIALS, placeOf, type View } from '../../kit/stiff/stiff.ts';

export function ladderRows({ pull, own, bare, broken }: View): readonly (readonly string[])[] {
  return Array.from({ length: PARTIALS }, (_, i) => {
    const n = i + 1;
    const string = broken ? undefined : own;
    return [
      String(n),
      (n * pull.frequency).toFixed(2),
      string ? (placeOf(string, n) * pull.frequency).toFixed(2) : '',
      string ? driftOf(string, n).toFixed(2) : '',
      bare && !broken ? driftOf(bare, n).toFixed(2) : '',
    ];
  });
}
