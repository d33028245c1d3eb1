/** A page to play on: it is opened, played on for a while, and watched for what must not happen whatever is played. */
import type { Browser, CDPSession, Page } from 'playwright-core';

import { open, scrollThrough } from './kit.ts';
import { Player, randomFrom, seedOf } from './play.ts';

/** What the page's own watch notes. */
interface Input {
  /** When the hand did something last, in the page's time. */
  at: number;
  /** What moved by itself, later than half a second after that. */
  jumps: string[];
}
declare global {
  interface Window {
    input: Input;
  }
}

/** Runs in the page before its own scripts: nothing leaves it, and what jumps without a hand is noted. */
export function watchPlay(): void {
  const CALM = 500;
  // Shifts that nobody sees don't count; the same bound as for a page at rest.
  const SEEN = 0.02;
  window.input = { at: 0, jumps: [] };
  window.print = () => undefined;
  // A result of the search, or a button that loads the page again, would end the game.
  window.navigation?.addEventListener('navigate', (event) => {
    if (!event.destination.sameDocument && !event.downloadRequest) event.preventDefault();
  });
  const kinds = [
    'pointerdown',
    'pointermove',
    'pointerup',
    'touchmove',
    'keydown',
    'input',
    'change',
  ];
  for (const kind of [...kinds, 'wheel', 'scroll', 'resize', 'popstate', 'hashchange', 'click']) {
    // When the page came to it: on a busy machine that is later than the hand.
    addEventListener(kind, () => (window.input.at = performance.now()), true);
  }
  // What a press asks for comes with a script of its own, and opens once that has come.
  new PerformanceObserver(() => (window.input.at = performance.now())).observe({
    type: 'resource',
  });
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries()) {
      const { value, startTime, sources } = entry as PerformanceEntry & {
        value: number;
        sources: readonly { node: Node | null }[];
      };
      if (startTime - window.input.at < CALM || value < SEEN) continue;
      const moved = sources.map(({ node }) =>
        node instanceof Element ? node : node?.parentElement,
      );
      window.input.jumps.push(`${value.toFixed(3)} ${moved.map((e) => e?.outerHTML.slice(0, 90))}`);
    }
  }).observe({ type: 'layout-shift', buffered: true });
}

/** What must never be seen on a page, found on it now. */
export const wrongOn = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const wrong = /\b(NaN|-?Infinity|undefined|null)\b|\[object /;
    const found: string[] = [];
    const look = (text: string | null, where: string) => {
      const at = text ? text.search(wrong) : -1;
      if (at >= 0) found.push(`${where}: …${text?.slice(Math.max(0, at - 40), at + 40)}…`);
    };
    look(document.body.innerText, 'on the screen');
    for (const name of ['aria-label', 'aria-valuetext', 'aria-valuenow', 'title', 'style']) {
      for (const e of document.querySelectorAll(`[${name}]`)) look(e.getAttribute(name), name);
    }
    for (const name of [
      'd',
      'transform',
      'x',
      'y',
      'x1',
      'y1',
      'x2',
      'y2',
      'cx',
      'cy',
      'r',
      'width',
      'points',
    ]) {
      for (const e of document.querySelectorAll(`svg [${name}]`)) look(e.getAttribute(name), name);
    }
    found.push(...window.input.jumps.map((jump) => `jumped: ${jump}`));
    return found;
  });

/** Bytes of scripts' objects that are in use, once what nobody needs has been cleared away. */
export async function heapOf(session: CDPSession): Promise<number> {
  await session.send('HeapProfiler.collectGarbage');
  const { usedSize } = await session.send('Runtime.getHeapUsage');
  return usedSize;
}

const PATIENCE = 60_000;
const pause = (ms: number) =>
  new Promise<undefined>((done) => setTimeout(done, ms, undefined).unref());

export interface Game {
  readonly seed: number;
  /** Ends the game: what has been done, in number and time. */
  readonly enough: (acts: number) => boolean;
}
export interface Played {
  /** What went wrong; the game ends with the first. */
  readonly wrong: string[];
  /** What was done, in order */
  readonly log: readonly string[];
  readonly heap: { readonly start: number; readonly end: number };
}

/** Opens a page and plays on it. The same seed on the same page is the same game. */
export async function playOn(
  browser: Browser,
  origin: string,
  path: string,
  { seed, enough }: Game,
): Promise<Played> {
  const visit = await open(browser, origin + path, { before: watchPlay });
  const { page, problems, close } = visit;
  const session = await page.context().newCDPSession(page);
  try {
    await scrollThrough(page);
    const player = new Player(page, session, randomFrom(seedOf(seed, path)));
    const start = await heapOf(session);
    let wrong: string[] = [];
    while (wrong.length === 0 && !enough(player.log.length)) {
      // A page that is left takes the look at it along: that too is told with what was done.
      const answered = player
        .act()
        .then(() => wrongOn(page))
        .catch((error: unknown) => [String(error)]);
      const found = await Promise.race([answered, pause(PATIENCE)]);
      wrong = [...problems, ...(found ?? ['the page answers no more'])];
    }
    const end = (await Promise.race([heapOf(session), pause(PATIENCE)])) ?? start;
    return { wrong, log: player.log, heap: { start, end } };
  } finally {
    await close();
  }
}
