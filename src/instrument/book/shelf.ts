/** Where the records lie: in the browser's database, or, where that is blocked, nowhere but in this page's memory. */
import { openDB, type IDBPDatabase } from 'idb';

import { DATABASE } from './database.ts';
import { merge } from './merge.ts';
import type { BookRecord } from './schema.ts';

/** A record to be written, and what it looked like when its change began; none for a new one. */
export interface Change {
  readonly next: BookRecord;
  readonly base: BookRecord | undefined;
}

export interface Shelf {
  all(): Promise<readonly unknown[]>;
  /** Writes all or none of them, and gives back what then lies there. */
  put(changes: readonly Change[]): Promise<readonly BookRecord[]>;
  close(): void;
}

const STORE = 'records';

export const newId = (): string => {
  // Not on a page without https.
  if (typeof crypto.randomUUID === 'function') return crypto.randomUUID();
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  return [...bytes].map((b) => b.toString(16).padStart(2, '0')).join('');
};

/** What is to be written, given what lies there now. */
function settled({ next, base }: Change, lying: BookRecord | undefined): readonly BookRecord[] {
  if (!lying || lying.revision === (base?.revision ?? -1))
    return [{ ...next, revision: (lying?.revision ?? next.revision) + 1 }];
  const { record, beside } = merge(base, next, lying, newId);
  return beside ? [record, beside] : [record];
}

class DatabaseShelf implements Shelf {
  readonly #db: IDBPDatabase;
  constructor(db: IDBPDatabase) {
    this.#db = db;
  }

  all(): Promise<readonly unknown[]> {
    return this.#db.getAll(STORE) as Promise<readonly unknown[]>;
  }

  async put(changes: readonly Change[]): Promise<readonly BookRecord[]> {
    const transaction = this.#db.transaction(STORE, 'readwrite');
    const written: BookRecord[] = [];
    try {
      for (const change of changes) {
        const lying = (await transaction.store.get(change.next.id)) as BookRecord | undefined;
        for (const record of settled(change, lying)) {
          await transaction.store.put(record);
          written.push(record);
        }
      }
      await transaction.done;
    } catch (error) {
      // What the transaction says of its own end has been said by the error already.
      transaction.done.catch(() => undefined);
      throw error;
    }
    return written;
  }

  close(): void {
    this.#db.close();
  }
}

/** Opens the database; throws where the browser refuses one. */
export async function databaseShelf(name: string = DATABASE): Promise<Shelf> {
  const db = await openDB(name, 1, {
    upgrade: (fresh) => void fresh.createObjectStore(STORE, { keyPath: 'id' }),
    // A newer version of the site in another window must not wait for this one.
    blocking: (_from, _to, event) => (event.target as IDBDatabase).close(),
  });
  return new DatabaseShelf(db);
}

/** Where the browser refuses a database: nothing lies there, and nothing can be put there. */
export const noShelf: Shelf = {
  all: async () => [],
  put: () => Promise.reject(new Error('there is no database')),
  close: () => undefined,
};
