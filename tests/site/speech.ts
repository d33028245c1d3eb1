/** What a screen reader is given: the focused element as the accessibility tree has it, and what live regions announce. */
import type { CDPSession, Page } from 'playwright-core';

declare global {
  interface Window {
    /** What live regions have announced since it was last asked for. */
    announced?: string[];
  }
}

/** Listens to the page's live regions. */
export async function listen(page: Page): Promise<void> {
  await page.evaluate(() => {
    const live = '[role="status"], [role="alert"], [aria-live="polite"], [aria-live="assertive"]';
    const announced: string[] = (window.announced = []);
    const last = new Map<Element, string>();
    for (const region of document.querySelectorAll(live))
      last.set(region, region.textContent?.trim().replace(/\s+/g, ' ') ?? '');
    const tell = ({ target }: MutationRecord) => {
      const element = target instanceof Element ? target : target.parentElement;
      const regions = [element?.closest(live), ...(element?.querySelectorAll(live) ?? [])];
      for (const region of regions) {
        const text = region?.textContent?.trim().replace(/\s+/g, ' ') ?? '';
        if (region && text !== (last.get(region) ?? '')) {
          last.set(region, text);
          if (text) announced.push(text);
        }
      }
    };
    new MutationObserver((records) => records.forEach(tell)).observe(document.body, {
      subtree: true,
      childList: true,
      characterData: true,
    });
  });
}

interface Property {
  name: string;
  value: { value?: unknown };
}

/** Name, role, value and state of the focused element, as a reader would say them. */
async function focused(session: CDPSession): Promise<string> {
  const { result } = await session.send('Runtime.evaluate', {
    expression: 'document.activeElement',
  });
  const { nodes } = await session.send('Accessibility.getPartialAXTree', {
    objectId: result.objectId ?? '',
    fetchRelatives: false,
  });
  const [node] = nodes;
  // The tree gives a slider's bare number; readers say its text.
  const { result: said } = await session.send('Runtime.evaluate', {
    expression: 'document.activeElement?.getAttribute("aria-valuetext") ?? ""',
  });
  const spoken = String(said.value);
  if (!node) return 'nothing';
  const properties = new Map(
    ((node.properties ?? []) as Property[]).map(({ name, value }) => [name, value.value]),
  );
  const text = (value: unknown) =>
    typeof value === 'string' || typeof value === 'number' ? String(value).trim() : '';
  const states = [
    properties.get('expanded') === true && 'expanded',
    properties.get('expanded') === false && 'collapsed',
    properties.get('pressed') === 'true' && 'pressed',
    properties.get('checked') === 'true' && 'checked',
    properties.get('disabled') === true && 'unavailable',
    properties.get('invalid') === 'true' && 'invalid entry',
  ].filter((state) => state !== false);
  return [
    text(node.name?.value),
    text(node.role?.value),
    spoken || text(node.value?.value),
    ...states,
    text(node.description?.value),
  ]
    .filter((part) => part !== '')
    .join(', ')
    .replace(/\s+/g, ' ');
}

/** The named place that the focus is in: readers say it when it is entered. */
const place = (page: Page) =>
  page.evaluate(() => {
    const around = document.activeElement?.closest(
      'fieldset, figure[aria-label], section[aria-labelledby], article[aria-label], [role="region"][aria-label], [role="group"][aria-label], nav[aria-label]',
    );
    const by = around?.getAttribute('aria-labelledby');
    const name =
      around?.getAttribute('aria-label') ??
      (by
        ? document.getElementById(by)?.textContent
        : around?.querySelector('legend')?.textContent);
    return (name ?? '').trim().replace(/\s+/g, ' ');
  });

/** A reader that goes by the keys, and hears. */
export class Reader {
  readonly heard: string[] = [];
  private entered = '';

  private readonly page: Page;
  private readonly session: CDPSession;

  private constructor(page: Page, session: CDPSession) {
    this.page = page;
    this.session = session;
  }

  static async on(page: Page): Promise<Reader> {
    const session = await page.context().newCDPSession(page);
    await session.send('Accessibility.enable');
    await listen(page);
    return new Reader(page, session);
  }

  /** Presses a key and writes down what is then said. */
  async press(key: string): Promise<void> {
    await this.page.keyboard.press(key);
    // What is announced comes with the next frames.
    await this.page.waitForTimeout(150);
    const announced = await this.page.evaluate(() => window.announced?.splice(0) ?? []);
    const now = await place(this.page);
    if (now && now !== this.entered) this.heard.push(`(${now})`);
    this.entered = now;
    this.heard.push(`${key}: ${await focused(this.session)}`, ...announced.map((a) => `  “${a}”`));
  }

  /** Writes over what the field holds. */
  async write(text: string): Promise<void> {
    await this.page.keyboard.press('ControlOrMeta+A');
    await this.page.keyboard.type(text);
  }

  /** Begins at an element, as a reader who has come to it by headings or landmarks. */
  async from(selector: string): Promise<void> {
    await this.page.locator(selector).evaluate((element) => {
      element.setAttribute('tabindex', '-1');
      (element as HTMLElement).focus();
    });
    this.entered = await place(this.page);
  }
}
