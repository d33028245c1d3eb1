/** The door of who comes back: it leads to the chapter that was left. */
import { NAME, place } from './reading-place.ts';

const left = place(localStorage.getItem(NAME));
if (left)
  for (const door of document.querySelectorAll<HTMLAnchorElement>('[data-read-on]')) {
    door.href = door.href.replace(/[^/]+\/$/, `${left.id}/`);
    const title = door.querySelector('.title');
    if (title) title.textContent = `Go on with chapter ${left.number}`;
  }
