// What turns the colours comes with the first press, or where somebody has chosen before.
import type * as Buttons from './theme-button.ts';

const bring = (then: (buttons: typeof Buttons) => void) =>
  import('./theme-button.ts').then(then, () => undefined);

document.addEventListener('click', ({ target }) => {
  if (target instanceof Element && target.closest('.theme')) void bring(({ turn }) => turn());
});
if (document.documentElement.dataset.theme) void bring(({ name }) => name());
