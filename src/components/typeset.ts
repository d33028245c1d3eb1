// Equations, typeset at build: KaTeX's visible tree and its MathML, with live numbers in both.
// `\live{key}` in the TeX stands for a number of the reader's instrument. KaTeX sees a sentinel in its
// place, which then gives way to an element with data-live="key"; no KaTeX is needed in the browser.
import katex from 'katex';

export interface Typesetting {
  display?: boolean;
  /** the text of a live quantity in the default state; throws on an unknown key */
  text: (key: string) => string;
}

const call = /\\live(?:\[(\d+)\])?\{([^{}]+)\}/g;
const firstSentinel = 900001;

const escape = (text: string) =>
  text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;').replace(/"/g, '&quot;');

// Widths in digits of what stands between the digits of a number.
const narrow = new Map([
  ['.', 0.5],
  [',', 0.5],
  ['\u00a0', 0.45],
  ['\u2009', 0.3],
]);

/** Room for a number, in digits: its own width, or what the author reserves. */
const room = (text: string, reserved: string | undefined) =>
  Math.max(
    [...text].reduce((sum, c) => sum + (narrow.get(c) ?? 1), 0),
    Number(reserved ?? 0),
  );

/**
 * Sets one equation. `\live[digits]{key}` reserves room for a number that may grow.
 * Throws what `text` throws on an unknown key, KaTeX's ParseError on wrong TeX, and RangeError where
 * a live number touches other digits, which MathML would read as one number.
 */
export function typeset(tex: string, { display = false, text }: Typesetting): string {
  const lives: { key: string; text: string; room: number }[] = [];
  const source = tex.replace(call, (_, reserved: string | undefined, key: string) => {
    const value = text(key);
    lives.push({ key, text: value, room: room(value, reserved) });
    return `{${firstSentinel + lives.length - 1}}`;
  });
  if (/9000\d\d/.test(tex)) throw new RangeError(`write 9000.. in this equation otherwise: ${tex}`);

  let html = katex.renderToString(source, {
    displayMode: display,
    output: 'htmlAndMathml',
    strict: 'error',
    throwOnError: true,
  });
  // The TeX source that KaTeX attaches would go stale as soon as a number changes.
  html = html.replace(/<annotation encoding="application\/x-tex">[^]*?<\/annotation>/, '');

  lives.forEach(({ key, text: value, room: ch }, i) => {
    const sentinel = String(firstSentinel + i);
    const k = escape(key);
    const v = escape(value);
    const inMath = `<mn>${sentinel}</mn>`;
    const inSight = `>${sentinel}</span>`;
    if (html.split(sentinel).length !== 3 || !html.includes(inMath) || !html.includes(inSight))
      throw new RangeError(`\\live{${key}} must stand apart from other digits: ${tex}`);
    html = html
      .replace(inMath, () => `<mn data-live="${k}">${v}</mn>`)
      .replace(
        inSight,
        () => `><span class="live" data-live="${k}" style="min-width:${ch}ch">${v}</span></span>`,
      );
  });
  return html;
}
