// A figure whose script does not arrive stays as it was drawn, and a line beside it offers to fetch the script again.
type Island = HTMLElement & { readonly start: () => void };

const template = document.querySelector<HTMLTemplateElement>('#not-arrived');
const failed = new Set<Island>();
/** By what they stand behind, or in: numbers of one paragraph share a line. */
const lines = new Map<Element, Element>();
const placeOf = (island: Island): Element => island.closest('p, li, table') ?? island;

/** Takes what has no script out of the way of hands and keys, or gives it back. */
function still(island: Island, is: boolean): void {
  island.toggleAttribute('data-still', is);
  for (const each of island.querySelectorAll<HTMLElement>('button, input, select, [role=slider]'))
    // A number in a sentence has to be read all the same.
    if (each.matches('p *, td *')) each.tabIndex = is ? -1 : 0;
    else each.inert = is;
}

function arrived(island: Island): void {
  still(island, false);
  failed.delete(island);
  const place = placeOf(island);
  if ([...failed].some((other) => placeOf(other) === place)) return;
  const line = lines.get(place);
  const focused = line?.contains(document.activeElement);
  line?.remove();
  lines.delete(place);
  if (focused) island.querySelector<HTMLElement>('[tabindex], button, input')?.focus();
}

document.addEventListener('astro:hydration-error', ({ target }) => {
  const island = target as Island;
  const place = placeOf(island);
  const again = failed.has(island);
  const line = lines.get(place) ?? template?.content.firstElementChild?.cloneNode(true);
  if (!(line instanceof Element)) return;
  const button = line.querySelector('button');
  // As long as a page stands, a browser may hold on to a file's having been missing.
  if (again && button) {
    button.textContent = 'Load the page again';
    button.dataset.reloads = '';
  }
  if (!again) {
    failed.add(island);
    still(island, true);
    island.addEventListener('astro:hydrate', () => arrived(island), { once: true });
  }
  if (lines.has(place)) return;
  lines.set(place, line);
  place[place.matches('li') ? 'append' : 'after'](line);
  button?.addEventListener('click', () => {
    if ('reloads' in button.dataset) location.reload();
    else for (const each of failed) each.start();
  });
});
