/** A text as a two-dimensional code (ISO/IEC 18004), drawn as one path. */
import { generate } from 'lean-qr';

export interface Code {
  /** Modules a side */
  readonly size: number;
  /** Of an SVG whose unit is a module */
  readonly path: string;
}

export function codeOf(text: string): Code {
  const code = generate(text);
  const rows: string[] = [];
  for (let y = 0; y < code.size; y += 1) {
    for (let x = 0; x < code.size; x += 1) if (code.get(x, y)) rows.push(`M${x} ${y}h1v1h-1z`);
  }
  return { size: code.size, path: rows.join('') };
}
