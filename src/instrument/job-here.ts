/** The job that is open on this page: taken up from the address, kept while it is changed, left to the next page. */
import { jobId } from './job-tail.ts';
import { encode } from './link.ts';
import type { Page } from './page.ts';
import type { State } from './schema.ts';
import { canRemember, forget, isGuest, recall, remember } from './storage.ts';
import { newId, SOON } from './shelving.ts';
import { announce, showsOther } from './visits.ts';

/** Jobs that a change on this page made; to undo the change puts them away. */
const madeJobs = new Set<string>();
let jobTimer: ReturnType<typeof setTimeout> | undefined;
const theJobs = () => import('./book/keep-job.ts');

/** Takes up the job that the address names or carries: its picks as they were made. */
export async function openJob(held: Page): Promise<void> {
  const { tail, settled } = held;
  const jobs = await theJobs().catch(() => undefined);
  const found = await jobs?.jobAt(tail, settled);
  // The reader was quicker.
  if (held.tail !== tail || held.settled !== settled || held.state !== settled) return;
  if (!found) {
    // Of another device, or gone from the book: what the address shows is a visit all the same.
    held.tail = '';
    held.visiting = canRemember() && showsOther(settled, held.own);
  } else held.state = held.settled = found;
  held.address(held.settled, false);
}

/** Keeps what stands on the bench as a job, and goes on in that. */
export async function keepAsJob(held: Page): Promise<void> {
  const { tail, settled } = held;
  held.push();
  await newJob(held, tail, settled);
}

/** `tail` may carry a job that somebody sent, in which `sent` was set up. */
async function newJob(held: Page, tail: string, sent: State): Promise<void> {
  const id = newId();
  madeJobs.add(id);
  held.tail = `/j-${id}`;
  held.visiting = true;
  held.settle(true);
  announce(held);
  const { settled } = held;
  const left = leave(id, settled);
  const jobs = await theJobs().catch(() => undefined);
  if (jobs) tellTrouble(held, left, await jobs.makeJob(id, settled, tail, sent));
}

/** After a change on the bench: what is open is kept as a job, or made one. `was` says what was open before. */
export function saveJob(held: Page, was: string): void {
  if (isGuest()) return;
  const { tail, settled } = held;
  const id = jobId(tail);
  const before = jobId(was);
  if (before !== undefined && before !== id && madeJobs.has(before))
    void theJobs().then((jobs) => jobs.putAwayJob(before));
  if (id !== undefined) {
    const left = leave(id, settled);
    clearTimeout(jobTimer);
    jobTimer = setTimeout(async () => {
      const jobs = await theJobs().catch(() => undefined);
      if (jobs) tellTrouble(held, left, await jobs.saveJob(id, settled));
    }, SOON);
  } else if (tail === was && held.visiting)
    void newJob(held, tail, held.past.at(-1)?.state ?? settled);
}

/** What is on its way into the book: the next page puts it there where this one is left too soon. */
function leave(id: string, state: State): string {
  const left = JSON.stringify({ id, text: encode(state) });
  remember('job', left);
  return left;
}

function tellTrouble(held: Page, left: string, trouble: string | undefined): void {
  if (trouble !== undefined) held.notice ||= trouble;
  // What was changed meanwhile is still on its way.
  else if (recall('job') === left) forget('job');
}
