import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';

import { player } from '../../src/figures/kit/player.svelte.ts';
import type { Tone } from '../../src/figures/kit/tone.ts';

const tone: Tone = {
  speakingLength: 0.648,
  tension: 70,
  linearDensity: 4e-4,
  bendingStiffness: 4e-5,
};

/** What the player does to its loudspeaker, in order. */
let done: string[] = [];

class FakeContext {
  currentTime = 1;
  destination = {};
  resume = () => Promise.resolve();
  createBuffer = (_: number, length: number) => ({ copyToChannel: () => done.push(`${length}`) });
  createGain = () => ({
    connect: () => undefined,
    gain: {
      setValueAtTime: () => undefined,
      linearRampToValueAtTime: (value: number) => done.push(`fade to ${value}`),
    },
  });
  createBufferSource = () => ({
    connect: (to: unknown) => to,
    start: () => done.push('start'),
    stop: () => done.push('stop'),
    playbackRate: {
      setValueAtTime: () => undefined,
      exponentialRampToValueAtTime: (rate: number) => done.push(`rate ${rate}`),
    },
  });
}

beforeEach(() => {
  done = [];
  vi.stubGlobal('AudioContext', FakeContext);
});
afterEach(() => {
  player.stop();
  vi.unstubAllGlobals();
});

describe('player', () => {
  // First, while no context has been opened: the player keeps the one it has.
  it('says so when the browser gives no sound', async () => {
    vi.stubGlobal('AudioContext', undefined);
    expect(await player.play('a', [tone])).toMatch(/can’t play sound/);
    expect(player.sounding).toBeUndefined();
  });

  it('fades the tone that sounds before it starts another', async () => {
    expect(await player.play('a', [tone])).toBe('');
    expect(player.sounding).toBe('a');
    await player.play('b', [tone]);
    expect(player.sounding).toBe('b');
    const [, start, fade, stop, , again] = done;
    expect([start, fade, stop, again]).toEqual(['start', 'fade to 0', 'stop', 'start']);
  });

  it('lets only the last of two quick presses sound', async () => {
    await Promise.all([player.play('a', [tone]), player.play('b', [tone])]);
    expect(done.filter((what) => what === 'start')).toHaveLength(1);
    expect(player.sounding).toBe('b');
  });

  it('bends a tone by its rise: an octave doubles its rate', async () => {
    await player.play('a', [tone], 1200);
    expect(done).toContain('rate 2');
  });

  it('says so when a string cannot be worked out, and stays silent', async () => {
    expect(await player.play('a', [{ ...tone, tension: -1 }])).toMatch(/can’t work out/);
    expect(player.sounding).toBeUndefined();
    expect(done).not.toContain('start');
  });
});
