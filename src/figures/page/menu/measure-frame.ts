/** How high a framed figure has to be, found by laying it out once, out of sight. */

const PATIENCE = 15_000;
const STEP = 50;
const STOOD = 500;
/** Taller than any figure: what lies below the frame's edge would not wake. */
const TALL = 3000;

/** Height of the page at `address` in px when it is `width` px wide. */
export async function measured(address: string, width: number): Promise<number> {
  const frame = document.createElement('iframe');
  frame.setAttribute('aria-hidden', 'true');
  frame.tabIndex = -1;
  frame.style.cssText = `position: fixed; inset: 0 auto auto 0; z-index: -1; border: 0; width: ${width}px; height: ${TALL}px; opacity: 0; pointer-events: none`;
  frame.src = address;
  try {
    await new Promise<void>((done, fail) => {
      frame.addEventListener('load', () => done(), { once: true });
      setTimeout(() => fail(new Error('the frame did not load')), PATIENCE);
      document.body.append(frame);
    });
    const root = frame.contentDocument?.querySelector<HTMLElement>('[data-embed]');
    if (!root) throw new Error('not the page of a figure');
    await frame.contentDocument?.fonts.ready;
    // A figure that has woken shows the reader's instrument, which may take more room than the one it was built with: its
    // height counts once it has stood for a while.
    const isAsleep = () => root.querySelector('astro-island[ssr]') !== null;
    const height = () => Math.ceil(root.getBoundingClientRect().height);
    let found = height();
    for (let waited = 0, stood = 0; stood < STOOD && waited < PATIENCE; waited += STEP) {
      await new Promise((done) => setTimeout(done, STEP));
      const now = height();
      stood = now === found && !isAsleep() ? stood + STEP : 0;
      found = now;
    }
    return found;
  } finally {
    frame.remove();
  }
}
