import { count, day, days, fishGram, money, share } from '../../units/quantities';
import { line } from './declare';
import { GROWN_BY } from './fish';
import { STILL, rearedOn } from './there';

const BEFORE = rearedOn('{reared}');
const AFTER = '{fry}*{nurserySurvival}^({nursed}/{nurseryDays})';

/** Growth from first food to the weight ordered, in percent. */
const PERCENT = '(100*LN(MAX({wanted},{startWeight})/{startWeight}))';

/** The fish of a batch that go to one order; {part} is their share of the larvae at first feed. */
export const SHARE_LINES = {
  age: line('Days after the first full day of feeding', days, '={on}-{fedFrom}'),
  reared: line('Days reared, of these', days, '=MAX(0,MIN({age},{rearing}))'),
  nursed: line('Days nursed, of these', days, '=MAX(0,MIN({age}-{rearing},{nursing}))', {
    note: 'Fish that wait for their buyer are counted as no longer dying.',
  }),
  gramsThen: line(
    'Weight of a fish on the day',
    fishGram,
    `={startWeight}*EXP((${GROWN_BY('{reared}')}+{nurseryGrowth}*({age}-{reared}))/100)`,
  ),
  heavyOn: line(
    'Heavy enough on',
    day,
    `=IF(N({wanted})>0,{fedFrom}-INT(0.01-IF(${PERCENT}<=${GROWN_BY('{rearing}')},IF(${PERCENT}<={grown}*N({weighedDay}),${PERCENT}/MAX(0.01,{grown}),N({weighedDay})+(${PERCENT}-{grown}*N({weighedDay}))/MAX(0.01,{growing})),{rearing}+(${PERCENT}-(${GROWN_BY('{rearing}')}))/MAX(0.01,{nurseryGrowth}))),0)`,
    { note: 'First day on which the fish weigh what was ordered; 0 where no weight was ordered.' },
  ),
  larvaeFor: line('Larvae at first feed for it', count, '={feeding}*{part}'),
  fryFor: line('Fry weaned for it', count, '={fry}*{part}'),
  fishThen: line(
    'Fish counted out',
    count,
    `={part}*IF({age}<{rearing},${BEFORE},${AFTER})*{gradingShare}*{arriving}*{leftShare}`,
    { note: 'As many as survive to the day, less those graded out and those that die on the road.' },
  ),
  leftShare: line('Part still there', share, `=IF({isLost}="lost",0,${STILL})`),
  earns: line('Sales when all are taken', money, '={fishThen}*{price}'),
  latestStrip: line('Ready on', day, '={weaned}+{nursed}'),
} as const;
