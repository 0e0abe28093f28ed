import { ASSUMPTIONS } from '../../plan/assumptions';
import { styled } from '../../workbook/build';
import type { SheetModel } from '../../workbook/model';
import type { PlannedRun } from '../result';
import { DAY, HEAD, WHOLE, lastRow, sheetOf } from './context';
import type { Season } from './context';
import { RUN_COLUMNS } from './runs';

interface Task { readonly when: number; readonly at: string; readonly run: number; readonly what: string; readonly amount?: number; readonly unit?: string }

const C = RUN_COLUMNS;
function tasksOf(run: PlannedRun, row: number, { book }: Season): Task[] {
  const cell = (column: string): string => `Runs!$${column}$${row}`;
  const preparing = book.assumptions.preparingDays ?? ASSUMPTIONS.preparingDays.planned;
  const live = book.assumptions.liveDays ?? ASSUMPTIONS.liveDays.planned;
  const task = (when: number, at: string, what: string, amount?: number, unit?: string): Task =>
    ({ when, at: `=${at}`, run: run.run, what, ...(amount === undefined ? {} : { amount, unit: unit ?? '' }) });
  const vats = new Set(run.vats.flatMap(({ names }) => names));
  const first = run.vats[0]?.names ?? [];
  return [
    task(Math.floor(run.stripAt) - preparing + 1 / 3, `INT(${cell(C.strip)})-${preparing}+8/24`, `Vats clean, filled and aerated: ${first.join(', ')}; water measured`, vats.size, 'vats in all'),
    task(Math.floor(run.injectAt) - 1 + 2 / 3, `INT(${cell(C.inject)})-1+16/24`, `Choose and weigh ${run.females.map(({ tag }) => tag).join(', ')}; no more feed`, run.females.length, 'females'),
    task(run.injectAt, cell(C.inject), 'Inject', run.hormone, 'mL in all'),
    task(run.stripAt, cell(C.strip), `Strip and fertilise; males ${run.males.join(', ')}`, run.eggs, 'eggs'),
    task(run.hatchAt, cell(C.hatch), 'First larvae hatch', run.larvae, 'larvae'),
    task(run.firstFeedAt - 1, `${cell(C.feed)}-1`, 'Set the first cysts to hatch'),
    task(run.firstFeedAt, cell(C.feed), `First live food; larvae to ${run.vats[1]?.names.join(', ') ?? ''}`, run.feeding, 'larvae'),
    task(run.feedFrom + live + 1 / 3, `INT(${cell(C.feed)}+0.5)+${live}+8/24`, 'Start weaning'),
    ...(run.vats[2] ? [task(run.weanedAt, `INT(${cell(C.feed)}+0.5)+${Math.round(run.weanedAt - run.feedFrom)}+8/24`, `Grade, count, move to ${run.vats[2].names.join(', ')}`, run.weaned, 'fry')] : []),
    task(run.due - 1 + 1 / 4, `${cell(C.due)}-1+6/24`, `${run.order}: last meal; bags, oxygen and clean water ready`),
    task(run.due + 1 / 4, `${cell(C.due)}+6/24`, `${run.order}: count out and hand over`, run.fish, 'fish'),
  ];
}

/** Every run's tasks in one list, by day and hour as planned; the hours follow Runs. */
export function calendarSheet(season: Season): SheetModel {
  const tasks = season.plan.runs.flatMap((run, i) => tasksOf(run, HEAD + 1 + i, season)).sort((a, b) => a.when - b.when);
  const sheet = sheetOf(season, 'Calendar', 'Calendar', 'In the order of the plan; times follow the water and the strip hour on Runs. "night" is from 20:00 to 6:00.', {
    widths: [2, 10, 14, 8, 6, 62, 12, 12, 8], tab: 'C8742A', freeze: { rows: HEAD, columns: 0 }, print: { titleRows: [HEAD, HEAD] },
  });
  sheet.row(`B${HEAD}`, ['Done', 'Date', 'Hour', 'Run', 'What to do', 'How much', '', 'Light'], 'heading');
  tasks.forEach((task, i) => {
    const r = HEAD + 1 + i;
    sheet.row(`B${r}`, [
      styled({}, 'blank'), styled(task.at, 'cell', { format: DAY }), styled(`=C${r}`, 'result', { format: 'hh:mm' }), styled(task.run, 'cell'), styled(task.what, 'text'),
      task.amount === undefined ? styled('', 'cell') : styled(task.amount, 'cell', { format: task.unit === 'mL in all' ? '0.00' : WHOLE }), styled(task.unit ?? '', 'text'),
      styled(`=IF(OR(MOD(C${r},1)<6/24,MOD(C${r},1)>=20/24),"night","")`, 'text'),
    ]).height(r, task.what.length > 62 ? 30 : 16);
  });
  const last = lastRow(tasks.length);
  sheet.validate({ range: `B${HEAD + 1}:B${last}`, kind: 'list', items: ['done', 'late', 'left out'], message: 'Pick what became of it.' });
  sheet.when({ range: `B${HEAD + 1}:I${last}`, formula: `=$B${HEAD + 1}="done"`, style: 'quiet' }).when({ range: `D${HEAD + 1}:D${last}`, formula: `=$I${HEAD + 1}="night"`, style: 'warning' });
  return sheet.build();
}
