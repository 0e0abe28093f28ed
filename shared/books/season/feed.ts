import type { SheetBuilder } from '../../sheet/workbook/build';
import { styled } from '../../sheet/workbook/build';
import type { SheetModel } from '../../sheet/workbook/model';
import { FEED_DAYS, FEED_RUNS, FISH, RUNS } from './columns';
import type { Pages } from './context';
import { FIRST, HEAD, lastRow } from './context';
import { mondayOf } from './runs';

const C = FEED_RUNS.letters;
const D = FEED_DAYS.letters;
/** Days more than planned, for water that turns out warmer and fish that feed sooner. */
const SPARE_DAYS = 2;

interface Line {
  readonly run: number;
  readonly day: number;
  readonly at: number;
}
export const feedLines = ({ plan }: Pages): Line[] =>
  plan.runs.flatMap((run, i) =>
    Array.from({ length: Math.max(0, run.due - run.feedFrom) + SPARE_DAYS }, (_, day) => ({
      run: run.run,
      day,
      at: FIRST + i,
    })),
  );

function line(pages: Pages, sheet: SheetBuilder, { run, day, at }: Line, row: number): void {
  const { fx } = pages;
  const of = (key: keyof typeof RUNS.letters): string => RUNS.cell(key, at);
  const fish = (key: keyof typeof FISH.letters): string => FISH.cell(key, at);
  const cell = (key: keyof typeof C): string => `${C[key]}${row}`;
  // Whether fry stay in the same vats or are nursed on, the day decides; from the day of the sale on there
  // are none.
  const rearing = `${fish('feeding')}*(${fish('fry')}/MAX(1,${fish('feeding')}))^(${cell('day')}/${of('rearing')})`;
  const nursed = `${fish('fry')}*IF(${of('nursing')}>0,{nurserySurvival}^(MIN(${cell('day')}-${of('rearing')},${of('nursing')})/{nurseryDays}),1)`;
  FEED_RUNS.row(sheet, row, {
    date: `=${of('fedFrom')}+${cell('day')}`,
    run,
    day,
    fish: fx(
      `=IF(OR(${cell('date')}>=${of('due')},${fish('fish')}=0),0,IF(${cell('day')}<${of('rearing')},${rearing},${nursed}))`,
    ),
    grams: fx(
      `={startWeight}*EXP(({fryGrowth}*MIN(${cell('day')},${of('rearing')})+{nurseryGrowth}*MAX(0,${cell('day')}-${of('rearing')}))/100)`,
    ),
    live: fx(`=IF(${cell('day')}<{liveDays},1,IF(${cell('day')}<{liveDays}+{weaningDays},0.5,0))`),
    onLive: `=${cell('fish')}*${cell('live')}`,
    ration: fx(`=IF(${cell('day')}<${of('rearing')},{fryRation},{nurseryRation})*(1-${cell('live')})`),
    cystsWeek: fx(`=${mondayOf(`MAX({plannedOn},${cell('date')}-1-{leadCysts})`)}`),
    dryWeek: fx(`=${mondayOf(`MAX({plannedOn},${cell('date')}-{leadFeed})`)}`),
  });
}

/**
 * What each run eats, day by day. One call answers a whole column: a call a day would make the sheet slow in
 * Excel.
 */
export function feedRunsSheet(pages: Pages): SheetModel {
  const lines = feedLines(pages);
  const sheet = pages.sheet(
    'feedRuns',
    'Feed by run',
    'Follows the counts and the clock of each run; Feed by day adds the runs up.',
    {
      widths: [2, ...FEED_RUNS.widths],
      tab: 'C8742A',
      freeze: { rows: HEAD, columns: 3 },
      print: { titleRows: [HEAD, HEAD] },
    },
  );
  FEED_RUNS.headings(sheet, 44);
  lines.forEach((one, i) => {
    line(pages, sheet, one, FIRST + i);
  });
  const { length } = lines;
  const spill = length > 1 ? { spill: [length, 1] as const } : {};
  if (length > 0) {
    sheet.put(
      `${C.cysts}${FIRST}`,
      styled(
        pages.fx(
          `=SPAWN.CYSTS.NEEDED(${FEED_RUNS.own('onLive', length)},{naupliiPerLarva},{naupliiPerGram},{naupliiHarvest})`,
        ),
        'result',
        { format: '#,##0.0;-#,##0.0;"–"', ...spill },
      ),
    );
    sheet.put(
      `${C.dry}${FIRST}`,
      styled(
        `=SPAWN.FEED.DAILY(${FEED_RUNS.own('fish', length)},${FEED_RUNS.own('grams', length)},${FEED_RUNS.own('ration', length)})`,
        'result',
        { format: '#,##0.0;-#,##0.0;"–"', ...spill },
      ),
    );
  }
  return sheet.build();
}

/** Live food and dry feed of all runs together, day by day. */
export function feedDaysSheet(pages: Pages): SheetModel {
  const { plan, fx } = pages;
  const { length } = feedLines(pages);
  const first = Math.min(...plan.runs.map(({ feedFrom }) => feedFrom)) - 1 - SPARE_DAYS;
  const last = Math.max(...plan.runs.map(({ due }) => due));
  const days = plan.runs.length === 0 ? 0 : last - first;
  const sheet = pages.sheet(
    'feed',
    'Live food and feed by day',
    'Cysts are set to hatch the day before they are fed: the amount stands on the day to ' +
      'set them. Weigh and count every week.',
    {
      widths: [2, ...FEED_DAYS.widths, 2, 12, 12, 12, 12, 12, 12],
      tab: 'C8742A',
      freeze: { rows: HEAD, columns: 2 },
      print: { titleRows: [HEAD, HEAD] },
    },
  );
  FEED_DAYS.headings(sheet);
  const sum = (key: 'cysts' | 'dry' | 'fish', when: string): string =>
    `SUMIFS(${FEED_RUNS.range(key, length)},${FEED_RUNS.range('date', length)},${when})`;
  for (let i = 0; i < days; i++) {
    const row = FIRST + i;
    FEED_DAYS.row(sheet, row, {
      date: i === 0 ? first : `=${D.date}${row - 1}+1`,
      runs: `=COUNTIFS(${FEED_RUNS.range('date', length)},${D.date}${row},${FEED_RUNS.range('fish', length)},">0")`,
      fish: `=${sum('fish', `${D.date}${row}`)}`,
      set: `=${sum('cysts', `${D.date}${row}+1`)}`,
      dry: `=${sum('dry', `${D.date}${row}`)}`,
      meal: fx(`=${D.dry}${row}/{meals}`),
    });
  }
  if (days === 0) return sheet.put(`B${FIRST}`, 'No run, no feed.', 'quiet').build();
  const end = lastRow(days);
  sheet.row(`B${end + 1}`, [
    styled('In all', 'heading'),
    styled('', 'heading'),
    styled('', 'heading'),
    styled(`=SUM(${FEED_DAYS.own('set', days)})`, 'result', { format: '#,##0' }),
    styled(`=SUM(${FEED_DAYS.own('dry', days)})`, 'result', { format: '#,##0' }),
    styled('g', 'unit'),
  ]);
  sheet.validate({
    range: FEED_DAYS.own('done', days),
    kind: 'list',
    items: ['done', 'left out'],
    message: 'Pick what became of it.',
  });
  sheet.when({
    range: `${D.date}${FIRST}:${D.done}${end}`,
    formula: `=$${D.done}${FIRST}="done"`,
    style: 'quiet',
  });
  const chart = (
    title: string,
    keys: readonly ('fish' | 'set' | 'dry')[],
    yTitle: string,
    from: number,
  ): void => {
    sheet.chart({
      kind: 'line',
      title,
      categories: sheet.ref(FEED_DAYS.own('date', days)),
      categoryFormat: 'd mmm',
      yTitle,
      valueFormat: '#,##0',
      series: keys.map((key) => ({
        name: FEED_DAYS.titleOf(key).toLowerCase(),
        values: sheet.ref(FEED_DAYS.own(key, days)),
      })),
      from: `J${from}`,
      to: `O${from + 15}`,
    });
  };
  chart('Food a day', ['set', 'dry'], 'g a day', FIRST);
  chart('Fish fed', ['fish'], 'fish', FIRST + 17);
  return sheet.build();
}
