/** A browser on the site, and the three ways to move a handle: mouse, finger and keys. */
import {
  chromium,
  type Browser,
  type Locator,
  type Page,
  type Request,
  type Response,
} from 'playwright-core';

import { findBrowser } from '../../.tools/browser.mjs';
import { standIn } from './stand-in.ts';

export const phone = { width: 390, height: 844 };
export const narrowPhone = { width: 360, height: 640 };
export const smallPhone = { width: 320, height: 640 };
export const desktop = { width: 1280, height: 800 };

/**
 * What Chromium leaves out. The first three are pages of its own that it loads for the address bar of each window: two fifths of
 * a visit's work. A list of one's own takes the place of Playwright's, so its names follow.
 */
const unneeded = [
  ...['WebUIOmniboxPopup', 'WebUIOmniboxAimPopup', 'WebUIOmniboxFullPopup'],
  ...['AvoidUnnecessaryBeforeUnloadCheckSync', 'DestroyProfileOnBrowserClose', 'HttpsUpgrades'],
  ...['HttpsFirstBalancedModeAutoEnable', 'LensOverlay', 'MediaRouter', 'PaintHolding'],
  ...['ThirdPartyStoragePartitioning', 'AvoidCorsURLLoaderRestartOnRedirect', 'OptimizationHints'],
  ...['NetworkTimeServiceQuerying', 'AimEnabled', 'PreconnectToSearch'],
];

/** `more`: what else the browser is told when it is started */
export function launch(more: readonly string[] = []): Promise<Browser> {
  const executablePath = findBrowser();
  return chromium.launch({
    ...(executablePath && { executablePath }),
    args: [
      '--headless',
      '--no-sandbox',
      // Letters stand as on paper and on a dense screen; without it the windowless one rounds each to whole pixels.
      '--font-render-hinting=none',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
      `--disable-features=${unneeded.join(',')}`,
      ...more,
    ],
  });
}

export interface View {
  viewport?: { width: number; height: number } | undefined;
  colorScheme?: 'light' | 'dark';
  javaScript?: boolean;
  reducedMotion?: 'reduce' | 'no-preference';
  /** Gives the page no sign that somebody is there, and waits for the net to be idle for half a second. */
  untouched?: boolean;
  /** Lets the page keep the site on the device; each visit would else fetch all of it. */
  offline?: boolean;
  /** Runs in the page before any script of its own. */
  before?: () => void;
  /** Holds back what comes from addresses like this, in ms. */
  late?: { what: RegExp; by: number };
  /** A face of the device that is so wide, in per cent, stands in for the site's own. */
  standIn?: number;
  /** Device pixels for each CSS pixel. */
  density?: number;
}

/** A page in a fresh context, so that nothing is remembered from another, and what went wrong or was loaded on it. */
export interface Visit {
  page: Page;
  /** Console errors, uncaught exceptions, failed requests and answers of 400 and above. */
  problems: string[];
  /** Every answer, in order. */
  responses: Response[];
  /** Every address that was asked for. */
  requests: string[];
  close: () => Promise<void>;
}

/** What each page has asked for and not yet been given. */
const inFlight = new WeakMap<Page, Set<Request>>();
const QUIET = 100;
const LONGEST = 20_000;

/** Opens an address and waits until it is loaded, its fonts too, and what is in sight is hydrated. */
export async function open(browser: Browser, url: string, view: View = {}): Promise<Visit> {
  const context = await browser.newContext({
    viewport: view.viewport ?? phone,
    colorScheme: view.colorScheme ?? 'light',
    javaScriptEnabled: view.javaScript ?? true,
    reducedMotion: view.reducedMotion ?? 'no-preference',
    hasTouch: true,
    deviceScaleFactor: view.density ?? 1,
    serviceWorkers: view.offline ? 'allow' : 'block',
  });
  const page = await context.newPage();
  const visit: Visit = {
    page,
    problems: [],
    responses: [],
    requests: [],
    close: async () => {
      // A file that is still held back when its page is left has failed nobody.
      await page.unrouteAll({ behavior: 'ignoreErrors' });
      await context.close();
    },
  };
  page.on('console', (message) => {
    // An island that finds other than it drew draws all of it anew, and what a reader did before is lost; that is told as a warning.
    if (message.type() === 'error' || message.text().includes('hydration_mismatch'))
      visit.problems.push(`console: ${message.text()}`);
  });
  page.on('pageerror', (error) => visit.problems.push(`exception: ${error.message}`));
  page.on('request', (request) => visit.requests.push(request.url()));
  page.on('requestfailed', (request) => visit.problems.push(`failed: ${request.url()}`));
  page.on('response', (response) => {
    visit.responses.push(response);
    if (response.status() >= 400) visit.problems.push(`${response.status()}: ${response.url()}`);
  });
  if (view.before) await page.addInitScript(view.before);
  const { late } = view;
  if (view.standIn) await standIn(page, view.standIn);
  if (late)
    await page.route(late.what, async (route) => {
      await new Promise((done) => setTimeout(done, late.by));
      await route.continue();
    });
  const asked = new Set<Request>();
  inFlight.set(page, asked);
  page.on('request', (request) => asked.add(request));
  page.on('requestfinished', (request) => asked.delete(request));
  page.on('requestfailed', (request) => asked.delete(request));
  await page.goto(url, { waitUntil: view.untouched ? 'networkidle' : 'load' });
  await page.evaluate(() => document.fonts.ready.then(() => undefined));
  if (view.javaScript !== false && !view.untouched) await wake(page);
  else await quiet(page);
  return visit;
}

/** Shows the page that somebody is there, with a key that does nothing, and waits until what is in sight is hydrated. */
export async function touch(page: Page): Promise<void> {
  await page.keyboard.press('Shift');
  await page.waitForFunction(inSightIsHydrated, false);
  await quiet(page);
}

/** Opens the page of the book or the drawer: by its button where the device has kept nothing yet, or none of it at once. */
export async function openShelf(page: Page, name: 'book' | 'drawer'): Promise<void> {
  await touch(page);
  // It may open by itself meanwhile: a press on what has gone does nothing.
  await page.locator('.shelf > button').evaluate((way: HTMLButtonElement) => way.click());
  await page.getByRole('button', { name: `Open the ${name}` }).waitFor({ state: 'hidden' });
}

/** Shows that somebody is there, and turns to each of the islands that wait for it. */
export async function wake(page: Page): Promise<void> {
  await touch(page);
  await page.evaluate(turnToAll);
  await page.waitForFunction(inSightIsHydrated, true);
  await quiet(page);
}

/** Runs in the page. */
function turnToAll(): void {
  for (const each of document.querySelectorAll(
    'astro-island[ssr]:is([opts*="own"], [opts*="answer"])',
  ))
    each.dispatchEvent(new Event('focusin'));
}

/** Waits until nothing has been on its way for a tenth of a second. */
export async function quiet(page: Page): Promise<void> {
  const start = Date.now();
  for (let since = start; Date.now() - since < QUIET; await page.waitForTimeout(20)) {
    const asked = inFlight.get(page);
    if (!asked?.size) continue;
    since = Date.now();
    if (since - start > LONGEST)
      throw new Error(`never came: ${[...asked].map((request) => request.url()).join(', ')}`);
  }
}

/** Runs in the page: whether no island that can be seen still waits for its script; with `all`, nor for somebody to turn to it. */
function inSightIsHydrated(all: boolean): boolean {
  return [...document.querySelectorAll('astro-island[ssr] > :not(template)')].every((element) => {
    if (!all && element.parentElement?.matches('[opts*="own"], [opts*="answer"]')) return true;
    const { top, bottom, height } = element.getBoundingClientRect();
    // One that only shows its edge may wait until it is scrolled to.
    return height === 0 || bottom < 0 || top > 0.9 * innerHeight;
  });
}

/** Scrolls to the end in steps of less than a screen, and waits until all that comes by itself is there. */
export async function scrollDown(page: Page): Promise<void> {
  await page.evaluate(async () => {
    // A browser without a screen now and then leaves a frame out: the wait ends all the same.
    const frame = () =>
      new Promise((done) => {
        requestAnimationFrame(done);
        setTimeout(done, 250);
      });
    const end = () => document.documentElement.scrollHeight - innerHeight;
    for (let steps = 0; scrollY < end() - 1; steps += 1) {
      if (steps > 1000) throw new Error(`the page has no end: ${end()} px at last`);
      scrollBy({ top: 0.8 * innerHeight, behavior: 'instant' });
      await frame();
      await frame();
    }
  });
  await passThrough(
    page,
    'astro-island[ssr]:not([opts*="own"], [opts*="answer"]) > :not(template)',
  );
  await quiet(page);
}

/** The same, and turns to every island that waits for a hand, until all are hydrated and the net is quiet. */
export async function scrollThrough(page: Page): Promise<void> {
  await scrollDown(page);
  await passThrough(page, 'astro-island[ssr] > :not(template)');
  await hydrated(page);
  await quiet(page);
}

/**
 * What a quick scroll left behind is brought into sight, so that nothing waits for a reader who has passed. Counted and scrolled to
 * in one step: an island may come alive at any moment.
 */
async function passThrough(page: Page, waits: string): Promise<void> {
  const nextInSight = () =>
    page.evaluate((which) => {
      const waiting = document.querySelectorAll(which);
      waiting[0]?.scrollIntoView({ block: 'center' });
      waiting[0]?.parentElement?.dispatchEvent(new Event('focusin'));
      return { left: waiting.length, first: waiting[0]?.parentElement?.outerHTML.slice(0, 200) };
    }, waits);
  const wait = { polling: 50, timeout: 2000 };
  let tries = 0;
  let now = await nextInSight();
  while (now.left > 0) {
    const { left } = now;
    await page
      .waitForFunction(
        ([which, count]) => document.querySelectorAll(which).length < count,
        [waits, left] as const,
        wait,
      )
      .catch(() => undefined);
    // A browser without a screen that leaves frames out sees nothing come into sight: it is shown it once more.
    now = await nextInSight();
    tries = now.left < left ? 0 : tries + 1;
    if (tries > 15) throw new Error(`never comes alive: ${now.first}`);
  }
}

/** Brings each of these into sight, one after the other, and waits until nothing in it sleeps. */
export async function comeTo(page: Page, ...selectors: readonly string[]): Promise<void> {
  for (const selector of selectors) {
    await page.locator(selector).first().scrollIntoViewIfNeeded();
    await page.waitForFunction(
      (place) => !document.querySelector(`${place} astro-island[ssr]`),
      selector,
    );
  }
}

/** Waits until no island is left that its script has not reached. Islands that wait for sight must be in sight. */
export async function hydrated(page: Page): Promise<void> {
  await page.evaluate(turnToAll);
  await page.waitForFunction(() => !document.querySelector('astro-island[ssr]'));
}

/** Looks every answer of the page's guesses up: drawings that wait for one are shown. */
export async function lookUp(page: Page): Promise<void> {
  await page.evaluate(() => {
    for (const answer of document.querySelectorAll<HTMLDetailsElement>('[data-guess] .answer'))
      answer.open = true;
  });
  await page.waitForFunction(() => !document.querySelector('[data-veil]'));
}

export interface Step {
  x?: number;
  y?: number;
}

async function middle(handle: Locator): Promise<{ x: number; y: number }> {
  await handle.scrollIntoViewIfNeeded();
  const box = await handle.boundingBox();
  if (!box) throw new Error('The handle is not drawn.');
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

/** The points of a drag from `from` by `by`, its end included. */
export function path(from: { x: number; y: number }, by: Step, steps: number) {
  return Array.from({ length: steps }, (_, i) => {
    const share = (i + 1) / steps;
    return { x: from.x + (by.x ?? 0) * share, y: from.y + (by.y ?? 0) * share };
  });
}

/** Drags a handle by some pixels with the mouse. `during` runs before the button is released. */
export async function dragWithMouse(
  handle: Locator,
  by: Step,
  { steps = 12, during }: { steps?: number; during?: () => Promise<void> } = {},
): Promise<void> {
  const { mouse } = handle.page();
  const from = await middle(handle);
  await mouse.move(from.x, from.y);
  await mouse.down();
  for (const { x, y } of path(from, by, steps)) await mouse.move(x, y);
  await during?.();
  await mouse.up();
}

/** Drags a handle by some pixels with one finger. `during` runs before the finger is lifted. */
export async function dragWithFinger(
  handle: Locator,
  by: Step,
  { steps = 12, during }: { steps?: number; during?: () => Promise<void> } = {},
): Promise<void> {
  const page = handle.page();
  const from = await middle(handle);
  const session = await page.context().newCDPSession(page);
  const touch = (
    type: 'touchStart' | 'touchMove' | 'touchEnd',
    points: { x: number; y: number }[],
  ) => session.send('Input.dispatchTouchEvent', { type, touchPoints: points });
  await touch('touchStart', [from]);
  for (const point of path(from, by, steps)) await touch('touchMove', [point]);
  await during?.();
  await touch('touchEnd', []);
  await session.detach();
}

/** Focuses a handle and presses a key, as 'ArrowRight', 'Shift+ArrowLeft', 'PageUp', 'Home'. */
export async function pressKey(handle: Locator, key: string, times = 1): Promise<void> {
  await handle.focus();
  for (let i = 0; i < times; i += 1) await handle.press(key);
}

/** What a slider says of itself. */
export async function sliderValue(handle: Locator) {
  return handle.evaluate((element) => {
    const number = (name: string) => Number(element.getAttribute(name) ?? Number.NaN);
    return {
      now: number('aria-valuenow'),
      min: number('aria-valuemin'),
      max: number('aria-valuemax'),
      text: element.getAttribute('aria-valuetext') ?? '',
    };
  });
}
