import type { SheetModel } from '../../workbook/model';
import { COUNTS, ORDERS, PAIRS, RUNS } from './columns';
import type { Pages } from './context';
import { FIRST, HEAD, lastRow } from './context';
import { pairsIn } from './runs';

const C = COUNTS.letters;

/** The three fields of an estimate, asked one by one so that an empty line stays empty. */
const estimate = (isFilled: string, call: string): readonly [string, string, string] =>
  [1, 2, 3].map((field) => `=IF(${isFilled},INDEX(${call},1,${field}),"")`) as [string, string, string];

function contents(pages: Pages, row: number) {
  const at = (key: keyof typeof C): string => `${C[key]}${row}`;
  const span = (from: keyof typeof C, to: keyof typeof C): string => `${at(from)}:${at(to)}`;
  const [eggs, eggsLow, eggsHigh] = estimate(`AND(${at('grams')}>0,COUNT(${span('g1', 'n3')})=6)`, `SPAWN.EGGS.BYWEIGHT(${at('grams')},${span('g1', 'g3')},${span('n1', 'n3')})`);
  const [fertilised, fertilisedLow, fertilisedHigh] = estimate(`COUNT(${span('looked', 'alive')})=2`, `SPAWN.FERTILISATION.SHARE(${at('alive')},${at('looked')})`);
  // The same sample is taken three times: one volume stands for all of them.
  const volumes = `${at('ml')}*{1,1,1}`;
  const [larvae, larvaeLow, larvaeHigh] = estimate(`COUNT(${span('litres', 'l3')})=5`, `SPAWN.LARVAE.BYVOLUME(${at('litres')},${volumes},${span('l1', 'l3')})`);
  return {
    run: `=${RUNS.cell('run', row)}`, order: `=${RUNS.cell('order', row)}`, grams: `=SUMIFS(${PAIRS.range('grams', pairsIn(pages))},${PAIRS.range('run', pairsIn(pages))},${at('run')})`,
    eggs, eggsLow, eggsHigh, fertilised, fertilisedLow, fertilisedHigh, larvae, larvaeLow, larvaeHigh,
  };
}

/** Room for every count of every run; Runs goes on from what stands here. */
export function countsSheet(pages: Pages): SheetModel {
  const { runs } = pages.plan;
  const sheet = pages.sheet('counts', 'Counts', 'Fill in what you count; empty cells keep what was planned. An estimate from samples comes with its range (19 times in 20 the truth lies in it). A run that is lost: type 0 under fish counted out.', {
    widths: [2, ...COUNTS.widths], tab: '0B4F2A', freeze: { rows: HEAD, columns: 3 }, print: { titleRows: [HEAD, HEAD] },
  });
  COUNTS.headings(sheet, 58);
  runs.forEach((_, i) => { COUNTS.row(sheet, FIRST + i, contents(pages, FIRST + i)); sheet.height(FIRST + i, 20); });
  const last = lastRow(runs.length);
  const guard = (from: keyof typeof C, to: keyof typeof C, kind: 'whole' | 'decimal', max: number, message: string): void => {
    sheet.validate({ range: `${C[from]}${FIRST}:${C[to]}${last}`, kind, min: 0, max, message });
  };
  guard('g1', 'g3', 'decimal', 100, 'Weight of a small sample of eggs in grams, blotted as the whole was.');
  guard('n1', 'n3', 'whole', 1e6, 'Eggs counted in that sample.');
  guard('looked', 'alive', 'whole', 1e5, 'Eggs looked at, and of these alive: clear is alive, white is dead.');
  guard('litres', 'ml', 'decimal', 1e6, 'Water the larvae are in (L), and one sample of it (mL).');
  guard('l1', 'l3', 'whole', 1e6, 'Larvae counted in that sample.');
  guard('hatched', 'handed', 'whole', 1e8, 'Counted or well estimated; empty until then.');
  sheet.chart({
    kind: 'column', title: 'Planned and now expected', categories: runs.length > 0 ? RUNS.range('run', runs.length) : ORDERS.range('order', 1), valueFormat: '#,##0', yTitle: 'fish',
    series: runs.length > 0 ? [{ name: 'when planned', values: RUNS.range('planned', runs.length) }, { name: 'now', values: RUNS.range('fish', runs.length) }] : [{ name: 'ordered', values: ORDERS.range('number', 1) }],
    from: `B${last + 2}`, to: `M${last + 18}`,
  });
  return sheet.build();
}
