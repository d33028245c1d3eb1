/**
 * What the browser's main thread did in each event of a drag, read from a trace of it. Durations are the thread's own
 * time on the processor, so that other programs running beside it count little.
 */

const script = [
  'EventDispatch',
  'FunctionCall',
  'FireAnimationFrame',
  'RunMicrotasks',
  'TimerFire',
];
const rendering = [
  ...['HitTest', 'UpdateLayoutTree', 'Layout', 'PrePaint', 'Layerize', 'Paint'],
  'IntersectionObserverController::computeIntersections',
];
const counted = ['UpdateLayoutTree', 'Layout'];

/** Records a trace while `task` runs; resolves to its complete events, in order, times in microseconds. */
export async function record(session, task, categories = ['devtools.timeline']) {
  const events = [];
  const collect = ({ value }) => events.push(...value);
  session.on('Tracing.dataCollected', collect);
  await session.send('Tracing.start', {
    transferMode: 'ReportEvents',
    traceConfig: { includedCategories: categories },
  });
  await task();
  const complete = new Promise((done) => session.once('Tracing.tracingComplete', done));
  await session.send('Tracing.end');
  await complete;
  session.off('Tracing.dataCollected', collect);
  return events.filter(({ ph }) => ph === 'X').sort((a, b) => a.ts - b.ts);
}

const end = (event) => event.ts + event.dur;

/** Total processor time of events, each moment counted once however many of them nest. */
function covered(events) {
  let sum = 0;
  let until = 0;
  for (const { tts = 0, tdur = 0 } of events) {
    sum += Math.max(0, tts + tdur - Math.max(tts, until));
    until = Math.max(until, tts + tdur);
  }
  return sum;
}

/** For each pointer move of a trace: milliseconds of script, style and layout up to the next, and forced layouts. */
export function moves(trace) {
  const isMove = ({ name, args }) => name === 'EventDispatch' && args?.data?.type === 'pointermove';
  const first = trace.find(isMove);
  if (!first) return [];
  const main = trace.filter(({ pid, tid }) => pid === first.pid && tid === first.tid);
  const starts = main.filter(isMove).map(({ ts }) => ts);
  return starts.map((start, index) => {
    const own = main.filter(({ ts }) => ts >= start && ts < (starts[index + 1] ?? Infinity));
    const scripts = own.filter(({ name }) => script.includes(name));
    const layouts = own.filter(({ name }) => counted.includes(name));
    const isForced = (event) =>
      scripts.some((each) => each.ts <= event.ts && end(each) >= end(event));
    const work = own.filter(({ name }) => script.includes(name) || counted.includes(name));
    const all = own.filter(({ name }) => script.includes(name) || rendering.includes(name));
    return {
      work: covered(work) / 1000,
      layout: covered(layouts) / 1000,
      withPaint: covered(all) / 1000,
      forced: layouts.filter(isForced).length,
    };
  });
}

/** Milliseconds of each task of a page's main thread, which is the one where its timers fire most. */
export function tasks(trace) {
  const timers = new Map();
  for (const { name, pid, tid } of trace) {
    const thread = `${pid} ${tid}`;
    if (name === 'TimerFire') timers.set(thread, (timers.get(thread) ?? 0) + 1);
  }
  const [main] = [...timers].sort(([, a], [, b]) => b - a)[0] ?? [];
  return trace
    .filter(({ name, pid, tid }) => name === 'RunTask' && `${pid} ${tid}` === main)
    .map(({ tdur = 0 }) => tdur / 1000);
}
