// Long: the hidden sheets of workings, each derived from the lines.
import { DAY_LINES, RUN_LINES, SHARE_LINES, TASKS, filled, taskList } from '../../../run/lines';
import type { RunLine } from '../../../run/lines';
import type { Content } from '../../../sheet/workbook/build';
import type { SheetModel } from '../../../sheet/workbook/model';
import type { SeasonBatch } from '../../../season/types';
import { DAYS, SHARES, TIMES, WORKINGS } from '../columns';
import type { BatchGiven, WorkingKey, TASK_LIST } from '../columns';
import type { LivingPages } from '../context';
import { seasonName } from '../context';
import { HEAD } from '../layout';
import type { SheetKey } from '../layout';

/** Says where a key of a formula stands for one line of a table. */
type Where = (key: string) => string;
const formulaOf = ({ formula }: Pick<RunLine, 'formula'>, where: Where): string => filled(formula, where);
const isWorking = (key: string): key is WorkingKey => key in WORKINGS;

const hidden = (pages: LivingPages, key: SheetKey, heading: string, widths: readonly number[], columns = 1) =>
  pages.sheet(key, heading, 'Workings: formulas of every line, nothing to type.', {
    widths: [2, ...widths],
    tab: '6B5B95',
    freeze: { rows: HEAD, columns: columns + 1 },
    print: { titleRows: [HEAD, HEAD] },
  });

/** A cell of another sheet that may be blank: blank, not 0. */
const orBlank = (cell: string): string => `=IF(ISNUMBER(${cell}),${cell},"")`;

/** These leave a batch as nobody expected. */
const LEFT = ['lost', 'released'] as const;

/** What a batch gives to its lines: from the sheets people type in, and the plan's own numbers. */
function givenCells(pages: LivingPages, batch: SeasonBatch, i: number): Record<BatchGiven, Content> {
  const { tables: t } = pages;
  const row = t.workings.first + i;
  const own = t.workings.here('batch', row);
  const there = (key: keyof typeof t.batches.letters): string => t.batches.there(key, t.batches.first + i);
  const eggs = (key: keyof typeof t.eggs.letters): string => t.eggs.there(key, t.eggs.first + i);
  const fry = (key: keyof typeof t.fry.letters): string => t.fry.there(key, t.fry.first + i);
  const given = pages.givenOf(batch);
  const as = (key: BatchGiven): Content => {
    const value = given[key];
    return typeof value === 'number' ? value : '';
  };
  const litres = (stage: string): string =>
    `=SUMIFS(${t.stayWorkings.range('litres')},${t.stays.range('batch')},${own},${t.stays.range('stage')},"${stage}")`;
  const ofShares = `${t.shares.range('batch')}=${own}`;
  const leaving = (which: 'MAX' | 'MIN'): string => {
    const others = which === 'MAX' ? `(${ofShares})*` : `(${t.shares.range('batch')}<>${own})*1000000+`;
    return `=IF(COUNTIFS(${t.shares.range('batch')},${own})=0,${t.workings.here('ready', row)},SUMPRODUCT(${which}(${others}${t.shares.range('on')})))`;
  };
  return {
    strip: `=${there('strip')}`,
    measured: orBlank(there('measured')),
    wasInject: as('wasInject'),
    wasLook: as('wasLook'),
    wasLate: as('wasLate'),
    wasHatch: as('wasHatch'),
    wasHatchEnd: as('wasHatchEnd'),
    wasFeed: as('wasFeed'),
    rearing: as('rearing'),
    nursing: as('nursing'),
    leaves: leaving('MAX'),
    firstLeaves: leaving('MIN'),
    kilograms: `=SUMIFS(${t.pairs.range('kilograms')},${t.pairs.range('batch')},${own})`,
    females: `=COUNTIFS(${t.pairs.range('batch')},${own})`,
    males: as('males'),
    hundred: 100,
    toSet: `=${there('toSet')}`,
    litresEggs: litres('eggs'),
    litresFry: litres('fry'),
    litresNursing: litres('nursing'),
    ph: pages.fx(`=IF(ISNUMBER(${eggs('ph')}),${eggs('ph')},IF(ISNUMBER({ph}),{ph},""))`),
    alkalinity: pages.fx(
      `=IF(ISNUMBER(${eggs('alkalinity')}),${eggs('alkalinity')},IF(ISNUMBER({alkalinity}),{alkalinity},""))`,
    ),
    eggsCounted: orBlank(eggs('eggs')),
    hatchedCounted: orBlank(fry('hatched')),
    feedingCounted: orBlank(fry('larvae')),
    weanedCounted: orBlank(fry('weaned')),
    handedCounted: '',
    standing: as('standing'),
    eggsKnown: as('eggsKnown'),
    countedThen: as('countedThen'),
    lostThen: as('lostThen'),
    soldThen: as('soldThen'),
    // What the planning knew of is in the fish that stand there.
    lostSince: `=${LEFT.map((what) => `SUMIFS(${t.log.range('number')},${t.log.range('batch')},${own},${t.log.range('what')},"${what}")`).join('+')}-${t.workings.here('lostThen', row)}`,
    weighedGrams: orBlank(fry('weight')),
    weighedOn: orBlank(fry('weighed')),
  };
}

/** Every figure of every batch, one a column. */
export function workingsSheet(pages: LivingPages): SheetModel {
  const { tables: t } = pages;
  const sheet = hidden(pages, 'workings', 'Every figure of every batch', t.workings.widths);
  t.workings.headings(sheet, 44);
  pages.rows.batches.forEach((batch, i) => {
    const row = t.workings.first + i;
    const where: Where = (key) => (isWorking(key) ? t.workings.here(key, row) : seasonName(key));
    t.workings.line(sheet, row, {
      batch: `=${t.batches.there('batch', t.batches.first + i)}`,
      isLost: `=${t.batches.there('state', t.batches.first + i)}`,
      ...givenCells(pages, batch, i),
      ...Object.fromEntries(Object.entries(RUN_LINES).map(([key, line]) => [key, formulaOf(line, where)])),
    });
  });
  return sheet.build();
}

/** Line of a batch in every table that has one line a batch. */
const lineOf = (pages: LivingPages, batch: string): string =>
  `=MATCH(${batch},${pages.tables.workings.range('batch')},0)`;

/** What a line names: its own column, else that of its batch in the workings, else a cell of the season. */
const whereOf =
  <K extends string>(
    { tables }: LivingPages,
    own: Readonly<Record<K | 'line', unknown>>,
    here: (key: K | 'line') => string,
  ): Where =>
  (key) =>
    key in own
      ? here(key as K)
      : isWorking(key)
        ? tables.workings.lookup(key, here('line'))
        : seasonName(key);

export function sharesSheet(pages: LivingPages): SheetModel {
  const { tables: t } = pages;
  const { shares, orders, promises } = t;
  const sheet = hidden(pages, 'shares', 'Which fish go to whom', shares.widths, 2);
  shares.headings(sheet, 44);
  pages.rows.shares.forEach((share, i) => {
    const row = shares.first + i;
    const here = (key: keyof typeof SHARES): string => shares.here(key, row);
    const where = whereOf(pages, SHARES, here);
    const all = `SUMIFS(${shares.range('fishThen')},${shares.range('order')},${here('order')})`;
    shares.line(sheet, row, {
      batch: share.batch,
      order: share.order,
      key: `=${here('batch')}&"|"&${here('order')}`,
      line: lineOf(pages, here('batch')),
      // An order that was taken out of its sheet by hand: its fish are nobody's until it is planned again.
      orderLine: `=IFERROR(MATCH(${here('order')},${orders.range('order')},0),0)`,
      on: `=IF(${here('orderLine')}>0,${orders.lookup('due', here('orderLine'))},${promises.find('due', 'order', here('order'))})`,
      part: pages.partOf(share),
      stage: share.stage,
      price: `=IF(${here('orderLine')}>0,N(${orders.lookup('price', here('orderLine'))}),0)`,
      wanted: `=IF(${here('orderLine')}>0,N(${orders.lookup('grams', here('orderLine'))}),0)`,
      open: `=IF(${here('orderLine')}>0,MAX(0,${orders.lookup('number', here('orderLine'))}-${orders.lookup('delivered', here('orderLine'))}),0)`,
      ...Object.fromEntries(Object.entries(SHARE_LINES).map(([key, line]) => [key, formulaOf(line, where)])),
      handOver: `=IF(${all}>0,${here('fishThen')}*MIN(1,${here('open')}/${all}),0)`,
      money: `=${here('handOver')}*${here('price')}`,
      fast: formulaOf(TASKS.fast.at, where),
      handAt: formulaOf(TASKS.handOver.at, where),
    });
  });
  return sheet.build();
}

export function daysSheet(pages: LivingPages): SheetModel {
  const { tables: t } = pages;
  const { days, shares } = t;
  const sheet = hidden(pages, 'days', 'Every batch on every day', days.widths, 3);
  days.headings(sheet, 44);
  pages.rows.days.forEach(({ batch, day }, i) => {
    const row = days.first + i;
    const here = (key: keyof typeof DAYS): string => days.here(key, row);
    const where = whereOf(pages, DAYS, here);
    days.line(sheet, row, {
      batch,
      line: lineOf(pages, here('batch')),
      day,
      left: `=SUMIFS(${shares.range('part')},${shares.range('batch')},${here('batch')},${shares.range('on')},"<="&${here('date')})`,
      today: pages.fx(
        `=N(${days.here('today', row - 1)})+IF(AND(${here('date')}={today},${here('fishNow')}>=1),1,0)`,
      ),
      ...Object.fromEntries(Object.entries(DAY_LINES).map(([key, line]) => [key, formulaOf(line, where)])),
    });
  });
  return sheet.build();
}

/** When each task of each batch is due. */
export function timesSheet(pages: LivingPages): SheetModel {
  const { tables: t } = pages;
  const sheet = hidden(pages, 'times', 'When each task is due', t.times.widths);
  t.times.headings(sheet, 44);
  pages.rows.batches.forEach((_, i) => {
    const row = t.times.first + i;
    const where: Where = (key) =>
      isWorking(key) ? t.workings.there(key, t.workings.first + i) : seasonName(key);
    t.times.line(sheet, row, {
      batch: `=${t.workings.there('batch', t.workings.first + i)}`,
      ...Object.fromEntries(
        taskList.flatMap(([key, { at, per }]) => (per === 'order' ? [] : [[key, formulaOf(at, where)]])),
      ),
    });
  });
  return sheet.build();
}

/** Of which day the counters of the task list count. */
const onDay = (when: string, day: string): string => `AND(INT(${when})=${day})`;

/** One line a task: where its time and its amount stand; the first sheet counts those of its day. */
export function tasksSheet(pages: LivingPages): SheetModel {
  const { tables: t, fx } = pages;
  const { tasks } = t;
  const sheet = hidden(pages, 'tasks', 'Every task', tasks.widths, 4);
  tasks.headings(sheet, 44);
  pages.rows.tasks.forEach(({ batch, task, order, later }, i) => {
    const row = tasks.first + i;
    const here = (key: keyof typeof TASK_LIST): string => tasks.here(key, row);
    const { amount, per } = TASKS[task] as { amount?: string; per: string };
    const before = (key: keyof typeof TASK_LIST): string => `N(${tasks.here(key, row - 1)})`;
    const isOpen = `${t.calendar.there('done', t.calendar.first + i)}=""`;
    const share = (key: keyof typeof SHARES): string => t.shares.lookup(key, here('share'));
    const title = TIMES[task].title;
    const figure = amount === undefined || per === 'order' ? '' : WORKINGS[amount as WorkingKey].title;
    tasks.line(sheet, row, {
      batch,
      task: title,
      order,
      later,
      line: lineOf(pages, here('batch')),
      share: `=IF(${here('order')}="",0,MATCH(${here('batch')}&"|"&${here('order')},${t.shares.range('key')},0))`,
      when: `=IF(${here('share')}>0,IF(${here('task')}="${TASKS.handOver.at.label}",${share('handAt')},${share('fast')}),${t.times.under(here('line'), here('task'))}+${here('later')})`,
      figure,
      amount: `=IF(${here('share')}>0,IF(${here('task')}="${TASKS.handOver.at.label}",ROUND(${share('handOver')}/${seasonName('arriving')},0),""),IF(${here('figure')}="","",${t.workings.under(here('line'), here('figure'))}))`,
      today: fx(`=${before('today')}+IF(${onDay(here('when'), '{today}')},1,0)`),
      tomorrow: fx(`=${before('tomorrow')}+IF(${onDay(here('when'), '({today}+1)')},1,0)`),
      late: fx(
        `=${before('late')}+IF(AND(${isOpen},INT(${here('when')})<{today},INT(${here('when')})>={today}-7),1,0)`,
      ),
    });
  });
  return sheet.build();
}
