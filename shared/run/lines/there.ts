import { count, share } from '../../units/quantities';
import { deathDaysText } from '../../families/care/kernels/losses';
import { line } from './declare';

/**
 * What of a batch is there: its figures say what a count should become, the log what became of it. The planning
 * knows both and writes down how many there were that day; its book goes on from there.
 */

/** Fish alive after so many days of food while they are reared, and after it. */
export const rearedOn = (day: string): string =>
  `{feeding}*({fry}/MAX(1,{feeding}))^(${deathDaysText(day)}/${deathDaysText('{rearing}')})`;
export const nursedOn = (day: string): string =>
  `{fry}*IF({nursing}>0,{nurserySurvival}^(MIN(${day}-{rearing},{nursing})/{nurseryDays}),1)`;

/** A batch that only stands in a plan has no log. */
export const STILL = 'IF(ISNUMBER({still}),{still},1)';

const FED = '({plannedOn}-{fedFrom})';
const BASE = 'IF(ISNUMBER({standing}),{standing},{thereThen})';

export const THERE_LINES = {
  thereThen: line(
    'Expected on the day of planning',
    count,
    `=IF({plannedOn}<={fedFrom},{feeding},IF(${FED}<{rearing},${rearedOn(FED)},${nursedOn(FED)}))`,
  ),
  isAsCounted: line(
    'Counts are those the planning knew',
    count,
    '=IF(AND(OR(N({eggsKnown})=1,NOT(ISNUMBER({eggsCounted}))),' +
      'ABS(N({hatchedCounted})+N({feedingCounted})+N({weanedCounted})-N({countedThen}))<0.5),1,0)',
  ),
  still: line(
    'Of those expected, there by the log',
    share,
    `=IF({isAsCounted}=1,${BASE}/MAX(1,{thereThen})*MAX(0,1-N({lostSince})/MAX(1,${BASE})),1)`,
    { note: 'A count typed after the planning speaks for itself.' },
  ),
} as const;
