/**
 * What an address says of a job, behind the state: /j-ID names one of this device's book; fields with longer names carry one from
 * another device, as `book/job-link.ts` writes them.
 */
import { clean } from './link-read.ts';

/** Longer than any link that the site makes. */
const LONGEST = 16_000;
const FIRST = /\/j[a-z]*\d*-/i;

/** The part of a link's text that tells of a job; empty where there is none. */
export function jobTail(text: string): string {
  const whole = clean(text, LONGEST);
  const at = whole.search(FIRST);
  return at < 0 ? '' : whole.slice(at);
}

/** The id in this device's book; undefined for a job that a link carries, and for none. */
export const jobId = (tail: string): string | undefined => /^\/j-([0-9a-z-]+)$/i.exec(tail)?.[1];
