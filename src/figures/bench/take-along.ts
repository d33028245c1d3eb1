/** What the buttons below the sheet do; it comes with the first press. Each says what came of it. */
import { encode } from '../../instrument/link.ts';
import type { State } from '../../instrument/schema.ts';
import { held } from '../../instrument/store.svelte.ts';
import { passOn } from '../kit/pass-on.ts';
import { saveCsv } from '../kit/save.ts';
import { withoutDrawn } from '../trial.ts';

/** `link` is there where it has to be copied by hand. */
export async function handOn(state: State): Promise<{ said: string; link: string }> {
  const url = new URL(window.location.href);
  url.hash = encode(withoutDrawn(state));
  const passed = await passOn(url.href, document.title);
  const said = {
    shared: '',
    stopped: '',
    copied: 'Link copied. It opens this bench as it stands.',
    refused: 'This browser doesn’t let a page copy. Copy the link from the field.',
  }[passed];
  return { said, link: passed === 'refused' ? url.href : '' };
}

export async function download(state: State): Promise<string> {
  const { sheetCsv } = await import('../../instrument/sheet-csv.ts');
  const text = sheetCsv(state, state.bend.shown);
  return `Saved as ${saveCsv(`stringing-sheet-${state.other.name || 'instrument'}`, text)}.`;
}

/** A saved sheet is looked at as a visit: it changes nothing of the reader's own. */
export async function openSheet(text: string, before: State): Promise<string> {
  const [{ readSheet }, { sayRead }] = await Promise.all([
    import('../../instrument/sheet-read.ts'),
    import('./say-read.ts'),
  ]);
  const read = readSheet(text, before);
  const { state } = read;
  if (state) await held.late((late) => late.show(held, { ...state, units: before.units }));
  return sayRead(read, before.units);
}
