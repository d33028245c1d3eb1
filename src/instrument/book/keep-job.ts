/** The job on the bench, from the page that works on it into the book, and back. */
import { jobId } from '../job-tail.ts';
import { decode } from '../link-read.ts';
import { recall, forget } from '../storage.ts';
import type { State } from '../schema.ts';
import { initialState } from '../workshop.ts';
import type { Book } from './book.ts';
import { readJobTail, type SharedJob } from './job-link.ts';
import { benchFields, jobName, stateOf } from './job.ts';
import { askToPersist, openBook } from './open.ts';
import { isJob, type JobRecord } from './schema.ts';

const trouble = (book: Book): string | undefined =>
  book.trouble &&
  'This browser has no room to keep your jobs, or doesn’t allow it. Save the book as a file: the button is on the job’s card.';

/** What a link carries of a job, for the state that it was sent with. */
const sharedJob = (tail: string, state: State): SharedJob =>
  readJobTail(
    tail,
    state.other.strings.map(({ note }) => note),
  );

/** The state that sets up the job which an address names or carries; undefined for one that this device doesn't have. */
export async function jobAt(tail: string, shown: State): Promise<State | undefined> {
  const id = jobId(tail);
  if (id === undefined) {
    const { mine: right, other, aim, bend } = shown;
    const { picks } = sharedJob(tail, shown);
    return stateOf({ right, other, aim, bend, picks } as unknown as JobRecord, shown);
  }
  await saveLeft();
  const record = (await openBook()).get(id);
  return record && isJob(record) && record.deleted === undefined
    ? stateOf(record, shown)
    : undefined;
}

/** A new entry of the book, from what a link has carried where it carried a job. Gives words on what is in the way. */
export async function makeJob(
  id: string,
  state: State,
  tail: string = '',
  sent: State = state,
): Promise<string | undefined> {
  const book = await openBook();
  const isFirst = book.all.length === 0;
  const shared = tail === '' || jobId(tail) !== undefined ? undefined : sharedJob(tail, sent);
  const named = { kind: 'job', name: jobName(state).slice(0, 80), ...shared };
  await book.add({ ...named, ...benchFields(sent, Date.now()), ...shared }, id);
  if (sent !== state) await saveJob(id, state);
  if (isFirst) void askToPersist();
  return trouble(book);
}

/** Keeps what the bench has changed of a job. */
export async function saveJob(id: string, state: State): Promise<string | undefined> {
  const book = await openBook();
  const lying = book.get(id);
  if (!lying || !isJob(lying)) return makeJob(id, state);
  await book.change(id, { ...benchFields(state, Date.now(), lying), deleted: undefined });
  return trouble(book);
}

/** Puts in the book what a page that was left too soon has not. */
export async function saveLeft(): Promise<void> {
  try {
    const left = recall('job') ?? 'null';
    const { id, text } = JSON.parse(left) as { id: unknown; text: unknown };
    if (typeof id !== 'string' || typeof text !== 'string') return;
    const { state } = decode(text, initialState);
    const isSaved = !state || (await saveJob(id, state)) === undefined;
    if (isSaved && recall('job') === left) forget('job');
  } catch {
    // Nothing was left, or nothing that can be read.
  }
}

/** Puts away a job whose making was taken back, unless something was written on its card meanwhile. */
export async function putAwayJob(id: string): Promise<void> {
  const book = await openBook();
  const job = book.get(id);
  if (!job || !isJob(job)) return;
  const { note, reference, before, after } = job;
  const written = [note, reference, JSON.stringify(before), JSON.stringify(after)];
  if (!written.some((text) => text && /\w/.test(text.replace(/"\w+":/g, ''))))
    await book.putAway(id);
}

/** A job that a page shows: of the book, or from a link. */
export type SeenJob =
  | { readonly kind: 'kept'; readonly book: Book; readonly record: JobRecord }
  | { readonly kind: 'shared'; readonly job: SharedJob };

/** Tells of the job that an address names, and of every change of it, until the function that is given back is called. */
export function followJob(
  tail: string,
  state: State,
  then: (seen: SeenJob | undefined) => void,
): () => void {
  const id = jobId(tail);
  if (id === undefined) {
    then(tail === '' ? undefined : { kind: 'shared', job: sharedJob(tail, state) });
    return () => undefined;
  }
  let leave: (() => void) | undefined;
  let left = false;
  void openBook().then((book) => {
    if (left) return;
    const look = (): void => {
      const record = book.get(id);
      then(record && isJob(record) ? { kind: 'kept', book, record } : undefined);
    };
    look();
    leave = book.listen(look);
  });
  return () => {
    left = true;
    leave?.();
  };
}
