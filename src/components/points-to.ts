// A word lights up its part of a figure while it is pointed at or focused; a press keeps the light on, and brings the
// part into sight where it is not. Escape or a second press puts it out.

let kept: HTMLElement | undefined;

const wordAt = (target: EventTarget | null) =>
  target instanceof Element ? target.closest<HTMLElement>('.points-to') : null;
const partsOf = (word: HTMLElement) =>
  document.querySelectorAll(`[data-part="${CSS.escape(word.dataset.pointsTo ?? '')}"]`);

function light(word: HTMLElement, on: boolean): void {
  word.classList.toggle('lights', on);
  for (const part of partsOf(word)) part.toggleAttribute('data-lit', on);
}

function keep(word: HTMLElement | undefined): void {
  if (kept && kept !== word) {
    kept.setAttribute('aria-pressed', 'false');
    light(kept, false);
  }
  kept = word;
  if (!word) return;
  word.setAttribute('aria-pressed', 'true');
  light(word, true);
}

function press(word: HTMLElement): void {
  if (kept === word) return keep(undefined);
  keep(word);
  const seen = (part: Element) => {
    const { top, bottom } = part.getBoundingClientRect();
    return bottom > 0 && top < window.innerHeight;
  };
  const parts = [...partsOf(word)];
  const still = matchMedia('(prefers-reduced-motion: reduce)').matches;
  if (!parts.some(seen))
    parts[0]?.scrollIntoView({ block: 'center', behavior: still ? 'instant' : 'smooth' });
}

for (const word of document.querySelectorAll<HTMLElement>('.points-to')) {
  word.tabIndex = 0;
  word.setAttribute('role', 'button');
  word.setAttribute('aria-pressed', 'false');
  word.title = 'Show it in the figure';
  word.addEventListener('pointerenter', () => light(word, true));
  word.addEventListener('pointerleave', () => light(word, word === kept));
  word.addEventListener('focus', () => light(word, true));
  word.addEventListener('blur', () => light(word, word === kept));
}

document.addEventListener('click', (event) => {
  const word = wordAt(event.target);
  if (word) press(word);
});
document.addEventListener('keydown', (event) => {
  const word = wordAt(event.target);
  if (event.key === 'Escape' && kept) keep(undefined);
  else if (word && (event.key === 'Enter' || event.key === ' ')) {
    event.preventDefault();
    press(word);
  }
});

export {};
