/** The device's memory, behind one door: storage that is full, blocked or missing costs nothing but the memory. */

const KEY = 'speaking-length';

/** Where the device holds the page's state */
export const REMEMBERED = `${KEY}.state`;

function device(): Storage | undefined {
  try {
    return typeof window === 'undefined' ? undefined : window.localStorage;
  } catch {
    return undefined;
  }
}

/** Whether the page stands in a frame of another page: it then neither takes up nor changes what the reader's device holds. */
export const isGuest = (): boolean =>
  typeof document !== 'undefined' && 'embed' in document.documentElement.dataset;

/** What was remembered under `name`, or undefined. */
export function recall(name: string): string | undefined {
  if (isGuest()) return undefined;
  try {
    return device()?.getItem(`${KEY}.${name}`) ?? undefined;
  } catch {
    return undefined;
  }
}

/** Everything remembered under a name that begins with `prefix`, by its name. */
export function recallAll(prefix: string): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  try {
    const storage = device();
    for (let i = 0; i < (storage?.length ?? 0); i += 1) {
      const key = storage?.key(i);
      const text = key?.startsWith(`${KEY}.${prefix}`) ? storage?.getItem(key) : undefined;
      if (key && typeof text === 'string') found.set(key.slice(KEY.length + 1), text);
    }
  } catch {
    // What cannot be read is not there.
  }
  return found;
}

/** Remembers `text`, but for a guest; false when the device refuses. */
export function remember(name: string, text: string): boolean {
  if (isGuest()) return true;
  try {
    const storage = device();
    if (!storage) return false;
    storage.setItem(`${KEY}.${name}`, text);
    return true;
  } catch {
    return false;
  }
}

/** Forgets what was remembered under `name`. */
export function forget(name: string): void {
  try {
    device()?.removeItem(`${KEY}.${name}`);
  } catch {
    // Nothing to forget where nothing can be kept.
  }
}

/** Whether anything can be remembered: not by a guest, nor where the device refuses. */
export function canRemember(): boolean {
  if (isGuest() || !remember('trial', 'x')) return false;
  forget('trial');
  return true;
}

/** Calls `then` whenever another window has remembered something, with its name. */
export function whenRemembered(then: (name: string, text: string) => void): void {
  window.addEventListener('storage', ({ key, newValue }) => {
    if (!isGuest() && key?.startsWith(`${KEY}.`) && newValue !== null)
      then(key.slice(KEY.length + 1), newValue);
  });
}
