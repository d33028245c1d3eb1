/**
 * Drawings that have a left-handed form: necks, boards, bridges. The stylesheet turns what is `.sided` over while the page is set
 * for the left hand, and turns its letters back; what a pointer or a key means across has to turn with it.
 */
export const isTurned = (element: Element): boolean =>
  element.closest('[data-hand=left] .sided') !== null;
