/** Puts it into the text before the first thing that lies below what is in sight, so that nothing moves that somebody reads. */
import { mount } from 'svelte';
import ChapterScope from './ChapterScope.svelte';

/** Never right behind a heading. A page that comes back scrolled gets it at the head: browsers keep what is in sight where it is. */
function anchorIn(text: Element): Element | undefined {
  const parts = [...text.children].filter((part) => part.getBoundingClientRect().height > 0);
  if (scrollY > innerHeight) return parts[0];
  return parts.find(
    (part, i) =>
      part.getBoundingClientRect().top >= innerHeight && !parts[i - 1]?.matches('h2, h3'),
  );
}

export function stand(chapter: string): void {
  const target = document.querySelector('.prose');
  if (!target) return;
  const anchor = anchorIn(target);
  mount(ChapterScope, { target, ...(anchor && { anchor }), props: { chapter } });
}
