/** What strings are made for, apart from electric instruments, which need no name. `families.ts` has the strings themselves. */
export const familyNames = [
  'electric, pure nickel',
  'electric, stainless steel',
  'acoustic, phosphor bronze',
  'acoustic, 80/20 bronze',
  'classical, nylon',
  'classical, fluorocarbon',
  'violin, steel',
  'violin, gut',
] as const;

/** What an instrument can be made to carry. */
export const builds = ['steel', 'nylon', 'gut'] as const;
export type Build = (typeof builds)[number];

export type Family = (typeof familyNames)[number];

/** True for a family of polymer or gut, which goes on instruments built for that. */
export const isSoft = (family: Family | undefined): boolean => builtForOf(family) !== undefined;

/** What an instrument that gets such strings was built for; undefined for steel. */
export function builtForOf(family: Family | undefined): Exclude<Build, 'steel'> | undefined {
  if (family === 'violin, gut') return 'gut';
  return family?.startsWith('classical') ? 'nylon' : undefined;
}

/** What instruments a family is for: electric, acoustic, classical or violin. */
export const sortOf = (family: Family | undefined): string => family?.split(',')[0] ?? 'electric';

/** True where the wound strings of a family are known by their weight alone. */
export const isWeighed = (family: Family | undefined): boolean =>
  isSoft(family) || sortOf(family) === 'violin';
