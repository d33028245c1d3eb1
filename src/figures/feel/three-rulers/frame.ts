/** The sheets of the three rulers: strings and section above them on a phone, beside them on a wide screen. */

export interface Frame {
  readonly name: 'phone' | 'wide';
  readonly width: number;
  readonly height: number;
  /** The two strings: from the nut to the longest saddle, and down of the first; the second hangs below */
  readonly strings: { readonly left: number; readonly right: number; readonly y: number };
  /** The section of the second string: left jaw, middle, drawn diameter of the string's own gauge */
  readonly section: { readonly left: number; readonly y: number; readonly own: number };
  /** The rulers: left and right end, down of the first, and from one to the next */
  readonly rules: {
    readonly left: number;
    readonly right: number;
    readonly y: number;
    readonly step: number;
  };
  /** Where the three lines meet, and the verdict's middle line */
  readonly verdict: { readonly x: number; readonly y: number; readonly width: number };
  readonly letters: number;
  readonly size: number;
}

export const phone: Frame = {
  name: 'phone',
  width: 360,
  height: 634,
  strings: { left: 8, right: 326, y: 34 },
  section: { left: 96, y: 174, own: 34 },
  rules: { left: 24, right: 318, y: 294, step: 104 },
  verdict: { x: 180, y: 600, width: 290 },
  letters: 16,
  size: 12.5,
};

export const wide: Frame = {
  name: 'wide',
  width: 1040,
  height: 420,
  strings: { left: 8, right: 398, y: 44 },
  section: { left: 120, y: 238, own: 76 },
  rules: { left: 490, right: 990, y: 60, step: 108 },
  verdict: { x: 740, y: 384, width: 380 },
  letters: 26,
  size: 15,
};

/** The largest difference on a ruler. */
export const MOST = 0.4;

/** Along a ruler, of a relative difference; what lies beyond its ends stands at them. */
export function along({ rules: { left, right } }: Frame, difference: number): number {
  const held = Math.min(MOST, Math.max(-MOST, difference));
  return (left + right) / 2 + (held / MOST) * ((right - left) / 2);
}
