/** What every figure begins with. */
import { onMount } from 'svelte';
import type { Units } from '../../instrument/schema.ts';
import { Follower } from './follower.svelte.ts';

export class Figure extends Follower {
  /** In which the figure tells its numbers; derived, so that a step of a drag that leaves them alone wakes nobody. */
  readonly units: Units = $derived(this.told.units);
  /** What is spoken once a drag has ended; `Said` speaks it. */
  said = $state.raw('');
}

/**
 * The way to the store of the figure that calls it while it is made. The store is opened once the figure is on the page. Its
 * `watch` goes on what it draws, so that it rests while that is out of sight.
 */
export function useFigure(): Figure {
  const figure = new Figure();
  onMount(() => void figure.open());
  return figure;
}
