/** Drags one handle by finger on a slowed processor, in turn with that of a bare page, and reports what each event cost. */
import { setTimeout as pause } from 'node:timers/promises';

import { moves, record } from './trace.mjs';

const slowdown = 4;
const count = 60;
const pixels = 2;
/** How often a drag and that of a bare page are tried in turn. */
const pairs = 3;

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

/** Drags it on a slowed processor; resolves to the trace, if one was asked for, and to what was noted of the moves. */
async function dragged({ page, handle, at, session }, { how, isTraced = false }) {
  await session.send('Emulation.setCPUThrottlingRate', { rate: slowdown });
  await handle.evaluate(watch, how);
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
  const { trace, noted } = await dragged(held, { how: 'nothing', isTraced: true });
  // The trace and the log are of the same moves, so they pair up.
  return moves(trace).filter((_, i) => noted[i]?.changed);
}

/**
 * Drags a handle in turn with that of a bare page: what the machine does beside weighs on both, so each ratio is one pair's, and the
 * median of the pairs is given. Then twice more, for the frames and for the changes in the DOM.
 */
export async function benchDrag(handle, bareHandle) {
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
  const changedOf = async (how) =>
    (await dragged(held, { how })).noted.filter(({ changed }) => changed);
  const frames = await changedOf('frame');
  const mutations = each(await changedOf('mutations'), 'mutations');
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
    frame: median(each(frames, 'frame')),
    mutations: median(mutations),
    mostMutations: Math.max(0, ...mutations),
    forced: all.reduce((sum, { forced }) => sum + forced, 0) / pairs,
  };
}
