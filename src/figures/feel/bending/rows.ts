/** The bend's data for a spreadsheet: travel and push for every quarter of a semitone. */
import { limits } from '../../../instrument/limits.ts';
import { millimetres } from '../../../physics/index.ts';
import type { Pushed } from '../../../instrument/pushed.ts';
import type { View } from '../../kit/bend/bent.ts';
import { courseTo } from '../../kit/bend/course.ts';

const STEP = 25;

const cells = (pushed: Pushed | undefined): readonly string[] =>
  !pushed || pushed.strain === 'broken'
    ? ['', '']
    : [millimetres(pushed.travel).toFixed(2), pushed.push.toFixed(2)];

export function bendRows({
  pull,
  beside,
  fret,
  capo,
  room,
  ghost,
}: View): readonly (readonly string[])[] {
  const { min, max } = limits.rise;
  return Array.from({ length: (max - min) / STEP + 1 }, (_, i) => {
    const rise = min + i * STEP;
    const own = courseTo(pull, beside, fret - capo, rise, room);
    const there = ghost && courseTo(ghost.pull, ghost.beside, ghost.fret - ghost.capo, rise);
    const reached = own && own.rise >= rise - 0.05 ? own : undefined;
    return [String(rise), ...cells(reached), ...cells(there)];
  });
}
