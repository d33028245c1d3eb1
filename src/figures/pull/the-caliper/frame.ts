/** The caliper's sheet, 360 units wide: the wire's own diameter is drawn 96 units wide, whatever the wire. */
export const frame = {
  width: 360,
  height: 346,
  /** Inner face of the fixed jaw */
  jaw: 66,
  own: 96,
  beam: { top: 34, bottom: 60, left: 8, right: 352 },
  middle: 150,
  tip: 176,
  /** Of the dial, from the moving jaw's face */
  dial: { x: 78, y: 86, radius: 38 },
  dimension: 250,
  readings: 300,
} as const;

/** Thousandths for one turn of the dial's needle. */
export const PER_TURN = 10;

/** Ticks of the beam in thousandths: from tick to tick, and from number to number, far enough apart to be read. */
export function ticksOf(perThousandth: number): { readonly step: number; readonly number: number } {
  const step = [1, 2, 5, 10, 20].find((n) => n * perThousandth >= 5) ?? 50;
  const number = [5, 10, 20, 50].find((n) => n * perThousandth >= 30) ?? 100;
  return { step, number };
}
