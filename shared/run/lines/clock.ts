import { celsius, day, days, hours, moment } from '../../units/quantities';
import { asWas, line } from './declare';

/** Where the water of a month stands in the list of twelve, and its neighbour on the side of the day. */
const HERE = 'INDEX({waterByMonth},MONTH({strip}))';
const NEXT = 'INDEX({waterByMonth},MOD(MONTH({strip})-1+IF(DAY({strip})>15,1,11),12)+1)';
const window = (was: string, column: number): string =>
  asWas(was, `INDEX(SPAWN.STRIP.WINDOW({inject},{water},{preparation},{latencyOffset}),1,${column})`);

/** A moment after the strip, as many times later as the farm's own eggs take against the table. */
const later = (moment: string): string => `{strip}+(${moment}-{strip})*{incubationFactor}`;

/** The clock of a run, from the hour its eggs are stripped. */
export const CLOCK_LINES = {
  usual: line(
    'Water expected',
    celsius,
    `=IF(OR(${HERE}<10,${NEXT}<10),NA(),${HERE}+(${NEXT}-${HERE})*MIN(0.5,ABS(DAY({strip})-15.5)/30))`,
    { note: 'Straight between the middles of two months, at noon of the day of stripping.' },
  ),
  water: line('Water', celsius, '=IF(ISNUMBER({measured}),{measured},{usual})', {
    note: 'What was measured, else what is usual.',
  }),
  latency: line('Latency', hours, '=SPAWN.LATENCY.HOURS({water},{preparation})+{latencyOffset}'),
  inject: line('Inject at', moment, asWas('wasInject', '{strip}-{latency}/24')),
  look: line('First look at', moment, window('wasLook', 1), {
    note: 'From then on press lightly every half hour.',
  }),
  late: line('Strip until', moment, window('wasLate', 3), {
    note: 'Nobody has tested later than this well.',
  }),
  hatchAt: line('First hatch', moment, asWas('wasHatch', later('SPAWN.HATCH.TIME({strip},{water})'))),
  hatchEnd: line(
    'Last hatch',
    moment,
    asWas('wasHatchEnd', later('INDEX(SPAWN.HATCH.WINDOW({strip},{water}),1,2)')),
  ),
  // The yolk is asked for from the strip on and added to the hatch: asked from the hatch it would answer a
  // round later in Excel.
  feed: line(
    'First feed',
    moment,
    asWas('wasFeed', '{hatchAt}+SPAWN.FEEDING.START({strip},{water})-{strip}'),
  ),
  fedFrom: line('Fed from', day, '=INT({feed}+0.5)', {
    note: 'First full day of feeding: a first meal after noon counts as the next day.',
  }),
  weaned: line('Weaned', day, '={fedFrom}+{rearing}'),
  ready: line('Ready', day, '={weaned}+{nursing}'),
  fill: line('Fill and air on', day, '=INT({strip})-{preparingDays}'),
  ageAtReady: line('Days of feeding', days, '={rearing}+{nursing}'),
} as const;
