/** Puts the bar in thumb's reach on the page, once. */
import { mount } from 'svelte';
import ThumbBar from './ThumbBar.svelte';

export function show(props: {
  readonly bench: string;
  readonly from: number;
  readonly left: HTMLElement | undefined;
}): void {
  mount(ThumbBar, { target: document.body, props });
}
