/** A printed page, read back out of its PDF. */
import type { Page } from 'playwright-core';
import { getDocumentProxy } from 'unpdf';

export interface Printed {
  /** The words of each page, without any spaces: a PDF sets them apart by place, not by signs */
  pages: string[];
  /** How often each tag of the structure stands in the whole */
  tags: ReadonlyMap<string, number>;
  /** What stands for those who don't see the drawings */
  alternatives: string[];
}

interface Node {
  role?: string;
  alt?: string;
  children?: readonly Node[];
}

export const packed = (text: string): string => text.replace(/\s+/g, '');

/** Prints the page as a reader would, without its background; on A4 unless another paper is named. */
export async function printed(page: Page, format: 'A4' | 'Letter' = 'A4'): Promise<Printed> {
  const file = await page.pdf({ format, tagged: true });
  const pdf = await getDocumentProxy(new Uint8Array(file));
  const tags = new Map<string, number>();
  const alternatives: string[] = [];
  const walk = ({ role, alt, children }: Node): void => {
    if (role) tags.set(role, (tags.get(role) ?? 0) + 1);
    if (alt) alternatives.push(alt);
    children?.forEach(walk);
  };
  const pages: string[] = [];
  for (let i = 1; i <= pdf.numPages; i += 1) {
    const sheet = await pdf.getPage(i);
    const { items } = await sheet.getTextContent();
    pages.push(packed(items.map((item) => ('str' in item ? item.str : '')).join('')));
    const tree = (await sheet.getStructTree()) as Node | null;
    if (tree) walk(tree);
  }
  return { pages, tags, alternatives };
}

/** The margin on the right of src/styles/print.css, in points of 1/72 in */
const MARGIN = (18 / 25.4) * 72;

/** How far its words reach beyond the margin on the right, in points; a blank at the end of a line may hang over by a part of one. */
export async function beyondMargin(page: Page, format: 'A4' | 'Letter'): Promise<number> {
  const pdf = await getDocumentProxy(new Uint8Array(await page.pdf({ format })));
  let beyond = -Infinity;
  for (let i = 1; i <= pdf.numPages; i += 1) {
    const sheet = await pdf.getPage(i);
    const edge = sheet.getViewport({ scale: 1 }).width - MARGIN;
    const { items } = await sheet.getTextContent();
    for (const item of items)
      if ('str' in item && item.str.trim() !== '')
        beyond = Math.max(beyond, item.transform[4] + item.width - edge);
  }
  return beyond;
}
