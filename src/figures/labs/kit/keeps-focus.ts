/** Keeps the focus in its place when what has it goes: a row that is taken out, a button that has done its work. Else it falls to the top of the page. */

const REACHED = 'a[href], button, input, select, textarea, summary, [tabindex="0"]';
const TYPED = 'input:not([type]), input[type="text"], textarea';

const isReached = (each: HTMLElement): boolean =>
  each.isConnected && !each.matches(':disabled') && !each.closest('[hidden]');

const reachedIn = (room: HTMLElement): readonly HTMLElement[] =>
  [...room.querySelectorAll<HTMLElement>(REACHED)].filter(isReached);

/**
 * Where the focus goes from `lost`, whose place among what could be reached was `before`: to what has come in its place, else to what
 * stood before it, else to what stands after it.
 */
function heir(
  lost: HTMLElement,
  before: readonly HTMLElement[],
  now: readonly HTMLElement[],
): HTMLElement | undefined {
  const place = before.indexOf(lost);
  const previous = before.slice(0, Math.max(0, place)).findLast(isReached);
  const following = before.slice(place + 1).find(isReached);
  const from = previous ? now.indexOf(previous) + 1 : 0;
  const to = following ? now.indexOf(following) : now.length;
  return now.slice(from, to).find((each) => !before.includes(each)) ?? previous ?? following;
}

/** Watches over the focus in `room` for as long as this is on the page; gives the way to stop. */
export function keepsFocus(room: HTMLElement): () => void {
  let held: HTMLElement | undefined;
  let before: readonly HTMLElement[] = [];
  let byKey = false;

  // Not at every change: what has come since the focus came to rest is what takes a place.
  const hold = (): void => {
    const active = document.activeElement;
    held = active instanceof HTMLElement && room.contains(active) ? active : undefined;
    before = held ? reachedIn(room) : [];
  };
  const look = (): void => {
    const active = document.activeElement;
    const isLost = held && !isReached(held) && (active === document.body || active === held);
    if (held && isLost) {
      const next = heir(held, before, reachedIn(room));
      // A field that takes the focus by itself would bring up a phone's keyboard: there its place takes it.
      const seat = next?.matches(TYPED) && !byKey ? next.parentElement : next;
      if (seat && seat !== next) seat.tabIndex = -1;
      seat?.focus({ preventScroll: !byKey });
      hold();
    }
  };
  const left = (event: FocusEvent): void => {
    // Somebody went elsewhere; what is removed loses the focus without a word, or to nothing.
    if (event.relatedTarget instanceof Node && !room.contains(event.relatedTarget))
      held = undefined;
  };
  const keyed = (): void => void (byKey = true);
  const pointed = (): void => void (byKey = false);

  const watcher = new MutationObserver(look);
  watcher.observe(room, {
    subtree: true,
    childList: true,
    attributes: true,
    attributeFilter: ['disabled', 'hidden'],
  });
  room.addEventListener('focusin', hold);
  room.addEventListener('focusout', left);
  room.addEventListener('keydown', keyed);
  room.addEventListener('pointerdown', pointed);
  hold();
  return () => {
    watcher.disconnect();
    room.removeEventListener('focusin', hold);
    room.removeEventListener('focusout', left);
    room.removeEventListener('keydown', keyed);
    room.removeEventListener('pointerdown', pointed);
  };
}
