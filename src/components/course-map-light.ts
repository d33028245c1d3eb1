// Shows in pencil which chapters the one under the pointer or the keyboard builds on, and which build on it.

const map = document.querySelector('.course-map');

function light(id: string | undefined): void {
  for (const line of map?.querySelectorAll<SVGPathElement>('[data-from]') ?? [])
    line.toggleAttribute(
      'data-on',
      id !== undefined && (line.dataset.from === id || line.dataset.to === id),
    );
}

const idAt = (target: EventTarget | null) =>
  target instanceof Element
    ? target.closest<HTMLElement>('[data-station]')?.dataset.station
    : undefined;

for (const event of ['pointerover', 'focusin'])
  map?.addEventListener(event, ({ target }) => light(idAt(target)));
map?.addEventListener('pointerleave', () => light(idAt(document.activeElement)));
map?.addEventListener('focusout', () => light(undefined));

export {};
