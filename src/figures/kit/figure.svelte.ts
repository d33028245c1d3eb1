/** What every figure begins with. */
import { onMount } from 'svelte';
import type { State, Units } from '../../instrument/schema.ts';
import { Follower } from './follower.svelte.ts';

export class Figure extends Follower {
  /** In which the figure tells its numbers; derived, so that a step of a drag that leaves them alone wakes nobody. */
  readonly units: Units = $derived(this.told.units);
  /** What is spoken once a drag has ended; `Said` speaks it. */
  said = $state.raw('');
  #describe: (state: State) => string;

  constructor(describe: (state: State) => string) {
    super();
    this.#describe = describe;
  }

  /** Settles what was dragged, and says what has come of it. */
  readonly done = (): void => {
    this.commit();
    this.said = this.#describe(this.state);
  };

  /** The same for what was typed or picked. */
  readonly take = (next: State): void => {
    this.set(next);
    this.done();
  };
}

/**
 * The way to the store of the figure that calls it while it is made. The store is opened once the figure is on the page. Its
 * `watch` goes on what it draws, so that it rests while that is out of sight. `describe` is what `done` and `take` say.
 */
export function useFigure(describe: (state: State) => string = () => ''): Figure {
  const figure = new Figure(describe);
  onMount(() => void figure.open());
  return figure;
}
