/**
 * `npm run soak`: a hundred thousand links that nobody would write, then random play on every page and frame, round after round,
 * for as many minutes as are asked for (60). Each game is repeated by its page and seed: `npm run soak -- 1 SEED course/pitch/`.
 */
import { playOn } from '../tests/site/playground.ts';
import { Advice, main, tool } from './toolchain.mjs';
import { withSite } from './with-site.mjs';

const MINUTE = 60_000;
const SHORTEST = 5000;
const megabytes = (bytes) => (bytes / 1e6).toFixed(1);

async function soak(browser, url, { minutes, first, only }) {
  const { frames, pages } = await import('../tests/site/pages.ts');
  const all = only === undefined ? [...pages(), ...frames()] : [only];
  const end = Date.now() + minutes * MINUTE;
  const each = Math.max(SHORTEST, (minutes * MINUTE) / all.length);
  let acts = 0;
  let failures = 0;
  for (let seed = first; Date.now() < end; seed += 1) {
    for (const path of all) {
      const stop = Math.min(end, Date.now() + each);
      if (stop - Date.now() < SHORTEST / 2) break;
      const { wrong, log, heap } = await playOn(browser, url, path, {
        seed,
        enough: () => Date.now() >= stop,
      });
      acts += log.length;
      const size = `${megabytes(heap.start)} -> ${megabytes(heap.end)} MB`;
      console.log(`/${path}  seed ${seed}, ${log.length} actions, heap ${size}`);
      // Modules that came meanwhile and 200 steps of undo take their room once; what goes on growing passes this.
      if (heap.end > 2 * heap.start + 8e6) wrong.push(`the heap has grown: ${size}`);
      if (wrong.length === 0) continue;
      failures += 1;
      console.error(`FAILED /${path} with seed ${seed} after ${log.length} actions`);
      for (const each of wrong) console.error(`  ${each}`);
      console.error(`  last: ${log.slice(-12).join('; ')}`);
    }
  }
  console.log(`${acts} actions from seed ${first} on, ${failures} failures`);
  if (failures > 0) throw new Advice('What failed stands above, with the seed that repeats it.');
}

/** The tests of the link's reader with many more texts than `npm test` draws, and others. */
async function fuzz(seed) {
  const file = 'tests/instrument/link-fuzz.test.ts';
  const args = ['run', '--config', 'tests/vitest.config.ts', '--project', 'unit', file];
  if ((await tool('vitest', args, { env: { SEED: seed, TEXTS: '100000' } })) === 0) return;
  throw new Advice(`A link was read wrongly: SEED=${seed} TEXTS=100000 repeats it.`);
}

await main(async () => {
  const [minutes = '60', first = String(Date.now() % 1e6), only] = process.argv.slice(2);
  const game = { minutes: Number(minutes), first: Number(first), only };
  if (!(game.minutes > 0) || !Number.isInteger(game.first)) {
    throw new Advice(
      'npm run soak -- [minutes] [seed] [page]; minutes above 0, the seed a whole number.',
    );
  }
  if (only === undefined) await fuzz(first);
  console.log(`Playing for ${minutes} min from seed ${first} on`);
  await withSite((browser, url) => soak(browser, url, game));
});
