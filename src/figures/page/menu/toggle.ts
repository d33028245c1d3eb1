/** Opens and closes the menu of a figure: the panel below its title. */
import { mount, unmount } from 'svelte';
import FigureMenu from './FigureMenu.svelte';

const open = new WeakMap<HTMLButtonElement, () => void>();

/** `button` stands in the head of the figure whose menu it opens. */
export function toggle(button: HTMLButtonElement): void {
  const close = open.get(button);
  if (close) return close();
  const figure = button.closest<HTMLElement>('figure');
  const panel = figure?.querySelector<HTMLElement>('.figure-panel');
  if (!figure || !panel) return;
  const menu = mount(FigureMenu, { target: panel, props: { figure, onclose: () => shut() } });
  button.setAttribute('aria-expanded', 'true');
  const shut = (): void => {
    open.delete(button);
    button.setAttribute('aria-expanded', 'false');
    button.focus();
    void unmount(menu);
  };
  open.set(button, shut);
}
