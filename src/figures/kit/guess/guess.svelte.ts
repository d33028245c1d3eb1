/** A guess that is made in a drawing: where its marks stand, which of them the reader has put there, and whether the answer is shown. */
import { forget, recall, remember } from '../../../instrument/storage.ts';

interface Kept {
  readonly values: readonly number[];
  readonly made: readonly boolean[];
  readonly shown: boolean;
}

/** What was remembered, if it is a guess with as many marks. */
function readKept(text: string | undefined, marks: number): Kept | undefined {
  try {
    const { values, made, shown } = JSON.parse(text ?? 'null') as Record<keyof Kept, unknown>;
    const isGood =
      Array.isArray(values) &&
      Array.isArray(made) &&
      values.length === marks &&
      made.length === marks &&
      values.every((value) => Number.isFinite(value));
    return isGood
      ? { values: values as number[], made: made.map(Boolean), shown: shown === true }
      : undefined;
  } catch {
    return undefined;
  }
}

export class HandGuess {
  /** By which the device remembers it; no link carries it */
  readonly id: string;
  readonly #starts: readonly number[];
  values: readonly number[] = $state.raw([]);
  /** Which marks the reader has put where they stand */
  made: readonly boolean[] = $state.raw([]);
  /** Whether the answer lies over the guess */
  shown = $state.raw(false);
  /** Whether every mark has been put somewhere */
  readonly isMade: boolean = $derived(this.made.every(Boolean));
  /** Whether any has */
  readonly isBegun: boolean = $derived(this.made.some(Boolean));

  constructor(id: string, starts: readonly number[]) {
    this.id = id;
    this.#starts = starts;
    this.values = starts;
    this.made = starts.map(() => false);
  }

  /** Takes up what the device remembers. */
  recall(): void {
    const kept = readKept(recall(`guess.hand.${this.id}`), this.#starts.length);
    if (!kept) return;
    this.values = kept.values;
    this.made = kept.made;
    this.shown = kept.shown;
  }

  put(mark: number, value: number): void {
    if (this.shown) return;
    this.values = this.values.map((old, i) => (i === mark ? value : old));
    this.made = this.made.map((old, i) => old || i === mark);
  }

  /** Puts back what a drag that is given up has moved. */
  restore({ values, made }: Pick<HandGuess, 'values' | 'made'>): void {
    this.values = values;
    this.made = made;
  }

  /** A mark is let go. */
  settle(): void {
    const { values, made, shown } = this;
    remember(`guess.hand.${this.id}`, JSON.stringify({ values, made, shown }));
  }

  show(): void {
    this.shown = true;
    if (this.isBegun) this.settle();
  }

  clear(): void {
    this.values = this.#starts;
    this.made = this.#starts.map(() => false);
    this.shown = false;
    forget(`guess.hand.${this.id}`);
  }
}
