/**
 * A function that gives back what it gave last for as long as that is the same, part by part. A step of a drag makes every
 * view of the state anew; what did not change in it need not be looked at again.
 */
export function steadily<T extends object>(): (next: T) => T {
  let last: T | undefined;
  return (next) => {
    if (!last || !sameParts(last, next)) last = next;
    return last;
  };
}

const same = (a: unknown, b: unknown): boolean =>
  Object.is(a, b) || (Array.isArray(a) && Array.isArray(b) && sameParts(a, b));

function sameParts(a: object, b: object): boolean {
  const keys = Object.keys(a) as (keyof typeof a)[];
  return keys.length === Object.keys(b).length && keys.every((key) => same(a[key], b[key]));
}
