/** What drawings say, in words below them, for readers whose letters are larger than a drawing's can be. */

/** From this size of the page's letters on, px, those of a drawing no longer keep up. `ready.ts` has it too. */
const LARGE = 20;

/** Whether the reader has made the page's letters large; the type of the whole screen, for a room, is none of theirs. */
function isLarge(): boolean {
  const { documentElement: root } = document;
  return !('projecting' in root.dataset) && parseFloat(getComputedStyle(root).fontSize) > LARGE;
}

/** What a guess is still to ask for stands beside its drawing, and waits there. */
const DRAWN = 'svg[role="img"][aria-label], .said-too:not([data-veil])';
const HOLDS = '.figure-body, .drawing, figure';

/** What is drawn in `holder` and in sight, drawing by drawing. */
function saidBy(holder: Element): string[] {
  const said = [...holder.querySelectorAll(DRAWN)]
    // What waits for a guess stays unsaid.
    .filter(
      (each) =>
        each.closest(HOLDS) === holder && each.checkVisibility({ visibilityProperty: true }),
    )
    .map((each) => (each.getAttribute('aria-label') ?? each.textContent).trim());
  return [...new Set(said)].filter(Boolean);
}

const below = new Map<Element, HTMLElement>();

function write(): void {
  const large = isLarge();
  const holders = new Set(
    [...document.querySelectorAll(`main :is(${DRAWN})`)].flatMap((svg) => svg.closest(HOLDS) ?? []),
  );
  for (const holder of holders) {
    const lines = large ? saidBy(holder) : [];
    let words = below.get(holder);
    if (!words) {
      words = document.createElement('div');
      words.className = 'in-words';
      // Who hears the page has been told already, by the drawing.
      words.setAttribute('aria-hidden', 'true');
      below.set(holder, words);
    }
    if (words.parentElement !== holder) holder.append(words);
    words.hidden = lines.length === 0;
    const before = [...words.children].map((line) => line.textContent);
    if (before.join('\n') === lines.join('\n')) continue;
    words.replaceChildren(
      ...lines.map((line) => Object.assign(document.createElement('p'), { textContent: line })),
    );
  }
}

/** Writes the words, and follows the drawings, the reader's letters and the page's width from then on. */
export function standBeside(): void {
  let asked = 0;
  const soon = () => {
    asked ||= requestAnimationFrame(() => {
      asked = 0;
      write();
    });
  };
  new ResizeObserver(soon).observe(document.body);
  new MutationObserver(soon).observe(document.body, {
    subtree: true,
    attributeFilter: ['aria-label', 'data-veil'],
  });
  write();
}
