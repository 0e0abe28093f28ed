import { amount, count, day, fishGram, gram, perLitre, share, text } from '../../units/quantities';
import { countedOr, line, mondayText } from './declare';

const IS_SOLUTION = '{preparation}="ready-made solution"';
const prepared = (column: number): string =>
  `INDEX(SPAWN.HORMONE.PREPARE(MAX(0.01,{kilograms}),{preparation}),1,${column})`;

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
    `=${mondayText('MAX({plannedOn},INT({inject})-{leadHormone})')}`,
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
    countedOr('weanedCounted', '{feeding}*{frySurvival}^({rearing}/{rearingDays})'),
  ),
  fish: line(
    'Fish counted out',
    count,
    countedOr(
      'handedCounted',
      '{fry}*IF({nursing}>0,{nurserySurvival}^({nursing}/{nurseryDays}),1)*{gradingShare}',
    ),
  ),
  grams: line(
    'Weight of a fish when ready',
    fishGram,
    '={startWeight}*EXP(({fryGrowth}*{rearing}+{nurseryGrowth}*{nursing})/100)',
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
