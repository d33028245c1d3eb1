/** Contenders timed against each other in one run, so that the machine and its load matter little. */
export const rounds = 7;
export const rounded = (number) => Number(number.toPrecision(3));
export const median = (values) => values.toSorted((a, b) => a - b)[values.length >> 1] ?? NaN;
/** Keeps results from being optimised away. */
let sink = 0;

/** Calls in one burst: a loop that is entered often is compiled for good, as it is where a page calls it. */
const burst = 1_000;

/** Nanoseconds a call, the median of interleaved rounds: every contender runs by itself, in bursts, in every round. */
export function race(contenders) {
  const times = Object.fromEntries(Object.keys(contenders).map((name) => [name, []]));
  for (let round = 0; round < rounds + 1; round += 1) {
    for (const [name, { calls, run }] of Object.entries(contenders)) {
      const start = process.hrtime.bigint();
      for (let left = calls; left > 0; left -= burst) sink += run(Math.min(burst, left));
      const each = Number(process.hrtime.bigint() - start) / calls;
      // The first round only warms up.
      if (round > 0) times[name].push(each);
    }
  }
  if (Number.isNaN(sink)) throw new Error('the sums did not work out');
  return Object.fromEntries(Object.entries(times).map(([name, all]) => [name, median(all)]));
}
