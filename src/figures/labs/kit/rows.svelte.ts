/** The readings of one lab on one string, kept in the book as they are typed, and what holds for all of them. */
import type { Book } from '../../../instrument/book/book.ts';
import { watchBook } from '../../../instrument/book/open.ts';
import type { BookRecord, RowRecord, SettingRecord } from '../../../instrument/book/schema.ts';

export interface Reading {
  readonly id: string;
  readonly values: Readonly<Record<string, number>>;
}

type Values = Readonly<Record<string, number | string | boolean | null>>;

const isRow = (record: BookRecord, lab: string): record is RowRecord =>
  record.kind === 'row' && (record as RowRecord).lab === lab;

const numbers = (values: Readonly<Record<string, unknown>>): Record<string, number> =>
  Object.fromEntries(
    Object.entries(values).flatMap(([key, value]) =>
      typeof value === 'number' ? [[key, value]] : [],
    ),
  );

export class Rows {
  /** All readings of the lab, of whatever string, in the order in which they were taken */
  all: readonly RowRecord[] = $state.raw([]);
  settings: Readonly<Record<string, number>> = $state.raw({});
  trouble: string = $state.raw('');
  /** Whether the book has been read */
  isRead = $state.raw(false);
  /** What was taken out last, until something else happens */
  gone: readonly string[] = $state.raw([]);
  /** How often something was done to the readings on this page: what follows from it is said aloud, and nothing before */
  acts = $state.raw(0);
  readonly lab: string;
  #book: Book | undefined;
  /** What was typed before the book was open */
  #waiting: ((book: Book) => void)[] = [];

  constructor(lab: string) {
    this.lab = lab;
  }

  /** Takes up what is in the book; gives the way to leave it. */
  open(): () => void {
    return watchBook((book) => {
      this.#book = book;
      this.#look(book);
      for (const act of this.#waiting.splice(0)) act(book);
    });
  }

  #look(book: Book): void {
    this.isRead = true;
    this.all = book.records
      .filter((each) => isRow(each, this.lab))
      .sort((a, b) => a.created - b.created);
    const kept = book.get(this.#settingId);
    this.settings =
      kept?.kind === 'setting'
        ? numbers((kept as SettingRecord).value as object as Record<string, unknown>)
        : {};
    this.trouble = book.trouble
      ? 'This browser keeps nothing for this site, or has no room left. Save the readings as a file before you go.'
      : '';
  }

  /** Now, or as soon as the book is open. */
  #once(act: (book: Book) => void): void {
    if (this.#book) act(this.#book);
    else this.#waiting.push(act);
  }

  get #settingId(): string {
    return `lab.${this.lab}`;
  }

  of(string: string): readonly Reading[] {
    return this.all
      .filter((record) => record.of === string)
      .map(({ id, values }) => ({ id, values: numbers(values) }));
  }

  /** Keeps a value of a reading; without an id it begins a new one. */
  set(string: string, id: string | undefined, key: string, value: number): void {
    this.gone = [];
    this.acts += 1;
    this.#once((book) => {
      const known = this.all.find((record) => record.id === id);
      if (known) void book.change(known.id, { values: { ...known.values, [key]: value } });
      else void book.add({ kind: 'row', lab: this.lab, of: string, values: { [key]: value } });
    });
  }

  add(string: string, values: Values): void {
    this.addAll(string, [values]);
  }

  /** Keeps many readings in one write. */
  addAll(string: string, all: readonly Values[]): void {
    this.takeIn(all.map((values) => ({ of: string, values })));
  }

  /** The same, of several strings. */
  takeIn(all: readonly { readonly of: string; readonly values: Values }[]): void {
    this.gone = [];
    this.acts += 1;
    this.#once((book) => {
      void book.addAll(
        all.map(({ of, values }) => ({ kind: 'row', lab: this.lab, of, values: { ...values } })),
      );
    });
  }

  takeOut(id: string): void {
    this.gone = [id];
    this.acts += 1;
    void this.#book?.putAway(id);
  }

  /** Takes out all readings of the lab, of whatever string. */
  takeOutAll(): void {
    this.gone = this.all.map(({ id }) => id);
    this.acts += 1;
    for (const id of this.gone) void this.#book?.putAway(id);
  }

  putBack(): void {
    for (const id of this.gone) void this.#book?.putBack(id);
    this.gone = [];
    this.acts += 1;
  }

  /** Keeps what holds for all readings of the lab, such as a balance's step. */
  setting(key: string, value: number): void {
    this.acts += 1;
    this.#once((book) => {
      const next = { ...this.settings, [key]: value };
      if (book.get(this.#settingId)) void book.change(this.#settingId, { value: next });
      else void book.add({ kind: 'setting', value: next }, this.#settingId);
    });
  }

  /** Keeps anything else in the book, such as a weighed string. */
  async keep(record: Record<string, unknown> & { readonly kind: string }): Promise<boolean> {
    if (!this.#book) return false;
    await this.#book.add(record);
    return this.#book.trouble === undefined;
  }
}
