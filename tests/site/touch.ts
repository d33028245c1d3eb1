/** Fingers on a phone: several at once, as a browser hears of them, and what they did to the page. */
import type { Browser, CDPSession, Locator, Page } from 'playwright-core';

import { comeTo, open, path, phone, type Step, type Visit } from './kit.ts';

declare global {
  interface Window {
    /** How often the browser has taken a finger over, to scroll or to zoom. */
    takenBack: number;
  }
}

export interface Point {
  x: number;
  y: number;
}

export interface Fingers {
  /** Puts fingers down together, moves each by its own way, and lifts them. `during` runs before they are lifted. */
  swipe: (
    from: readonly Point[],
    by: readonly Step[],
    options?: { steps?: number; during?: () => Promise<void> },
  ) => Promise<void>;
  send: (type: 'touchStart' | 'touchMove' | 'touchEnd', points: readonly Point[]) => Promise<void>;
}

/** A page on a phone that scrolls and zooms as a phone does, one figure of it alive. */
export async function onPhone(
  browser: Browser,
  url: string,
  figure: string,
): Promise<Visit & { fingers: Fingers }> {
  const visit = await open(browser, url, { viewport: phone });
  const fingers = await fingersOn(visit.page);
  await comeTo(visit.page, figure);
  return { ...visit, fingers };
}

/** Makes an open page one of a phone. */
export async function fingersOn(page: Page): Promise<Fingers> {
  await page.evaluate(countTakenBack);
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setDeviceMetricsOverride', {
    ...phone,
    deviceScaleFactor: 2,
    mobile: true,
  });
  await session.send('Emulation.setTouchEmulationEnabled', { enabled: true, maxTouchPoints: 5 });
  return fingersOf(session);
}

function countTakenBack(): void {
  window.takenBack = 0;
  addEventListener('pointercancel', () => (window.takenBack += 1), true);
}

function fingersOf(session: CDPSession): Fingers {
  const send: Fingers['send'] = async (type, points) => {
    const touchPoints = points.map(({ x, y }, id) => ({ x, y, id }));
    await session.send('Input.dispatchTouchEvent', { type, touchPoints });
  };
  return {
    send,
    swipe: async (from, by, { steps = 10, during } = {}) => {
      await send('touchStart', from);
      const ways = from.map((point, i) => path(point, by[i] ?? {}, steps));
      for (let i = 0; i < steps; i += 1) {
        await send(
          'touchMove',
          ways.map((way) => way[i] ?? { x: 0, y: 0 }),
        );
      }
      await during?.();
      await send('touchEnd', []);
    },
  };
}

/** Brings an element to the middle of the screen and returns its own middle. */
export async function centre(element: Locator): Promise<Point> {
  return element.evaluate(async (it) => {
    it.scrollIntoView({ block: 'center', behavior: 'instant' });
    // Where it stands is asked once nothing rolls on from an earlier swipe.
    for (let last = NaN; last !== scrollY;) {
      last = scrollY;
      await new Promise((done) => setTimeout(done, 40));
    }
    const { left, top, width, height } = it.getBoundingClientRect();
    return { x: left + width / 2, y: top + height / 2 };
  });
}

export interface Standing {
  scrolled: number;
  zoom: number;
  selected: string;
}

/** How far the page is scrolled and zoomed in, and what is selected. */
export const standing = (page: Page): Promise<Standing> =>
  page.evaluate(() => ({
    scrolled: Math.round(scrollY),
    zoom: visualViewport?.scale ?? 1,
    selected: getSelection()?.toString() ?? '',
  }));

/**
 * Where on the screen the drawing, or the paragraph, of a handle stands. How far the page is scrolled doesn't tell: it changes
 * with what stands above, when a browser keeps what the reader looks at in its place.
 */
export const groundOf = (handle: Locator) =>
  handle.evaluate((it) => {
    const { left, top } = (it.closest('.stage, li, p') ?? it).getBoundingClientRect();
    return { left: Math.round(left), top: Math.round(top), zoom: visualViewport?.scale ?? 1 };
  });

/** A point of a drawing from which no handle is near, with the drawing in the middle of the screen. */
export async function besideHandles(stage: Locator): Promise<Point> {
  // On a busy machine a drawing may still be on its way to the middle, or a page be settling above it.
  for (let tries = 0; tries < 20; tries += 1) {
    await centre(stage);
    const free = await stage.evaluate(pointBeside);
    if (free) return free;
    await stage.page().waitForTimeout(150);
  }
  throw new Error('the drawing has no room beside its handles');
}

/** Runs in the page. */
function pointBeside(stage: Element): Point | undefined {
  const NEAR = 40;
  const { left, top, right, bottom } = stage.getBoundingClientRect();
  const boxes = [...stage.querySelectorAll('[data-handle], .grip')].map((e) =>
    e.getBoundingClientRect(),
  );
  const clear = (x: number, y: number) =>
    boxes.every(
      (b) => x < b.left - NEAR || x > b.right + NEAR || y < b.top - NEAR || y > b.bottom + NEAR,
    );
  for (let y = Math.max(top, 200) + 10; y < Math.min(bottom, innerHeight - 200); y += 8) {
    for (let x = left + 60; x < right - 60; x += 8) if (clear(x, y)) return { x, y };
  }
  return undefined;
}
