// Opens the search by its button or the key "/". All that it needs comes only then.
const dialog = document.querySelector<HTMLDialogElement>('dialog.search');

function open(): void {
  if (!dialog || dialog.open) return;
  dialog.showModal();
  import('./open.ts').then(
    ({ begin }) => begin(),
    () => {
      const said = dialog.querySelector('.said');
      if (said) said.textContent = 'The search didn’t load. Close it and open it again.';
    },
  );
}

const writes = (target: EventTarget | null) =>
  target instanceof HTMLElement &&
  (target.isContentEditable || target.matches('input, textarea, select'));

document.querySelector('.search-button')?.addEventListener('click', open);
document.addEventListener('keydown', (event) => {
  if (event.key !== '/' || event.ctrlKey || event.metaKey || event.altKey || writes(event.target))
    return;
  event.preventDefault();
  open();
});
