import type { SheetModel } from '../../sheet/workbook/model';
import type { PlannedRun } from '../../season/result';
import { EGG_COUNTS, FISH, FRY_COUNTS, PAIRS, RUNS } from './columns';
import type { Pages } from './context';
import { FIRST, HEAD, lastRow } from './context';
import { mondayOf, pairsIn } from './runs';

const C = FISH.letters;

/** A number somebody counted, or what the step before gives. */
const counted = (cell: string, otherwise: string): string => `=IF(ISNUMBER(${cell}),${cell},${otherwise})`;

function contents(pages: Pages, run: PlannedRun, row: number) {
  const { fx } = pages;
  const at = (key: keyof typeof C): string => `${C[key]}${row}`;
  const month = `INDEX({eggShares},MONTH(${RUNS.cell('strip', row)}))`;
  const [rearing, nursing] = [RUNS.cell('rearing', row), RUNS.cell('nursing', row)];
  return {
    run: `=${RUNS.cell('run', row)}`,
    order: `=${RUNS.cell('order', row)}`,
    product: `=IF(${nursing}>0,"fingerlings","fry")`,
    kilograms: `=SUMIFS(${PAIRS.range('kilograms', pairsIn(pages))},${PAIRS.range('run', pairsIn(pages))},${at('run')})`,
    hormone: fx(`=${at('kilograms')}*{hormoneDose}`),
    hormoneWeek: fx(`=${mondayOf(`MAX({plannedOn},INT(${RUNS.cell('inject', row)})-{leadHormone})`)}`),
    males: run.males.length,
    expected: fx(`=${at('kilograms')}*1000*IF(${month}>0,${month},{eggShare})*{eggsPerGram}*{ovulating}`),
    toSet: run.eggs,
    eggs: counted(EGG_COUNTS.cell('eggs', row), `MIN(${at('toSet')},${at('expected')})`),
    larvae: counted(FRY_COUNTS.cell('hatched', row), fx(`${at('eggs')}*{hatch}`)),
    feeding: counted(FRY_COUNTS.cell('larvae', row), fx(`${at('larvae')}*{yolkSurvival}`)),
    fry: counted(
      FRY_COUNTS.cell('weaned', row),
      fx(`${at('feeding')}*{frySurvival}^(${rearing}/{rearingDays})`),
    ),
    fish: counted(
      FRY_COUNTS.cell('handed', row),
      fx(`${at('fry')}*IF(${nursing}>0,{nurserySurvival}^(${nursing}/{nurseryDays}),1)*{gradingShare}`),
    ),
    planned: run.fish,
  };
}

/** How many eggs, larvae and fish each run has: as planned until something is counted. */
export function fishSheet(pages: Pages): SheetModel {
  const { runs } = pages.plan;
  const sheet = pages.sheet(
    'fish',
    'Fish: from the females to the buyer',
    'Each number is what was counted (Egg counts, Fry counts), or the one before it ' +
      'times the figure on Figures. A run far below its plan is coloured.',
    {
      widths: [2, ...FISH.widths],
      tab: 'C8742A',
      freeze: { rows: HEAD, columns: 3 },
      print: { titleRows: [HEAD, HEAD] },
    },
  );
  FISH.headings(sheet, 44);
  runs.forEach((run, i) => {
    FISH.row(sheet, FIRST + i, contents(pages, run, FIRST + i));
  });
  const last = lastRow(runs.length);
  if (runs.length === 0) return sheet.put(`B${FIRST}`, 'No run, no fish.', 'quiet').build();
  sheet.table({ name: 'season_fish', range: `${FISH.first}${HEAD}:${FISH.last}${last}` });
  sheet.when({
    range: `${C.fish}${FIRST}:${C.fish}${last}`,
    formula: `=$${C.fish}${FIRST}<0.9*$${C.planned}${FIRST}`,
    style: 'warning',
  });
  sheet.validate({
    range: `${C.toSet}${FIRST}:${C.toSet}${last}`,
    kind: 'decimal',
    min: 0,
    max: 1e9,
    message: 'Eggs to set in the vats, at most.',
  });
  sheet.chart({
    kind: 'column',
    title: 'Planned and now expected, by run',
    categories: sheet.ref(FISH.own('run', runs.length)),
    valueFormat: '#,##0',
    yTitle: 'fish',
    series: [
      { name: 'when planned', values: sheet.ref(FISH.own('planned', runs.length)) },
      { name: 'now', values: sheet.ref(FISH.own('fish', runs.length)) },
    ],
    from: `B${last + 2}`,
    to: `L${last + 18}`,
  });
  return sheet.build();
}
