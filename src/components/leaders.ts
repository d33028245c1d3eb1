// Draws the leader of a figure, from the sentence that says what to drag to the handle. It goes once a handle has been used.

/** px, from a handle's middle: its ring, and a little air */
const RING = 15;
const NAMED = '[data-handle]';

function handleOf(figure: Element, name: string | undefined): Element | undefined {
  return [...figure.querySelectorAll<HTMLElement>(`.figure-body ${NAMED}`)].find(
    (each) => each.checkVisibility() && (name === undefined || each.dataset.handle === name),
  );
}

/** Letters that it would run through: they stand clear of it while it is there. */
function clear(figure: Element, x: number, from: number, to: number): void {
  for (const each of figure.querySelectorAll('.figure-body :is(text, p)')) {
    const { left, right, top, bottom } = each.getBoundingClientRect();
    const crosses = left < x + 2 && right > x - 2 && top < to && bottom > from;
    each.toggleAttribute('data-crossed', crosses);
  }
}

function draw(leader: HTMLElement): void {
  const figure = leader.closest('figure');
  const act = figure?.querySelector('.figure-act');
  const handle = figure && handleOf(figure, leader.dataset.leads);
  leader.hidden = !handle;
  if (!figure || !act || !handle) return;
  const whole = figure.getBoundingClientRect();
  const from = act.getBoundingClientRect();
  const to = handle.getBoundingClientRect();
  const x = to.left + to.width / 2;
  const y = to.top + to.height / 2 - RING;
  leader.hidden = y < from.bottom;
  leader.toggleAttribute('data-left', x < from.left);
  leader.style.left = `${Math.min(x, from.left) - whole.left}px`;
  leader.style.top = `${from.bottom - whole.top}px`;
  leader.style.width = `${Math.abs(x - from.left)}px`;
  leader.style.height = `${y - from.bottom}px`;
  leader.dataset.drawn = '';
  clear(figure, x, from.bottom, y);
}

function follow(leader: HTMLElement): void {
  const figure = leader.closest('figure');
  const seen = new ResizeObserver(() => draw(leader));
  const done = ({ target }: Event): void => {
    if (!(target instanceof Element && target.closest('[role="slider"]'))) return;
    seen.disconnect();
    leader.remove();
    for (const each of figure?.querySelectorAll('[data-crossed]') ?? [])
      each.removeAttribute('data-crossed');
  };
  for (const type of ['pointerdown', 'keydown']) figure?.addEventListener(type, done, true);
  if (figure) seen.observe(figure);
}

/** Figures that have not been near the screen yet */
const near = new IntersectionObserver(
  (entries) => {
    for (const { isIntersecting, target } of entries) {
      if (!isIntersecting || !(target instanceof HTMLElement)) continue;
      near.unobserve(target);
      const leader = target.querySelector<HTMLElement>('.figure-leader');
      if (leader) follow(leader);
    }
  },
  { rootMargin: '100px' },
);
for (const each of document.querySelectorAll('.figure:has(.figure-leader)')) near.observe(each);

export {};
