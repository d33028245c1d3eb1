// Cuts the site's fonts from the packages in node_modules: npm run fonts. The results are committed.
// All faces that a page can load together must stay below 60 kB; the script prints the sum.
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { Font } from 'fonteditor-core';
import subsetFont from 'subset-font';

const modules = new URL('../node_modules/', import.meta.url);
const out = new URL('../src/styles/fonts/', import.meta.url);

const newsreader = '@fontsource-variable/newsreader/files/newsreader-latin-standard-';
const barlow = '@fontsource/barlow-semi-condensed/files/barlow-semi-condensed-latin-';
const katex = 'katex/dist/fonts/KaTeX_';

const range = (from, to) =>
  Array.from({ length: to.codePointAt(0) - from.codePointAt(0) + 1 }, (_, i) =>
    String.fromCodePoint(from.codePointAt(0) + i),
  ).join('');
const letters = range('A', 'Z') + range('a', 'z');
const ascii = range(' ', '~');
const marks = 'é×·½¼¾°±²³µ’‘“”–—…−\u00a0\u2009\u202f';

const faces = [
  // Text: one optical size, regular; prose needs no other weight but the display cut's.
  {
    name: 'newsreader-text',
    from: `${newsreader}normal.woff2`,
    text: ascii + marks,
    variationAxes: { wght: 400, opsz: 17 },
    keepFeatures: ['kern', 'liga', 'tnum', 'lnum'],
  },
  // Titles and strong words: a larger optical size, heavier.
  {
    name: 'newsreader-display',
    from: `${newsreader}normal.woff2`,
    text: letters + range('0', '9') + ' ,.;:?!-–—’‘“”()×½%&/é\u00a0',
    variationAxes: { wght: 540, opsz: 40 },
    keepFeatures: ['kern', 'liga'],
  },
  {
    name: 'newsreader-italic',
    from: `${newsreader}italic.woff2`,
    text: letters + range('0', '9') + ' ,.;:?!-–—’‘“”()é\u00a0',
    variationAxes: { wght: 400, opsz: 17 },
    keepFeatures: ['kern', 'liga'],
  },
  {
    name: 'barlow-medium',
    from: `${barlow}500-normal.woff2`,
    text: ascii + marks,
    keepFeatures: ['kern', 'tnum'],
  },
  {
    name: 'barlow-semibold',
    from: `${barlow}600-normal.woff2`,
    text: letters + range('0', '9') + ' ,.;:?!-–’()+%/=×·½¼¾°−µ\u00a0',
    keepFeatures: ['kern', 'tnum'],
  },
  // Signs: what equations need and the two text families lack. Letters and digits of equations
  // come from Newsreader, whose x-height and capitals are those of KaTeX's own within 3 %.
  {
    name: 'signs',
    from: `${katex}Main-Regular.woff2`,
    text: '()[]{}|+=<>/×±−⋅·÷≈≤≥≠∼∝→←↔⇒√∂∞°′♯♭ΔΩΣΠ',
    keepFeatures: [],
    // Greek letters slant, as in KaTeX; one file is asked for instead of two.
    joined: { from: `${katex}Math-Italic.woff2`, text: 'αβγδεηθκλμνπρστφω' },
  },
  { name: 'size1', from: `${katex}Size1-Regular.woff2`, text: '()[]{}∑∫', keepFeatures: [] },
  { name: 'size2', from: `${katex}Size2-Regular.woff2`, text: '()[]{}∑∫', keepFeatures: [] },
  { name: 'size3', from: `${katex}Size3-Regular.woff2`, text: '()[]{}', keepFeatures: [] },
];

/** The glyphs of two fonts of one design in one font, as bytes of TrueType. */
async function join(first, second) {
  const read = (bytes) => Font.create(bytes, { type: 'ttf', hinting: false });
  const all = read(first);
  all.merge(read(second), { scale: true });
  return Buffer.from(all.write({ type: 'ttf', toBuffer: true }));
}

await mkdir(out, { recursive: true });
let sum = 0;
for (const { name, from, text, joined, ...options } of faces) {
  const cut = async (source, letters, targetFormat) =>
    subsetFont(source, letters, { targetFormat, noHinting: true, ...options });
  const bytes = await readFile(new URL(from, modules));
  let font = await cut(bytes, text, joined ? 'truetype' : 'woff2');
  if (joined) {
    const other = await cut(await readFile(new URL(joined.from, modules)), joined.text, 'truetype');
    font = await cut(await join(font, other), text + joined.text, 'woff2');
  }
  await writeFile(new URL(`${name}.woff2`, out), font);
  sum += font.length;
  console.log(String(font.length).padStart(7), name);
}
console.log(String(sum).padStart(7), 'bytes in all');
