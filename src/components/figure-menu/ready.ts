// Opens a figure's menu, lays a chapter out for paper, and brings the figure that a link names into sight. What a press needs comes
// with the first.
const buttonOf = (target: EventTarget | null) =>
  target instanceof Element
    ? target.closest<HTMLButtonElement>('.figure-menu, [data-paper-as]')
    : null;

document.addEventListener('click', (event) => {
  const button = buttonOf(event.target);
  if (!button) return;
  (button.dataset.paperAs
    ? import('../print/press.ts').then(({ press }) => press(button))
    : import('../../figures/page/menu/toggle.ts').then(({ toggle }) => toggle(button))
  ).catch(() => (button.textContent = 'It didn’t load. Press again.'));
});

// The address names the reader's state before its last part, so that it can't be an anchor.
const named = /\/at-([a-z0-9-]+)$/.exec(window.location.hash)?.[1];
if (named) document.getElementById(named)?.scrollIntoView();
