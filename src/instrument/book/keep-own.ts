/** The reader's own instrument, from the page that changes it into the book. */
import { readInstrument, type Instrument } from '../schema.ts';
import { askToPersist, openBook } from './open.ts';
import { isInstrument } from './schema.ts';
import { withUnknown } from './unknown.ts';

/** Keeps the instrument under its id; the first one that is kept asks for a storage that lasts. Gives words on what is in the way. */
export async function keepOwn(id: string, instrument: Instrument): Promise<string | undefined> {
  const book = await openBook();
  const lying = book.get(id);
  const { name } = instrument;
  if (lying && isInstrument(lying)) {
    const known = readInstrument(lying.instrument);
    const whole = withUnknown(lying.instrument as Instrument, known, instrument);
    await book.change(id, { name, instrument: whole, deleted: undefined });
  } else {
    const isFirst = !book.all.some(isInstrument);
    await book.add({ kind: 'instrument', name, instrument }, id);
    if (isFirst) void askToPersist();
  }
  return (
    book.trouble &&
    'This browser has no room to keep your instruments, or doesn’t allow it. This page’s address holds the one that you see: copy it. Or open your book, at the foot of the page, and save it as a file.'
  );
}

/** Puts away an instrument whose making was taken back. */
export async function putAwayOwn(id: string): Promise<void> {
  await (await openBook()).putAway(id);
}
