import type { Felt } from '../../../physics/index.ts';

/** What a state of the felt band says as long as only the pull is judged; `line` is the band's inner one, relative. */
export const feltWords = (state: Felt, line: number): string =>
  state === 'you’d be guessing' ? `pull within ${Number((100 * line).toFixed(1))}\u00a0%` : state;

/** The same in a column of the drawing, which is no wider. */
export const feltShort = (state: Felt, line: number): string =>
  feltWords(state, line).replace(' would tell', '');
