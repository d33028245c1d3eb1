/** On the whole screen the felt band is hatched: a projector in a lit room washes its green out. */

const SVG = 'http://www.w3.org/2000/svg';
/** From line to line, px of the screen, whatever the drawing's own units are */
const STEP = 11;
let made = 0;

/** The colour of the band, as the browser writes it. */
function feltOf(figure: HTMLElement): string {
  const probe = figure.appendChild(document.createElement('i'));
  probe.style.color = 'var(--felt)';
  const { color } = getComputedStyle(probe);
  probe.remove();
  return color;
}

/** A hatching whose lines are as far apart, and as slanted, wherever the drawing is stretched. */
function patternFor({ a, b, c, d }: DOMMatrix): SVGPatternElement {
  const pattern = document.createElementNS(SVG, 'pattern');
  const back = new DOMMatrix([a, b, c, d, 0, 0]).inverse().rotate(-45);
  made += 1;
  pattern.id = `band-on-screen-${made}`;
  pattern.setAttribute('patternUnits', 'userSpaceOnUse');
  pattern.setAttribute('width', String(STEP));
  pattern.setAttribute('height', String(STEP));
  pattern.setAttribute('patternTransform', back.toString());
  for (const [height, colour] of [
    [STEP, '--felt'],
    [1.5, '--felt-edge'],
  ] as const) {
    const part = pattern.appendChild(document.createElementNS(SVG, 'rect'));
    part.setAttribute('width', String(STEP));
    part.setAttribute('height', String(height));
    part.style.fill = `var(${colour})`;
  }
  return pattern;
}

/** Hatches what isn't yet. */
export function hatch(figure: HTMLElement): void {
  const felt = feltOf(figure);
  for (const svg of figure.querySelectorAll<SVGSVGElement>('.figure-body svg')) {
    const bands = [...svg.querySelectorAll<SVGGraphicsElement>('path, rect, polygon')].filter(
      (each) => each.closest('defs') === null && getComputedStyle(each).fill === felt,
    );
    const known = new Map<string, string>();
    for (const band of bands) {
      const to = band.getScreenCTM();
      if (!to || to.a * to.d - to.b * to.c === 0) continue;
      const key = [to.a, to.b, to.c, to.d].map((n) => n.toFixed(3)).join();
      let id = known.get(key);
      if (id === undefined) {
        const defs = svg.appendChild(document.createElementNS(SVG, 'defs'));
        defs.dataset.hatch = '';
        ({ id } = defs.appendChild(patternFor(DOMMatrix.fromMatrix(to))));
        known.set(key, id);
      }
      band.style.setProperty('fill', `url(#${id})`, 'important');
      band.dataset.hatched = '';
    }
  }
}

export function unhatch(figure: HTMLElement): void {
  for (const defs of figure.querySelectorAll('defs[data-hatch]')) defs.remove();
  for (const band of figure.querySelectorAll<SVGElement>('[data-hatched]')) {
    band.style.removeProperty('fill');
    delete band.dataset.hatched;
  }
}
