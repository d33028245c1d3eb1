/** Shows one figure on the whole screen in large type, for a room; Escape or the button puts it back. */
import { hatch, unhatch } from './hatch.ts';
import { crowding, enlarge, shrinkBack, thin } from './letters.ts';

export interface Projection {
  /** Puts it back. */
  end: () => void;
  /** Takes the room that there is now. */
  fit: () => void;
}

/** What else is on the page, which keys and readers shall not reach meanwhile. */
function* besides(element: Element): Generator<Element> {
  for (let inner = element; inner.parentElement; inner = inner.parentElement) {
    for (const each of inner.parentElement.children) if (each !== inner) yield each;
    if (inner.parentElement === document.body) return;
  }
}

/** What holds its drawings, and scrolls where they leave no room for more. */
const bodyOf = (figure: HTMLElement): Element => figure.querySelector('.figure-body') ?? figure;

/** Shares of the screen's width that are tried, the largest first. */
const shares = Array.from({ length: 29 }, (_, i) => 1 - i * 0.025);

/** From the top of its first drawing to the bottom of its last, px from the top of what scrolls. */
function span(body: Element): { top: number; height: number } {
  // Letters may stand out of the drawing.
  const boxes = [...body.querySelectorAll('.stage, .stage text')]
    .map((stage) => stage.getBoundingClientRect())
    .filter(({ height }) => height > 0);
  if (boxes.length === 0) return { top: 0, height: 0 };
  const top = Math.min(...boxes.map((box) => box.top));
  const bottom = Math.max(...boxes.map((box) => box.bottom));
  return { top: top - body.getBoundingClientRect().top + body.scrollTop, height: bottom - top };
}

/** Makes the figure as wide as all of its drawings can be seen, and brings them into sight: fields and buttons follow or precede. */
function fit(figure: HTMLElement): void {
  const body = bodyOf(figure);
  figure.style.removeProperty('--above');
  for (const share of shares) {
    figure.style.setProperty('--share', share.toFixed(3));
    if (span(body).height <= body.clientHeight) break;
  }
  // Nothing scrolls above its beginning.
  const { top } = span(body);
  if (top < 0) figure.style.setProperty('--above', `${Math.ceil(-top)}px`);
  body.scrollTop = span(body).top;
}

/** Shows one of its sheets with letters that a room can read; a figure with a single sheet shows that. */
function lay(figure: HTMLElement, sheet: 'wide' | 'narrow'): void {
  document.documentElement.dataset.projecting = sheet;
  window.dispatchEvent(new Event('projecting'));
  shrinkBack(figure);
  fit(figure);
  enlarge(figure);
  // Large letters take more room.
  fit(figure);
  enlarge(figure);
}

/** Takes the sheet for a desk or the one for a phone, whichever is less crowded. */
function choose(figure: HTMLElement): void {
  lay(figure, 'wide');
  const wide = crowding(figure);
  if (wide === 0) return;
  lay(figure, 'narrow');
  if (crowding(figure) >= wide) lay(figure, 'wide');
}

/** Begins. `onend` is called however it ends. */
export function project(figure: HTMLElement, onend: () => void): Projection {
  const { documentElement: root } = document;
  const inert = [...besides(figure)].filter((each) => !each.hasAttribute('inert'));
  const scrolled = window.scrollY;
  root.dataset.projecting = '';
  figure.dataset.projected = '';
  for (const each of inert) each.setAttribute('inert', '');
  const refit = () => {
    if ('code' in figure.dataset) return;
    unhatch(figure);
    choose(figure);
    thin(figure);
    hatch(figure);
  };
  let asked = 0;
  // What is drawn anew, while it is dragged too, is as large as the rest.
  const watch = new MutationObserver(() => {
    asked ||= requestAnimationFrame(() => {
      asked = 0;
      if (ended) return;
      enlarge(figure);
      thin(figure);
      hatch(figure);
    });
  });
  const key = (event: KeyboardEvent) => {
    if (event.key === 'Escape' && !event.defaultPrevented) end();
  };
  const screen = () => {
    if (!document.fullscreenElement) end();
  };
  let ended = false;
  function end(): void {
    if (ended) return;
    ended = true;
    window.removeEventListener('resize', refit);
    watch.disconnect();
    unhatch(figure);
    shrinkBack(figure);
    document.removeEventListener('keydown', key);
    document.removeEventListener('fullscreenchange', screen);
    if (document.fullscreenElement) void document.exitFullscreen().catch(() => undefined);
    delete root.dataset.projecting;
    window.dispatchEvent(new Event('projecting'));
    delete figure.dataset.projected;
    figure.style.removeProperty('--share');
    figure.style.removeProperty('--above');
    for (const each of inert) each.removeAttribute('inert');
    window.scrollTo({ top: scrolled, behavior: 'instant' });
    onend();
  }
  window.addEventListener('resize', refit);
  document.addEventListener('keydown', key);
  refit();
  watch.observe(bodyOf(figure), { subtree: true, childList: true });
  // Where a page may not take the screen, filling the window has to do.
  root.requestFullscreen?.().then(
    () => document.addEventListener('fullscreenchange', screen),
    () => undefined,
  );
  return { end, fit: refit };
}
