/** What goes on paper: all that is to be read, a worksheet, or the key to it. */
export type Paper = 'read' | 'worksheet' | 'key';

export const isPaper = (name: string | undefined): name is Paper =>
  name === 'read' || name === 'worksheet' || name === 'key';

/** Prints the page as `paper`; `putBack` takes back what was laid out for that. */
export function printAs(paper: Paper, putBack?: () => void): void {
  document.documentElement.dataset.paper = paper;
  window.addEventListener(
    'afterprint',
    () => {
      delete document.documentElement.dataset.paper;
      putBack?.();
    },
    { once: true },
  );
  window.print();
}
