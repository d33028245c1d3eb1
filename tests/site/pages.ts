/** The pages of the built site, found by walking its folder. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

export const root = join(import.meta.dirname, '../..');
export const dist = join(root, 'dist');

const isFrame = (path: string): boolean => path.startsWith('embed/');

/** Addresses below the site's home: '' for the home page, 'bench/', 'course/speaking-length/', '404.html'. */
export const pages = (): string[] => built().filter((path) => !isFrame(path));

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
