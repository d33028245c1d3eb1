/** What a page holds, as far as what it takes up from elsewhere has to know: `held.svelte.ts` says what each is. */
import type { State } from './schema.ts';

/** What undo goes back to. */
export interface Step {
  readonly state: State;
  readonly visiting: boolean;
  readonly tail: string;
  /** The reader's own before, where the step changed that */
  readonly own?: State | undefined;
}

export interface Page {
  state: State;
  settled: State;
  own: State;
  visiting: boolean;
  tail: string;
  past: readonly Step[];
  notice: string;
  unnamed: State | undefined;
  begun: boolean;
  push(own?: State): void;
  adopt(next: State): void;
  keep(): void;
  settle(push?: boolean): void;
  address(state: State, push: boolean): void;
  wake(): void;
}
