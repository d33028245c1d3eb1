// What the search can find, in the pieces that it is found in: sections of chapters, words of the glossary, sheets,
// sources, and the other rooms.
import { liveText } from '../../figures/quantities.ts';
import { moreInstruments } from '../../instrument/more-instruments.ts';
import { workshop } from '../../instrument/workshop.ts';
import { glossary } from '../glossary.ts';
import { chapterHref, href } from '../href.ts';
import { materialLines } from '../reference/materials.ts';
import { sheetHref, sheets } from '../reference/sheets.ts';
import { symbols } from '../reference/symbols.ts';
import { imprint, sources } from '../sources.ts';
import { sectionsOf } from './plain.ts';
import { withWords } from './synonyms.ts';
import type { Piece } from './find.ts';

export interface ChapterSource {
  readonly id: string;
  readonly number: number;
  readonly title: string;
  readonly question: string;
  readonly summary: string;
  /** MDX, without its frontmatter */
  readonly body: string;
  /** its headings of the second and third level, in their order */
  readonly headings: readonly { readonly slug: string; readonly text: string }[];
}

export interface LabSource {
  readonly id: string;
  readonly number: number;
  readonly title: string;
  readonly question: string;
  readonly summary: string;
  readonly needs: readonly string[];
}

const labPiece = ({ id, number, title, question, summary, needs }: LabSource): Piece => ({
  page: `Lab ${number}`,
  title,
  url: href(`labs/${id}/`),
  text: `${question} ${summary} You need: ${needs.join('; ')}.`,
});

/** Throws RangeError where the text's headings are not those that the page was given. */
export function chapterPieces(chapter: ChapterSource): Piece[] {
  const { id, number, title, question, summary, body, headings } = chapter;
  const [opening, ...sections] = sectionsOf(body, (key) => liveText(key, id));
  if (sections.length !== headings.length)
    throw new RangeError(
      `chapter ${id} has ${sections.length} headings in its text and ${headings.length} on its page`,
    );
  const page = `Chapter ${number}, ${title}`;
  return [
    { page, title, url: chapterHref(id), text: `${question} ${summary} ${opening?.text ?? ''}` },
    ...sections.map(({ text }, i) => ({
      page,
      title: headings[i]?.text ?? '',
      url: `${chapterHref(id)}#${headings[i]?.slug}`,
      text,
    })),
  ];
}

const also: Readonly<Record<string, readonly string[]>> = {
  instruments: [
    ...workshop.map(({ name }) => name),
    ...moreInstruments.map(({ instrument, about }) => `${instrument.name}, ${about}`),
  ],
  materials: materialLines.map(({ name }) => name),
  model: symbols.map(({ means }) => means),
};

/** What players call what a sheet is about, beside what its text says. */
const called: Readonly<Record<string, string>> = {
  instruments: moreInstruments
    .map(({ instrument, words }) => `${instrument.name} ${words}`)
    .join(', '),
};

const rooms: readonly Piece[] = [
  {
    page: 'Start',
    title: 'Try this first',
    url: href('start/'),
    text: 'The first ten minutes for a trainee, a teacher and a player.',
  },
  {
    page: 'Bench',
    title: 'The bench',
    url: href('bench/'),
    text: 'Describe what feels right and what is to be strung; get a stringing sheet with gauges you can buy, their pull, and whether a hand could tell. Print it, copy a link, save it as CSV.',
  },
  {
    page: 'Labs',
    title: 'Labs',
    url: href('labs/'),
    text: 'Measure your own strings: listen with the microphone, weigh, hang, push aside, test your hand, check the intonation, and compare with the prediction.',
  },
  {
    page: 'Labs',
    title: 'A class together',
    url: href('labs/class/'),
    text: 'For teachers: take in the rows of a class, pasted or typed, and see all measurements against the prediction, their spread, and the pooled curve of judgements. A tally sheet for a room without phones.',
  },
  {
    page: 'Your book',
    title: 'Your book',
    url: href('book/'),
    text: 'The instruments that you keep on this device: find, rename, duplicate, delete, save as a file, take in a file, back up, restore.',
  },
  {
    page: 'Course',
    title: 'The course',
    url: href('course/'),
    text: 'The chapters, what each builds on, and the exercises done.',
  },
];

/** Everything that the search can find. */
export function pieces(
  chapters: readonly ChapterSource[],
  labs: readonly LabSource[] = [],
): readonly Piece[] {
  const all = [
    ...chapters.toSorted((a, b) => a.number - b.number).flatMap(chapterPieces),
    ...labs.toSorted((a, b) => a.number - b.number).map(labPiece),
    ...rooms,
    ...glossary.map(({ id, term, text }) => ({
      page: 'Glossary',
      title: term,
      url: href(`glossary/#${id}`),
      text,
    })),
    ...sheets.map(({ id, title, question, holds, from }) => ({
      page: 'Reference',
      title,
      url: sheetHref(id),
      text: [`${question} ${holds}. From: ${from}.`, (also[id] ?? []).join('; ')].join(' ').trim(),
      ...(called[id] && { words: called[id] }),
    })),
    ...sources.map((source) => ({
      page: 'Sources',
      title: source.title,
      url: href(`sources/#${source.id}`),
      text: `${imprint(source)}. Taken from it: ${source.used}.`,
    })),
  ];
  return withWords(all);
}
