import type { Near } from '../../base/near';
import type { Line } from './near';
import { answered, said } from './near';
import { forecast, likelierProduct } from './titration/outlook';
import { posterior } from './titration/posterior';
import type { Series } from './titration/series';

/** Cases beside the numbers of what is expected of a dosing, of its product and of its meter. */

const AIRED = 'aired';
const rested = (ph: number): readonly Line[] => [
  [0, 5.1],
  [0, ph, AIRED],
  [0, ph, AIRED],
];
/** Dosed to 6.5, then two readings under air, by paper strips. */
const byStrips = (ph: number): string =>
  said([...rested(5.8), [1, 6.3, '', 6.3], [0.5, 6.5, '', 6.5], [0, ph, AIRED], [0, ph, AIRED]], {
    meter: 'strips',
  });
const AIM = {
  target: 7,
  bottom: 6.5,
  top: 7.5,
  step: 1,
  near: 0.2,
  risk: 0.03,
  canAir: true,
  isStocked: false,
} as const;
/** Part-doses that follow one of so many mmol/L. */
function later(dose: number): number {
  const advice = answered(rested(5.6));
  return advice ? forecast(advice.segment.beliefs, { ...advice, dose }, AIM).length : NaN;
}
/** The product that explains readings far better than the soda ash that was told. */
function likelier(series: Series): string | undefined {
  const beliefs = answered(rested(5.6))?.segment.beliefs;
  return beliefs && likelierProduct(beliefs, series, posterior(beliefs, series), 'soda ash')?.name;
}
/** The same where the readings miss the product told by so many errors. */
function unlike(misfit: number): string | undefined {
  const series = { doses: [0, 0.04, 0.08], readings: [5.2, 5.95, 6.25] };
  const beliefs = answered(rested(5.6))?.segment.beliefs;
  return (
    beliefs && likelierProduct(beliefs, series, { ...posterior(beliefs, series), misfit }, 'soda ash')?.name
  );
}
const stocked = (ph: number): number =>
  Math.round(1e6 * (answered(rested(ph), { stocked: true })?.dose ?? NaN)) / 1000;

export const NEAR: readonly Near[] = [
  {
    number: 'pH below the target at which dosed water is near enough to it',
    value: 0.2,
    below: () => byStrips(6.75),
    above: () => byStrips(6.755),
    answers: ['watch littleLeft', 'watch inWindow'],
  },
  {
    number: 'part of the whole dose after which none is expected to follow',
    value: 0.97,
    below: () => later(0.0145),
    above: () => later(0.0155),
    answers: [2, 1],
  },
  {
    number: 'odds at which another product is told of',
    value: 50,
    below: () => likelier({ doses: [0, 0.04, 0.08], readings: [5.2, 6.5, 6.8] }),
    above: () => likelier({ doses: [0, 0.04, 0.08], readings: [5.2, 5.95, 6.25] }),
    answers: [undefined, 'baking soda'],
  },
  {
    number: 'misfit from which the product named is doubted',
    value: 1,
    below: () => unlike(0.98),
    above: () => unlike(1.02),
    answers: [undefined, 'baking soda'],
  },
  {
    number: 'readings that say something of the product',
    value: 3,
    below: () => likelier({ doses: [0, 0.1], readings: [5.2, 5.6] }),
    above: () => likelier({ doses: [0, 0.1, 0.2], readings: [5.2, 5.6, 5.9] }),
    answers: [undefined, 'washing soda'],
  },
  {
    number: 'pH by which a meter is too far off in its buffer',
    value: 0.5,
    below: () => said(rested(5.6), { bufferRead: 7.48 }),
    above: () => said(rested(5.6), { bufferRead: 7.52 }),
    answers: ['dose limited', 'refused'],
  },
  {
    number: 'pH units in one part-dose where fish are in the water',
    value: 0.3,
    below: () => stocked(5.4),
    above: () => stocked(5.8),
    answers: [2.427, 3.115],
  },
];
