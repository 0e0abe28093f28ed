import { count, day, days, fishGram, gram, share } from '../../units/quantities';
import { line, mondayText } from './declare';

const REARED = '{feeding}*({fry}/MAX(1,{feeding}))^({day}/{rearing})';
const NURSED = '{fry}*IF({nursing}>0,{nurserySurvival}^(MIN({day}-{rearing},{nursing})/{nurseryDays}),1)';

/** A run on one day of feeding; {day} is 0 on its first full day. */
export const DAY_LINES = {
  date: line('Date', day, '={fedFrom}+{day}'),
  reared: line('Days reared', days, '=MIN({day},{rearing})'),
  fishNow: line(
    'Fish expected',
    count,
    `=IF(OR({date}>={leaves},{isLost}="lost"),0,(1-N({left}))*IF({day}<{rearing},${REARED},${NURSED}))`,
    { note: 'Deaths even over the stage; from the day they leave there are none.' },
  ),
  gramsNow: line(
    'Mean weight',
    fishGram,
    '={startWeight}*EXP(({fryGrowth}*{reared}+{nurseryGrowth}*({day}-{reared}))/100)',
  ),
  live: line('Live part', share, '=IF({day}<{liveDays},1,IF({day}<{liveDays}+{weaningDays},0.5,0))'),
  onLive: line('Larvae to fill with live food', count, '={fishNow}*{live}'),
  cysts: line(
    'Cysts',
    gram,
    '=IF({onLive}>0,SPAWN.CYSTS.NEEDED({onLive},{naupliiPerLarva},{naupliiPerGram},{naupliiHarvest}),0)',
    { note: 'Set to hatch the day before they are fed.' },
  ),
  ration: line(
    'Dry feed of body weight',
    share,
    '=IF({day}<{rearing},{fryRation},{nurseryRation})*(1-{live})',
  ),
  dry: line('Dry feed', gram, '=IF({ration}>0,SPAWN.FEED.DAILY({fishNow},{gramsNow},{ration}),0)'),
  meal: line('Dry feed a meal', gram, '={dry}/{meals}'),
  cystsWeek: line('Order cysts in week from', day, `=${mondayText('MAX({plannedOn},{date}-1-{leadCysts})')}`),
  dryWeek: line('Order feed in week from', day, `=${mondayText('MAX({plannedOn},{date}-{leadFeed})')}`),
} as const;
