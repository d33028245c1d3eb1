/** Drags one handle by finger, in turn with that of a bare page, and reports what each event cost of the processor's own time. */
import { setTimeout as rest } from 'node:timers/promises';

import { moves, record } from './trace.mjs';

/** For the time to the next frame alone: a slowed processor is held up by whatever else the machine does, and ratios lose by it. */
const slowdown = 4;
const count = 40;
const pixels = 2;
/** ms from step to step: by the page's clock as well, so that as many beats fall into a drag on a machine that has much else to do. */
const pause = 25;

/** Share of the numbers that lie at or below the result: 0.5 gives the median. */
export function quantile(numbers, share) {
  const sorted = [...numbers].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;
}

/**
 * Runs in the page: its clock goes on by `pause` at each move, and what waits for the hand to rest waits. Notes what the value was at
 * each move, and where that is asked for how long it took to the next frame and how much of the DOM changed: what takes time itself,
 * so the traced drag goes without.
 */
function watch(slider, { pause, isClose }) {
  const log = [];
  const clock = () => Performance.prototype.now.call(performance);
  const wait = window.setTimeout;
  let now = clock();
  performance.now = () => now;
  window.setTimeout = (task, ms, ...more) => wait(task, 20 * ms, ...more);
  const value = () => slider.getAttribute('aria-valuenow');
  const untilFrame = (entry) => {
    requestAnimationFrame(() => {
      const channel = new MessageChannel();
      channel.port1.onmessage = () => (entry.frame = clock() - entry.start);
      channel.port2.postMessage(null);
    });
  };
  const onMove = () => {
    now += pause;
    const entry = { start: clock(), value: value(), frame: Number.NaN, mutations: 0 };
    log.push(entry);
    if (isClose) untilFrame(entry);
  };
  // A step and a beat of the lettering are told apart: what they change comes in two lists.
  const observer = new MutationObserver((records) => {
    const entry = log.at(-1);
    if (entry) entry.mutations = Math.max(entry.mutations, records.length);
  });
  if (isClose)
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
      delete performance.now;
      window.setTimeout = wait;
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
    await rest(pause);
  }
  await finger('touchEnd', 0);
}

/** A handle that is ready to be dragged, or undefined where nobody can see it. */
async function hold(page, handle) {
  await handle.evaluate((element) =>
    element.scrollIntoView({ block: 'center', behavior: 'instant' }),
  );
  const box = await handle.boundingBox();
  if (!box) return undefined;
  const at = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  return { page, handle, at, session: await page.context().newCDPSession(page) };
}

/** Drags it; resolves to the trace, if one was asked for, and to what was noted of the moves. */
async function dragged({ page, handle, at, session }, isTraced) {
  await session.send('Emulation.setCPUThrottlingRate', { rate: isTraced ? 1 : slowdown });
  await handle.evaluate(watch, { pause, isClose: !isTraced });
  const run = () => drag(session, at);
  const trace = isTraced ? await record(session, run) : await run();
  const noted = await page.evaluate(() => window.bench.stop());
  await session.send('Emulation.setCPUThrottlingRate', { rate: 1 });
  return { trace, noted };
}

const median = (list) => quantile(list, 0.5);
const mean = (list) => list.reduce((sum, each) => sum + each, 0) / list.length;
const each = (list, what) => list.map((one) => one[what]);

/** What the events of one drag cost that changed the value. */
async function traced(held) {
  const { trace, noted } = await dragged(held, true);
  // The trace and the log are of the same moves, so they pair up.
  return moves(trace).filter((_, i) => noted[i]?.changed);
}

/**
 * Drags a handle in turn with that of a bare page, `pairs` times: what the machine does beside weighs on both, so each ratio is one
 * pair's, and the median of the pairs is given. Then once more, for the frames and for the changes in the DOM.
 */
export async function benchDrag(handle, bareHandle, pairs = 3) {
  const [held, bare] = [
    await hold(handle.page(), handle),
    await hold(bareHandle.page(), bareHandle),
  ];
  if (!held || !bare) return undefined;
  const own = [];
  const floor = [];
  for (let i = 0; i < pairs; i += 1) {
    floor.push(await traced(bare));
    own.push(await traced(held));
  }
  const close = (await dragged(held, false)).noted.filter(({ changed }) => changed);
  const mutations = each(close, 'mutations');
  await Promise.all([held, bare].map(({ session }) => session.detach()));

  const times = (of, what) =>
    median(own.map((run, i) => of(each(run, what)) / of(each(floor[i], what))));
  const all = own.flat();
  return {
    events: all.length / pairs,
    median: median(each(all, 'work')),
    times: times(median, 'work'),
    timesOnAverage: times(mean, 'work'),
    p95: quantile(each(all, 'work'), 0.95),
    layout: median(each(all, 'layout')),
    withPaint: median(each(all, 'withPaint')),
    timesWithPaint: times(median, 'withPaint'),
    timesWithPaintOnAverage: times(mean, 'withPaint'),
    frame: median(each(close, 'frame')),
    mutations: median(mutations),
    mostMutations: Math.max(0, ...mutations),
    forced: all.reduce((sum, { forced }) => sum + forced, 0) / pairs,
  };
}
