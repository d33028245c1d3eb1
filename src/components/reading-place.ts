/**
 * Which chapter a reader is in: remembered on the device, for the door that says “Go on”. It asks the device itself: the door of
 * `instrument/storage.ts` comes with all that reads an instrument.
 */
export const NAME = 'speaking-length.reading';

export interface Place {
  readonly id: string;
  readonly number: number;
}

/** What is remembered, or undefined. */
export function place(text: string | null): Place | undefined {
  const [, number, id] = /^(\d{1,2}) ([a-z0-9-]{1,60})$/.exec(text ?? '') ?? [];
  return id === undefined ? undefined : { id, number: Number(number) };
}

function leave({ id, number }: Place): void {
  try {
    localStorage.setItem(NAME, `${number} ${id}`);
  } catch {
    // A device that keeps nothing begins anew.
  }
}

const placeOf = (element: HTMLElement | null): Place | undefined => {
  const { chapter, number } = element?.dataset ?? {};
  return chapter ? { id: chapter, number: Number(number) } : undefined;
};

/** Remembers the chapter of this page, and the next one once its end has been seen. */
export function follow(): void {
  const here = placeOf(document.querySelector('article[data-chapter]'));
  if (!here) return;
  leave(here);
  const next = document.querySelector<HTMLElement>('.onward [data-chapter]');
  const after = placeOf(next);
  if (!next || !after) return;
  new IntersectionObserver((entries) => {
    if (entries.some(({ isIntersecting }) => isIntersecting)) leave(after);
  }).observe(next);
}
