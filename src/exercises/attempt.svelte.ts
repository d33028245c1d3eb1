/** A reader's attempt at an exercise that is picked or put in order: its question, the answer given, the verdict. */
import type { State } from '../instrument/schema.ts';
import { store } from '../instrument/store.svelte.ts';
import { loadExercise, NOT_ARRIVED } from './load.ts';
import { forgetGiven, recallPicked, rememberGiven, type Picked } from './memory.ts';
import type { Asked, PickVerdict } from './picked.ts';
import { progress } from './progress.svelte.ts';
import { CHANGED, NO_ANSWER } from './say.ts';
import type { ExerciseKind, OfKind } from './types.ts';

export class Attempt<K extends ExerciseKind> {
  readonly #kind: K;
  readonly #key: () => string;
  readonly #ask: (exercise: OfKind<K>, state: State) => Asked | undefined;

  /** What came in with the chapter's file; undefined before. */
  exercise: OfKind<K> | undefined = $state.raw();
  given: Picked | undefined = $state.raw();
  #missing = $state.raw(false);
  #asked: Asked | undefined = $derived.by(
    () => this.exercise && this.#ask(this.exercise, store.settled),
  );
  /** Undefined once the question is another than the one answered. */
  readonly standing: Picked | undefined = $derived.by(() =>
    this.given && this.given.right === this.#asked?.right ? this.given : undefined,
  );
  readonly verdict: PickVerdict | undefined = $derived.by(
    () => this.standing && this.#asked?.judge(this.standing.picked),
  );

  constructor(
    kind: K,
    key: () => string,
    ask: (exercise: OfKind<K>, state: State) => Asked | undefined,
  ) {
    this.#kind = kind;
    this.#key = key;
    this.#ask = ask;
  }

  get options(): Asked['options'] | undefined {
    return this.#asked?.options;
  }

  /** A sentence when the verdict is not what has to be said. */
  get notice(): string {
    if (this.#missing) return NOT_ARRIVED;
    if (this.exercise && !this.#asked) return NO_ANSWER;
    return this.exercise && this.given && !this.standing ? CHANGED : '';
  }

  get right(): boolean {
    return this.verdict?.kind === 'right';
  }

  /** Call it in the browser only. */
  async open(chapter: string): Promise<void> {
    void store.open();
    progress.open();
    this.given = recallPicked(this.#key());
    this.exercise = await loadExercise(this.#kind, chapter, this.#key());
    this.#missing = this.exercise === undefined;
    if (this.right) progress.mark(this.#key());
  }

  give(picked: readonly string[]): void {
    if (!this.#asked) return;
    this.given = { picked, right: this.#asked.right };
    rememberGiven(this.#key(), this.given);
    progress.tried(this.#key());
    if (this.right) progress.mark(this.#key());
  }

  /** What the tick says beside its mark: undefined while the answer is not right. */
  get atFirst(): boolean | undefined {
    return this.right ? progress.atFirst(this.#key()) : undefined;
  }

  clear(): void {
    this.given = undefined;
    forgetGiven(this.#key());
  }
}
