/** What a browser's made microphone hears: files of made plucks, and how a browser is told of one. */
import { sound } from '../physics/plucked.ts';

export const RATE = 48_000;

/** Arguments for a browser whose microphone hears a file again and again, and who asks nobody, since it has no windows. */
export const hearing = (file: string): string[] => [
  '--use-fake-device-for-media-stream',
  '--use-fake-ui-for-media-stream',
  `--use-file-for-fake-audio-capture=${file}`,
];

/** A WAV file of 16 bits. */
export function wav(samples: Float64Array | Float32Array): Buffer {
  const file = Buffer.alloc(44 + 2 * samples.length);
  file.write('RIFF', 0);
  file.writeUInt32LE(36 + 2 * samples.length, 4);
  file.write('WAVEfmt ', 8);
  file.writeUInt32LE(16, 16);
  file.writeUInt16LE(1, 20);
  file.writeUInt16LE(1, 22);
  file.writeUInt32LE(RATE, 24);
  file.writeUInt32LE(2 * RATE, 28);
  file.writeUInt16LE(2, 32);
  file.writeUInt16LE(16, 34);
  file.write('data', 36);
  file.writeUInt32LE(2 * samples.length, 40);
  samples.forEach((x, i) =>
    file.writeInt16LE(Math.round(32_000 * Math.max(-1, Math.min(1, x))), 44 + 2 * i),
  );
  return file;
}

/** Half a second of room, then a pluck of that fundamental in Hz and that B; with much noise the weak partials show only after a while. */
export function roomThenPluck(of: {
  readonly fundamental: number;
  readonly inharmonicity: number;
  readonly noise?: number;
}): Float64Array {
  const { samples } = sound({ ...of, seconds: 2, peak: 0.6 }, 5);
  const whole = new Float64Array(RATE / 2 + samples.length);
  for (let i = 0; i < whole.length; i += 1) whole[i] = 2e-4 * Math.sin(7.1 * i);
  whole.set(samples, RATE / 2);
  return whole;
}
