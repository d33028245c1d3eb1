/**
 * Every number that stands in prose or in an equation and follows the reader's state, by name: `<Q k="trial.pull" />` in a
 * chapter, `\live{eq.T}` in an equation. Worked out from the same physics as the figures; rendered at build for the
 * workshop's instrument.
 */
import { initialState } from '../instrument/workshop.ts';
import type { Quantity } from './quantities/common.ts';

type Named = Readonly<Record<string, Quantity>>;

/** All files, for the build; in the browser a chapter loads the common one and its own. */
const files = import.meta.glob<{ quantities: Named }>('./quantities/*.ts', { eager: true });

const fileOf = (name: string): Named => files[`./quantities/${name}.ts`]?.quantities ?? {};

/** What the page of a chapter can name; without a chapter, what every page can. */
export const quantitiesOf = (chapter?: string): Named => ({
  ...fileOf('common'),
  ...(chapter === undefined ? {} : fileOf(chapter)),
});

/** What a chapter alone can name; of 'common', what every page can. */
export const ownQuantitiesOf = fileOf;

/**
 * What a quantity reads before the reader acts. Throws RangeError for a name that the chapter's page does not load: its number
 * would never follow.
 */
export function liveText(key: string, chapter?: string): string {
  const known = quantitiesOf(chapter);
  const quantity = known[key];
  if (!quantity)
    throw new RangeError(
      `key is "${key}" in ${chapter ?? 'a page that is no chapter'}; permitted: ${Object.keys(known).join(', ')}`,
    );
  return quantity(initialState);
}
