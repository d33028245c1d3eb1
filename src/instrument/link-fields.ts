/** The fields of a link, read one by one: each gives what it holds, or a sentence on what was changed to fit. */
import { noteName, noteNumber } from '../physics/index.ts';
import { withCourses } from './courses.ts';
import { drawnNames, drawnRanges, type Drawn, type DrawnRange } from './drawn.ts';
import { builds, familyNames, type Family } from './family-names.ts';
import { familyCodes, number, unitCodes } from './link.ts';
import { limits } from './limits.ts';
import { typicalRange } from './typical.ts';
import { usual } from './usual.ts';
import {
  bridges,
  type Aim,
  type BendChoice,
  type Gauge,
  type OnNow,
  type OwnDrawer,
  type State,
  type Target,
  type TargetString,
  type Trial,
} from './schema.ts';

const sources: readonly OwnDrawer['from'][] = ['mine', 'first', 'stock'];

/** An instrument as far as a link has told of it. */
export interface Draft {
  name: string;
  scale: { treble: number; bass: number } | undefined;
  a4: number;
  strings: TargetString[];
  family: Family | undefined;
  builtFor: Target['builtFor'];
  capo: number | undefined;
  fretless: boolean;
  bowed: boolean;
  bridge: Target['bridge'];
  beyond: Target['beyond'];
  /** What is on it now, string by string */
  on: readonly (OnNow | undefined)[];
}

export class FieldReader {
  private readonly notes: string[];

  constructor(notes: string[]) {
    this.notes = notes;
  }

  private clamp(
    what: string,
    value: number,
    { min, max }: { readonly min: number; readonly max: number },
    shown: (n: number) => string,
  ): number {
    if (value >= min && value <= max) return value;
    const fit = Math.min(max, Math.max(min, value));
    this.notes.push(
      `${what} ${shown(value)} is outside what we can draw here; we took ${shown(fit)}.`,
    );
    return fit;
  }

  private length(text: string): number | undefined {
    const value = Number(text);
    // Dividing leaves a rounding that would make the same length another one.
    const metres = Number((value / 1000).toFixed(7));
    return text !== '' && Number.isFinite(value)
      ? this.clamp('Scale length', metres, limits.scale, (m) => `${number(m * 1000, 1)} mm`)
      : undefined;
  }

  private note(text: string): string | undefined {
    const match = /^([a-g])([sb]?)(\d)$/i.exec(text);
    if (!match) return undefined;
    const spelled = `${match[1]?.toUpperCase()}${match[2]?.toLowerCase().replace('s', '#')}${match[3]}`;
    const exact = noteNumber(spelled);
    const fit = this.clamp('Note', exact, limits.note, noteName);
    return fit === exact ? spelled : noteName(fit);
  }

  gauge(text: string): Gauge | undefined {
    const match =
      /^([pw])(\d{1,3}(?:\.\d+)?)(?:x(\d+(?:\.\d+)?)(?:d(\d+(?:\.\d+)?))?)?([a-z])?$/i.exec(text);
    if (!match) return undefined;
    const kind = match[1]?.toLowerCase() === 'w' ? 'wound' : 'plain';
    const gauge = Number(match[2]);
    const family = this.family(match[5] ?? '');
    if (match[5] && !family) return undefined;
    const from = family ? { family } : {};
    if (match[3] !== undefined) {
      const unitWeight = this.clamp(
        'Unit weight',
        Number(match[3]) / 1000,
        limits.unitWeight,
        (m) => `${number(m * 1000, 4)} g/m`,
      );
      const doubt = Math.min(Number(match[4] ?? NaN) * 1e-6, limits.unitWeight.max);
      return {
        kind,
        gauge: this.clamp('Gauge', gauge, limits.gauge, String),
        unitWeight,
        ...(doubt >= 0 && { doubt }),
        ...from,
      };
    }
    return { kind, gauge: this.clamp('Gauge', gauge, typicalRange(kind, family), String), ...from };
  }

  private family(code: string): Family | undefined {
    return familyNames.find((name) => familyCodes[name] === code.toLowerCase());
  }

  body(fields: readonly string[]): Draft {
    const draft: Draft = {
      name: '',
      scale: undefined,
      a4: 440,
      strings: [],
      family: undefined,
      builtFor: undefined,
      capo: undefined,
      fretless: false,
      bowed: false,
      bridge: undefined,
      beyond: undefined,
      on: [],
    };
    let counts: readonly number[] = [];
    let from: readonly number[] = [];
    for (const field of fields) {
      const [, key = '', value = ''] = /^([A-Za-z]+\d?)(?:-(.*))?$/.exec(field) ?? [];
      if (key.toLowerCase() === 'n') draft.name = readName(value);
      else if (key.toLowerCase() === 'l') this.scale(draft, value);
      else if (key.toLowerCase() === 's') draft.family = this.family(value);
      else if (key.toLowerCase() === 'bt') {
        const build = builds.find((name) => name === value.toLowerCase());
        draft.builtFor = build === 'steel' ? undefined : build;
      } else if (key.toLowerCase() === 'bg') {
        draft.bridge = bridges.find((name) => name === value.toLowerCase());
      } else if (key.toLowerCase() === 'by') draft.beyond = this.beyond(value);
      else if (key.toLowerCase() === 'on') draft.on = this.on(value);
      else if (key.toLowerCase() === 'cs') counts = value.split('-').map(Number);
      else if (key.toLowerCase() === 'fr') from = value.split('-').map(Number);
      else if (key.toLowerCase() === 'cp') draft.capo = this.from(Number(value || NaN));
      else if (key.toLowerCase() === 'fl') draft.fretless = true;
      else if (key.toLowerCase() === 'bw') draft.bowed = true;
      else if (key.toLowerCase() === 'a' && value && Number.isFinite(Number(value))) {
        draft.a4 = this.clamp('A4', Number(value), limits.a4, (n) => `${number(n, 1)} Hz`);
      } else this.string(draft, key, value);
    }
    draft.strings = [
      ...withCourses(
        draft.strings.map((string, i) => {
          const begins = this.from(from[i] ?? 0);
          return begins ? { ...string, from: begins } : string;
        }),
        counts,
      ),
    ];
    return draft;
  }

  /** A fret that a string or a capo begins at; undefined for the nut and for what is no fret. */
  private from(fret: number): number | undefined {
    return Number.isInteger(fret) && fret !== 0
      ? this.clamp('Fret', fret, limits.from, String)
      : undefined;
  }

  private beyond(value: string): Target['beyond'] {
    const [nut = NaN, saddle = NaN] = value.split('-').map((part) => Number(part || NaN));
    if (!Number.isFinite(nut) || !Number.isFinite(saddle)) return undefined;
    const fit = (mm: number): number =>
      this.clamp(
        'Length beyond',
        Number((mm / 1000).toFixed(7)),
        limits.beyond,
        (m) => `${number(m * 1000, 1)} mm`,
      );
    return { nut: fit(nut), saddle: fit(saddle) };
  }

  private on(value: string): readonly (OnNow | undefined)[] {
    return value.split('-').map((part) => {
      const [code = '', noteText = ''] = part.split(/y/i);
      const [gauge, note] = [this.gauge(code), this.note(noteText)];
      return gauge && note ? { note, ...gauge } : undefined;
    });
  }

  private scale(draft: Draft, value: string): void {
    const [treble, bass = treble] = value.split('-').map((part) => this.length(part));
    if (treble !== undefined && bass !== undefined) draft.scale = { treble, bass };
  }

  private string(draft: Draft, key: string, value: string): void {
    const note = this.note(key);
    if (note === undefined) return;
    if (draft.strings.length === limits.strings.max) {
      this.notes.push(
        `An instrument here has at most ${limits.strings.max} strings, so the rest are left out.`,
      );
      return;
    }
    draft.strings.push({ note, pick: this.gauge(value) });
  }

  private board(text: string): Trial['board'] {
    const [first = '', second = '', third = ''] = text.split('-');
    const [treble, bass] = [this.length(first), this.length(second)];
    const square = Number(third || NaN);
    if (treble === undefined || bass === undefined || !Number.isInteger(square)) return undefined;
    return { treble, bass, square: this.clamp('Square fret', square, limits.square, String) };
  }

  /** Out of its range, a drawing's own value is put at the range's end without a word: it changes no instrument. */
  private drawn(value: (key: string) => string | undefined): { drawn?: Drawn } {
    const entries = drawnNames.flatMap((name) => {
      const { min, max, whole }: DrawnRange = drawnRanges[name];
      const read = Number(value(`x-${name}`)?.replace(/^m/i, '-') || NaN);
      if (!Number.isFinite(read)) return [];
      const fit = Math.min(max, Math.max(min, read));
      return [[name, whole ? Math.round(fit) : fit] as const];
    });
    return entries.length > 0 ? { drawn: Object.fromEntries(entries) } : {};
  }

  private ceiling(text = ''): Pick<Aim, 'ceiling'> {
    if (text.toLowerCase() === 'now') return { ceiling: 'now' };
    const newtons = Number(text || NaN);
    return Number.isFinite(newtons)
      ? { ceiling: this.clamp('Ceiling', newtons, limits.ceiling, (n) => `${number(n, 1)} N`) }
      : {};
  }

  private weights(text: string): Aim['weights'] {
    const [, pull, push, travel] = (/^(\d)-(\d)-(\d)$/.exec(text) ?? []).map(Number);
    const weights = { pull: pull ?? 1, push: push ?? 0, travel: travel ?? 0 };
    return weights.pull + weights.push + weights.travel > 0 ? weights : usual.weights;
  }

  private bend(value: (key: string) => string | undefined): BendChoice {
    const cents = (n: number) => `${number(n, 1)} cents`;
    const [fret, rise] = [Number(value('bf') || NaN), Number(value('br') || NaN)];
    return {
      fret: Number.isInteger(fret)
        ? this.clamp('Fret', fret, limits.fret, String)
        : usual.bend.fret,
      rise: Number.isFinite(rise) ? this.clamp('Bend', rise, limits.rise, cents) : usual.bend.rise,
      shown: value('b')?.toLowerCase() === 'open',
    };
  }

  private drawer(fields: readonly string[]): { drawer: OwnDrawer } | undefined {
    const values = (key: string) =>
      fields.flatMap((f) => (f.toLowerCase().startsWith(key) ? [f.slice(key.length)] : []));
    const from = sources.find((name) => name === values('from-')[0]?.toLowerCase());
    const strings = values('own-').flatMap((text) => this.gauge(text) ?? []);
    return from && { drawer: { from, strings } };
  }

  options(
    fields: readonly string[],
    base: State,
  ): Pick<State, 'units' | 'hand' | 'trial' | 'aim' | 'bend' | 'drawer'> {
    const value = (key: string) =>
      fields.find((f) => f.toLowerCase().startsWith(`${key}-`))?.slice(key.length + 1);
    const units = Object.entries(unitCodes).find(
      ([, code]) => code === value('u')?.toLowerCase(),
    )?.[0];
    const string = Number(value('ts') ?? 1) - 1;
    const factor = Number(value('f') ?? 100) / 100;
    const trial = {
      length: this.length(value('tl') ?? ''),
      note: this.note(value('tn') ?? ''),
      gauge: this.gauge(value('tg') ?? ''),
      board: this.board(value('tb') ?? ''),
    };
    const hand = value('h')?.toLowerCase() === 'left' ? 'left' : undefined;
    return {
      ...(hand && { hand }),
      units: (units as State['units'] | undefined) ?? base.units,
      trial: {
        string: Number.isInteger(string) && string >= 0 && string < limits.strings.max ? string : 0,
        ...trial,
        ...this.drawn(value),
      },
      aim: {
        mode: value('m')?.toLowerCase() === 'even' ? 'even' : 'string',
        factor: Number.isFinite(factor)
          ? this.clamp('Aim', factor, limits.factor, (n) => `${number(n * 100, 1)} %`)
          : 1,
        kinds: value('k')?.toLowerCase() === 'any' ? 'any' : 'keep',
        weights: this.weights(value('w') ?? ''),
        ...this.ceiling(value('c')),
      },
      bend: this.bend(value),
      ...this.drawer(fields),
    };
  }
}

function readName(code: string): string {
  // A hyphen stands for a space; a real one comes by its number.
  const name = code.replace(/-/g, ' ').replace(/\.([0-9a-f]{1,6})\./gi, (_, hex: string) => {
    const point = Number.parseInt(hex, 16);
    return point >= 32 && point <= 0x10ffff && !(point >= 0xd800 && point <= 0xdfff)
      ? String.fromCodePoint(point)
      : '';
  });
  const letters = Array.from(name.trim());
  // The limit counts UTF-16 units, as the schema does; a pair of them is never split.
  while (letters.join('').length > limits.name) letters.pop();
  return letters.join('').trim();
}
