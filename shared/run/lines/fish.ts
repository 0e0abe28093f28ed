import {
  amount,
  count,
  day,
  days,
  fishGram,
  gram,
  millilitre,
  percentPerDay,
  perLitre,
  share,
  squareMetre,
  text,
} from '../../units/quantities';
import { deathDaysText } from '../../families/care/kernels/losses';
import { countedOr, line, mondayText } from './declare';

const IS_SOLUTION = '{preparation}="ready-made solution"';
const prepared = (column: number): string =>
  `INDEX(SPAWN.HORMONE.PREPARE(MAX(0.01,{kilograms}),{preparation}),1,${column})`;

/**
 * A weighing tells which of two published paths the larvae are on: 44 % a day through the first week with plenty
 * of Artemia and 11.7 % after it, or the ordinary rate throughout (VERRETH99, KAWAMURA17).
 */
const FIRST_WEEK_MORE = '(44.2-{fryGrowth})';
const PLENTY_LATER = '11.7';
/** Growth of so many days of rearing, in percent: before and after the weighing. */
export const GROWN_BY = (reared: string): string =>
  `{grown}*MIN(${reared},N({weighedDay}))+{growing}*MAX(0,${reared}-N({weighedDay}))`;

/** From the females of a run to the fish counted out; a count typed in takes the place of what was expected. */
export const FISH_LINES = {
  hormone: line(
    'Hormone',
    amount,
    `=IF({kilograms}>0,IF(${IS_SOLUTION},{kilograms}*{hormoneDose},${prepared(1)}),0)`,
    { note: 'In the unit of the preparation; the dose of a ready-made solution is the figure, in mL/kg.' },
  ),
  hormoneUnit: line('Unit of the hormone', text, `=IF(${IS_SOLUTION},"mL",${prepared(2)})`),
  hormoneWeek: line(
    'Order hormone in week from',
    day,
    `=IF(ISNUMBER({wasInject}),0,${mondayText('MAX({plannedOn},INT({inject})-{leadHormone})')})`,
    { note: 'Of a batch under way it is bought already.' },
  ),
  eggShareNow: line(
    'Eggs of body weight',
    share,
    '=IF(INDEX({eggShares},MONTH({strip}))>0,INDEX({eggShares},MONTH({strip})),{eggShare})',
    { note: 'Of the month where it is known, else of the whole year.' },
  ),
  expected: line('Eggs of these females', count, '={kilograms}*1000*{eggShareNow}*{eggsPerGram}*{ovulating}'),
  eggs: line('Eggs', count, countedOr('eggsCounted', 'MIN({toSet},{expected})')),
  larvae: line('Larvae hatched', count, countedOr('hatchedCounted', '{eggs}*{hatch}')),
  feeding: line(
    'Larvae at first feed',
    count,
    countedOr(
      'feedingCounted',
      'IF({litresFry}>0,MIN({larvae}*{yolkSurvival},{litresFry}*{larvaePerLitre}),{larvae}*{yolkSurvival})',
    ),
    { note: 'As many as come through, at most as many as their vats hold; the rest is let go.' },
  ),
  fry: line(
    'Fry weaned',
    count,
    countedOr(
      'weanedCounted',
      `{feeding}*{frySurvival}^(${deathDaysText('{rearing}')}/${deathDaysText('{rearingDays}')})`,
    ),
    {
      note: 'Most die in the first four days of food; shorter or longer rearing at the rate of its last days.',
      sources: ['HLREAR94', 'KISANGANI'],
    },
  ),
  fish: line(
    'Fish counted out',
    count,
    countedOr(
      'handedCounted',
      '{fry}*IF({nursing}>0,{nurserySurvival}^({nursing}/{nurseryDays}),1)*{gradingShare}*{arriving}',
    ),
  ),
  weighedDay: line(
    'Weighed on day of feeding',
    days,
    '=IF(AND(ISNUMBER({weighedGrams}),ISNUMBER({weighedOn})),IF({weighedOn}-{fedFrom}>=3,{weighedOn}-{fedFrom},""),"")',
    { note: 'Day 5 to 7 tells best; before day 3 the two paths of growth are one.' },
  ),
  grown: line(
    'Growth up to the weighing',
    percentPerDay,
    '=IF(ISNUMBER({weighedDay}),100*LN({weighedGrams}/{startWeight})/{weighedDay},{fryGrowth})',
  ),
  growing: line(
    'Growth of fry from then on',
    percentPerDay,
    `=IF(ISNUMBER({weighedDay}),{fryGrowth}-MAX(0,MIN(1,({grown}-{fryGrowth})/${FIRST_WEEK_MORE}))*MAX(0,{fryGrowth}-${PLENTY_LATER}),{fryGrowth})`,
    {
      note:
        'Larvae that grew fast on plenty of Artemia slow down after the first week: 55 mg on day 7, 125 mg ' +
        'on day 14.',
      sources: ['VERRETH99'],
    },
  ),
  grams: line(
    'Weight of a fish when ready',
    fishGram,
    `={startWeight}*EXP((${GROWN_BY('{rearing}')}+{nurseryGrowth}*{nursing})/100)`,
  ),
  netArea: line(
    'Net for the eggs in one layer',
    squareMetre,
    '=IF({eggs}>0,INDEX(SPAWN.NET.AREA({eggs}),1,1),0)',
  ),
  saline: line('Salt water for the hormone', millilitre, `=IF({kilograms}>0,N(${prepared(3)}),0)`, {
    note: '9 g of clean salt in a litre of boiled water; a clean needle for each fish.',
  }),
  donors: line(
    'Donor fish for the glands',
    count,
    '=IF(AND({kilograms}>0,{females}>0),' +
      'N(INDEX(SPAWN.HORMONE.PREPARE(MAX(0.01,{kilograms}),{preparation},,{kilograms}/{females}),1,6)),0)',
    { note: 'Fish as heavy as the females; only where glands of the own species are taken.' },
  ),
  cystsFirst: line(
    'Cysts for the first day',
    gram,
    '=IF({feeding}>0,SPAWN.CYSTS.NEEDED({feeding},{naupliiPerLarva},{naupliiPerGram},{naupliiHarvest}),0)',
  ),
  eggsInLitre: line('Eggs in a litre', perLitre, '=IF({litresEggs}>0,{eggs}/{litresEggs},0)'),
  larvaeInLitre: line('Larvae in a litre', perLitre, '=IF({litresFry}>0,{feeding}/{litresFry},0)'),
  fryInLitre: line(
    'Fry in a litre while nursing',
    perLitre,
    '=IF({litresNursing}>0,{fry}/{litresNursing},0)',
  ),
  perKilogram: line('Eggs from a kilogram of female', count, '=IF({kilograms}>0,{eggs}/{kilograms},0)'),
} as const;
