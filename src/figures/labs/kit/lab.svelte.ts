/** What every lab on one string begins with: the reader's instrument, the string in hand, and its readings. */
import { onMount } from 'svelte';
import { useFigure } from '../../kit/figure.svelte.ts';
import type { Figure } from '../../kit/figure.svelte.ts';
import { Rows } from './rows.svelte.ts';
import { labString } from './strings.ts';

export class Lab {
  readonly figure: Figure;
  readonly rows: Rows;
  /** Which string of the instrument is in hand */
  index = $state.raw(0);
  readonly mine = $derived.by(() => this.figure.told.mine);
  readonly string = $derived.by(() => labString(this.mine, this.index, this.figure.units));
  /** What was read of it */
  readonly readings = $derived.by(() => this.rows.of(this.string.key));
  readonly settings = $derived.by(() => this.rows.settings);

  constructor(figure: Figure, lab: string) {
    this.figure = figure;
    this.rows = new Rows(lab);
  }

  pick(index: number): void {
    this.index = index;
  }
}

/** The lab of the component that calls it while it is made; it leaves the book with it. */
export function useLab(name: string): Lab {
  const lab = new Lab(useFigure(), name);
  onMount(() => lab.rows.open());
  return lab;
}
