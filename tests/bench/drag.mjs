/** Drags one handle on a slowed processor and reports what each event cost. */
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

/** Runs in the page: notes for each move whether the value changed, the changes in the DOM, and the next frame. */
function watch(slider) {
  const log = [];
  let value = slider.getAttribute('aria-valuenow');
  const onMove = () => {
    const entry = { start: performance.now(), frame: Number.NaN, mutations: 0, changed: false };
    log.push(entry);
    requestAnimationFrame(() => {
      const channel = new MessageChannel();
      channel.port1.onmessage = () => {
        entry.frame = performance.now() - entry.start;
        const now = slider.getAttribute('aria-valuenow');
        entry.changed = now !== value;
        value = now;
      };
      channel.port2.postMessage(null);
    });
  };
  const observer = new MutationObserver((records) => {
    const entry = log.at(-1);
    if (entry) entry.mutations += records.length;
  });
  addEventListener('pointermove', onMove, { capture: true });
  window.bench = {
    log,
    countMutations: () =>
      observer.observe(document, {
        subtree: true,
        childList: true,
        attributes: true,
        characterData: true,
      }),
    stop: () => {
      observer.disconnect();
      removeEventListener('pointermove', onMove, { capture: true });
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

async function drag(session, { x, y }) {
  const mouse = (type, by, buttons) =>
    session.send('Input.dispatchMouseEvent', {
      type,
      x: x + by,
      y: y - by,
      button: type === 'mouseMoved' ? 'none' : 'left',
      buttons,
      clickCount: type === 'mouseMoved' ? 0 : 1,
    });
  await mouse('mouseMoved', 0, 0);
  await mouse('mousePressed', 0, 1);
  for (const by of offsets()) {
    await mouse('mouseMoved', by, 1);
    await pause(25);
  }
  await mouse('mouseReleased', 0, 0);
}

/** Drags twice: once traced, once with the DOM's changes counted, since counting costs time. */
export async function benchDrag(page, handle) {
  const session = await page.context().newCDPSession(page);
  await handle.evaluate((element) =>
    element.scrollIntoView({ block: 'center', behavior: 'instant' }),
  );
  const box = await handle.boundingBox();
  if (!box) return undefined;
  const at = { x: box.x + box.width / 2, y: box.y + box.height / 2 };

  await session.send('Emulation.setCPUThrottlingRate', { rate: slowdown });
  await handle.evaluate(watch);
  const trace = await record(session, () => drag(session, at));
  const timed = await page.evaluate(() => window.bench.log.splice(0));
  await page.evaluate(() => window.bench.countMutations());
  await drag(session, at);
  const observed = await page.evaluate(() => {
    window.bench.stop();
    return window.bench.log;
  });
  await session.send('Emulation.setCPUThrottlingRate', { rate: 1 });
  await session.detach();

  // The trace also holds the move to the handle before the press: the logs are as long, so they pair up.
  const traced = moves(trace).map((move, i) => ({ ...move, ...timed[i] }));
  const changed = traced.filter(({ changed }) => changed);
  const changes = observed.filter(({ changed }) => changed).map(({ mutations }) => mutations);
  const work = changed.map((move) => move.work);
  return {
    events: changed.length,
    median: quantile(work, 0.5),
    p95: quantile(work, 0.95),
    layout: quantile(
      changed.map((move) => move.layout),
      0.5,
    ),
    withPaint: quantile(
      changed.map((move) => move.withPaint),
      0.5,
    ),
    frame: quantile(
      changed.map((move) => move.frame),
      0.5,
    ),
    mutations: quantile(changes, 0.5),
    mostMutations: Math.max(0, ...changes),
    forced: changed.reduce((sum, { forced }) => sum + forced, 0),
  };
}
