/** Colours as every drawing program reads them. */

const known = new Map<string, string>();
let brush: CanvasRenderingContext2D | null | undefined;

/** A computed colour (`rgb()`, `oklab()`, `color()` …) as #rrggbb, with its opacity as two more digits where it has one. */
export function hexOf(colour: string): string {
  const before = known.get(colour);
  if (before) return before;
  brush ??= Object.assign(document.createElement('canvas'), { width: 1, height: 1 }).getContext(
    '2d',
    { willReadFrequently: true },
  );
  if (!brush) return colour;
  brush.clearRect(0, 0, 1, 1);
  brush.fillStyle = colour;
  brush.fillRect(0, 0, 1, 1);
  const [red = 0, green = 0, blue = 0, alpha = 255] = brush.getImageData(0, 0, 1, 1).data;
  const parts = alpha === 255 ? [red, green, blue] : [red, green, blue, alpha];
  const hex = `#${parts.map((part) => part.toString(16).padStart(2, '0')).join('')}`;
  known.set(colour, hex);
  return hex;
}
