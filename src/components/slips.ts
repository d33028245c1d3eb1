// Opens a slip beside a word, with the glossary's slip or with the source that the word cites: on hover, on a tap, on
// focus. Escape or a press elsewhere closes it. Without this, or where the page holds no slip, the word is a link.

const DELAY = 120;
const GRACE = 280;
const EDGE = 16;
const LEAD = 12;

let open: { word: HTMLElement; slip: HTMLElement } | undefined;
let timer: ReturnType<typeof setTimeout> | undefined;

const wordAt = (target: EventTarget | null) =>
  target instanceof Element ? target.closest<HTMLElement>('a[data-slip]') : null;
const slipOf = (word: HTMLElement) => document.getElementById(word.dataset.slip ?? '');
const within = (target: EventTarget | null) =>
  target instanceof Node &&
  open !== undefined &&
  (open.word.contains(target) || open.slip.contains(target));

/** Below the word's line, or above it where the window has more room there; never beyond its sides. */
function place(word: HTMLElement, slip: HTMLElement, x: number | undefined): void {
  const lines = [...word.getClientRects()];
  const line = lines.find((r) => x !== undefined && r.left <= x && x <= r.right) ?? lines[0];
  if (!line) return;
  const { width, height } = slip.getBoundingClientRect();
  const page = document.documentElement.clientWidth;
  const middle = Math.min(Math.max(line.left + line.width / 2, EDGE + 8), page - EDGE - 8);
  const left = Math.max(EDGE, Math.min(middle - 32, page - EDGE - width));
  const below = window.innerHeight - line.bottom;
  const above = below < height + LEAD + EDGE && line.top > below;
  slip.classList.toggle('above', above);
  slip.style.setProperty('--at', `${middle - left}px`);
  slip.style.left = `${left + window.scrollX}px`;
  slip.style.top = `${window.scrollY + (above ? line.top - height - LEAD : line.bottom + LEAD)}px`;
}

function show(word: HTMLElement, x?: number): void {
  clearTimeout(timer);
  const slip = slipOf(word);
  if (!slip || open?.word === word) return;
  hide();
  open = { word, slip };
  // As its source, the word also hands the keyboard on to the slip.
  (slip as { showPopover(options?: { source: HTMLElement }): void }).showPopover({ source: word });
  word.classList.add('open');
  place(word, slip, x);
}

function hide(): void {
  clearTimeout(timer);
  if (!open) return;
  const { word, slip } = open;
  open = undefined;
  word.classList.remove('open');
  if (slip.matches(':popover-open')) slip.hidePopover();
}

function later(task: () => void, delay: number): void {
  clearTimeout(timer);
  timer = setTimeout(task, delay);
}

function start(): void {
  for (const word of document.querySelectorAll<HTMLElement>('a[data-slip]')) {
    const slip = slipOf(word);
    if (slip) word.setAttribute('aria-describedby', `${slip.id}-text`);
  }

  document.addEventListener('pointerover', (event) => {
    if (event.pointerType !== 'mouse') return;
    const word = wordAt(event.target);
    if (within(event.target)) clearTimeout(timer);
    else if (word) later(() => show(word, event.clientX), DELAY);
    else if (open && !within(document.activeElement)) later(hide, GRACE);
    else clearTimeout(timer);
  });
  document.addEventListener('pointerdown', (event) => {
    if (open && !within(event.target)) hide();
  });
  document.addEventListener('focusin', (event) => {
    const word = wordAt(event.target);
    if (word?.matches(':focus-visible')) show(word);
    else if (open && !within(event.target)) hide();
  });
  document.addEventListener('keydown', (event) => {
    if (event.key === 'Escape' && open) {
      if (open.slip.contains(document.activeElement)) open.word.focus();
      hide();
    }
  });
  document.addEventListener('click', (event) => {
    const word = wordAt(event.target);
    if (event.target instanceof Element && event.target.closest('.slip a')) hide();
    // The keyboard has met the slip already, and follows the link; so does whoever asks for a new tab.
    const follows = event.detail === 0 || event.metaKey || event.ctrlKey || event.shiftKey;
    if (!word || follows || !slipOf(word)) return;
    event.preventDefault();
    show(word, event.clientX);
  });
  window.addEventListener('resize', hide);
}

if ('showPopover' in HTMLElement.prototype && document.querySelector('.slip')) start();

export {};
