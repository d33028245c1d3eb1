/** Hands the whole book to the reader as one file; gives the name that it is saved under. */
import type { Book } from '../../instrument/book/book.ts';
import { writeBook } from '../../instrument/book/file.ts';
import { save } from './save.ts';

export function keepAsFile(book: Book): string {
  const text = writeBook(book.all, new Date(), book.spoilt);
  return save('speaking-length-book', 'json', new Blob([text], { type: 'application/json' }));
}
