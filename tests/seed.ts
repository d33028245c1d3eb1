/**
 * Properties are tried with the same drawn values at each run, so that a failure repeats. `SEED=random npm test`, or a
 * number, draws others: do it after a change to a module.
 */
import fc from 'fast-check';

const { SEED } = process.env;
if (SEED !== 'random') fc.configureGlobal({ seed: SEED === undefined ? 1 : Number(SEED) });
