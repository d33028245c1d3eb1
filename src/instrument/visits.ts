/** A visit to an instrument that is not the reader's own: how it is shown, ended or kept. */
import { encode } from './link.ts';
import { differs } from './own.ts';
import type { Page } from './page.ts';
import { ids } from './past.ts';
import type { Instrument, State } from './schema.ts';
import { asTarget, exampleOf, workshop } from './workshop.ts';

/** Whether a state shows something else than the reader's own does, in whatever units and for whichever hand. */
export const showsOther = (shown: State, own: State): boolean =>
  differs({ ...shown, units: own.units, hand: own.hand }, own);

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);

/** Whether somebody has described or strung something in it: it is more than the workshop's instruments. */
export const isOwn = ({ mine, other }: State): boolean =>
  !exampleOf(mine) || !workshop.some((w) => same(asTarget(w), other));

/** Has the bar of a visit brought, now or as soon as what brings it is there. */
export function announce({ visiting }: Page): void {
  if (!visiting || typeof document === 'undefined') return;
  document.documentElement.dataset.visit = '';
  window.dispatchEvent(new Event('visit'));
}

/** Shows another instrument, as a step of the browser's history. What the reader has described is left alone. */
export function show(held: Page, next: State): void {
  const { settled, own } = held;
  if (encode(next) === encode(settled)) return;
  // The place that is left must name its state, or Back would find nothing there to return to.
  held.address(settled, false);
  if (held.visiting || isOwn(own)) {
    held.push();
    held.tail = '';
    held.visiting = showsOther(next, own);
  } else held.adopt(next);
  held.state = next;
  held.settle(true);
  announce(held);
}

/** Makes what is visited the reader's own. */
export function keepVisit(held: Page): void | Promise<void> {
  const { settled } = held;
  if (!settled.drawer && !held.own.drawer) return adoptVisit(held, settled);
  return import('./own-strings.ts').then(
    ({ frozen }) => adoptVisit(held, frozen(settled, held.own.drawer)),
    () => void (held.notice = 'Part of this page didn’t load. Press again.'),
  );
}

function adoptVisit(held: Page, state: State): void {
  held.adopt(state);
  held.state = state;
  held.settle();
}

/** Ends a visit. */
export function leaveVisit(held: Page): void {
  held.push();
  held.tail = '';
  held.visiting = false;
  held.state = held.own;
  held.settle(true);
}

/** Takes an instrument of the book as the reader's own. */
export function take(held: Page, mine: Instrument, id: string): void {
  const next = { ...held.own, mine, trial: { string: 0 } };
  ids.set(mine, id);
  held.adopt(next);
  held.state = next;
  held.settle(true);
}
