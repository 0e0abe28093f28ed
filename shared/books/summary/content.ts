import type { AssumptionKey } from '../../families/assumptions';
import type { FieldKey } from '../../run/fields';
import type { PlanForm } from '../../run/form';
import type { NameKey, ResultKey } from '../../run/results';

/** The words of the page, and the names of the plan it follows. */

type Product = PlanForm['product'];

export const NEEDED: readonly NameKey[] = [
  'hatchery',
  'product',
  'wanted',
  'wantedOn',
  'females',
  'males',
  'vats',
  'eggsNeeded',
  'femalesNeeded',
  'malesNeeded',
  'vatsNeeded',
  'hormoneTotal',
  'totalDose',
  'cystsTotal',
  'feedTotal',
  'beginOn',
  'injectAt',
  'stripAt',
  'hatchAt',
  'firstFeedAt',
  'weanedAt',
  'readyAt',
];

/** The figures that move the result most; all of them stand on the sheet of assumptions. */
export const assumptionKeys = (product: Product): readonly AssumptionKey[] => [
  'eggShare',
  'eggsPerGram',
  'ovulating',
  'hatch',
  'yolkSurvival',
  'frySurvival',
  ...(product === 'fingerlings' ? (['nurserySurvival', 'nurseryDays'] as const) : []),
  'gradingShare',
  'rearingDays',
];

export const MOMENTS: readonly (readonly [string, ResultKey, 'day' | 'moment'])[] = [
  ['Vats filled, water made ready', 'beginOn', 'day'],
  ['Hormone given to the females', 'injectAt', 'moment'],
  ['Eggs stripped and fertilised', 'stripAt', 'moment'],
  ['First larvae hatch', 'hatchAt', 'moment'],
  ['First feed', 'firstFeedAt', 'moment'],
  ['Fry eat dry feed', 'weanedAt', 'day'],
  ['Ready for the buyer', 'readyAt', 'day'],
];

export const TAKES: readonly (readonly [string, ResultKey, FieldKey])[] = [
  ['Ripe females', 'femalesNeeded', 'females'],
  ['Males', 'malesNeeded', 'males'],
  ['Vats at the fullest', 'vatsNeeded', 'vats'],
];

export const TO_BUY: readonly (readonly [string, ResultKey, string, string])[] = [
  ['Hormone liquid', 'hormoneTotal', '#,##0.0', 'mL'],
  ['What raises the pH', 'totalDose', '#,##0', 'g'],
  ['Brine shrimp cysts', 'cystsTotal', '#,##0', 'g'],
  ['Dry feed', 'feedTotal', '#,##0.0', 'kg'],
];

export const PLAIN: readonly string[] = [
  'Ripe females are given a hormone, and hours later their eggs are stripped and ' +
    'fertilised by hand. The eggs hatch within two days; the larvae live on their yolk, ' +
    'then on live food, then on dry feed until they are sold.',
  'Most eggs never become a fish for sale, and how many do differs between months, ' +
    'females and hatcheries. So each step is shown three times: as planned, and at the ' +
    'poor and the good end of what was published or is usual.',
];

export const MET = 'Even with every step at its poor end the order would be met.';
export const NOT_MET =
  'With every step at its poor end the order would not be met from this run alone: ' +
  'promise what can be replaced, or plan a second run.';
export const NOT_COUNTED = 'The plan gives no number of fish yet: see the sheet it starts on.';

export const TRUST: readonly string[] = [
  'Poor and good are ends for each step alone. All steps at the same end at once is ' +
    'rare: the outer columns are limits, not forecasts. They start from the same eggs; a ' +
    'female that gives few is made up by more females.',
  'Figures of other farms stand in until this hatchery has counted its own. Ask how ' +
    'many runs lie behind each of them.',
  'Change a figure in the plan and this page follows. In a copy made with Spawnbook a ' +
    'sheet says for every frozen number where it comes from. A plan is not a promise.',
];
