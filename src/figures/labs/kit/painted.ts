/** Resolves once the browser has drawn what has changed, so that what comes next falls into another frame. */
export const painted = (): Promise<void> =>
  new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
