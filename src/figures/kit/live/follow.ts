/** Sounds a pitch in Hz that is dragged or stepped, where the reader has asked for sound; resolves to the switch. Both come with the first step. */
export const follow = (hertz: number) =>
  import('./SoundSwitch.svelte').then(
    ({ sound, default: Switch }) => {
      sound.follow(hertz);
      return Switch;
    },
    () => undefined,
  );
