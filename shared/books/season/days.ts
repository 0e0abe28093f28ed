import { isoDateOfSerial } from '../../units/dates';
import { styled } from '../../sheet/workbook/build';
import type { SheetModel } from '../../sheet/workbook/model';
import type { PlannedRun } from '../../season/result';
import { FISH, RUNS } from './columns';
import type { Pages } from './context';
import { DAY, FIRST, HEAD, WHOLE, lastRow } from './context';

interface Task {
  readonly when: number;
  readonly at: string;
  readonly run: number;
  readonly what: string;
  readonly amount?: string;
  readonly unit?: string;
}
type Key = keyof typeof RUNS.letters;

const plural = (n: number, word: string): string => `${n} ${word}${n === 1 ? '' : 's'}`;
/** Whole weeks of nursing: a sample is weighed and the big ones taken out in each. */
const weeksOf = (run: PlannedRun): number =>
  run.vats[2] ? Math.max(0, Math.ceil((run.readyAt - Math.floor(run.weanedAt)) / 7) - 1) : 0;

function tasksOf({ assumed }: Pages, run: PlannedRun, row: number): Task[] {
  const of = (key: Key): string => RUNS.cell(key, row);
  const task = (
    when: number,
    at: string,
    what: string,
    amount?: keyof typeof FISH.letters,
    unit = '',
  ): Task => ({
    when,
    at: `=${at}`,
    run: run.run,
    what,
    ...(amount ? { amount: `=${FISH.cell(amount, row)}`, unit } : {}),
  });
  const vats = [...new Set(run.vats.flatMap(({ names }) => names))];
  const first = run.vats[0]?.names ?? [];
  const { preparingDays, liveDays, weaningDays } = assumed;
  const fill = Math.floor(run.stripAt) - preparingDays;
  return [
    task(
      fill + 1 / 3,
      `INT(${of('strip')})-{preparingDays}+8/24`,
      `Clean, fill and air ${plural(first.length, 'vat')} for the eggs: ${first.join(', ')} (${vats.length} in all later). Evening: pH, alkalinity, temperature → Vat water`,
    ),
    task(
      fill + 1 + 1 / 3,
      `INT(${of('strip')})-{preparingDays}+1+8/24`,
      'Trial bucket, then the first half of the dose (Vat water). Goggles and gloves; no fish in',
    ),
    task(
      fill + 2 + 1 / 3,
      `INT(${of('strip')})-{preparingDays}+2+8/24`,
      'Read the pH; the second half only if it is still low',
    ),
    task(
      Math.floor(run.injectAt) - 1 + 2 / 3,
      `INT(${of('inject')})-1+16/24`,
      `Choose and weigh ${run.females.map(({ tag }) => tag).join(', ')}: weights → Pairs. No more feed`,
    ),
    task(run.injectAt, of('inject'), 'Inject; write down hour and water', 'hormone', 'mL in all'),
    task(
      run.stripAt,
      of('strip'),
      `Strip, mix with milt of ${run.males.join(', ')}, wet, spread. Eggs in grams → Pairs`,
      'eggs',
      'eggs',
    ),
    task(run.lateAt, of('late'), 'Too late from here: eggs still in the fish are over-ripe'),
    task(run.stripAt + 0.5, `${of('strip')}+12/24`, 'Count 100 eggs: how many live? → Egg counts'),
    task(run.hatchAt, of('hatch'), 'First larvae hatch; dark and calm', 'larvae', 'larvae'),
    task(
      run.firstFeedAt - 1,
      `${of('feed')}-1`,
      'Set the first cysts to hatch, then every day: Feed by day has the grams',
    ),
    task(
      run.firstFeedAt,
      of('feed'),
      `First live food; larvae to ${run.vats[1]?.names.join(', ') ?? ''}. Count samples → Fry counts`,
      'feeding',
      'larvae',
    ),
    task(
      run.feedFrom + liveDays + 1 / 3,
      `${of('fedFrom')}+{liveDays}+8/24`,
      'Start weaning: dry first, live food after',
    ),
    task(
      run.feedFrom + liveDays + weaningDays + 1 / 3,
      `${of('fedFrom')}+{liveDays}+{weaningDays}+8/24`,
      'Dry feed alone',
    ),
    run.vats[2]
      ? task(
          run.weanedAt,
          `${of('weaned')}+8/24`,
          `Grade by size, count → Fry counts, move to ${run.vats[2].names.join(', ')}`,
          'fry',
          'fry',
        )
      : // Fry may be fetched on the very morning they are weaned.
        task(
          run.weanedAt - 1,
          `${of('weaned')}-1+8/24`,
          'Nearly weaned: take out the big ones, count a sample → Fry counts',
          'fry',
          'fry',
        ),
    ...Array.from({ length: weeksOf(run) }, (_, i) =>
      task(
        Math.floor(run.weanedAt) + 7 * (i + 1) + 1 / 3,
        `${of('weaned')}+${7 * (i + 1)}+8/24`,
        'Weigh a sample, take out the big ones',
      ),
    ),
    task(
      run.due - 1 + 1 / 4,
      `${of('due')}-1+6/24`,
      `${run.order}: last meal; bags, oxygen and clean water ready`,
    ),
    task(
      run.due + 1 / 4,
      `${of('due')}+6/24`,
      `${run.order}: count out and hand over; count → Fry counts`,
      'fish',
      'fish',
    ),
  ];
}

/** Every run's tasks in one list, by day and hour as planned; the hours follow Runs. */
export function daysSheet(pages: Pages): SheetModel {
  const { plan, book } = pages;
  const tasks = plan.runs.flatMap((run, i) => tasksOf(pages, run, FIRST + i)).sort((a, b) => a.when - b.when);
  const sheet = pages.sheet(
    'days',
    pages.fx('={hatchery}&": what to do, by day and hour"'),
    `In the order of the plan of ${isoDateOfSerial(book.plannedOn)}; times follow the water and the hour of stripping on Runs. "night" is from 20:00 to 6:00.`,
    {
      widths: [2, 10, 15, 8, 6, 72, 12, 12, 8],
      tab: 'C8742A',
      freeze: { rows: HEAD, columns: 0 },
      print: { titleRows: [HEAD, HEAD] },
    },
  );
  sheet.row(
    `B${HEAD}`,
    ['Done', 'Date', 'Hour', 'Run', 'What to do', 'How much', 'Of what', 'Light'],
    'heading',
  );
  tasks.forEach((task, i) => {
    const r = FIRST + i;
    sheet
      .row(`B${r}`, [
        styled({}, 'blank'),
        styled(pages.fx(task.at), 'cell', { format: DAY }),
        styled(`=C${r}`, 'result', { format: 'hh:mm' }),
        styled(task.run, 'cell'),
        styled(task.what, 'text'),
        styled(task.amount ?? '', 'cell', { format: task.unit === 'mL in all' ? '0.00' : WHOLE }),
        styled(task.unit ?? '', 'text'),
        styled(`=IF(OR(ROUND(MOD(C${r},1)*1440,0)<360,ROUND(MOD(C${r},1)*1440,0)>=1200),"night","")`, 'text'),
      ])
      .height(r, task.what.length > 70 ? 30 : 17);
  });
  const last = lastRow(tasks.length);
  sheet.validate({
    range: `B${FIRST}:B${last}`,
    kind: 'list',
    items: ['done', 'late', 'left out'],
    message: 'Pick what became of it.',
  });
  sheet
    .when({ range: `B${FIRST}:I${last}`, formula: `=$B${FIRST}="done"`, style: 'quiet' })
    .when({ range: `B${FIRST}:B${last}`, formula: `=$B${FIRST}="late"`, style: 'bad' })
    .when({ range: `D${FIRST}:D${last}`, formula: `=$I${FIRST}="night"`, style: 'warning' });
  return sheet.build();
}
