/** Works out what a pluck tells, beside the page. */
import { listen } from '../../../physics/listen.ts';

export interface Asked {
  readonly id: number;
  readonly samples: Float32Array;
  readonly sampleRate: number;
  /** Hz */
  readonly near: number;
}

addEventListener('message', ({ data }: MessageEvent<Asked>) => {
  const { id, ...sound } = data;
  postMessage({ id, heard: listen(sound) });
});
