/** Finds plucks in a stream of sound: where it suddenly grows loud, and what rings after that. */

/** s of sound that is taken from the pluck on, and from before it */
export const TAKEN = 1.6;
const BEFORE = 0.02;
/** s of it at which what has rung so far is worth a look: the first once a bass string, too, has swung a few times */
export const LOOKS: readonly number[] = [0.2, 0.4, 0.8, 1.2];
/** Times over what went before that a pluck must be loud, and the least root mean square of one; full scale 1 */
const LOUDER = 5;
const LEAST = 0.004;
/** How quickly the idea of what is quiet follows, per chunk */
const FOLLOWS = 0.05;

const loudness = (chunk: Float32Array): number => {
  let sum = 0;
  for (const x of chunk) sum += x * x;
  return Math.sqrt(sum / chunk.length);
};

function joined(parts: readonly Float32Array[]): Float32Array {
  const whole = new Float32Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

export class Plucks {
  /** Root mean square of the latest chunk */
  level = 0;
  readonly #rate: number;
  #quiet = 0;
  #chunks = 0;
  #taking: Float32Array[] | undefined;
  #taken = 0;
  #isDue = false;
  #last: Float32Array | undefined;

  constructor(sampleRate: number) {
    this.#rate = sampleRate;
  }

  get isTaking(): boolean {
    return this.#taking !== undefined;
  }

  /** What has rung so far, when the latest chunk has made it worth a look. */
  get soFar(): Float32Array | undefined {
    return this.#isDue && this.#taking ? joined(this.#taking) : undefined;
  }

  /** Takes in the next chunk of the stream; gives a pluck back once all of it has been heard. */
  take(chunk: Float32Array): Float32Array | undefined {
    this.level = loudness(chunk);
    this.#chunks += 1;
    if (this.#taking) {
      this.#taking.push(chunk);
      this.#taken += chunk.length;
      const before = this.#taken - chunk.length;
      this.#isDue = LOOKS.map((look) => look * this.#rate).some(
        (look) => before < look && look <= this.#taken,
      );
      if (this.#taken < TAKEN * this.#rate) return undefined;
      return this.#give();
    }
    // The first chunks only tell how quiet the room is.
    const loud = this.#chunks > 2 && this.level > Math.max(LEAST, LOUDER * this.#quiet);
    if (loud) {
      const before = this.#last?.slice(-Math.round(BEFORE * this.#rate));
      this.#taking = before ? [before, chunk] : [chunk];
      this.#taken = chunk.length;
    } else {
      const follows = this.#chunks <= 2 ? 1 : FOLLOWS;
      this.#quiet += follows * (this.level - this.#quiet);
    }
    this.#last = chunk;
    return undefined;
  }

  /** What has been heard of a pluck when the stream ends. */
  end(): Float32Array | undefined {
    return this.#taking ? this.#give() : undefined;
  }

  #give(): Float32Array {
    const whole = joined(this.#taking ?? []);
    this.#taking = undefined;
    // What still rings is the quiet of the next one: a string plucked again is louder than that.
    this.#quiet = Math.max(this.#quiet, this.level);
    return whole;
  }
}

/** All plucks of a whole sound; the whole of it where it begins loud and has no other. */
export function plucksOf(samples: Float32Array, sampleRate: number): readonly Float32Array[] {
  const size = Math.round(0.02 * sampleRate);
  const plucks = new Plucks(sampleRate);
  const found: Float32Array[] = [];
  for (let at = 0; at + size <= samples.length; at += size) {
    const pluck = plucks.take(samples.subarray(at, at + size));
    if (pluck) found.push(pluck);
  }
  const last = plucks.end();
  if (last) found.push(last);
  return found.length > 0 ? found : [samples.slice(0, Math.round(3 * sampleRate))];
}
