/**
 * Directive `client:sign`: an island comes alive at the first sign that somebody is there, or, with `client:sign="own"`, that
 * somebody turns to it; `client:sign="answer"` is an exercise's, which shows what was answered here before as soon as anybody is there. Until then a page is right as it was built, and loads nothing; where it is to show another instrument
 * than the one it was built for, it does not wait. What a reader does first is not lost: early.ts.
 */
import type { ClientDirective } from 'astro';
import { keepEarly } from './early.ts';
import { rests } from './rests.ts';

const moves = ['pointermove', 'pointerdown', 'touchstart', 'wheel', 'scroll'];
// What helps a hand may press and choose without a pointer or a key.
const acts = ['keydown', 'focusin', 'click', 'input', 'change'];

/** Resolves at the first sign on `place`. */
const signOn = (place: EventTarget): Promise<void> =>
  new Promise((resolve) => {
    const listening = new AbortController();
    const come = (event?: Event): void => {
      // Who loads a newer version turns to no island: what was fetched now would hold the old version up.
      const isNotice = event?.target instanceof Element && event.target.closest('[data-worker]');
      if (rests(event) || isNotice) return;
      listening.abort();
      resolve();
    };
    if ('unread' in document.documentElement.dataset) return come();
    const options = { capture: true, passive: true, signal: listening.signal };
    for (const each of [...moves, ...acts]) place.addEventListener(each, come, options);
    // A link may be put into the address of a page that stands already.
    addEventListener('hashchange', () => location.hash.startsWith('#v') && come(), options);
  });

let anywhere: Promise<void> | undefined;

keepEarly();

/** What `exercises/` remembers of them, by the names that `instrument/storage.ts` gives */
const ANSWERED = /\.(answer|done|tries|guess)\./;

function remembersAnswers(): boolean {
  try {
    return Object.keys(localStorage).some((key) => ANSWERED.test(key));
  } catch {
    return false;
  }
}

const directive: ClientDirective = async (load, { value }, island) => {
  const byItself = value === 'own' || (value === 'answer' && !remembersAnswers());
  await (byItself ? signOn(island) : (anywhere ??= signOn(window)));
  if (!island.hasAttribute('ssr')) return;
  const hydrate = await load();
  await hydrate();
};

export default directive;
