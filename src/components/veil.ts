// Words that would give a guess away stay blank until it is made, or its answer looked up: in the drawing, in words, or before.
// It stands in the page itself, so it reads the memory by the names that instrument/storage.ts gives, without that file.
const recall = (name: string): string | null => {
  try {
    return localStorage.getItem(`speaking-length.${name}`);
  } catch {
    return null;
  }
};

const lifted = new Set<string>();
const uncover = (): void => {
  for (const veil of document.querySelectorAll<HTMLElement>('[data-veil]'))
    if (lifted.has(veil.dataset.veil ?? '')) veil.removeAttribute('data-veil');
};
// A drawing makes what was veiled anew, as for another string or when a drag is taken back.
const watch = new MutationObserver(uncover);

const lift = (id: string): void => {
  if (lifted.size === 0)
    watch.observe(document.body, {
      subtree: true,
      childList: true,
      attributeFilter: ['data-veil'],
    });
  lifted.add(id);
  uncover();
};
const guessOf = (target: EventTarget | null): HTMLElement | null =>
  target instanceof Element ? target.closest<HTMLElement>('[data-guess]') : null;
const answerOf = (guess: HTMLElement): HTMLDetailsElement | null =>
  guess.querySelector('details.answer');

const isShownByHand = (id: string): boolean =>
  recall(`guess.hand.${id}`)?.includes('"shown":true') ?? false;

for (const guess of document.querySelectorAll<HTMLElement>('[data-guess]')) {
  const { guess: id = '' } = guess.dataset;
  if (recall(`guess.${id}`) !== null || isShownByHand(id)) lift(id);
}

// In a drawing: the words open too.
document.addEventListener('guess-shown', ({ target }) => {
  const guess = guessOf(target);
  if (!guess) return;
  lift(guess.dataset.guess ?? '');
  const answer = answerOf(guess);
  if (answer) answer.open = true;
});

// In words, or without a guess: the drawing shows its answer too. Paper opens all that folds, and asks nobody.
document.addEventListener(
  'toggle',
  ({ target }) => {
    const guess = guessOf(target);
    const answer = guess && answerOf(guess);
    if (!answer?.open || answer !== target || matchMedia('print').matches) return;
    lift(guess?.dataset.guess ?? '');
    guess?.dispatchEvent(new CustomEvent('guess-opened'));
  },
  { capture: true },
);

export {};
