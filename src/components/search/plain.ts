// The words of a chapter without its tags, for the search: numbers as they stand before the reader acts, titles and reasons
// of tags as sentences, equations as far as they can be read aloud.

export interface Section {
  /** empty for what stands before the first heading */
  readonly heading: string;
  readonly text: string;
}

const attribute = String.raw`[\w:-]+(?:\s*=\s*(?:"[^"]*"|'[^']*'|\{(?:[^{}]|\{[^{}]*\})*\}))?`;
const tag = new RegExp(String.raw`<(/?)([A-Za-z][\w.]*)((?:\s+${attribute})*)\s*/?>`, 'g');

/** Attributes that readers see as text. */
const spoken = ['title', 'why', 'label', 'aim', 'wrong', 'ask'];

const value = (attributes: string, name: string): string | undefined =>
  new RegExp(String.raw`(?:^|\s)${name}\s*=\s*"([^"]*)"`).exec(attributes)?.[1];

const sentence = (text: string): string => (/[.?!]$/.test(text) ? text : `${text}.`);

const signs: Readonly<Record<string, string>> = {
  mu: 'μ',
  rho: 'ρ',
  pi: 'π',
  sigma: 'σ',
  alpha: 'α',
  lambda: 'λ',
  Delta: 'Δ',
  times: '×',
  approx: '≈',
};

/** A short equation in a line of prose; what can't be read without typesetting falls away. */
const equation = (tex: string): string =>
  tex
    .replace(/\^2|\^\{2\}/g, '²')
    .replace(/\^\{([^{}]*)\}/g, ' to the power $1')
    .replace(/\\([A-Za-z]+)/g, (_, name: string) => signs[name] ?? ' ')
    .replace(/\\[,;! ]/g, ' ')
    .replace(/[\\{}_^]/g, '');

/** The text of a piece of MDX. `quantity` gives the number of a name, and may throw for one that is not there. */
export function plain(mdx: string, quantity: (key: string) => string): string {
  return mdx
    .replace(/\{\/\*[\s\S]*?\*\/\}/g, ' ')
    .replace(tag, (_, end: string, name: string, attributes: string) => {
      if (end) return /^[A-Z]/.test(name) && !['Term', 'PointsTo'].includes(name) ? ' ' : '';
      if (name === 'Q') return quantity(value(attributes, 'k') ?? '');
      if (['Term', 'PointsTo', 'Cite'].includes(name)) return '';
      if (name.startsWith('Drag')) return '…';
      const words = spoken.flatMap((key) => value(attributes, key) ?? []).map(sentence);
      return words.length > 0 ? ` ${words.join(' ')} ` : ' ';
    })
    .replace(/\$\$([\s\S]*?)\$\$/g, ' ')
    .replace(/\$([^$\n]*)\$/g, (_, tex: string) => equation(tex))
    .replace(/!?\[([^\]]*)\]\([^)]*\)/g, '$1')
    .replace(/^\s*(?:[-*>]|\d+\.)\s+/gm, '')
    .replace(/(\*\*|\*|__|`)(?=\S)([^*`\n]*?\S)\1/g, '$2')
    .replace(/&nbsp;/g, ' ')
    .replace(/\s+/g, ' ')
    .replace(/ ([.,;:?!])(?=\s|$)/g, '$1')
    .replace(/,+/g, ',')
    .trim();
}

/** A chapter's sections, divided at its headings of the second and third level, in their order. */
export function sectionsOf(mdx: string, quantity: (key: string) => string): Section[] {
  const pieces = mdx.split(/^#{2,3} +(.+)$/m);
  const sections = [{ heading: '', text: plain(pieces[0] ?? '', quantity) }];
  for (let i = 1; i < pieces.length; i += 2)
    sections.push({
      heading: plain(pieces[i] ?? '', quantity),
      text: plain(pieces[i + 1] ?? '', quantity),
    });
  return sections;
}
