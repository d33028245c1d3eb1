/** Which exercises have been answered right, kept on the device: shared by all islands of a page. */
import { forget, recallAll, remember } from '../instrument/storage.ts';

const DONE = 'done.';
const TRIES = 'tries.';
/** What a reset clears: the marks, the tries, the answers, the guesses. */
const KEPT = [DONE, TRIES, 'answer.', 'guess.'] as const;

const isDate = (text: string): boolean => /^\d{4}-\d\d-\d\d$/.test(text);

/** The day, as the device counts it. */
export const today = (now = new Date()): string =>
  [now.getFullYear(), now.getMonth() + 1, now.getDate()]
    .map((part) => String(part).padStart(2, '0'))
    .join('-');

class Progress {
  /** The day on which an exercise was first answered right, by its key. */
  #done: ReadonlyMap<string, string> = $state.raw(new Map());
  /** How often an exercise has been answered up to the first right answer, by its key. */
  #tries: ReadonlyMap<string, number> = $state.raw(new Map());
  #cleared: ReadonlyMap<string, string> | undefined = $state.raw();
  #refused = $state.raw(false);
  #opened = false;

  /** Undefined while it has not been. */
  day(key: string): string | undefined {
    return this.#done.get(key);
  }

  count(keys: readonly string[]): number {
    return keys.filter((key) => this.#done.has(key)).length;
  }

  /** True when the device refuses to remember. */
  get refused(): boolean {
    return this.#refused;
  }

  get canUndo(): boolean {
    return this.#cleared !== undefined;
  }

  /** Reads the device's memory and follows it; call it in the browser only. */
  open(): void {
    if (this.#opened) return;
    this.#opened = true;
    this.#read();
    // Another tab, or a page that the browser had kept, may have gone on.
    window.addEventListener('storage', () => this.#read());
    window.addEventListener('pageshow', ({ persisted }) => {
      if (persisted) this.#read();
    });
  }

  /** True where the first answer was right, false where a later one was; undefined before, and where nobody counted. */
  atFirst(key: string): boolean | undefined {
    const tries = this.#tries.get(key);
    return tries === undefined || !this.#done.has(key) ? undefined : tries === 1;
  }

  /** Counts an answer; after the first right one no more are counted. Call it before `mark`. */
  tried(key: string): void {
    if (this.#done.has(key)) return;
    const tries = (this.#tries.get(key) ?? 0) + 1;
    this.#tries = new Map(this.#tries).set(key, tries);
    this.#refused = !remember(TRIES + key, String(tries));
  }

  mark(key: string): void {
    if (this.#done.has(key)) return;
    const day = today();
    this.#done = new Map(this.#done).set(key, day);
    this.#refused = !remember(DONE + key, day);
  }

  /** Clears every mark, count, answer and guess of this device; `undo` brings them back as long as the page is open. */
  reset(): void {
    this.#cleared = new Map(KEPT.flatMap((prefix) => [...recallAll(prefix)]));
    for (const name of this.#cleared.keys()) forget(name);
    this.#done = new Map();
    this.#tries = new Map();
  }

  undo(): void {
    for (const [name, text] of this.#cleared ?? []) remember(name, text);
    this.#cleared = undefined;
    this.#read();
  }

  /** Asks whether the device remembers at all. */
  probe(): void {
    this.#refused = !remember('probe', 'x');
    forget('probe');
  }

  #read(): void {
    // Where nothing can be kept, what this page knows is all there is.
    if (this.#refused) return;
    this.#done = new Map(
      [...recallAll(DONE)]
        .filter(([, text]) => isDate(text))
        .map(([name, text]) => [name.slice(DONE.length), text]),
    );
    this.#tries = new Map(
      [...recallAll(TRIES)]
        .filter(([, text]) => /^[1-9]\d{0,5}$/.test(text))
        .map(([name, text]) => [name.slice(TRIES.length), Number(text)]),
    );
  }
}

export const progress = new Progress();
