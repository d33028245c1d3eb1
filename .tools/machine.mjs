/** What the browser tests find on a machine: which browsers, and which of its fonts stand in for usual names. */
import { execFileSync } from 'node:child_process';

import { findFirefox, findWebKit } from './engines.mjs';

/** The first line that a program writes, or why there is none. */
function firstLine(program, ...args) {
  try {
    const text = execFileSync(program, args, {
      encoding: 'utf8',
      stdio: ['ignore', 'pipe', 'ignore'],
    });
    return text.trim().split('\n')[0];
  } catch {
    return 'unknown';
  }
}

const faces = ['serif', 'sans-serif', 'Arial', 'Roboto'];

/** One line on the browsers and one on the fonts, since what a page looks like before its own have come depends on them. */
export function machine(browser) {
  const browsers = [browser, findFirefox()]
    .filter(Boolean)
    .map((program) => firstLine(program, '--version'));
  // WebKit's driver does not tell its version.
  if (findWebKit()) browsers.push('WebKit');
  const fonts = faces.map(
    (face) => `${face} is ${firstLine('fc-match', '--format=%{family}\n', face)}`,
  );
  return `Browsers: ${browsers.join('; ')}\nFonts: ${fonts.join(', ')}`;
}
