/** Half a sine wave from 0 to 1, as an SVG path whose height in the middle is `height`. */
export function halfWave(height: number): string {
  const POINTS = 32;
  const points = Array.from({ length: POINTS + 1 }, (_, i) => {
    const at = i / POINTS;
    return `${Number(at.toFixed(5))} ${Number((height * Math.sin(Math.PI * at)).toFixed(4))}`;
  });
  return `M${points.join(' L')}`;
}
