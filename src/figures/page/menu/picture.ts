/** A figure's drawing as a picture of its own: what the stylesheet gives each element is written into it. */
import { hexOf } from './colours.ts';
import { facesOf } from './faces.ts';
import { isTurned } from '../../kit/sided.ts';

const SVG = 'http://www.w3.org/2000/svg';

/** What a style gives to a drawn element, and what holds where nothing is given. */
const usual: Readonly<Record<string, string>> = {
  fill: 'rgb(0, 0, 0)',
  'fill-opacity': '1',
  'fill-rule': 'nonzero',
  stroke: 'none',
  'stroke-width': '1px',
  'stroke-opacity': '1',
  'stroke-dasharray': 'none',
  'stroke-dashoffset': '0px',
  'stroke-linecap': 'butt',
  'stroke-linejoin': 'miter',
  opacity: '1',
  'clip-path': 'none',
  mask: 'none',
  'marker-start': 'none',
  'marker-end': 'none',
  'stop-color': 'rgb(0, 0, 0)',
  'stop-opacity': '1',
  'paint-order': 'normal',
  'vector-effect': 'none',
};
const ofText: Readonly<Record<string, string>> = {
  'font-family': '',
  'font-size': '',
  'font-weight': '400',
  'font-style': 'normal',
  'font-variant-numeric': 'normal',
  'letter-spacing': 'normal',
  'text-anchor': 'start',
  'dominant-baseline': 'auto',
};
const inherited = new Set([...Object.keys(ofText), 'fill', 'stroke', 'stroke-width']);
const colours = new Set(['fill', 'stroke', 'stop-color']);
const isText = (element: Element) => element instanceof SVGTextContentElement;

/** Writes what is drawn of `from` into `copy`, an exact clone, and takes out what is not shown. */
function settle(from: Element, copy: Element, fonts: Set<string>): void {
  const style = getComputedStyle(from);
  if (style.display === 'none' || style.visibility === 'hidden') {
    copy.remove();
    return;
  }
  const table = isText(from) ? { ...usual, ...ofText } : usual;
  for (const [name, given] of Object.entries(table)) {
    const value = style.getPropertyValue(name);
    if (value === '' || (value === given && !inherited.has(name))) copy.removeAttribute(name);
    else {
      const isColour = colours.has(name) && !/^(none|url\(|context-)/.test(value);
      copy.setAttribute(
        name,
        isColour ? hexOf(value) : value.replace(/url\("?[^"#)]*#/, 'url(#').replace(/"\)/, ')'),
      );
    }
  }
  if (isText(from)) fonts.add(style.fontFamily);
  // A place given by the style alone is written as an attribute, which more programs read.
  const isMoved = from instanceof SVGElement && from.style.transform !== '';
  if (isMoved && style.transform !== 'none') copy.setAttribute('transform', style.transform);
  for (const name of ['style', 'class', 'role', 'aria-label', 'tabindex'])
    copy.removeAttribute(name);
  const children = [...from.children].map((child, i) => [child, copy.children[i]] as const);
  for (const [child, its] of children) if (its) settle(child, its, fonts);
}

/** What the stylesheet turns over for a left hand, written into the copy: the whole, and each text back about its own middle. */
function turn(svg: SVGSVGElement, copy: SVGSVGElement): void {
  const { x, width } = svg.viewBox.baseVal;
  const across = (middle: number): string => `translate(${2 * middle} 0) scale(-1 1)`;
  const texts = copy.querySelectorAll('text');
  for (const [i, text] of svg.querySelectorAll('text').entries()) {
    const box = text.getBBox();
    texts[i]?.setAttribute('transform', across(box.x + box.width / 2));
  }
  const whole = document.createElementNS(SVG, 'g');
  whole.setAttribute('transform', across(x + width / 2));
  whole.append(...copy.childNodes);
  copy.append(whole);
}

const isShown = (svg: SVGElement) => {
  const { width, height } = svg.getBoundingClientRect();
  return width > 0 && height > 0 && !svg.closest('button, [role="slider"]');
};

export interface Picture {
  svg: string;
  /** px, on the screen */
  width: number;
  height: number;
}

/**
 * The drawing as it stands, one below the other where a figure has several, on the sheet's own ground.
 * `source` is written into it for whoever finds the file.
 */
export async function pictureOf(figure: HTMLElement, source: string): Promise<Picture> {
  const drawings = [...figure.querySelectorAll<SVGSVGElement>('.figure-body svg')].filter(isShown);
  if (drawings.length === 0) throw new Error('The figure draws nothing.');
  const boxes = drawings.map((svg) => svg.getBoundingClientRect());
  const margin = 16;
  const left = Math.min(...boxes.map((box) => box.left));
  const top = Math.min(...boxes.map((box) => box.top));
  const width = Math.max(...boxes.map((box) => box.right)) - left + 2 * margin;
  const height = Math.max(...boxes.map((box) => box.bottom)) - top + 2 * margin;

  const fonts = new Set<string>();
  const whole = document.createElementNS(SVG, 'svg');
  whole.setAttribute('viewBox', `0 0 ${width} ${height}`);
  whole.setAttribute('width', String(width));
  whole.setAttribute('height', String(height));
  const told = (name: string, text: string) => {
    const element = document.createElementNS(SVG, name);
    element.textContent = text;
    whole.append(element);
  };
  told('title', figure.getAttribute('aria-label') ?? '');
  told(
    'desc',
    `${drawings.map((svg) => svg.getAttribute('aria-label') ?? '').join(' ')} ${source}`,
  );
  const ground = document.createElementNS(SVG, 'rect');
  ground.setAttribute('width', '100%');
  ground.setAttribute('height', '100%');
  ground.setAttribute('fill', hexOf(getComputedStyle(document.documentElement).backgroundColor));
  whole.append(ground);
  for (const [i, svg] of drawings.entries()) {
    const copy = svg.cloneNode(true) as SVGSVGElement;
    // Before what is not shown is taken out, while each element of the copy still stands at its own's place.
    if (isTurned(svg)) turn(svg, copy);
    settle(svg, copy, fonts);
    const box = boxes[i];
    if (!box) continue;
    for (const [name, value] of Object.entries({
      x: box.left - left + margin,
      y: box.top - top + margin,
      width: box.width,
      height: box.height,
    }))
      copy.setAttribute(name, String(value));
    copy.setAttribute('overflow', 'visible');
    whole.append(copy);
  }
  // The page's policy takes no style element, not even one that is only written down.
  const style = `<style>${await facesOf(fonts)}</style>`;
  const text = new XMLSerializer().serializeToString(whole);
  return { svg: text.replace(/^<svg[^>]*>/, (opening) => opening + style), width, height };
}

const MOST_DRAWS = 20;
const PAUSE = 60;

/** The picture as PNG, `sharpness` times as many dots as px on the screen. */
export async function pngOf({ svg, width, height }: Picture, sharpness = 3): Promise<Blob> {
  const address = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }));
  try {
    const image = new Image();
    image.src = address;
    await image.decode();
    const canvas = document.createElement('canvas');
    canvas.width = Math.round(width * sharpness);
    canvas.height = Math.round(height * sharpness);
    const brush = canvas.getContext('2d');
    const draw = (): string => {
      brush?.drawImage(image, 0, 0, canvas.width, canvas.height);
      return canvas.toDataURL();
    };
    // A picture counts as loaded before the fonts inside it are read: it is drawn until nothing more comes.
    let before = draw();
    for (let i = 0, same = 0; same < 2 && i < MOST_DRAWS; i += 1) {
      await new Promise((done) => setTimeout(done, PAUSE));
      const now = draw();
      same = now === before ? same + 1 : 0;
      before = now;
    }
    const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, 'image/png'));
    if (!blob) throw new Error('This browser can’t draw a PNG.');
    return blob;
  } finally {
    URL.revokeObjectURL(address);
  }
}
