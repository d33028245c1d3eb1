/** What a reader's hand does on a page, the same in every engine. */

export const viewport = { width: 1280, height: 800 };

/** Runs in the page. What it takes and returns can be written as JSON. */
export type InPage<A extends unknown[], R> = (...args: A) => R;

export interface Hand {
  open: (url: string) => Promise<void>;
  run: <A extends unknown[], R>(inPage: InPage<A, R>, ...args: A) => Promise<R>;
  press: (x: number, y: number) => Promise<void>;
  move: (x: number, y: number) => Promise<void>;
  release: () => Promise<void>;
  /** Types into what has the focus. */
  type: (text: string) => Promise<void>;
  /** Presses a key by its name in a keyboard event. */
  key: (name: Key) => Promise<void>;
  /** The names of the files that have been saved so far, and a way to read one. */
  saved: () => string[];
  read: (name: string) => string;
  close: () => Promise<void>;
}

export type Key = 'Enter' | 'ArrowLeft' | 'ArrowRight' | 'PageUp' | 'Home' | 'End';

interface Place {
  x: number;
  y: number;
}

/**
 * The middle of the first element that is drawn, brought into sight and waited for until its script has reached it.
 * Runs in the page, and returns undefined as long as it is not to be used.
 */
function middleOf(selector: string): Place | undefined {
  const element = [...document.querySelectorAll(selector)].find(
    (e) => e.getClientRects().length > 0,
  );
  if (!element) return undefined;
  element.scrollIntoView({ block: 'center', behavior: 'instant' });
  const asleep = element.closest('astro-island[ssr]');
  // As a mouse on its way there would.
  asleep?.dispatchEvent(new Event('focusin', { bubbles: true }));
  if (asleep) return undefined;
  const { left, top, width, height } = element.getBoundingClientRect();
  const place = { x: Math.round(left + width / 2), y: Math.round(top + height / 2) };
  const last = (window as unknown as { lastPlace?: Place }).lastPlace;
  Object.assign(window, { lastPlace: place });
  // A page that still moves would put the hand beside it.
  return last?.x === place.x && last.y === place.y ? place : undefined;
}

const PATIENCE = 20_000;
const pause = (ms: number) => new Promise((done) => setTimeout(done, ms));

/** Asks in the page until there is an answer. */
export async function until<A extends unknown[], R>(
  hand: Hand,
  what: string,
  inPage: InPage<A, R | undefined | null>,
  ...args: A
): Promise<R> {
  for (const end = Date.now() + PATIENCE; Date.now() < end; await pause(50)) {
    const answer = await hand.run(inPage, ...args);
    if (answer !== undefined && answer !== null) return answer;
  }
  throw new Error(`never came: ${what}`);
}

export const bring = (hand: Hand, selector: string): Promise<Place> =>
  until(hand, selector, middleOf, selector);

export async function click(hand: Hand, selector: string): Promise<void> {
  const { x, y } = await bring(hand, selector);
  await hand.press(x, y);
  await hand.release();
}

/** Replaces what stands in a field and presses Enter. */
export async function fill(hand: Hand, selector: string, text: string): Promise<void> {
  await click(hand, selector);
  await hand.run((field) => document.querySelector<HTMLInputElement>(field)?.select(), selector);
  await hand.type(text);
  await hand.key('Enter');
}

export async function drag(hand: Hand, selector: string, by: Partial<Place>): Promise<void> {
  const { x, y } = await bring(hand, selector);
  await hand.press(x, y);
  const steps = 8;
  for (let i = 1; i <= steps; i += 1) {
    await hand.move(
      Math.round(x + ((by.x ?? 0) * i) / steps),
      Math.round(y + ((by.y ?? 0) * i) / steps),
    );
  }
  await hand.release();
}

/** The field that a label names within a part of the page, as a selector. Runs in the page. */
function fieldOf(within: string, label: string): string | undefined {
  const found = [...document.querySelectorAll<HTMLLabelElement>(`${within} label`)].find(
    (each) => each.textContent?.trim() === label,
  );
  return found?.htmlFor ? `[id="${found.htmlFor}"]` : undefined;
}
export const labelled = (hand: Hand, within: string, label: string): Promise<string> =>
  until(hand, `${within} ${label}`, fieldOf, within, label);
