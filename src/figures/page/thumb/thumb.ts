/** Puts the bar in thumb's reach on the page, once. */
import { mount } from 'svelte';
import ThumbBar from './ThumbBar.svelte';

export function show(props: {
  readonly bench: string;
  readonly from: number;
  readonly left: HTMLElement | undefined;
  readonly hear: (then: (word: HTMLElement) => void) => void;
}): void {
  mount(ThumbBar, { target: document.body, props });
}
