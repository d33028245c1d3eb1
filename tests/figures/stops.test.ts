import { describe, expect, it } from 'vitest';

import { keyedValue } from '../../src/figures/kit/slide.ts';
import { keyedStop, nearestStop } from '../../src/figures/kit/stops.ts';

const stops = [9, 9.5, 10, 11, 13, 17];
const from = (value: number) => ({ value, page: 2, stops });

describe('stops', () => {
  it('an arrow leads to the neighbour, however far it is', () => {
    expect(keyedStop('ArrowRight', from(9.5))).toBe(10);
    expect(keyedStop('ArrowUp', from(13))).toBe(17);
    expect(keyedStop('ArrowLeft', from(17))).toBe(13);
    expect(keyedStop('ArrowDown', from(9.5))).toBe(9);
  });
  it('a Page key goes several on, Home and End to the ends, and nothing goes past them', () => {
    expect(keyedStop('PageUp', from(9))).toBe(10);
    expect(keyedStop('PageDown', from(9.5))).toBe(9);
    expect(keyedStop('Home', from(13))).toBe(9);
    expect(keyedStop('End', from(9))).toBe(17);
    expect(keyedStop('ArrowRight', from(17))).toBe(17);
  });
  it('starts from the nearest stop when the value is none', () => {
    expect(nearestStop(12.4, stops)).toBe(13);
    expect(keyedStop('ArrowRight', from(10.4))).toBe(11);
  });
  it('leaves other keys alone', () => {
    expect(keyedStop('a', from(9))).toBeUndefined();
  });
  it('a slide with stops uses them in place of its steps', () => {
    const slide = { ...from(10), min: 9, max: 17, step: 0.5, fine: 0.5 };
    expect(keyedValue('ArrowRight', false, slide)).toBe(11);
    expect(keyedValue('ArrowRight', false, { ...slide, stops: undefined })).toBe(10.5);
  });
});
