/** What every guess in a drawing begins with: the reader's instrument, and what was guessed here before. */
import { useFigure, type Figure } from '../figure.svelte.ts';
import { HandGuess } from './guess.svelte.ts';

export interface Guess {
  readonly figure: Figure;
  readonly guess: HandGuess;
}

/** Call it while the figure is made; `id` is the question's, `starts` where the marks stand before anybody has put them. */
export const useGuess = (id: string, starts: readonly number[]): Guess => ({
  figure: useFigure(),
  guess: new HandGuess(id, starts),
});
