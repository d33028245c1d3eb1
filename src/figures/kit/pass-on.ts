/** A link handed on: by the phone's own sheet where there is one, else by the clipboard. */

export type Passed = 'shared' | 'stopped' | 'copied' | 'refused';

/** Whether the device has a sheet of its own that a finger opens; a desk's clipboard is quicker. */
const hasSheet = (): boolean =>
  typeof navigator !== 'undefined' &&
  typeof navigator.share === 'function' &&
  matchMedia('(pointer: coarse)').matches;

/** What the button says that does it. */
export const passLabel = (): string => (hasSheet() ? 'Share a link' : 'Copy a link');

/** Never throws: 'stopped' is the reader's own doing, 'refused' leaves the link to be copied by hand. */
export async function passOn(url: string, title: string): Promise<Passed> {
  if (hasSheet()) {
    try {
      await navigator.share({ title, url });
      return 'shared';
    } catch (error) {
      if (error instanceof DOMException && error.name === 'AbortError') return 'stopped';
      // Another refusal: the clipboard may still be open.
    }
  }
  try {
    await navigator.clipboard.writeText(url);
    return 'copied';
  } catch {
    return 'refused';
  }
}
