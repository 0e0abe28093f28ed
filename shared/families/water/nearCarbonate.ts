import type { Near } from '../../base/near';
import { isError, isGrid } from '../../base/values';
import { invoke } from '../../functions/invoke';
import { rootPH } from './carbonate/conditions';
import { constantsAt } from './carbonate/constants';
import { doseTo } from './carbonate/dose';
import { verdictOf } from './carbonate/fieldRule';
import { MATERIALS } from './carbonate/materials';
import { ionicStrengthFrom, waterFromAlkalinity } from './carbonate/readings';
import { bufferSteps } from './records/buffer/bufferSteps';

/** What is said of a water whose chemistry is known changes at numbers somebody chose; no bundle holds this file. */
const WARM = constantsAt(25);
/** Water of nothing but its own ions, without activities: so much acid or base, meq/L, and its pH. */
const PLAIN = { k1: 0, k12: 0, wBase: 1e-11, wAcid: 1000, kh: 1 };
const bare = (alkalinity: number): string => rootPH(PLAIN, alkalinity, 0, undefined, 7).toFixed(2);
const origin = (alkalinity: number): string => {
  const water = waterFromAlkalinity(WARM, { temperature: 25, calcium: 0, ionicStrength: 0 }, 6, alkalinity);
  return typeof water === 'string' ? water : 'a water';
};
/** mmol/L of acid that takes a water of so much soda, without carbon, to pH 3. */
const acid = (sodium: number): boolean =>
  typeof doseTo(
    WARM,
    { temperature: 25, sodium, calcium: 0, chloride: 0, sulfate: 0, carbon: 1 },
    MATERIALS['hydrochloric acid'],
    3,
    'closed',
  ) === 'number';
/** Part-doses for a water that air alone takes to pH 7.196765. */
const parts = (target: number): unknown => {
  const got = invoke(bufferSteps, [1000, 6, target, 0.1, 26]);
  return isError(got) ? got.message : isGrid(got) ? got.at(-1)?.[0] : got;
};

export const NEAR: readonly Near[] = [
  {
    number: 'Lowest pH that is answered',
    value: 0,
    below: () => bare(-1000 * 10 ** 0.1),
    above: () => bare(-1000 * 10 ** -0.1),
    answers: ['0.00', '0.10'],
  },
  {
    number: 'Highest pH that is answered',
    value: 14,
    below: () => bare(1000 * 10 ** -0.1),
    above: () => bare(1000 * 10 ** 0.1),
    answers: ['13.90', '14.00'],
  },
  {
    number: 'µS/cm that a mole of acid in a litre conducts over another ion',
    value: 285e3,
    below: () => ionicStrengthFrom(280, 'µS/cm', 3) > 0,
    above: () => ionicStrengthFrom(290, 'µS/cm', 3) > 0,
    answers: [false, true],
  },
  {
    number: 'Pressure of carbon dioxide no natural water reaches, atm',
    value: 10 ** -0.5,
    below: () => origin(5),
    above: () => origin(5.3),
    answers: ['a water', 'too much alkalinity'],
  },
  {
    number: 'mmol/L beyond which a dose is not a dose',
    value: 500,
    below: () => acid(498),
    above: () => acid(499),
    answers: [true, false],
  },
  {
    number: 'pH off the target at which the farm rule still holds',
    value: 0.5,
    below: () => verdictOf(0.49, 0.49),
    above: () => verdictOf(0.51, 0.51),
    answers: [
      'The rule holds, freshly mixed and aired.',
      'The rule overshoots by 0.5 pH, freshly mixed and aired.',
    ],
  },
  {
    number: 'pH from the target that is no part-dose more',
    value: 1e-3,
    below: () => parts(7.197_715),
    above: () => parts(7.197_815),
    answers: [0, 1],
  },
];
