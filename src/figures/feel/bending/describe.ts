/** The bend in words: whole, and what a drag has changed. */
import { formatForce, formatLength, spokenGauge, spokenNote } from '../../../instrument/format.ts';
import type { State, Units } from '../../../instrument/schema.ts';
import { limits } from '../../../instrument/limits.ts';
import { formatCents, formatRise, formatTravel, nameOf, onHowMany } from '../../kit/bend/words.ts';
import { compared } from '../../../instrument/pair.ts';
import type { Pushed } from '../../../instrument/pushed.ts';
import { viewOf, type View } from '../../kit/bend/bent.ts';
import { besidePushed, type Beside } from '../../kit/bend/course.ts';

/** Why there is nothing to push, or why it goes no further; empty when all is well. */
export function obstacle({ pull, pushed, beside, room }: View, wanted: number): string {
  if (!pushed) return 'We don’t know how much this string stretches.';
  if (pushed.strain === 'broken' || pull.strain === 'broken')
    return `This bend would break ${beside.length > 0 ? 'a string of the course' : 'the string'}.`;
  if (pushed.travel >= room - 1e-9 && pushed.rise < wanted - 0.5)
    return `The board ends here: ${formatCents(pushed.rise)} is as far as it goes.`;
  return '';
}

const bentText = (
  { travel, push, rise }: Pushed,
  beside: readonly Beside[],
  units: Units,
): string =>
  `a travel of ${formatTravel(travel, units)} and a push of ${formatForce(push, units)}${onHowMany(beside)} raise it by ${formatRise(rise)}`;

/** How far the others of the course rise, where that is not as far. */
const besideText = ({ pushed, beside, fret, capo }: View): string =>
  beside
    .flatMap((each) => {
      const its = pushed && besidePushed(each, fret - capo, pushed.travel);
      return its && Math.abs(its.rise - pushed.rise) >= 1
        ? [` The ${spokenNote(each.pull.note)} string beside it rises by ${formatCents(its.rise)}.`]
        : [];
    })
    .join('');

/** How long what sounds of it is. */
const longText = ({ pull, capo }: Pick<View, 'pull' | 'capo'>, units: Units): string =>
  `${formatLength(pull.speakingLength, units)} ${capo > 0 ? 'from the capo to the saddle' : 'long'}`;

export function describe(state: State): string {
  const view = viewOf(state);
  const { pull, pushed, beside, ghost, fret } = view;
  const { units } = state;
  const string = `the ${spokenNote(pull.note)} string, ${spokenGauge(pull.gauge, units)}, ${longText(view, units)}`;
  const start = `The neck of ${nameOf(state.mine.name)} from above${state.mine.capo ? ` with a capo at fret ${state.mine.capo}` : ''}, ${string}, pushed aside at fret ${fret}${beside.length > 0 ? ' with its whole course' : ''}.`;
  const hindered = obstacle(view, state.bend.rise);
  if (!pushed || /break/.test(hindered)) return `${start} ${hindered}`;
  const other =
    ghost && ghost.pushed.strain !== 'broken'
      ? ` On ${compared(state).other.name || 'the other instrument'}, ${longText(ghost, units)} with ${spokenGauge(ghost.pull.gauge, units)}, ${bentText(ghost.pushed, ghost.beside, units)}.`
      : '';
  return `${start} There ${bentText(pushed, beside, units)}.${besideText(view)} ${hindered}${other}`.replace(
    / {2,}/g,
    ' ',
  );
}

export function describeShort(state: State): string {
  const view = viewOf(state);
  const hindered = obstacle(view, state.bend.rise);
  const { pushed, beside, fret } = view;
  if (!pushed || hindered) return hindered;
  return `At fret ${fret}, ${bentText(pushed, beside, state.units)}.${besideText(view)}`;
}

/** The travel in words that fit a field and a handle: no number where the bend would break the string. */
export function travelText({ pull, pushed }: View, units: Units): string {
  if (!pushed) return 'not known';
  return pushed.strain === 'broken' || pull.strain === 'broken'
    ? 'breaks'
    : formatTravel(pushed.travel, units);
}

/** The rise that is reached, in cents, without the unit. */
export const riseText = (state: State): string =>
  (viewOf(state).pushed?.rise ?? state.bend.rise).toFixed(0);

export const { rise: riseLimits, fret: fretLimits } = limits;
