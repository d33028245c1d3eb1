/** Puts it before the text, where nothing in sight moves for it: on a desk beside the title's cells, on a phone below them. */
import { mount } from 'svelte';
import ChapterScope from './ChapterScope.svelte';

export function stand(chapter: string): void {
  const isWide = matchMedia('(min-width: 64rem)').matches;
  const target = document.querySelector(isWide ? '.title-block .words' : '.title-block');
  if (target) mount(ChapterScope, { target, props: { chapter } });
}
