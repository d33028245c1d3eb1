/**
 * What brings itself in when it is wanted, so that a page loads none of it before: each of the modules named here puts itself into
 * its place, and whatever can make a state that needs one loads it first.
 */
import type { Construction, Match, Wanted } from '../physics/index.ts';
import type { Gauge, State } from './schema.ts';

/** The nearest of a drawer to what is wanted. */
export type Matching = (
  wanted: Wanted & { readonly drawer: readonly Construction[] },
) => Match | undefined;

interface Brought {
  /** `typical.ts`: the make of a gauge that no drawer has */
  make?: (gauge: Gauge) => Construction;
  /**
   * `own-picks.ts`: picks where not the shipped drawer alone serves. Undefined where nothing holds; false where the shipped drawer
   * serves after all.
   */
  pick?: (
    state: State,
    asked: Wanted,
    kind: Gauge['kind'] | undefined,
    match: Matching,
  ) => Match | undefined | false;
  /** `own-picks.ts`: what a link tells of the reader's own strings */
  fields?: (state: State) => readonly string[];
}

export const brought: Brought = {};
