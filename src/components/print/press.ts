/** Prints what the pressed button names. */
import { layOut, type Paper } from './lay-out.ts';

const isPaper = (name: string | undefined): name is Paper =>
  name === 'read' || name === 'worksheet' || name === 'key';

/** `button` names the paper, and what holds it the chapter. */
export async function press(button: HTMLButtonElement): Promise<void> {
  const { paperAs } = button.dataset;
  const chapter = button.closest<HTMLElement>('[data-chapter]')?.dataset.chapter ?? '';
  if (!isPaper(paperAs)) return;
  await layOut(paperAs, chapter);
  window.print();
}
