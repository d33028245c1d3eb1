/** This page's book, opened once, when it is first wanted. */
import { Book } from './book.ts';
import { forget, recall, remember } from '../storage.ts';
import { wrongWith } from './schema.ts';
import { DATABASE } from './database.ts';
import { databaseShelf, type Change } from './shelf.ts';

let book: Promise<Book> | undefined;

export function openBook(): Promise<Book> {
  book ??= Book.open(
    () => databaseShelf(),
    typeof BroadcastChannel === 'undefined' ? undefined : () => new BroadcastChannel(DATABASE),
  ).then(async (opened) => {
    // A page that is left waits for no database.
    if (typeof window !== 'undefined')
      window.addEventListener('pagehide', () => leaveBehind(opened));
    await takeUpLeft(opened);
    return opened;
  });
  return book;
}

/** Calls `look` with the book once it is open and after each change of it, until what this gives back is called. */
export function watchBook(look: (book: Book) => void): () => void {
  let leave: (() => void) | undefined;
  let left = false;
  void openBook().then((opened) => {
    if (left) return;
    look(opened);
    leave = opened.listen(() => look(opened));
  });
  return () => {
    left = true;
    leave?.();
  };
}

/** The name under which the device remembers what a page had not put on the shelf when it was left */
const LEFT = 'book-left';

/** What this page has taken up of it, as text: it is on the shelf since, or waits with what was changed here. */
let taken: ReadonlySet<string> = new Set();

const textOf = (change: Change): string => JSON.stringify(change);

function leaveBehind({ waiting }: Book): void {
  if (waiting.length === 0) return;
  const others = readLeft(recall(LEFT)).map(textOf);
  const texts = [...others.filter((text) => !taken.has(text)), ...waiting.map(textOf)];
  // A page that comes back from the browser's memory and is left again has left the same already.
  remember(LEFT, `[${[...new Set(texts)].join()}]`);
}

async function takeUpLeft(opened: Book): Promise<void> {
  const lying = recall(LEFT);
  if (lying === undefined) return;
  const left = readLeft(lying);
  const isTaken = await opened.takeUp(left);
  taken = new Set(left.map(textOf));
  // Another page may have left more meanwhile: to take the same up twice changes nothing.
  if (isTaken && recall(LEFT) === lying) forget(LEFT);
}

function readLeft(text: string | undefined): readonly Change[] {
  try {
    const left: unknown = JSON.parse(text ?? '[]');
    return Array.isArray(left) ? left.filter(isChange) : [];
  } catch {
    return [];
  }
}

const isChange = (value: unknown): value is Change => {
  if (value === null || typeof value !== 'object' || !('next' in value)) return false;
  const { next, base } = value as { next: unknown; base?: unknown };
  return wrongWith(next) === undefined && (base === undefined || wrongWith(base) === undefined);
};

/** Asks the browser not to clear the book when space runs short; true when it grants that. */
export async function askToPersist(): Promise<boolean> {
  try {
    const { storage } = navigator;
    return (await storage.persisted()) || (await storage.persist());
  } catch {
    return false;
  }
}
