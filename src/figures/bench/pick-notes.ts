/** What is to be said of one pick, beside it on its neck and on the sheet: how its weight is known, that no lighter one is to be had, why its kind changed. */
import type { PlannedString } from '../../instrument/plan.ts';
import { isBetween } from '../../instrument/typical.ts';
import { swapText } from './swap-words.ts';

export function pickNotes({ pull, pinned, best, swap }: PlannedString): readonly string[] {
  if (!pull) return [];
  const { gauge } = pull;
  const end = !pinned && best?.drawerEnd;
  return [
    ...(isBetween(gauge)
      ? [gauge.kind === 'wound' ? 'worked out from a typical make' : 'worked out from its diameter']
      : []),
    ...(end ? [`the drawer’s ${end}`] : []),
    ...(swap ? [swapText(swap)] : []),
  ];
}
