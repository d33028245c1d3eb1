/** Shows one figure on the whole screen in large type, for a room; Escape or the button puts it back. */

/** What else is on the page, which keys and readers shall not reach meanwhile. */
function* besides(element: Element): Generator<Element> {
  for (let inner = element; inner.parentElement; inner = inner.parentElement) {
    for (const each of inner.parentElement.children) if (each !== inner) yield each;
    if (inner.parentElement === document.body) return;
  }
}

/** How much smaller than it could be a drawing may get so that what stands below it is in sight too. */
const LEAST = 0.7;
const NARROWEST = 0.2;

/** The largest share of the screen's width, up to `high`, at which something fits; it is left set. */
function largest(figure: HTMLElement, high: number, fits: () => boolean): number {
  const set = (share: number) => figure.style.setProperty('--share', String(share));
  let [fitting, tooLarge] = [NARROWEST, high];
  set(high);
  if (fits()) return high;
  for (let i = 0; i < 7; i += 1) {
    const middle = (fitting + tooLarge) / 2;
    set(middle);
    if (fits()) fitting = middle;
    else tooLarge = middle;
  }
  set(fitting);
  return fitting;
}

/** Brings every drawing of the figure into sight as a whole, and all of the figure where that costs little. */
function fit(figure: HTMLElement): void {
  const head = figure.querySelector('.figure-head');
  const drawn = () => {
    const room = figure.clientHeight - (head?.clientHeight ?? 0);
    return [...figure.querySelectorAll('.stage')].every(({ clientHeight }) => clientHeight <= room);
  };
  const share = largest(figure, 1, drawn);
  const whole = largest(figure, share, () => figure.scrollHeight <= figure.clientHeight);
  if (whole < LEAST * share) figure.style.setProperty('--share', String(share));
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
