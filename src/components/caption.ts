/**
 * A figure's caption taken apart: its first sentence says what to do and stands under the title, before the drawing; the rest is
 * the key. Authors write one caption.
 */

export interface Caption {
  /** HTML of the first sentence */
  readonly act: string;
  /** HTML of the rest; empty where there is none */
  readonly key: string;
}

const FIRST_PARAGRAPH = /^\s*<p>(<strong>[^]*?)<\/p>/;

/** Index just behind the first sentence of a paragraph's HTML, its closing tags included. */
function endOfSentence(html: string): number {
  let depth = 0;
  let ended = false;
  for (const { 0: piece, index } of html.matchAll(/<[^>]*>|[^<]/g)) {
    if (ended && depth === 0 && /\s/.test(piece)) return index;
    if (piece.startsWith('</')) depth -= 1;
    else if (piece.startsWith('<')) depth += /\/>$|^<(br|!)/.test(piece) ? 0 : 1;
    else if (/[.!?]/.test(piece)) ended = true;
    else if (!/[’”)\s]/.test(piece) || depth > 0) ended = false;
  }
  return html.length;
}

/** A caption whose first paragraph begins with stressed words says what to do; any other is all key. */
export function takenApart(html: string): Caption {
  const [whole, paragraph] = FIRST_PARAGRAPH.exec(html) ?? [];
  if (whole === undefined || paragraph === undefined) return { act: '', key: html };
  const end = endOfSentence(paragraph);
  const rest = paragraph.slice(end).trim();
  const after = html.slice(whole.length).trim();
  return { act: paragraph.slice(0, end).trim(), key: (rest && `<p>${rest}</p>`) + after };
}
