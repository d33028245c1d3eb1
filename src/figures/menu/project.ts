/** Shows one figure on the whole screen in large type, for a room; Escape or the button puts it back. */

/** What else is on the page, which keys and readers shall not reach meanwhile. */
function* besides(element: Element): Generator<Element> {
  for (let inner = element; inner.parentElement; inner = inner.parentElement) {
    for (const each of inner.parentElement.children) if (each !== inner) yield each;
    if (inner.parentElement === document.body) return;
  }
}

/** The share of the screen's width at which every drawing of the figure is in sight as a whole. */
function fit(figure: HTMLElement): void {
  const set = (share: number) => figure.style.setProperty('--share', String(share));
  const fits = () => {
    const room = figure.clientHeight - (figure.querySelector('.figure-head')?.clientHeight ?? 0);
    return [...figure.querySelectorAll('.stage')].every(({ clientHeight }) => clientHeight <= room);
  };
  let low = 0.2;
  let high = 1;
  set(high);
  if (fits()) return;
  for (let i = 0; i < 7; i += 1) {
    const middle = (low + high) / 2;
    set(middle);
    if (fits()) low = middle;
    else high = middle;
  }
  set(low);
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
