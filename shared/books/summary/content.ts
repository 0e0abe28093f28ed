import type { AssumptionKey } from '../../families/assumptions';

/** The words of the page. */

/** The figures that move the result most. */
export const FIGURES_SHOWN: readonly AssumptionKey[] = [
  'eggShare',
  'eggsPerGram',
  'ovulating',
  'hatch',
  'yolkSurvival',
  'frySurvival',
  'nurserySurvival',
  'gradingShare',
  'arriving',
  'rearingDays',
  'nurseryDays',
];

/** A step: what is counted, the column of Workings that holds it, and the figures that lead to it. */
export interface Step {
  readonly label: string;
  readonly figure: 'eggs' | 'larvae' | 'feeding' | 'fry' | 'fish';
  readonly by: readonly AssumptionKey[];
}
export const STEPS: readonly Step[] = [
  { label: 'Eggs stripped and fertilised', figure: 'eggs', by: [] },
  { label: 'Larvae hatched', figure: 'larvae', by: ['hatch'] },
  { label: 'Larvae at first feed', figure: 'feeding', by: ['yolkSurvival'] },
  { label: 'Fry weaned', figure: 'fry', by: ['frySurvival'] },
  { label: 'Fish counted out', figure: 'fish', by: ['nurserySurvival', 'gradingShare', 'arriving'] },
];

export const PLAIN: readonly string[] = [
  'Ripe females are given a hormone, and hours later their eggs are stripped and ' +
    'fertilised by hand. The eggs hatch within two days; the larvae live on their yolk, ' +
    'then on live food, then on dry feed until they are sold.',
  'Most eggs never become a fish for sale, and how many do differs between months, ' +
    'females and hatcheries. So each step is shown three times: as planned, and at the ' +
    'poor and the good end of what was published or is usual.',
  'The verdict beside an order says in how many of a hundred drawn seasons it is met whole: ' +
    'safe from 90, likely from 70, a coin toss from 40. Promise is what can be promised at the ' +
    'certainty chosen, hope what half of the seasons bring.',
];

export const TRUST: readonly string[] = [
  'Poor and good are ends for each step alone. All steps at the same end at once is ' +
    'rare: the outer columns are limits, not forecasts; the odds beside the orders are the forecast.',
  'Figures of other farms stand in until this hatchery has counted its own. Ask how ' +
    'many runs lie behind each of them.',
  'Change a figure in the plan and this page follows; the odds follow when it is planned again. In a ' +
    'copy made with Spawnbook a sheet says for every frozen number where it comes from. A plan is not a promise.',
];
