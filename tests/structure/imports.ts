/** Which room of the source may import from which, and where a file's imports point. */
import { readdirSync } from 'node:fs';
import { dirname, join, posix } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';

export const root = fileURLToPath(new URL('../..', import.meta.url));

interface Room {
  readonly rooms: readonly string[];
  /** Packages that the room may import; true for any. */
  readonly packages: readonly string[] | true;
}

const drawing = ['svelte', 'd3-scale', 'd3-shape', 'lean-qr'];

/**
 * Arrows point one way. A room may always import from itself; Astro's own modules count as packages. The data and the
 * styles know nothing of the rest, so that whatever draws or shows may use them.
 */
export const rules: Readonly<Record<string, Room>> = {
  // The one package is for listening, which no page loads before somebody listens.
  physics: { rooms: [], packages: ['fft.js'] },
  // The browser's database belongs to the book, which comes when it is wanted.
  instrument: { rooms: ['physics', 'data'], packages: ['svelte', 'valibot', 'idb', 'papaparse'] },
  figures: { rooms: ['physics', 'instrument', 'data', 'styles'], packages: drawing },
  exercises: { rooms: ['physics', 'instrument', 'data', 'styles'], packages: drawing },
  components: {
    rooms: ['physics', 'instrument', 'figures', 'exercises', 'data', 'styles'],
    packages: true,
  },
  styles: { rooms: [], packages: true },
  layouts: {
    rooms: [
      'physics',
      'instrument',
      'figures',
      'exercises',
      'components',
      'styles',
      'data',
      'public',
    ],
    packages: true,
  },
  pages: {
    rooms: [
      'physics',
      'instrument',
      'figures',
      'exercises',
      'components',
      'layouts',
      'styles',
      'data',
      'course',
    ],
    packages: true,
  },
  data: { rooms: [], packages: [] },
  course: { rooms: [], packages: [] },
  labs: { rooms: [], packages: [] },
};

/** The room of a path from the project's root: `src/physics/bend.ts` -> physics; undefined outside all rooms. */
export function roomOf(path: string): string | undefined {
  const [top, folder, ...rest] = path.split('/');
  // What is served as it is; a page may also hold it in itself.
  if (top === 'public') return top;
  if ((top !== 'src' && top !== 'content') || folder === undefined) return undefined;
  // Files that stand directly in src configure the build: they know as much as the pages.
  if (rest.length === 0) return top === 'src' ? 'pages' : undefined;
  return folder;
}

/** Folders of the figures' room that hold a folder for each figure. */
const parts = ['pull', 'feel', 'choosing', 'consequences', 'reference', 'page'];
/** What every figure may build on, and what is worked out from all of them. */
const floor = ['kit', 'quantities'];

/** The figure that a file belongs to: `src/figures/pull/the-vice/vice.ts` -> pull/the-vice; undefined for what is nobody's own. */
export function figureOf(path: string): string | undefined {
  const [top, room, part, ...rest] = path.split('/');
  if (top !== 'src' || room !== 'figures' || part === undefined) return undefined;
  if (rest.length === 0 || floor.includes(part)) return undefined;
  return parts.includes(part) ? `${part}/${rest[0]}` : part;
}

/** What a figure shares stands in the kit: neither another figure nor the kit itself leans on a figure. */
function leansOnFigure(path: string, target: string): boolean {
  const of = figureOf(target);
  const isFloor = path.startsWith('src/figures/kit/') || figureOf(path) !== undefined;
  return isFloor && of !== undefined && of !== figureOf(path);
}

/** Rings of files that import each other, each as the paths along it. */
export function circles(importedBy: ReadonlyMap<string, readonly string[]>): string[][] {
  const done = new Set<string>();
  const found: string[][] = [];
  const walk = (path: string, trail: readonly string[]): void => {
    const at = trail.indexOf(path);
    if (at >= 0) found.push([...trail.slice(at), path]);
    if (at >= 0 || done.has(path)) return;
    for (const next of importedBy.get(path) ?? []) walk(next, [...trail, path]);
    done.add(path);
  };
  for (const path of importedBy.keys()) walk(path, []);
  return found;
}

/** The code of a file, without the markup around it. */
function codeOf(path: string, text: string): string {
  if (path.endsWith('.svelte') || path.endsWith('.astro')) {
    const frontmatter = /^---\n([\s\S]*?)\n---/.exec(text)?.[1] ?? '';
    const scripts = [...text.matchAll(/<script\b[^>]*>([\s\S]*?)<\/script>/g)].map((m) => m[1]);
    return [frontmatter, ...scripts].join('\n');
  }
  return text;
}

/** Every module that a file imports, re-exports or loads, as written. */
export function importsOf(path: string, text: string): string[] {
  if (path.endsWith('.css')) {
    return [...text.matchAll(/@import\s+(?:url\()?['"]([^'"]+)['"]/g)].map((m) => m[1] ?? '');
  }
  if (path.endsWith('.mdx')) {
    const lines = text.replace(/^---\n[\s\S]*?\n---/, '').matchAll(/^(?:import|export)\b.*$/gm);
    return [...lines].map(([line]) => /['"]([^'"]+)['"]/.exec(line)?.[1] ?? line);
  }
  const code = codeOf(path, text);
  const globs = [...code.matchAll(/import\.meta\.glob[^(]*\(\s*['"]([^'"]+)['"]/g)];
  const named = ts.preProcessFile(code, true, true).importedFiles.map((file) => file.fileName);
  return [...named, ...globs.map((m) => m[1] ?? '')];
}

/** Says what is wrong with an import, or undefined when it points the right way. */
export function wrongImport(path: string, specifier: string): string | undefined {
  const room = roomOf(path);
  if (room === undefined) return undefined;
  const rule = rules[room];
  if (!rule) return `${path}: no rule says what ${room} may import`;
  if (!specifier.startsWith('.') && !specifier.startsWith('/')) {
    const known =
      rule.packages === true || rule.packages.some((name) => isPackage(specifier, name));
    return known ? undefined : `${path}: ${room} may not import the package ${specifier}`;
  }
  const target = specifier.startsWith('/')
    ? specifier.slice(1)
    : posix.join(dirname(path), specifier);
  if (leansOnFigure(path, target))
    return `${path}: what figures share stands in the kit: ${target}`;
  const to = roomOf(target);
  if (to !== undefined && (to === room || rule.rooms.includes(to))) return undefined;
  return `${path}: ${room} may not import ${target}`;
}

function isPackage(specifier: string, name: string): boolean {
  return specifier === name || specifier.startsWith(`${name}/`);
}

/** Paths of all files that can import something, from the project's root. */
export function sources(): string[] {
  return ['src', 'content'].flatMap((top) =>
    readdirSync(join(root, top), { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile() && /\.(ts|js|mjs|svelte|astro|mdx|css)$/.test(entry.name))
      .map((entry) => join(entry.parentPath, entry.name).slice(root.length).replaceAll('\\', '/')),
  );
}
