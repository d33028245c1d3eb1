/** Drags one handle by finger on a slowed processor and reports what each event cost. */
import { setTimeout as pause } from 'node:timers/promises';

import { moves, record } from './trace.mjs';

const slowdown = 4;
const count = 60;
const pixels = 2;

/** Share of the numbers that lie at or below the result: 0.5 gives the median. */
export function quantile(numbers, share) {
  const sorted = [...numbers].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;
}

/**
 * Runs in the page: notes what the value was at each move. `how` says what else: the time to the next `frame`, or the
 * `mutations` of the DOM. Both take time themselves, so the traced drag goes without.
 */
function watch(slider, how) {
  const log = [];
  const value = () => slider.getAttribute('aria-valuenow');
  const untilFrame = (entry) => {
    requestAnimationFrame(() => {
      const channel = new MessageChannel();
      channel.port1.onmessage = () => (entry.frame = performance.now() - entry.start);
      channel.port2.postMessage(null);
    });
  };
  const onMove = () => {
    const entry = { start: performance.now(), value: value(), frame: Number.NaN, mutations: 0 };
    log.push(entry);
    if (how === 'frame') untilFrame(entry);
  };
  // A step and a beat of the lettering are told apart: what they change comes in two lists.
  const observer = new MutationObserver((records) => {
    const entry = log.at(-1);
    if (entry) entry.mutations = Math.max(entry.mutations, records.length);
  });
  if (how === 'mutations')
    observer.observe(document, {
      subtree: true,
      childList: true,
      attributes: true,
      characterData: true,
    });
  addEventListener('pointermove', onMove, { capture: true });
  window.bench = {
    stop: () => {
      observer.disconnect();
      removeEventListener('pointermove', onMove, { capture: true });
      const values = [...log.slice(1).map((entry) => entry.value), value()];
      return log.map((entry, i) => ({ ...entry, changed: values[i] !== entry.value }));
    },
  };
}

/** Out, back past the start, and home again, so that a handle at its end moves too. */
function offsets() {
  const quarter = count / 4;
  return Array.from({ length: count }, (_, i) => {
    const step = i + 1;
    if (step <= quarter) return step;
    return step <= 3 * quarter ? 2 * quarter - step : step - 4 * quarter;
  }).map((step) => step * pixels);
}

/** By finger, as on a phone. */
async function drag(session, { x, y }) {
  const finger = (type, by) =>
    session.send('Input.dispatchTouchEvent', {
      type,
      touchPoints: type === 'touchEnd' ? [] : [{ x: x + by, y: y - by }],
    });
  await finger('touchStart', 0);
  for (const by of offsets()) {
    await finger('touchMove', by);
    await pause(25);
  }
  await finger('touchEnd', 0);
}

/** The same drag three times, each for one thing that is measured: work, frames, changes in the DOM. */
export async function benchDrag(page, handle) {
  const session = await page.context().newCDPSession(page);
  await handle.evaluate((element) =>
    element.scrollIntoView({ block: 'center', behavior: 'instant' }),
  );
  const box = await handle.boundingBox();
  if (!box) return undefined;
  const at = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  const stop = () => page.evaluate(() => window.bench.stop());

  await session.send('Emulation.setCPUThrottlingRate', { rate: slowdown });
  await handle.evaluate(watch, 'nothing');
  const trace = await record(session, () => drag(session, at));
  const values = await stop();
  await handle.evaluate(watch, 'frame');
  await drag(session, at);
  const frames = (await stop()).filter(({ changed }) => changed);
  await handle.evaluate(watch, 'mutations');
  await drag(session, at);
  const changes = (await stop()).filter(({ changed }) => changed);
  await session.send('Emulation.setCPUThrottlingRate', { rate: 1 });
  await session.detach();

  // The trace and the log are of the same moves, so they pair up.
  const changed = moves(trace).filter((_, i) => values[i]?.changed);
  const median = (list, what) =>
    quantile(
      list.map((each) => each[what]),
      0.5,
    );
  return {
    events: changed.length,
    median: median(changed, 'work'),
    p95: quantile(
      changed.map(({ work }) => work),
      0.95,
    ),
    layout: median(changed, 'layout'),
    withPaint: median(changed, 'withPaint'),
    frame: median(frames, 'frame'),
    mutations: median(changes, 'mutations'),
    mostMutations: Math.max(0, ...changes.map(({ mutations }) => mutations)),
    forced: changed.reduce((sum, { forced }) => sum + forced, 0),
  };
}
