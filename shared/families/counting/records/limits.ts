import { share } from '../../../units/quantities';
import { num } from '../../../functions/params';

/** Shared by every function that gives an interval. */
export const confidenceParam = num(share, {
  min: 0.5,
  max: 0.9999,
  default: 0.95,
  doc: 'How sure the interval should be: 95% if left out.',
});
