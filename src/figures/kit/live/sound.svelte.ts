/**
 * Sound that follows a dragged pitch: off until a reader asks for it, one switch for the whole site, remembered. What makes it
 * comes when it is first wanted.
 */
import { recall, remember } from '../../../instrument/storage.ts';
import type { Moment } from './sounding.ts';

/** What can't be had is only heard, never told: the drawing shows it too. */
const come = (then: (sounding: typeof import('./sounding.ts')) => void): void =>
  void import('./sounding.ts').then(then, () => undefined);

class Sound {
  on = $state.raw(recall('sound') === 'on');

  turn(on: boolean): void {
    this.on = on;
    remember('sound', on ? 'on' : 'off');
    come(({ rest }) => on || rest());
  }

  /** Sounds a pitch in Hz, if the reader wants sound. */
  follow(hertz: number): void {
    if (this.on && Number.isFinite(hertz)) come(({ follow }) => follow(hertz));
  }

  /** Plays back what a hand did, asked for by a press, whether or not the switch is on. */
  replay(moments: readonly Moment[]): void {
    come(({ replay }) => replay(moments));
  }
}

export const sound = new Sound();
