// A device that remembers no chapter fetches nothing more.
try {
  if (localStorage.getItem('speaking-length.reading') && document.querySelector('[data-read-on]'))
    void import('./read-on.ts');
} catch {
  // Then it remembers none.
}

export {};
