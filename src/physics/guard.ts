/** Names, values and permitted ranges of arguments, checked in one place so that every error reads alike. */

export interface Range {
  readonly min?: number;
  readonly max?: number;
  /** True when the minimum itself is not allowed. */
  readonly open?: boolean;
  /** True when only whole numbers are allowed. */
  readonly whole?: boolean;
  readonly unit?: string;
}

/** Returns `value` if it is a finite number in `range`; otherwise throws a RangeError that names the argument. */
export function inRange(name: string, value: number, range: Range): number {
  const { min = -Infinity, max = Infinity, open = false, whole = false, unit = '' } = range;
  const tooLow = open ? value <= min : value < min;
  const broken = whole && !Number.isInteger(value);
  if (typeof value !== 'number' || !Number.isFinite(value) || tooLow || value > max || broken) {
    throw new RangeError(`${name} is ${String(value)}; permitted: ${describe(range, unit)}`);
  }
  return value;
}

function describe({ min, max, open, whole }: Range, unit: string): string {
  const low = min === undefined ? '' : `${open ? 'more than' : 'at least'} ${min}`;
  const high = max === undefined ? '' : `at most ${max}`;
  const bounds =
    [whole ? 'a whole number' : '', low, high].filter(Boolean).join(', ') || 'any finite number';
  return unit ? `${bounds} ${unit}` : bounds;
}

// The ranges are far wider than any instrument: they catch a wrong unit, not a bold design.
// The pull that would break every string many times over is still a number: a drawer is searched at any pitch that can be asked.
export const speakingLengthRange: Range = { min: 0, open: true, max: 10, unit: 'm' };
export const frequencyRange: Range = { min: 0, open: true, max: 1e5, unit: 'Hz' };
export const tensionRange: Range = { min: 0, open: true, max: 1e7, unit: 'N' };
export const linearDensityRange: Range = { min: 0, open: true, max: 10, unit: 'kg/m' };
export const diameterRange: Range = { min: 0, open: true, max: 0.02, unit: 'm' };
