/** Works out what a pluck tells, beside the page. */
import { listen } from '../../../../physics/listen.ts';

export interface Asked {
  readonly samples: Float32Array;
  readonly sampleRate: number;
  /** Hz, where something is expected */
  readonly near: number | undefined;
}

addEventListener('message', ({ data }: MessageEvent<Asked>) => {
  const { near, ...sound } = data;
  postMessage(listen({ ...sound, ...(near !== undefined && { near }) }));
});
