/** What moved on a page by itself. */

declare global {
  interface Window {
    /** The page's cumulative layout shift so far, and what moved. */
    shifts: { sum: number; what: string[] };
  }
}

interface Shift extends PerformanceEntry {
  readonly value: number;
  readonly hadRecentInput: boolean;
  readonly sources: readonly { readonly node: Node | null }[];
}

/** Runs in the page before its own scripts. */
export function watchShifts(): void {
  window.shifts = { sum: 0, what: [] };
  new PerformanceObserver((list) => {
    for (const { hadRecentInput, value, sources } of list.getEntries() as Shift[]) {
      if (hadRecentInput) continue;
      window.shifts.sum += value;
      for (const { node } of sources) {
        const element = node instanceof Element ? node : node?.parentElement;
        window.shifts.what.push(`${value.toFixed(4)} ${element?.outerHTML.slice(0, 80)}`);
      }
    }
  }).observe({ type: 'layout-shift', buffered: true });
}
