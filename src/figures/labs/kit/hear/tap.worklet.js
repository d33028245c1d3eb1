/* global AudioWorkletProcessor, registerProcessor */
/** Hands on what a microphone hears, in pieces of a fiftieth of a second. It runs beside the page, which it never holds up. */
const SIZE = 1024;

class Tap extends AudioWorkletProcessor {
  constructor() {
    super();
    this.piece = new Float32Array(SIZE);
    this.filled = 0;
  }

  process([input]) {
    const channel = input?.[0];
    if (!channel) return true;
    for (const sample of channel) {
      this.piece[this.filled] = sample;
      this.filled += 1;
      if (this.filled === SIZE) {
        this.port.postMessage(this.piece, [this.piece.buffer]);
        this.piece = new Float32Array(SIZE);
        this.filled = 0;
      }
    }
    return true;
  }
}

registerProcessor('tap', Tap);
