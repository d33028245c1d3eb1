/** Reads the text of a link. It never throws: what is out of range is clamped and told, what is unknown is ignored. */
import './bend-aims.ts';
import './ceiling.ts';
import './link-now.ts';
import { VERSION } from './link.ts';
import { FieldReader, type Draft } from './link-fields.ts';
import { limits } from './limits.ts';
import { isState, type Instrument, type State, type Target, type TargetString } from './schema.ts';

// Longer than any state by far: a hostile text is cut before it costs time.
const LONGEST = 4000;

export interface Decoded {
  /** Undefined when the text is no link of ours. */
  readonly state: State | undefined;
  /** Sentences on what was changed to fit. */
  readonly notes: readonly string[];
}

/** Reads a link's text on top of `base`, which gives what the link leaves out. */
export function decode(text: string, base: State): Decoded {
  const notes: string[] = [];
  const fields = clean(text).split('/');
  const version = fields[0]?.toLowerCase() ?? '';
  if (version !== VERSION) {
    if (/^v\d+$/.test(version))
      notes.push('This link comes from another version of the site, and this one can’t read it.');
    return { state: undefined, notes };
  }
  const reader = new FieldReader(notes);
  const split = fields.findIndex((f) => f.toLowerCase() === 'to');
  const mine = reader.body(fields.slice(1, split < 0 ? undefined : split));
  const other = split < 0 ? undefined : reader.body(fields.slice(split + 1));
  const strings = mine.strings.flatMap(({ note, pick, ...place }) => {
    if (!pick)
      notes.push(`The gauge of string ${note} couldn’t be read, so the string is left out.`);
    return pick ? [{ note, ...placeOf(place), ...pick }] : [];
  });
  const state: State = {
    ...base,
    drawer: undefined,
    hand: undefined,
    ...reader.options(fields, base),
    mine:
      strings.length >= limits.strings.min ? { ...bodyOf(mine, base.mine), strings } : base.mine,
    other:
      other && other.strings.length >= limits.strings.min
        ? {
            ...bodyOf(other, base.other),
            family: other.family,
            builtFor: other.builtFor,
            ...(other.bridge && { bridge: other.bridge }),
            ...(other.beyond && { beyond: other.beyond }),
            strings: withOn(other),
          }
        : base.other,
  };
  if (strings.length < limits.strings.min)
    notes.push('The link names no string, and an instrument here has at least one.');
  return isState(state)
    ? { state, notes: [...new Set(notes)] }
    : { state: undefined, notes: ['We couldn’t read the link.'] };
}

const withOn = ({ strings, on }: Draft): Target['strings'] =>
  strings.map((string, i) => ({ ...string, ...(on[i] && { on: on[i] }) }));

const bodyOf = (draft: Draft, base: Instrument | Target) => ({
  name: draft.name,
  scale: draft.scale ?? base.scale,
  a4: draft.a4,
  ...(draft.capo && { capo: draft.capo }),
  ...(draft.fretless && { fretless: true as const }),
  ...(draft.bowed && { bowed: true as const }),
});

const placeOf = ({ from, course }: Pick<TargetString, 'from' | 'course'>) => ({
  ...(from && { from }),
  ...(course && { course }),
});

// Line breaks and other space, and the marks of zero width that break long words.
const unseen = /[\s\u00ad\u200b-\u200d\u2060]+/g;

function unescaped(run: string): string {
  try {
    return decodeURIComponent(run);
  } catch {
    return run;
  }
}

/** Undoes what a messenger does to a text: escapes, line breaks, long dashes, quotes around it, a sentence's full stop. */
export function clean(text: string, longest: number = LONGEST): string {
  return text
    .slice(0, longest)
    .replace(/(?:%[0-9a-f]{2})+/gi, unescaped)
    .replace(unseen, '')
    .replace(/[\u2010-\u2015\u2212]/g, '-')
    .replace(/^[^A-Za-z0-9]+|[^A-Za-z0-9]+$/g, '');
}
