/** The crack of a string that lets go: a short burst of noise that falls off at once. */
const LONG = 0.09;

export function snap(): void {
  let context: AudioContext;
  try {
    context = new AudioContext();
  } catch {
    return;
  }
  const buffer = context.createBuffer(1, Math.ceil(LONG * context.sampleRate), context.sampleRate);
  const samples = buffer.getChannelData(0);
  for (let i = 0; i < samples.length; i += 1)
    samples[i] = 0.3 * (2 * Math.random() - 1) * (1 - i / samples.length) ** 4;
  const source = context.createBufferSource();
  source.buffer = buffer;
  source.connect(context.destination);
  source.onended = () => void context.close();
  source.start();
}
