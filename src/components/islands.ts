// A figure whose script does not arrive stays as it was drawn, and a line behind it offers to fetch the script again.
// Every page brings this before anything moves: it is kept small.
type Island = HTMLElement & { readonly start: () => void };

const template = document.querySelector<HTMLTemplateElement>('#not-arrived');

/** Takes what has no script out of the way of hands and keys (NotArrived.astro has the rest), or gives it back. */
function hold(island: Island, is: boolean): void {
  island.toggleAttribute('data-still', is);
  for (const each of island.querySelectorAll<HTMLElement>('button, input, select, [tabindex]'))
    each.tabIndex = is ? -1 : 0;
}

document.addEventListener('astro:hydration-error', ({ target }) => {
  const island = target as Island;
  // Numbers of one paragraph share a line.
  const place = island.closest('p, ul, ol, table') ?? island;
  const lineOf = () => {
    const next = place.nextElementSibling;
    return next?.matches('.not-arrived') ? next : undefined;
  };
  if (!lineOf() && template) place.after(template.content.cloneNode(true));
  const button = lineOf()?.querySelector('button');
  if (!button) return;
  if (island.matches('[data-still]')) {
    // As long as a page stands, a browser may hold on to a file's having been missing.
    button.textContent = 'Load the page again';
    button.onclick = () => location.reload();
    return;
  }
  button.onclick = () => {
    for (const each of document.querySelectorAll<Island>('[data-still]')) each.start();
  };
  hold(island, true);
  island.addEventListener('astro:hydrate', () => {
    hold(island, false);
    if (!place.querySelector('[data-still]')) lineOf()?.remove();
  });
});
