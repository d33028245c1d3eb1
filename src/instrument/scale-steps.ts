/** What a scale length is changed by at a key press, m: round in inches, or in millimetres. */
import { fromInches } from '../physics/index.ts';
import type { Units } from './schema.ts';

export const scaleSteps = (units: Units) =>
  units === 'in-lb'
    ? { step: fromInches(1 / 4), fine: fromInches(1 / 32), page: fromInches(1) }
    : { step: 0.005, fine: 0.0005, page: 0.025 };
