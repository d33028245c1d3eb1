// A drawing's lettering is as large as its sheet lets it be. Where a reader's letters are larger, what it says stands below in
// words; what that needs comes only then.
import { isLarge } from './large.ts';

const watch = new ResizeObserver(() => {
  if (!isLarge()) return;
  watch.disconnect();
  import('./words.ts').then(
    ({ standBeside }) => standBeside(),
    () => undefined,
  );
});
// The page's height follows its letters.
watch.observe(document.body);
