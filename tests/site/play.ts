/** Random play on a page with mouse, keys and fingers, the same for the same seed. */
import type { CDPSession, Page } from 'playwright-core';

import { path, smallPhone, phone, desktop } from './kit.ts';

/** Numbers from 0 to below 1, the same for the same seed (mulberry32). */
export function randomFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** A seed for one page, so that a page's play repeats without that of the others. */
export const seedOf = (seed: number, name: string): number =>
  [...name].reduce((sum, c) => (Math.imul(sum, 31) + (c.codePointAt(0) ?? 0)) >>> 0, seed);

declare global {
  interface Window {
    picked?: Element;
  }
}

const hands = {
  slider: '[role="slider"]',
  button: 'button:not([aria-disabled="true"], :disabled)',
  toggle: 'input[type="checkbox"], input[type="radio"], summary',
  field: 'input:not([type="checkbox"], [type="radio"], [readonly])',
  select: 'select',
} as const;
type Hand = keyof typeof hands;

interface Picked {
  x: number;
  y: number;
  name: string;
  options: string[];
}

/** Brings one of the elements that are drawn into sight, remembers it and says where it is. Runs in the page. */
function pick([selector, share]: [string, number]): Picked | undefined {
  const root = document.querySelector('dialog[open]') ?? document;
  const all = [...root.querySelectorAll<HTMLElement>(selector)].filter(
    (e) => e.checkVisibility({ visibilityProperty: true }) && e.getClientRects().length > 0,
  );
  const element = all[Math.floor(share * all.length)];
  if (!element) return undefined;
  window.picked = element;
  element.scrollIntoView({ block: 'center', behavior: 'instant' });
  const { left, top, width, height } = element.getBoundingClientRect();
  const called = element.dataset.handle ?? element.getAttribute('aria-label') ?? element.id;
  const name = `${element.tagName.toLowerCase()} ${called || (element.textContent ?? '').trim().slice(0, 40)}`;
  const options =
    element instanceof HTMLSelectElement ? [...element.options].map((o) => o.value) : [];
  return { x: left + width / 2, y: top + height / 2, name, options };
}

const entries = [
  ...[
    '650 mm',
    '25.5',
    '25 1/2',
    '34 in',
    '628.65',
    '.011',
    '10',
    '46w',
    'E4',
    'F#3',
    'bb2',
    '442',
    '7',
  ],
  ...[
    '0',
    '1',
    '100',
    '12.5',
    '50 c',
    '20 N',
    '15 lb',
    '6.7',
    'Godwit',
    '',
    ' ',
    '-',
    '.',
    '-5',
    '0.0001',
  ],
  ...[
    '99999',
    '1e9',
    '1/0',
    '25 1/',
    'H9',
    'E44',
    '#',
    'abc',
    '<b>x</b>',
    '日本',
    '½',
    '−3',
    '1,5',
    '10e',
  ],
];
const keys = [
  ...['ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown', 'Shift+ArrowRight', 'Shift+ArrowDown'],
  ...['PageUp', 'PageDown', 'Home', 'End', 'Escape', 'Enter'],
];
const sizes = [smallPhone, phone, { width: 768, height: 1024 }, desktop];

/** One reader on one page. `log` says what was done, in order. */
export class Player {
  readonly log: string[] = [];
  readonly #page: Page;
  readonly #session: CDPSession;
  readonly #random: () => number;

  constructor(page: Page, session: CDPSession, random: () => number) {
    this.#page = page;
    this.#session = session;
    this.#random = random;
  }

  #one<T>(of: readonly T[]): T {
    return of[Math.floor(this.#random() * of.length)] as T;
  }
  #between(min: number, max: number): number {
    return min + this.#random() * (max - min);
  }
  #say(what: string): void {
    this.log.push(what);
  }
  #pick(hand: Hand): Promise<Picked | undefined> {
    return this.#page.evaluate(pick, [hands[hand], this.#random()] as [string, number]);
  }
  #focus(): Promise<void> {
    return this.#page.evaluate(() => (window.picked as HTMLElement | undefined)?.focus());
  }

  /** Does one thing. A page that has nothing of the kind is left as it is. */
  async act(): Promise<void> {
    // As often as they stand here: a reader drags and types more than anything else.
    const acts = [
      ...[this.#drag, this.#drag, this.#touch, this.#touch, this.#key, this.#key, this.#press],
      ...[this.#press, this.#press, this.#fill, this.#fill, this.#toggle, this.#select],
      ...[this.#undo, this.#travel, this.#look, this.#scroll],
    ];
    await this.#one(acts).call(this);
  }

  async #drag(): Promise<void> {
    const at = await this.#pick('slider');
    if (!at) return;
    const by = { x: this.#between(-260, 260), y: this.#between(-200, 200) };
    this.#say(`drag ${at.name} by ${by.x.toFixed(0)}, ${by.y.toFixed(0)}`);
    const { mouse } = this.#page;
    await mouse.move(at.x, at.y);
    await mouse.down();
    for (const { x, y } of path(at, by, 4)) await mouse.move(x, y);
    if (this.#random() < 0.1) await this.#page.keyboard.press('Escape');
    await mouse.up();
  }

  async #touch(): Promise<void> {
    const at = await this.#pick(this.#random() < 0.7 ? 'slider' : 'button');
    if (!at) return;
    const by = { x: this.#between(-150, 150), y: this.#between(-150, 150) };
    const second = this.#random() < 0.2 ? [{ x: at.x + 30, y: at.y + 30, id: 1 }] : [];
    this.#say(
      `swipe ${at.name} by ${by.x.toFixed(0)}, ${by.y.toFixed(0)}${second.length ? ' with two' : ''}`,
    );
    const send = (type: 'touchStart' | 'touchMove' | 'touchEnd', points: object[]) =>
      this.#session.send('Input.dispatchTouchEvent', { type, touchPoints: points as never });
    await send('touchStart', [{ x: at.x, y: at.y, id: 0 }, ...second]);
    for (const { x, y } of path(at, by, 4)) await send('touchMove', [{ x, y, id: 0 }, ...second]);
    await send('touchEnd', []);
  }

  async #key(): Promise<void> {
    const at = await this.#pick('slider');
    if (!at) return;
    await this.#focus();
    const pressed = Array.from({ length: 3 }, () => this.#one(keys));
    this.#say(`keys ${pressed.join(' ')} on ${at.name}`);
    for (const key of pressed) await this.#page.keyboard.press(key);
  }

  async #press(): Promise<void> {
    const at = await this.#pick('button');
    if (!at) return;
    this.#say(`press ${at.name}`);
    await this.#page.mouse.click(at.x, at.y);
  }

  async #fill(): Promise<void> {
    const at = await this.#pick('field');
    if (!at) return;
    const text = this.#one(entries);
    const end = this.#one(['Enter', 'Tab', 'Escape']);
    this.#say(`type "${text}" ${end} into ${at.name}`);
    await this.#focus();
    await this.#page.evaluate(() =>
      (window.picked as Partial<HTMLInputElement> | undefined)?.select?.(),
    );
    await this.#page.keyboard.press('Delete');
    await this.#page.keyboard.insertText(text);
    await this.#page.keyboard.press(end);
  }

  async #toggle(): Promise<void> {
    const at = await this.#pick('toggle');
    if (!at) return;
    this.#say(`toggle ${at.name}`);
    await this.#focus();
    await this.#page.keyboard.press('Space');
  }

  async #select(): Promise<void> {
    const at = await this.#pick('select');
    if (!at) return;
    const value = this.#one(at.options);
    this.#say(`choose "${value}" in ${at.name}`);
    await this.#page.evaluate((chosen) => {
      if (!(window.picked instanceof HTMLSelectElement)) return;
      window.picked.value = chosen;
      window.picked.dispatchEvent(new Event('input', { bubbles: true }));
      window.picked.dispatchEvent(new Event('change', { bubbles: true }));
    }, value);
  }

  async #undo(): Promise<void> {
    const key = this.#one(['Control+z', 'Control+z', 'Control+Shift+z']);
    this.#say(key);
    await this.#page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
    for (let i = 0; i < 3; i += 1) await this.#page.keyboard.press(key);
  }

  /** Back to a state that the address named before, or on to one by a link. */
  async #travel(): Promise<void> {
    const hash = this.#one([
      '',
      '#v1/l-863.6/g2-w45/d2-w65/a1-w85/e1-w105',
      '#v1/tl-1000/u-n',
      '#other',
    ]);
    const back = this.#random() < 0.5;
    this.#say(back ? `go to ${hash || 'no hash'} and back` : `go to ${hash || 'no hash'}`);
    await this.#page.evaluate(
      async ([to, returns]) => {
        history.pushState(null, '', to || location.pathname);
        dispatchEvent(new PopStateEvent('popstate'));
        if (!returns) return;
        history.back();
        await new Promise((done) => setTimeout(done, 30));
      },
      [hash, back] as const,
    );
  }

  async #look(): Promise<void> {
    const { width, height } = this.#one(sizes);
    const colorScheme = this.#one(['light', 'dark'] as const);
    this.#say(`look at ${width} × ${height}, ${colorScheme}`);
    await this.#page.setViewportSize({ width, height });
    await this.#page.emulateMedia({ colorScheme });
  }

  async #scroll(): Promise<void> {
    const share = this.#random();
    this.#say(`scroll to ${(100 * share).toFixed(0)} %`);
    await this.#page.evaluate(
      (to) => scrollTo({ top: to * document.documentElement.scrollHeight, behavior: 'instant' }),
      share,
    );
  }
}
