/** What strings are made for, apart from electric instruments, which need no name. `families.ts` has the strings themselves. */
export const familyNames = [
  'acoustic, phosphor bronze',
  'acoustic, 80/20 bronze',
  'classical, nylon',
  'classical, fluorocarbon',
] as const;

export type Family = (typeof familyNames)[number];

/** True for a family that goes on instruments built for nylon. */
export const isSoft = (family: Family | undefined): boolean =>
  family?.startsWith('classical') ?? false;
