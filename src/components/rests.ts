/** Over a page that is laid out, a pointer that rests is told to have moved; and a page may be told to have been scrolled to its top. */
export const rests = (event?: Event): boolean =>
  (event?.type === 'pointermove' &&
    event instanceof PointerEvent &&
    event.movementX === 0 &&
    event.movementY === 0) ||
  (event?.type === 'scroll' && event.target === document && scrollY === 0);
