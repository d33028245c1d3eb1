/** Prints what the pressed button names: of the chapter that holds it, or else of the stringing sheet. */
import { isPaper, printAs } from './paper.ts';

export async function press(button: HTMLButtonElement): Promise<void> {
  const { paperAs } = button.dataset;
  const chapter = button.closest<HTMLElement>('[data-chapter]')?.dataset.chapter;
  if (!isPaper(paperAs)) return;
  if (chapter === undefined) printAs(paperAs);
  else printAs(paperAs, await (await import('./lay-out.ts')).layOut(paperAs, chapter));
}
