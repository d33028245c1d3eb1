/** What a page says to a new version that waits for the old one's pages to be closed. */
export const takeOver = 'take over';
