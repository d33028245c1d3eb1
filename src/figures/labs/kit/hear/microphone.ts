/** The microphone: asked for at the press, with everything off that would change the sound. */
import tap from './tap.worklet.js?url&no-inline';

export interface Listening {
  readonly sampleRate: number;
  /** What the device does to the sound although it was asked not to; in words */
  readonly meddles: readonly string[];
  stop(): void;
}

const off = { echoCancellation: false, noiseSuppression: false, autoGainControl: false };
const named: Readonly<Record<keyof typeof off, string>> = {
  echoCancellation: 'echo cancellation',
  noiseSuppression: 'noise suppression',
  autoGainControl: 'automatic gain',
};

/** Why there is no microphone, in words that say what to do. */
export function whyNot(error: unknown): string {
  const name = error instanceof DOMException ? error.name : '';
  if (name === 'NotAllowedError')
    return 'The microphone was refused. Allow it in the browser’s settings for this page, or open a sound file instead.';
  if (name === 'NotFoundError') return 'No microphone was found. Open a sound file instead.';
  return 'The microphone can’t be used here. Open a sound file instead.';
}

/** Opens the microphone and hands each piece of sound to `onpiece`, with its samples a second. Rejects where there is none or it is refused. */
export async function listenIn(
  onpiece: (piece: Float32Array, sampleRate: number) => void,
): Promise<Listening> {
  // Without https there are no devices at all, whatever the types say.
  const devices = navigator.mediaDevices as MediaDevices | undefined;
  if (!devices) throw new DOMException('no devices', 'NotSupportedError');
  const stream = await devices.getUserMedia({ audio: off });
  const context = new AudioContext();
  const stop = (): void => {
    for (const track of stream.getTracks()) track.stop();
    void context.close();
  };
  try {
    await context.audioWorklet.addModule(tap);
    const node = new AudioWorkletNode(context, 'tap', { numberOfOutputs: 0 });
    node.port.onmessage = ({ data }: MessageEvent<Float32Array>) =>
      onpiece(data, context.sampleRate);
    context.createMediaStreamSource(stream).connect(node);
    await context.resume();
  } catch (error) {
    stop();
    throw error;
  }
  const granted = stream.getAudioTracks()[0]?.getSettings() ?? {};
  const meddles = (Object.keys(off) as (keyof typeof off)[])
    .filter((key) => granted[key] === true)
    .map((key) => named[key]);
  return { sampleRate: context.sampleRate, meddles, stop };
}

/** The samples of a sound file, its channels together. Rejects what is no sound that the browser can read. */
export async function samplesOfFile(
  file: Blob,
): Promise<{ samples: Float32Array; sampleRate: number }> {
  const context = new OfflineAudioContext(1, 1, 48_000);
  const sound = await context.decodeAudioData(await file.arrayBuffer());
  const samples = new Float32Array(sound.length);
  for (let channel = 0; channel < sound.numberOfChannels; channel += 1)
    sound.getChannelData(channel).forEach((x, i) => {
      samples[i] = (samples[i] ?? 0) + x / sound.numberOfChannels;
    });
  return { samples, sampleRate: sound.sampleRate };
}
