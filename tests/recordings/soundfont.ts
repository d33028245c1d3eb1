/** Reads sounds out of a sound font, a RIFF file: its chunk `smpl` holds 16-bit samples, `shdr` 46 bytes about each sound. */
import { closeSync, fstatSync, openSync, readSync } from 'node:fs';

export interface Recording {
  /** Full scale 1 */
  readonly samples: Float64Array;
  /** Hz */
  readonly sampleRate: number;
}

interface Chunk {
  /** Of its contents, in bytes from the file's start */
  readonly at: number;
  readonly size: number;
}

const HEADER = 46;

function bytes(file: number, at: number, size: number): Buffer {
  const buffer = Buffer.alloc(size);
  if (readSync(file, buffer, 0, size, at) !== size)
    throw new Error('the sound font ends too early');
  return buffer;
}

/** The chunks of a stretch of the file by name, those inside lists too. */
function chunksIn(file: number, from: number, to: number): Map<string, Chunk> {
  const found = new Map<string, Chunk>();
  for (let at = from; at + 8 <= to;) {
    const head = bytes(file, at, 8);
    const name = head.toString('latin1', 0, 4);
    const size = head.readUInt32LE(4);
    if (name === 'RIFF' || name === 'LIST')
      for (const [inner, chunk] of chunksIn(file, at + 12, at + 8 + size)) found.set(inner, chunk);
    else found.set(name, { at: at + 8, size });
    // A chunk of odd length is followed by a byte that belongs to none.
    at += 8 + size + (size % 2);
  }
  return found;
}

/** The sounds of the font at `path` by name; each is read when it is asked for. Throws Error for what is no sound font. */
export function readSoundfont(path: string): {
  names: readonly string[];
  read: (name: string) => Recording;
} {
  const file = openSync(path, 'r');
  const chunks = chunksIn(file, 0, fstatSync(file).size);
  const [samples, headers] = [chunks.get('smpl'), chunks.get('shdr')];
  if (!samples || !headers) throw new Error(`${path} is no sound font`);
  const table = bytes(file, headers.at, headers.size);
  closeSync(file);
  const at = new Map<string, number>();
  for (let o = 0; o + HEADER <= table.length; o += HEADER)
    at.set((table.toString('latin1', o, o + 20).split('\0')[0] ?? '').trim(), o);
  const read = (name: string): Recording => {
    const o = at.get(name);
    if (o === undefined) throw new Error(`${path} has no sound named ${name}`);
    const [start, end] = [table.readUInt32LE(o + 20), table.readUInt32LE(o + 24)];
    const again = openSync(path, 'r');
    const raw = bytes(again, samples.at + 2 * start, 2 * (end - start));
    closeSync(again);
    return {
      samples: Float64Array.from(
        { length: end - start },
        (_, i) => raw.readInt16LE(2 * i) / 32_768,
      ),
      sampleRate: table.readUInt32LE(o + 36),
    };
  };
  return { names: [...at.keys()], read };
}
