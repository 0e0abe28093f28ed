import { count, day, days, fishGram, gram, litre, millimetre, minutes, share } from '../../units/quantities';
import { line, mondayText } from './declare';
import { GROWN_BY } from './fish';
import { STILL, nursedOn, rearedOn } from './there';

const EATEN = 'What was due before the planning is not bought again.';

/** A run on one day of feeding; {day} is 0 on its first full day. */
export const DAY_LINES = {
  date: line('Date', day, '={fedFrom}+{day}'),
  reared: line('Days reared', days, '=MIN({day},{rearing})'),
  fishNow: line(
    'Fish expected',
    count,
    `=IF(OR({date}>={leaves},{isLost}="lost"),0,(1-N({left}))*${STILL}*IF({day}<{rearing},${rearedOn('{day}')},${nursedOn('{day}')}))`,
    { note: 'Most larvae die in the first four days of food; from the day they leave there are none.' },
  ),
  gramsNow: line(
    'Mean weight',
    fishGram,
    `={startWeight}*EXP((${GROWN_BY('{reared}')}+{nurseryGrowth}*({day}-{reared}))/100)`,
  ),
  live: line('Live part', share, '=IF({day}<{liveDays},1,IF({day}<{liveDays}+{weaningDays},0.5,0))'),
  onLive: line('Larvae to fill with live food', count, '={fishNow}*{live}'),
  cysts: line(
    'Cysts',
    gram,
    '=IF({onLive}>0,SPAWN.CYSTS.NEEDED({onLive},{naupliiPerLarva},{naupliiPerGram},{naupliiHarvest}),0)',
    { note: 'Set to hatch the day before they are fed.' },
  ),
  eaten: line(
    'Food they can eat, dry, of body weight',
    share,
    '=SPAWN.RATION.GUIDE(MAX(0.0006,MIN(150,{gramsNow})))',
    { sources: ['CONC98'] },
  ),
  ration: line(
    'Dry feed of body weight',
    share,
    '=MIN(IF({day}<{rearing},{fryRation},{nurseryRation}),{eaten}/0.9)*(1-{live})',
    { note: 'At most what they can eat; bagged feed is 90 % dry.' },
  ),
  dry: line('Dry feed', gram, '={fishNow}*{gramsNow}*{ration}'),
  meal: line('Dry feed a meal', gram, '={dry}/{meals}'),
  grain: line('Grain up to', millimetre, '=INDEX(SPAWN.FEED.GRAIN(MAX(0.0006,{gramsNow})),1,2)', {
    note: 'Step up when 95 of 100 take the new grain; mix both for two days.',
    sources: ['WALSH86'],
  }),
  litresNow: line(
    'Water they are in',
    litre,
    '=IF(AND({day}>={rearing},{litresNursing}>0),{litresNursing},{litresFry})',
  ),
  change: line('Water to change', litre, '=({dry}+{fishNow}*{gramsNow}*{live}*{eaten}/0.9)*{changePerGram}', {
    note: 'In a day, in parts: keeps the ammonia of what is eaten low. Live food counts as dry feed.',
  }),
  changes: line('Of their vats', share, '=IF({litresNow}>0,{change}/{litresNow},0)'),
  air: line(
    'Without air, act within',
    minutes,
    '=IF(AND({fishNow}>=1,{litresNow}>0),' +
      'INDEX(SPAWN.AIR.MINUTES({fishNow},MAX(0.0006,MIN(150,{gramsNow})),{litresNow},7),1,1),1440)',
    {
      note:
        'Half the time to 3 mg/L of oxygen, from 7: stop feed, move the water by hand. A whole day where ' +
        'there are no fish.',
    },
  ),
  deadTo: line(
    'Usual dead in a day, up to',
    count,
    '=IF({fishNow}>=1,INDEX(SPAWN.DEATHS.EXPECTED({fishNow},MAX(0,MIN(200,INT({date}-{hatchAt}))),,,' +
      'MAX(1,MIN(12,INT({fedFrom}-{hatchAt})))),1,2),0)',
  ),
  cystsWeek: line(
    'Order cysts in week from',
    day,
    `=IF({date}<{plannedOn},0,${mondayText('MAX({plannedOn},{date}-1-{leadCysts})')})`,
    { note: EATEN },
  ),
  dryWeek: line(
    'Order feed in week from',
    day,
    `=IF({date}<{plannedOn},0,${mondayText('MAX({plannedOn},{date}-{leadFeed})')})`,
    { note: EATEN },
  ),
} as const;
