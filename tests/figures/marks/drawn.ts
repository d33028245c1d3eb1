/** Reads a figure's drawing back out of its HTML, as the server renders it: where its marks stand, and what they say. */
import type { Element, Root, RootContent } from 'hast';
import { fromHtml } from 'hast-util-from-html';
import type { Component } from 'svelte';
import { render } from 'svelte/server';

import { held } from '../../../src/instrument/store.svelte.ts';
import type { State } from '../../../src/instrument/schema.ts';

export type Point = readonly [x: number, y: number];
export interface Drawn {
  readonly html: string;
  readonly root: Root;
}

/** A figure as a page shows it whose instrument, trial and units are this state's. */
export function drawnWith(state: State, figure: Component<never>, props: object = {}): Drawn {
  const { state: shown, settled } = held;
  try {
    held.state = held.settled = state;
    return drawn(figure, props);
  } finally {
    held.state = shown;
    held.settled = settled;
  }
}

/** A part of a figure that is given all it draws. */
export function drawn(part: Component<never>, props: object): Drawn {
  const html = render(part as Component, { props }).body;
  return { html, root: fromHtml(html, { fragment: true, space: 'html' }) };
}

type Node = Root | Element;
function childrenOf(node: Node): Element[] {
  const children: readonly RootContent[] = node.children;
  return children.filter((child) => child.type === 'element');
}

/** Every element within that is accepted, in the order of the page. */
export const all = (node: Node, accept: (element: Element) => boolean): Element[] =>
  childrenOf(node).flatMap((child) => [...(accept(child) ? [child] : []), ...all(child, accept)]);

export const attribute = (element: Element, name: string): string => {
  const value = element.properties[name];
  return Array.isArray(value) ? value.join(' ') : String(value ?? '');
};
export const numberOf = (element: Element, name: string): number => {
  const value = attribute(element, name);
  if (value === '' || !Number.isFinite(Number(value)))
    throw new Error(`<${element.tagName}> has ${name}="${value}": no number`);
  return Number(value);
};
export const hasClass = (element: Element, name: string): boolean =>
  attribute(element, 'className').split(' ').includes(name);

/** What has a class, of one kind of element. */
export const marks = (node: Node, selector: `${string}.${string}`): Element[] => {
  const [tag, name = ''] = selector.split('.');
  return all(node, (e) => e.tagName === tag && hasClass(e, name));
};
export const parts = (node: Node, name: string): Element[] =>
  all(node, (e) => attribute(e, 'dataPart') === name);
export const only = <T>(found: readonly T[]): T => {
  const [first] = found;
  if (first === undefined || found.length > 1)
    throw new Error(`${found.length} marks; expected one`);
  return first;
};

export const textOf = (node: Node): string =>
  node.children
    .map((c) => (c.type === 'text' ? c.value : c.type === 'element' ? textOf(c) : ''))
    .join('');

const commands: Readonly<Record<string, number>> = {
  m: 2,
  l: 2,
  h: 1,
  v: 1,
  a: 7,
  c: 6,
  s: 4,
  q: 4,
  t: 2,
  z: 0,
};

/** The lines of a path, each the points that it goes through; of an arc or a curve its end. */
export function linesOf(element: Element): Point[][] {
  const lines: Point[][] = [];
  let [x, y] = [0, 0];
  for (const [, letter = '', rest = ''] of attribute(element, 'd').matchAll(
    /([mlhvacsqtz])([^mlhvacsqtz]*)/gi,
  )) {
    const kind = letter.toLowerCase();
    const numbers = (rest.match(/-?(?:\d+\.?\d*|\.\d+)(?:e-?\d+)?/gi) ?? []).map(Number);
    const size = commands[kind] ?? 0;
    if (size > 0 && (numbers.length === 0 || numbers.length % size > 0))
      throw new Error(`path cannot be read at "${letter}${rest}"`);
    if (kind === 'z') [x, y] = lines.at(-1)?.[0] ?? [x, y];
    for (let i = 0; i < numbers.length; i += size) {
      const end = numbers.slice(i, i + size);
      const [fromX, fromY] = letter === kind ? [x, y] : [0, 0];
      if (kind === 'h') x = fromX + (end[0] ?? 0);
      else if (kind === 'v') y = fromY + (end[0] ?? 0);
      else [x, y] = [fromX + (end.at(-2) ?? 0), fromY + (end.at(-1) ?? 0)];
      if (kind === 'm' && i === 0) lines.push([]);
      lines.at(-1)?.push([x, y]);
    }
  }
  return lines;
}
