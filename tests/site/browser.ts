/**
 * The browser of a worker, which all its files share: starting one takes longer than many a test. What a reader leaves behind
 * stays within a visit's own context; it ends with the worker.
 */
import { launch } from './kit.ts';

// No page lives long enough to gain by what the engine would compile once more; that takes a tenth of all the time.
export const browser = await launch(['--js-flags=--no-opt']);
