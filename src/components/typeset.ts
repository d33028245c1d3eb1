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

/** Room for a number: that of its digits, or what the author reserves with \live[characters]{key}. */
const room = (text: string, reserved: string | undefined) =>
  Math.max([...text].length, Number(reserved ?? 0));

/**
 * Sets one equation. `\live[characters]{key}` reserves room for a number that may grow.
 * Throws what `text` throws on an unknown key, and KaTeX's ParseError on wrong TeX.
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
    const before = html;
    html = html
      .replace(`<mn>${sentinel}</mn>`, `<mn data-live="${k}">${v}</mn>`)
      .replace(
        `>${sentinel}<`,
        `><span class="live" data-live="${k}" style="min-width:${ch}ch">${v}</span><`,
      );
    if (html.includes(sentinel) || html.length === before.length)
      throw new Error(`\\live{${key}} did not survive typesetting: ${tex}`);
  });
  return html;
}
