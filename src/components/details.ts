// Side notes stand open in the margin of a wide screen and of paper; paper shows everything that folds.

// With print in it, nothing folds between the counting of a print's pages and their drawing: that cut off the last one.
const wide = matchMedia('print, (min-width: 64rem)');

function settleNotes(): void {
  for (const note of document.querySelectorAll<HTMLDetailsElement>('details.side-note'))
    note.open = wide.matches;
}

settleNotes();
wide.addEventListener('change', settleNotes);

const opened = new Set<HTMLDetailsElement>();

addEventListener('beforeprint', () => {
  for (const details of document.querySelectorAll<HTMLDetailsElement>(
    'main details:not([open], [data-as-is])',
  )) {
    details.open = true;
    opened.add(details);
  }
});

addEventListener('afterprint', () => {
  for (const details of opened) details.open = false;
  opened.clear();
});
