/** Where the pencil mark of an answer stands on the answer's ruler: the right one is the middle. */

// Three doublings either way; what lies farther off stands at the end.
const DOUBLINGS = 3;

/** From −1 (far too small) over 0 (right) to 1 (far too large), for a value of the same sign by doublings. */
export function offsetOf(value: number, answer: number): number {
  if (value === answer) return 0;
  const ratio = value / answer;
  if (!(ratio > 0) || !Number.isFinite(ratio)) return value > answer ? 1 : -1;
  const doublings = Math.log2(ratio) * Math.sign(answer);
  return Math.min(1, Math.max(-1, doublings / DOUBLINGS));
}
