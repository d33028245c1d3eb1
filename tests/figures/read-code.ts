/** A drawn code as a camera reads it. */
import jsQR from 'jsqr';

/** What a camera would see: some pixels a module, with the blank around that the standard asks for. */
function photographed({ size, path }: { size: number; path: string }) {
  const scale = 3;
  const quiet = 4;
  const side = (size + 2 * quiet) * scale;
  const pixels = new Uint8ClampedArray(side * side * 4).fill(255);
  for (const [, x, y] of path.matchAll(/M(\d+) (\d+)/g)) {
    for (let dy = 0; dy < scale; dy += 1) {
      for (let dx = 0; dx < scale; dx += 1) {
        const at = ((Number(y) + quiet) * scale + dy) * side + (Number(x) + quiet) * scale + dx;
        pixels.fill(0, 4 * at, 4 * at + 3);
      }
    }
  }
  return { pixels, side };
}

/** The text of a code, or undefined where nothing can be read. */
export function readCode(code: { size: number; path: string }): string | undefined {
  const { pixels, side } = photographed(code);
  return jsQR(pixels, side, side)?.data;
}
