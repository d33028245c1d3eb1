/** The browser's database that holds the book: its name, and whether this device has one. */
export const DATABASE = 'speaking-length.book';

/** Whether anything was ever kept on this device; false where the browser doesn't tell. */
export async function isBegun(): Promise<boolean> {
  try {
    return (await indexedDB.databases()).some(({ name }) => name === DATABASE);
  } catch {
    // Without a database, or in a browser that doesn't list them.
    return false;
  }
}
