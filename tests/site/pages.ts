/** The pages of the built site, found by walking its folder. */
import { readdirSync, readFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';

export const root = join(import.meta.dirname, '../..');
export const dist = join(root, 'dist');

const isFrame = (path: string): boolean => path.startsWith('embed/');

/** Addresses below the site's home: '' for the home page, 'bench/', 'course/speaking-length/', '404.html'. */
export const pages = (): string[] => built().filter((path) => !isFrame(path));

/** Whether no page before it in the list is laid out alike: the chapters are of one kind, and so are the sheets. */
export function isFirstOfItsKind(path: string): boolean {
  const kindOf = (each: string) => each.replace(/^([^/]+\/).+/, '$1*');
  return pages().find((each) => kindOf(each) === kindOf(path)) === path;
}

/**
 * The pages that fall to one file of a folder of such files: one file would keep one processor busy, and the others idle. Another
 * file in the folder makes each share smaller.
 */
export function shareOf(file: string): string[] {
  const files = readdirSync(dirname(file)).filter((name) => name.endsWith('.test.ts'));
  const place = files.sort().indexOf(basename(file));
  return pages().filter((_, i) => i % files.length === place);
}

/** Addresses of the pages that hold one figure each, to be framed on other pages: 'embed/the-neck/'. */
export const frames = (): string[] => built().filter(isFrame);

function built(): string[] {
  return readdirSync(dist, { recursive: true, encoding: 'utf8' })
    .map((file) => file.replaceAll('\\', '/'))
    .filter((file) => file.endsWith('.html'))
    .map((file) => file.replace(/(^|\/)index\.html$/, '$1'))
    .sort();
}

/** A page as it was built; `folder` is that of the built site, below the project's root. */
export function htmlOf(path: string, folder = 'dist'): string {
  const file = path.endsWith('.html') ? path : `${path}index.html`;
  return readFileSync(join(root, folder, file), 'utf8');
}
