/** How the time of a build grows with the number of chapters. */
import {
  cpSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';

import { Advice, root, tool } from '../../.tools/toolchain.mjs';

const TIMES = 10;
const folder = join(root, '.cache', 'growth');
const chapters = join(folder, 'content', 'course');
const exercises = /<(Numeric|Choose|Order|FindMistake)\b[^]*?<\/\1>/g;

/** Builds the site with each chapter `times` times; seconds. Exercises are left out: their answers belong to one chapter. */
async function secondsOf(times) {
  rmSync(chapters, { recursive: true, force: true });
  mkdirSync(chapters, { recursive: true });
  const source = join(root, 'content', 'course');
  const files = readdirSync(source).filter((name) => name.endsWith('.mdx'));
  for (let copy = 0; copy < times; copy += 1) {
    for (const name of files) {
      const number = Number.parseInt(name, 10) + copy * files.length;
      const text = readFileSync(join(source, name), 'utf8')
        .replace(exercises, '')
        .replace(/^number: .*$/m, `number: ${number}`);
      const slug = name.replace(/^\d+-/, copy === 0 ? '' : `copy-${copy}-`);
      writeFileSync(join(chapters, `${String(number).padStart(3, '0')}-${slug}`), text);
    }
  }
  const start = performance.now();
  const code = await tool('astro', ['build', '--silent', '--root', folder], {
    env: { SITE_OUT: join(folder, 'dist'), NODE_ENV: 'production' },
  });
  if (code !== 0)
    throw new Advice('The build of the copied chapters failed; what it said stands above.');
  return (performance.now() - start) / 1000;
}

/** Prints the time of a build with all chapters once and with ten of each. */
export async function benchGrowth() {
  rmSync(folder, { recursive: true, force: true });
  for (const name of ['src', 'public', 'content', '.tools', 'package.json', 'tsconfig.json'])
    cpSync(join(root, name), join(folder, name), { recursive: true });
  for (const name of ['astro.config.mjs', 'svelte.config.js'])
    cpSync(join(root, name), join(folder, name));
  symlinkSync(join(root, 'node_modules'), join(folder, 'node_modules'), 'junction');
  // The first build of all fills caches that the later ones use.
  await secondsOf(1);
  const once = await secondsOf(1);
  const many = await secondsOf(TIMES);
  console.table({
    'each chapter once': { seconds: Number(once.toFixed(1)), ratio: 1 },
    [`each chapter ${TIMES} times`]: {
      seconds: Number(many.toFixed(1)),
      ratio: Number((many / once).toFixed(2)),
    },
  });
  rmSync(folder, { recursive: true, force: true });
}
