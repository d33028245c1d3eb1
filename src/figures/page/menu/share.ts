/** Addresses and code by which a figure is taken elsewhere, each at the state in which it stands. */
import { encode } from '../../../instrument/link.ts';
import type { State } from '../../../instrument/schema.ts';

/** `page` is the address of the page that holds the figure, whatever stands after its #. */
export function linkTo(page: string, figure: string, state: State): string {
  return `${page.replace(/#.*/, '')}#${encode(state)}/at-${figure}`;
}

export interface Frame {
  /** Address of the site's home, with a slash at the end */
  home: string;
  figure: string;
  state: State;
  /** With its fields and buttons, or the drawing alone with its handles */
  controls: boolean;
}

/** Address of the page that holds nothing but the figure. */
export function frameAddress({ home, figure, state, controls }: Frame): string {
  return `${home}embed/${figure}/${controls ? '' : '?bare'}#${encode(state)}`;
}

const escaped = (text: string): string =>
  text.replace(/[&<>"]/g, (sign) => `&#${sign.codePointAt(0) ?? 0};`);

/** What another page writes to show the figure in a frame; `width` and `height` in px. */
export function frameCode(
  address: string,
  title: string,
  { width, height }: { width: number; height: number },
): string {
  return (
    `<iframe src="${escaped(address)}" title="${escaped(title)}, from Speaking Length" ` +
    `width="${width}" height="${height}" loading="lazy" allow="clipboard-write; fullscreen" ` +
    `style="border: 0; max-width: 100%"></iframe>`
  );
}
