/** As much of a browser's window as the store touches: an address with a history, storage, events. */
import { vi } from 'vitest';

interface Entry {
  state: unknown;
  hash: string;
}

/** An element that one simple selector describes: a tag or an attribute. */
class FakeElement extends EventTarget {
  private readonly simple: string;
  constructor(simple: string) {
    super();
    this.simple = simple;
  }
  closest(selectors: string): FakeElement | null {
    return selectors.split(', ').includes(this.simple) ? this : null;
  }
}

export class FakeStorage {
  readonly kept = new Map<string, string>();
  getItem = (key: string): string | null => this.kept.get(key) ?? null;
  setItem = (key: string, text: string): void => void this.kept.set(key, text);
  removeItem = (key: string): void => void this.kept.delete(key);
  key = (index: number): string | null => [...this.kept.keys()][index] ?? null;
  get length(): number {
    return this.kept.size;
  }
}

export class FakeWindow extends EventTarget {
  readonly location: { hash: string };
  localStorage: Partial<FakeStorage> = new FakeStorage();
  entries: Entry[];
  at = 0;

  constructor(hash = '') {
    super();
    this.location = { hash };
    this.entries = [{ state: null, hash }];
  }

  readonly history = {
    state: null as unknown,
    pushState: (state: unknown, _: string, hash: string) => {
      this.entries = [...this.entries.slice(0, this.at + 1), { state, hash }];
      this.at += 1;
      this.location.hash = hash;
    },
    replaceState: (state: unknown, _: string, hash: string) => {
      this.entries[this.at] = { state, hash };
      this.location.hash = hash;
    },
  };

  /** What the Back button (-1) and the Forward button (1) do. */
  travel(steps: number): void {
    this.at += steps;
    this.location.hash = this.entries[this.at]?.hash ?? '';
    this.dispatchEvent(new Event('popstate'));
    this.dispatchEvent(new Event('hashchange'));
  }

  /** A reader who pastes another link after the #. */
  follow(hash: string): void {
    this.location.hash = hash;
    this.dispatchEvent(new Event('hashchange'));
  }

  /** A key pressed in an element; true when the page took it. */
  press(key: string, keys: Partial<KeyboardEventInit> = {}, element = 'button'): boolean {
    const event = new Event('keydown', { cancelable: true });
    const target = new FakeElement(element);
    Object.defineProperties(event, {
      key: { value: key },
      target: { value: target },
      ctrlKey: { value: keys.ctrlKey ?? false },
      metaKey: { value: keys.metaKey ?? false },
      altKey: { value: keys.altKey ?? false },
      shiftKey: { value: keys.shiftKey ?? false },
    });
    this.dispatchEvent(event);
    return event.defaultPrevented;
  }
}

/** Puts a window where the modules look for one; `vi.unstubAllGlobals` takes it away. */
export function openWindow(hash = ''): FakeWindow {
  const fake = new FakeWindow(hash);
  vi.stubGlobal('window', fake);
  vi.stubGlobal('HTMLElement', FakeElement);
  return fake;
}
