/** The reader's own threshold in the device's memory. Only a device that holds one loads this. */
import { hand, HAND, type OwnHand } from './hand.svelte.ts';
import { forget, recall, remember } from './storage.ts';

const isShare = (value: unknown): value is number =>
  typeof value === 'number' && value > 0 && value <= 2;

/** What was remembered; undefined of anything else. */
export function readHand(text: string): OwnHand | undefined {
  try {
    const read = JSON.parse(text) as Partial<Record<keyof OwnHand, unknown>> | null;
    const { value, low, high, replaces } = read ?? {};
    return isShare(value) && isShare(low) && isShare(high) && low <= value && value <= high
      ? { value, low, high, replaces: replaces === true }
      : undefined;
  } catch {
    return undefined;
  }
}

/** Shows what the device remembers. */
export function recallHand(): void {
  hand.own = readHand(recall(HAND) ?? '');
}

/** Remembers and shows a threshold; without one it is forgotten. */
export function keepHand(own: OwnHand | undefined): void {
  hand.own = own;
  if (own) remember(HAND, JSON.stringify(own));
  else forget(HAND);
}
