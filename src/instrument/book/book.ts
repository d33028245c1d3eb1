/**
 * The book: all that a reader keeps, in this page's memory and on the shelf behind it. What the shelf refuses stays in the
 * memory, and `trouble` says so. Windows of one browser tell each other what they have written.
 */
import { canonical, saysTheSame } from './merge.ts';
import { wrongWith, type BookRecord } from './schema.ts';
import { newId, noShelf, type Change, type Shelf } from './shelf.ts';

export type Trouble = 'blocked' | 'full';

/** As much of a BroadcastChannel as the book uses. */
export interface Channel {
  postMessage(message: unknown): void;
  onmessage: ((event: MessageEvent) => void) | null;
  close(): void;
}

type Fields = Record<string, unknown>;

export class Book {
  trouble: Trouble | undefined;
  /** What lies on the shelf and can't be read by this version: it stays where it is, and goes into a file as it is. */
  spoilt: readonly unknown[] = [];
  #shelf: Shelf;
  readonly #channel: Channel | undefined;
  readonly #records = new Map<string, BookRecord>();
  /** What the shelf has not taken, by id, with what it came from */
  readonly #waiting = new Map<string, Change>();
  /** What is on its way to the shelf */
  #sent: readonly Change[] = [];
  readonly #listeners = new Set<() => void>();
  #writing: Promise<unknown> = Promise.resolve();

  private constructor(shelf: Shelf, channel: Channel | undefined) {
    this.#shelf = shelf;
    this.#channel = channel;
    if (channel) channel.onmessage = () => void this.reload();
  }

  static async open(
    shelf: () => Promise<Shelf>,
    channel: (() => Channel) | undefined,
  ): Promise<Book> {
    try {
      const book = new Book(await shelf(), channel?.());
      await book.reload();
      return book;
    } catch {
      const book = new Book(noShelf, undefined);
      book.trouble = 'blocked';
      return book;
    }
  }

  /** Everything that is not put away. */
  get records(): readonly BookRecord[] {
    return [...this.#records.values()].filter((r) => r.deleted === undefined);
  }

  /** Everything, what was put away included: what a file holds. */
  get all(): readonly BookRecord[] {
    return [...this.#records.values()];
  }

  get(id: string): BookRecord | undefined {
    return this.#records.get(id);
  }

  listen(listener: () => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  /** Takes up what lies on the shelf; what waits in this window stays. */
  async reload(): Promise<void> {
    const lying = await this.#shelf.all();
    const spoilt: unknown[] = [];
    const seen = new Set<string>();
    for (const each of lying) {
      if (wrongWith(each) !== undefined) {
        spoilt.push(each);
        continue;
      }
      const record = each as BookRecord;
      seen.add(record.id);
      if (!this.#waiting.has(record.id)) this.#records.set(record.id, record);
    }
    this.spoilt = spoilt;
    for (const id of this.#records.keys())
      if (!seen.has(id) && !this.#waiting.has(id)) this.#records.delete(id);
    this.#tell();
  }

  /** Keeps a new thing; gives its id. */
  async add(fields: Fields & { readonly kind: string }, id: string = newId()): Promise<string> {
    const now = Date.now();
    const record = { ...fields, id, created: now, changed: now, revision: 0 };
    await this.#write([{ next: plain(record) as BookRecord, base: this.#records.get(id) }]);
    return id;
  }

  /** Keeps many new things in one write. */
  async addAll(all: readonly (Fields & { readonly kind: string })[]): Promise<void> {
    const now = Date.now();
    const changes = all.map((fields, i) => {
      // A millisecond apart, so that they keep their order.
      const record = { ...fields, id: newId(), created: now + i, changed: now, revision: 0 };
      return { next: plain(record) as BookRecord, base: undefined };
    });
    await this.#write(changes);
  }

  /** Changes some fields of a record; one of `undefined` is taken out. */
  async change(id: string, fields: Fields): Promise<void> {
    const base = this.#records.get(id);
    if (!base) return;
    const next = plain({ ...base, ...fields }) as BookRecord;
    if (canonical(next) === canonical(base)) return;
    await this.#write([{ next: { ...next, changed: Date.now() }, base }]);
  }

  /** Puts a record away; `putBack` undoes it. */
  putAway = (id: string): Promise<void> => this.change(id, { deleted: Date.now() });
  putBack = (id: string): Promise<void> => this.change(id, { deleted: undefined });

  async duplicate(id: string): Promise<string | undefined> {
    const record = this.#records.get(id);
    if (!record) return undefined;
    const copy: Fields = { ...record };
    if (typeof copy.name === 'string') copy.name = freeName(copy.name, this.records);
    return this.add(copy as Fields & { kind: string });
  }

  /** Takes in records from a file. Those that are here already are replaced as if changed here. */
  async takeIn(records: readonly BookRecord[]): Promise<void> {
    const changes = records.flatMap((next): Change[] => {
      const base = this.#records.get(next.id);
      if (base && saysTheSame(base, next)) return [];
      return [{ next: { ...next, revision: base?.revision ?? next.revision }, base }];
    });
    await this.#write(changes);
  }

  /** What the shelf may not have taken yet, in the order in which it was changed, each with what it came from. */
  get waiting(): readonly Change[] {
    const onTheWay = new Map(this.#sent.map((change) => [change.next.id, change.next]));
    const later = [...this.#waiting.values()].filter((change) => !this.#sent.includes(change));
    return [
      ...this.#sent,
      ...later.map(({ next, base }) => ({ next, base: onTheWay.get(next.id) ?? base })),
    ];
  }

  /** Takes up what was waiting when another page of this reader's was left; true when the shelf has all of it. */
  async takeUp(changes: readonly Change[]): Promise<boolean> {
    // One after the other: a later change of a thing comes from an earlier one.
    for (const change of changes) await this.#write([change]);
    return this.trouble === undefined;
  }

  /** Tries again to put on the shelf what it refused. */
  async retry(): Promise<void> {
    if (this.#waiting.size > 0) await this.#write([]);
  }

  close(): void {
    this.#channel?.close();
    this.#shelf.close();
  }

  /** In this page's memory at once; on the shelf one write after the other. */
  async #write(changes: readonly Change[]): Promise<void> {
    for (const { next, base } of changes) {
      const earlier = this.#waiting.get(next.id);
      this.#records.set(next.id, next);
      this.#waiting.set(next.id, { next, base: earlier ? earlier.base : base });
    }
    this.#tell();
    const turn = this.#writing.then(() => this.#put());
    this.#writing = turn;
    await turn;
  }

  async #put(): Promise<void> {
    const sent = [...this.#waiting.values()];
    if (sent.length === 0) return;
    this.#sent = sent;
    try {
      const written = await this.#shelf.put(sent);
      for (const change of sent) {
        const later = this.#waiting.get(change.next.id);
        if (later === change) this.#waiting.delete(change.next.id);
        else if (later) {
          // Changed again meanwhile: the next write comes from what lies there now.
          const lies = written.find((r) => r.id === change.next.id);
          this.#waiting.set(change.next.id, { next: later.next, base: lies ?? later.base });
        }
      }
      for (const record of written)
        if (!this.#waiting.has(record.id)) this.#records.set(record.id, record);
      if (this.trouble === 'full') this.trouble = undefined;
      this.#channel?.postMessage(written.map((r) => r.id));
    } catch {
      // What a blocked shelf refuses goes on waiting too, so that the next page may take it up.
      this.trouble ??= 'full';
    }
    this.#sent = [];
    this.#tell();
  }

  #tell(): void {
    for (const listener of this.#listeners) listener();
  }
}

/** Without fields of no value and without anything that can't be stored, such as a proxy of a drawing's state. */
const plain = (value: unknown): unknown => JSON.parse(JSON.stringify(value));

/** A name that no entry has yet: "Redshank, copy", "Redshank, copy 2". */
function freeName(name: string, records: readonly BookRecord[]): string {
  const taken = new Set(records.map((r) => ('name' in r ? r.name : '')));
  const stem = `${name.replace(/, copy(?: \d+)?$/, '').slice(0, 28)}, copy`;
  for (let n = 1; ; n += 1) {
    const free = n === 1 ? stem : `${stem} ${n}`;
    if (!taken.has(free)) return free;
  }
}
