/** A figure's drawings as they are laid out: every mark at its place on the sheet, whatever groups and transforms hold it. */
import type { Element, Root } from 'hast';
import type { Component } from 'svelte';

import type { State } from '../../../src/instrument/schema.ts';
import {
  all,
  attribute,
  drawnWith,
  hasClass,
  linesOf,
  only,
  textOf,
  type Drawn,
  type Point,
} from './drawn.ts';

export interface Mark {
  readonly element: Element;
  /** From the drawing down to the mark itself */
  readonly within: readonly Element[];
  /** What it goes through; the corners of a rectangle, the ends of two diameters of a circle, where a text is anchored */
  readonly lines: readonly (readonly Point[])[];
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly text: string;
}

export interface Knob {
  readonly name: string;
  readonly x: number;
  readonly y: number;
  readonly label: string;
  readonly text: string;
  readonly min: number;
  readonly now: number;
  readonly max: number;
  readonly orientation: string;
}

export interface Sheet {
  readonly width: number;
  readonly height: number;
  readonly summary: string;
  readonly marks: readonly Mark[];
  readonly knobs: readonly Knob[];
  /** Marks by tag, class or `data-part`, of their own or of what holds them: 'line', 'line.tick', '[neck-band]' */
  readonly of: (selector: string) => readonly Mark[];
  readonly one: (selector: string) => Mark;
  readonly texts: readonly string[];
  /** Where a text begins, ends or has its middle */
  readonly said: (text: string | RegExp) => Mark;
}

type Matrix = readonly [number, number, number, number, number, number];
const still: Matrix = [1, 0, 0, 1, 0, 0];

const times = (m: Matrix, n: Matrix): Matrix => [
  m[0] * n[0] + m[2] * n[1],
  m[1] * n[0] + m[3] * n[1],
  m[0] * n[2] + m[2] * n[3],
  m[1] * n[2] + m[3] * n[3],
  m[0] * n[4] + m[2] * n[5] + m[4],
  m[1] * n[4] + m[3] * n[5] + m[5],
];
const at = (m: Matrix, [x, y]: Point): Point => [
  m[0] * x + m[2] * y + m[4],
  m[1] * x + m[3] * y + m[5],
];

function turned(degrees: number, x = 0, y = 0): Matrix {
  const [c, s] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  return times(times([1, 0, 0, 1, x, y], [c, s, -s, c, 0, 0]), [1, 0, 0, 1, -x, -y]);
}

function matrixOf(element: Element): Matrix {
  let whole = still;
  for (const [, kind, list = ''] of attribute(element, 'transform').matchAll(/(\w+)\(([^)]*)\)/g)) {
    const numbers = list
      .trim()
      .split(/[\s,]+/)
      .map(Number);
    if (numbers.some((n) => !Number.isFinite(n))) throw new Error(`transform "${kind}(${list})"`);
    const [a = 0, b, c] = numbers;
    const step: Matrix | undefined =
      kind === 'translate'
        ? [1, 0, 0, 1, a, b ?? 0]
        : kind === 'scale'
          ? [a, 0, 0, b ?? a, 0, 0]
          : kind === 'rotate'
            ? turned(a, b, c)
            : undefined;
    if (!step) throw new Error(`transform "${kind}" cannot be read`);
    whole = times(whole, step);
  }
  return whole;
}

const number = (element: Element, name: string): number => Number(attribute(element, name) || 0);

function linesWithin(element: Element): readonly (readonly Point[])[] | undefined {
  const of = (name: string): number => number(element, name);
  switch (element.tagName) {
    case 'line':
      return [
        [
          [of('x1'), of('y1')],
          [of('x2'), of('y2')],
        ],
      ];
    case 'rect': {
      const [x, y, w, h] = [of('x'), of('y'), of('width'), of('height')];
      return [
        [
          [x, y],
          [x + w, y],
          [x + w, y + h],
          [x, y + h],
        ],
      ];
    }
    case 'circle':
    case 'ellipse': {
      const [x, y] = [of('cx'), of('cy')];
      const [rx, ry] = element.tagName === 'circle' ? [of('r'), of('r')] : [of('rx'), of('ry')];
      return [
        [
          [x - rx, y],
          [x + rx, y],
        ],
        [
          [x, y - ry],
          [x, y + ry],
        ],
      ];
    }
    case 'polygon':
    case 'polyline': {
      const flat = attribute(element, 'points')
        .trim()
        .split(/[\s,]+/)
        .map(Number);
      return [flat.flatMap((x, i): Point[] => (i % 2 ? [] : [[x, flat[i + 1] ?? NaN]]))];
    }
    case 'path':
      return linesOf(element);
    case 'text':
      return [[[of('x'), of('y')]]];
    default:
      return undefined;
  }
}

const unseen: ReadonlySet<string> = new Set(['defs', 'clipPath', 'pattern', 'mask', 'symbol']);

function marksIn(
  root: Root | Element,
  element: Element,
  held: readonly Element[],
  m: Matrix,
): Mark[] {
  if (unseen.has(element.tagName)) return [];
  const within = [...held, element];
  const here = times(m, matrixOf(element));
  if (element.tagName === 'use') {
    const id = attribute(element, 'href').slice(1);
    const used = only(all(root, (e) => attribute(e, 'id') === id));
    const moved: Matrix = [1, 0, 0, 1, number(element, 'x'), number(element, 'y')];
    return marksIn(root, used, within, times(here, moved));
  }
  const lines = linesWithin(element);
  if (!lines)
    return element.children.flatMap((child) =>
      child.type === 'element' ? marksIn(root, child, within, here) : [],
    );
  const placed = lines.map((line) => line.map((point) => at(here, point)));
  const [xs, ys] = [0, 1].map((axis) => placed.flatMap((line) => line.map((p) => p[axis] ?? NaN)));
  return [
    {
      element,
      within,
      lines: placed,
      left: Math.min(...(xs ?? [])),
      right: Math.max(...(xs ?? [])),
      top: Math.min(...(ys ?? [])),
      bottom: Math.max(...(ys ?? [])),
      text:
        element.tagName === 'text'
          ? textOf(element)
              .trim()
              .replace(/\s*\n\s*/g, ' ')
          : '',
    },
  ];
}

const matches = (selector: string) => {
  const [, tag, name, part] = /^([a-z]*)(?:\.([\w-]+))?(?:\[([\w-]+)\])?$/i.exec(selector) ?? [];
  return ({ element, within }: Mark): boolean =>
    (!tag || element.tagName === tag) &&
    (!name || within.some((e) => hasClass(e, name))) &&
    (!part || within.some((e) => attribute(e, 'dataPart') === part));
};

export function knobsOf(root: Root | Element, width: number): Knob[] {
  return all(root, (e) => attribute(e, 'role') === 'slider').map((e) => {
    const [, x = 'NaN', y = 'NaN'] =
      /translate:\s*([-\d.]+)cqw ([-\d.]+)cqw/.exec(attribute(e, 'style')) ?? [];
    return {
      name: attribute(e, 'dataHandle'),
      x: (Number(x) * width) / 100,
      y: (Number(y) * width) / 100,
      label: attribute(e, 'ariaLabel'),
      text: attribute(e, 'ariaValueText'),
      min: number(e, 'ariaValueMin'),
      now: number(e, 'ariaValueNow'),
      max: number(e, 'ariaValueMax'),
      orientation: attribute(e, 'ariaOrientation'),
    };
  });
}

const isDrawing = (e: Element): boolean =>
  e.tagName === 'svg' && attribute(e, 'role') === 'img' && attribute(e, 'viewBox') !== '';

/** Any drawing of what was rendered, also one that is there for the eye alone. */
export function sheetOf(root: Root, svg: Element): Sheet {
  const [, , width = NaN, height = NaN] = attribute(svg, 'viewBox').split(' ').map(Number);
  const inside = svg.children.filter((c): c is Element => c.type === 'element');
  const marks = inside.flatMap((child) => marksIn(root, child, [svg], still));
  const holder = all(root, (e) => e.children.some((child) => child === svg))[0];
  const of = (selector: string): readonly Mark[] => marks.filter(matches(selector));
  const lettered = marks.filter(({ text }) => text !== '');
  return {
    width,
    height,
    summary: attribute(svg, 'ariaLabel'),
    marks,
    knobs: holder && attribute(holder, 'dataWidth') ? knobsOf(holder, width) : [],
    of,
    one: (selector) => {
      const found = of(selector);
      if (found.length !== 1) throw new Error(`${found.length} of ${selector}; expected one`);
      return found[0] as Mark;
    },
    texts: lettered.map(({ text }) => text),
    said: (text) => {
      const found = lettered.filter((mark) =>
        typeof text === 'string' ? mark.text === text : text.test(mark.text),
      );
      if (found.length !== 1)
        throw new Error(
          `${found.length} texts "${String(text)}" among ${lettered.map((m) => m.text).join(' | ')}`,
        );
      return found[0] as Mark;
    },
  };
}

/** All drawings of what was rendered, in the order of the page. */
export const sheetsOf = ({ root }: Drawn): Sheet[] =>
  all(root, isDrawing).map((svg) => sheetOf(root, svg));

/** A figure's drawings for a state. */
export const sheetsWith = (state: State, figure: Component): Sheet[] =>
  sheetsOf(drawnWith(state, figure));
/** The drawing of a figure that has one. */
export const sheetWith = (state: State, figure: Component): Sheet =>
  only(sheetsWith(state, figure));

export const centre = ({ left, right, top, bottom }: Mark): Point => [
  (left + right) / 2,
  (top + bottom) / 2,
];
export const wide = ({ left, right }: Mark): number => right - left;
export const tall = ({ top, bottom }: Mark): number => bottom - top;
/** The first and last point of a mark's one line. */
export function ends(mark: Mark): readonly [Point, Point] {
  const line = only(mark.lines);
  const [first, last] = [line[0], line.at(-1)];
  if (!first || !last) throw new Error('a line without points');
  return [first, last];
}

/** What typed fields show, by their labels. */
export function fieldsOf({ root }: Drawn): Record<string, string> {
  const inputs = all(root, (e) => e.tagName === 'input' && attribute(e, 'type') === '');
  return Object.fromEntries(
    inputs.map((input) => {
      const label = all(
        root,
        (e) => e.tagName === 'label' && attribute(e, 'htmlFor') === attribute(input, 'id'),
      )[0];
      return [label ? textOf(label) : attribute(input, 'ariaLabel'), attribute(input, 'value')];
    }),
  );
}
