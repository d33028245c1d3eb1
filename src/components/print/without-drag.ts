// Paper can't be dragged: a sentence that tells a finger to is left out there, and what is to be done then. It works on the built text, whatever holds the words.

const VOID = /^(area|base|br|col|hr|img|input|link|meta|source|wbr)$/;
const DRAG = /\b(drag|slide (?!rule))/i;
const THEN = /^\s*Then\b/;

/** A sentence's HTML without what is not read: tags, and what scripts and styles hold. */
const words = (html: string): string =>
  html.replace(/<(script|style|template)\b[^]*?<\/\1>/g, '').replace(/<[^>]*>/g, '');

/** The sentences of a paragraph's HTML, each with all of its tags closed; joined they are the paragraph again. */
export function sentences(html: string): string[] {
  const found: string[] = [];
  let sentence = '';
  let depth = 0;
  let ended = false;
  for (const [token] of html.matchAll(
    /<(script|style|template)\b[^]*?<\/\1>|<!--[^]*?-->|<[^>]*>|[^<]+/g,
  )) {
    const [, closes, name = ''] = /^<(\/?)([\w-]+)/.exec(token) ?? [];
    const isWhole = /^<(script|style|template)\b/.test(token) || token.startsWith('<!--');
    if (name && !isWhole) {
      sentence += token;
      if (closes) depth -= 1;
      else if (!VOID.test(name) && !token.endsWith('/>')) depth += 1;
      continue;
    }
    if (isWhole) {
      sentence += token;
      continue;
    }
    // A sentence that ended inside a tag is over once text goes on outside of it.
    if (depth === 0 && ended && /^\s/.test(token)) {
      found.push(sentence);
      sentence = '';
    }
    if (depth > 0) sentence += token;
    else {
      const parts = token.split(/(?<=[.?!][”’)]?)(?=\s)/);
      for (const part of parts.slice(0, -1)) {
        found.push(sentence + part);
        sentence = '';
      }
      sentence += parts.at(-1) ?? '';
    }
    ended = /[.?!][”’)]?$/.test(token);
  }
  return [...found, sentence].filter((each) => each !== '');
}

const ISLANDS = /<(\/?)astro-(island|slot)\b[^>]*>|(<p\b[^>]*>)([^]*?)(<\/p>)/g;

/**
 * The text, whose sentences that speak of dragging are for the screen alone. What an island draws itself stays as it is: its script
 * takes up what was built only if it finds just that, and would else draw all of it anew under the reader's hand.
 */
export function withoutDragOnPaper(html: string): string {
  // What holds the place: an island, or a chapter's own words in a slot of one.
  const within: string[] = [];
  return html.replace(
    ISLANDS,
    (
      whole: string,
      closes: string | undefined,
      holder: string | undefined,
      open: string,
      inside: string,
      close: string,
    ) => {
      if (holder) {
        if (closes) within.pop();
        else within.push(holder);
        return whole;
      }
      if (within.at(-1) === 'island') return whole;
      if (!DRAG.test(words(inside)) || inside.includes('<p')) return whole;
      let isLeftOut = false;
      const told = sentences(inside).map((sentence) => {
        const said = words(sentence);
        isLeftOut = DRAG.test(said) || (isLeftOut && THEN.test(said));
        return isLeftOut ? `<span class="screen-only">${sentence}</span>` : sentence;
      });
      return open + told.join('') + close;
    },
  );
}
