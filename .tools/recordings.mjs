/**
 * `npm run recordings`: listens to recorded strings, sounds of Debian's package fluid-soundfont-gm. It is 148 MB large, so `npm test`
 * leaves it out. Installs the package where that can be done; SOUNDFONT, when set, names a copy of its file.
 */
import { existsSync } from 'node:fs';

import { setup } from './setup.mjs';
import { Advice, main, run, tool } from './toolchain.mjs';

const PACKAGE = 'fluid-soundfont-gm';
const FILE = '/usr/share/sounds/sf2/FluidR3_GM.sf2';

/** Path of the sound font, installed if it must be and can be. */
async function ensureSoundfont() {
  const { SOUNDFONT } = process.env;
  if (SOUNDFONT) {
    if (existsSync(SOUNDFONT)) return SOUNDFONT;
    throw new Advice(`SOUNDFONT names ${SOUNDFONT}, which is not there.`);
  }
  if (!existsSync(FILE) && existsSync('/etc/debian_version') && process.getuid?.() === 0) {
    console.log(`Installing ${PACKAGE}, 148 MB`);
    const env = { DEBIAN_FRONTEND: 'noninteractive' };
    // Old package lists may do: the installation tells.
    await run('apt-get', ['update', '-qq'], { env });
    await run('apt-get', ['install', '-y', '-qq', '--no-install-recommends', PACKAGE], { env });
  }
  if (existsSync(FILE)) return FILE;
  throw new Advice(
    `The recordings are not here. On Debian: apt-get install ${PACKAGE}. Elsewhere set SOUNDFONT to a copy of FluidR3_GM.sf2.`,
  );
}

await main(async () => {
  await setup();
  const env = { SOUNDFONT: await ensureSoundfont() };
  const args = ['run', '--config', 'tests/vitest.config.ts', '--project', 'recordings'];
  process.exitCode = await tool('vitest', args, { env });
});
