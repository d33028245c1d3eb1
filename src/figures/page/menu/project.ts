/** Shows one figure on the whole screen in large type, for a room; Escape or the button puts it back. */

/** What else is on the page, which keys and readers shall not reach meanwhile. */
function* besides(element: Element): Generator<Element> {
  for (let inner = element; inner.parentElement; inner = inner.parentElement) {
    for (const each of inner.parentElement.children) if (each !== inner) yield each;
    if (inner.parentElement === document.body) return;
  }
}

/** Shares of the screen's width that are tried, the largest first. */
const shares = Array.from({ length: 13 }, (_, i) => 1 - i * 0.05);

/** How much of what is drawn can be seen without scrolling, from 0 to 1. */
function seen(figure: HTMLElement): number {
  const { bottom: end } = figure.getBoundingClientRect();
  const boxes = [...figure.querySelectorAll('.stage')]
    .map((stage) => stage.getBoundingClientRect())
    .filter(({ height }) => height > 0);
  const sum = (of: (box: DOMRect) => number) => boxes.reduce((all, box) => all + of(box), 0);
  const shown = sum(({ top, bottom, width }) => width * Math.max(0, Math.min(bottom, end) - top));
  return (
    shown /
    Math.max(
      1,
      sum(({ width, height }) => width * height),
    )
  );
}

/** Makes the figure as wide as all of its drawings can be seen, or most of them where that is not to be had. */
function fit(figure: HTMLElement): void {
  figure.scrollTop = 0;
  let best = { share: 1, shown: 0 };
  for (const share of shares) {
    figure.style.setProperty('--share', String(share));
    const shown = seen(figure);
    if (shown > best.shown + 0.001) best = { share, shown };
    if (shown > 0.999) break;
  }
  figure.style.setProperty('--share', String(best.share));
}

/** Begins; returns what ends it. `onend` is called however it ends. */
export function project(figure: HTMLElement, onend: () => void): () => void {
  const { documentElement: root } = document;
  const inert = [...besides(figure)].filter((each) => !each.hasAttribute('inert'));
  const scrolled = window.scrollY;
  root.dataset.projecting = '';
  figure.dataset.projected = '';
  for (const each of inert) each.setAttribute('inert', '');
  const refit = () => fit(figure);
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
    document.removeEventListener('keydown', key);
    document.removeEventListener('fullscreenchange', screen);
    if (document.fullscreenElement) void document.exitFullscreen().catch(() => undefined);
    delete root.dataset.projecting;
    delete figure.dataset.projected;
    figure.style.removeProperty('--share');
    for (const each of inert) each.removeAttribute('inert');
    window.scrollTo({ top: scrolled, behavior: 'instant' });
    onend();
  }
  window.addEventListener('resize', refit);
  document.addEventListener('keydown', key);
  refit();
  // Where a page may not take the screen, filling the window has to do.
  root.requestFullscreen?.().then(
    () => document.addEventListener('fullscreenchange', screen),
    () => undefined,
  );
  return end;
}
