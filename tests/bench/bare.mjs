/** The least that a drag can cost in this browser on this machine: a bare page whose handle writes one value to three places. */

const html = `<!doctype html><title>bare</title>
<style>
  body { margin: 0 }
  [role=slider] { position: absolute; top: 300px; left: 150px; width: 44px; height: 44px; touch-action: none }
</style>
<svg width="390" height="200"><text x="20" y="100">0</text></svg>
<div role="slider" tabindex="0" aria-label="bare" aria-valuenow="0" aria-orientation="horizontal"></div>`;

function wire() {
  const handle = document.querySelector('[role=slider]');
  const text = document.querySelector('text');
  let from;
  handle.addEventListener('pointerdown', (event) => {
    from = event.clientX;
    handle.setPointerCapture(event.pointerId);
  });
  handle.addEventListener('pointermove', (event) => {
    if (from === undefined) return;
    const by = event.clientX - from;
    handle.style.translate = `${by}px 0`;
    handle.setAttribute('aria-valuenow', String(by));
    text.firstChild.data = String(by);
  });
  handle.addEventListener('pointerup', () => (from = undefined));
}

/** Turns the page into the bare one; resolves to its handle. */
export async function barePage(page) {
  await page.setContent(html);
  await page.evaluate(wire);
  return page.locator('[role=slider]');
}
