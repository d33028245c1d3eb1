// A drawing's lettering is as large as its sheet lets it be. Where a reader's letters are larger, what it says stands below in
// words; what that needs comes only then. The page's height follows its letters.
new ResizeObserver((_, watch) => {
  if (parseFloat(getComputedStyle(document.documentElement).fontSize) <= 20) return;
  watch.disconnect();
  import('./words.ts').then(
    ({ standBeside }) => standBeside(),
    () => undefined,
  );
}).observe(document.body);
