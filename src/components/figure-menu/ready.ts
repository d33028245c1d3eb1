// Opens a figure's menu, and brings the figure that a link names into sight. What the menu needs comes with the first press.
const buttonOf = (target: EventTarget | null) =>
  target instanceof Element ? target.closest<HTMLButtonElement>('.figure-menu') : null;

document.addEventListener('click', (event) => {
  const button = buttonOf(event.target);
  if (!button) return;
  import('../../figures/page/menu/toggle.ts').then(
    ({ toggle }) => toggle(button),
    () => (button.textContent = 'It did not arrive. Press again.'),
  );
});

// The address names the reader's state before its last part, so that it can't be an anchor.
const named = /\/at-([a-z0-9-]+)$/.exec(window.location.hash)?.[1];
if (named) document.getElementById(named)?.scrollIntoView();
