/**
 * What a reader does to an island whose script has not come yet is done again once it has: nothing that was pressed, chosen or
 * typed is lost, and a finger that holds a handle goes on dragging it. It stands in the page itself, since a file may be late.
 */
const SLIDER = '[role="slider"]';
const sliding = /^(Arrow|Page|Home$|End$|Enter$)/;
const isTyped = (target: Element) =>
  target instanceof HTMLInputElement ||
  target instanceof HTMLSelectElement ||
  target instanceof HTMLTextAreaElement;

const kept = new Map<Element, (() => void)[]>();
/** What a pointer came down on */
const holding = new Map<number, Element>();

function keep(island: Element, again: () => void): void {
  const all = kept.get(island);
  if (all) return void all.push(again);
  const first = [again];
  kept.set(island, first);
  // Handles take hold in an effect, which follows; and each act finds what the one before has changed, as it would have by itself.
  const catchUp = () => first.forEach((each) => setTimeout(each));
  island.addEventListener('astro:hydrate', catchUp, { once: true });
}

/** How it is done again, or undefined where that would change nothing. */
function again(event: Event, target: Element): (() => void) | undefined {
  const { type } = event;
  if (event instanceof PointerEvent && type !== 'click') {
    const { pointerId } = event;
    if (type === 'pointerdown') {
      const pressed = target.closest(SLIDER);
      if (pressed) {
        holding.set(pointerId, pressed);
        document.addEventListener('pointermove', notice, true);
      } else holding.delete(pointerId);
    }
    const slider = holding.get(pointerId);
    if (!slider) return;
    if (type === 'pointerup' || type === 'pointercancel') holding.delete(pointerId);
    return () => slider.dispatchEvent(new PointerEvent(type, event));
  }
  if (isTyped(target)) {
    if (type !== 'input' && type !== 'change') return;
    const { value } = target;
    const checked = target instanceof HTMLInputElement && target.checked;
    return () => {
      target.value = value;
      if (target instanceof HTMLInputElement) target.checked = checked;
      target.dispatchEvent(new Event(type, { bubbles: true }));
    };
  }
  const slider = target.closest(SLIDER);
  if (event instanceof KeyboardEvent) {
    if (!slider || !sliding.test(event.key)) return;
    // Else the page would scroll.
    if (type === 'keydown') event.preventDefault();
    return () => slider.dispatchEvent(new KeyboardEvent(type, event));
  }
  const pressed = slider ?? target.closest('button');
  if (type !== 'click' || !pressed) return;
  return () => pressed.dispatchEvent(new MouseEvent('click', event));
}

function notice(event: Event): void {
  // A finger that has left its handle still drags it.
  const isDrag = event instanceof PointerEvent && event.type !== 'pointerdown';
  const target = (isDrag && holding.get(event.pointerId)) || event.target;
  const island = target instanceof Element && target.closest('astro-island[ssr]');
  if (!island) {
    // Of what is awake nothing more is kept, and no step of its drag need come by here.
    if (isDrag) holding.delete(event.pointerId);
    if (holding.size === 0) document.removeEventListener('pointermove', notice, true);
    return;
  }
  const act = again(event, target);
  if (act) keep(island, act);
}

const acts = ['input', 'change', 'keydown', 'keyup', 'click'];
const moves = ['pointerdown', 'pointerup', 'pointercancel'];

/** From now on; call it once a page. */
export function keepEarly(): void {
  for (const type of [...acts, ...moves]) document.addEventListener(type, notice, true);
}
