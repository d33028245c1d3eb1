/** This page's book, opened once, when it is first wanted. */
import { Book } from './book.ts';
import { DATABASE, databaseShelf } from './shelf.ts';

let book: Promise<Book> | undefined;

export function openBook(): Promise<Book> {
  book ??= Book.open(
    () => databaseShelf(),
    typeof BroadcastChannel === 'undefined' ? undefined : () => new BroadcastChannel(DATABASE),
  );
  return book;
}

/** Asks the browser not to clear the book when space runs short; true when it grants that. */
export async function askToPersist(): Promise<boolean> {
  try {
    const { storage } = navigator;
    return (await storage.persisted()) || (await storage.persist());
  } catch {
    return false;
  }
}
