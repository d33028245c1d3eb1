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
  const { min, max } = range;
  // Often called in a loop: no defaults, no copies, nothing made unless it fails.
  const aboveMin = min === undefined || (range.open ? value > min : value >= min);
  const belowMax = max === undefined || value <= max;
  const unbroken = !range.whole || Number.isInteger(value);
  if (typeof value === 'number' && Number.isFinite(value) && aboveMin && belowMax && unbroken)
    return value;
  throw new RangeError(`${name} is ${String(value)}; permitted: ${describe(range)}`);
}

function describe({ min, max, open, whole, unit }: Range): string {
  const low = min === undefined ? '' : `${open ? 'more than' : 'at least'} ${min}`;
  const high = max === undefined ? '' : `at most ${max}`;
  const bounds =
    [whole ? 'a whole number' : '', low, high].filter(Boolean).join(', ') || 'any finite number';
  return unit ? `${bounds} ${unit}` : bounds;
}

/** A range that begins above 0 and has an end: all of one shape, so that a check costs two comparisons. */
export interface PositiveRange extends Range {
  readonly min: 0;
  readonly open: true;
  readonly max: number;
}

/** As `inRange`, for the ranges that every calculation in a loop passes through. Hands nothing back: that halves its cost. */
export function inPositive(name: string, value: number, range: PositiveRange): void {
  if (!(typeof value === 'number' && value > 0 && value <= range.max)) inRange(name, value, range);
}

// The ranges are far wider than any instrument: they catch a wrong unit, not a bold design.
// The pull that would break every string many times over is still a number: a drawer is searched at any pitch that can be asked.
export const speakingLengthRange: PositiveRange = { min: 0, open: true, max: 10, unit: 'm' };
export const frequencyRange: PositiveRange = { min: 0, open: true, max: 1e5, unit: 'Hz' };
export const tensionRange: PositiveRange = { min: 0, open: true, max: 1e7, unit: 'N' };
export const linearDensityRange: PositiveRange = { min: 0, open: true, max: 10, unit: 'kg/m' };
export const diameterRange: PositiveRange = { min: 0, open: true, max: 0.02, unit: 'm' };
