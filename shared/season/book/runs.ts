import { styled } from '../../workbook/build';
import type { SheetModel } from '../../workbook/model';
import type { PlannedRun } from '../result';
import { COUNTS, ORDERS, PAIRS, RUNS } from './columns';
import type { Pages } from './context';
import { FIRST, HEAD, lastRow } from './context';

const C = RUNS.letters;
/** Monday of the week a cell lies in; serial 2 stands for a Monday. */
export const mondayOf = (serial: string): string => `INT(${serial})-MOD(INT(${serial})-2,7)`;
export const pairsIn = ({ plan }: Pages): number => plan.runs.reduce((sum, run) => sum + run.females.length, 0);
const orderRow = ({ plan }: Pages, run: PlannedRun): number => FIRST + Math.max(0, plan.orders.findIndex(({ order }) => order.name === run.order));

/** Water expected at noon of the day of stripping: straight between the middles of two months. */
const usualWater = (strip: string): string => {
  const here = `INDEX({water},MONTH(${strip}))`;
  const next = `INDEX({water},MOD(MONTH(${strip})-1+IF(DAY(${strip})>15,1,11),12)+1)`;
  return `=IF(OR(${here}<10,${next}<10),NA(),${here}+(${next}-${here})*MIN(0.5,ABS(DAY(${strip})-15.5)/30))`;
};

/** A number somebody counted, or what the step before gives. */
const counted = (cell: string, otherwise: string): string => `=IF(ISNUMBER(${cell}),${cell},${otherwise})`;

// The yolk is asked for from the strip on and added to the hatch: asked from the hatch it would answer a round later in Excel.
function contents(pages: Pages, run: PlannedRun, row: number) {
  const { fx, plan } = pages;
  const product = plan.orders.find(({ order }) => order.name === run.order)?.product;
  const at = (key: keyof typeof C): string => `${C[key]}${row}`;
  const count = (key: 'eggs' | 'hatched' | 'larvae' | 'weaned' | 'handed'): string => COUNTS.cell(key, row);
  const kind = '{preparation}';
  return {
    run: run.run, order: `=${ORDERS.cell('order', orderRow(pages, run))}`, product: product && product.nurseryDays > 0 ? 'fingerlings' : 'fry',
    pairs: run.females.map(({ tag, male }) => `${tag} × ${male}`).join(', '),
    usual: fx(usualWater(at('strip'))), water: `=IF(ISNUMBER(${at('measured')}),${at('measured')},${at('usual')})`, strip: run.stripAt,
    latency: fx(`=SPAWN.LATENCY.HOURS(${at('water')},${kind})+{latencyOffset}`), inject: `=${at('strip')}-${at('latency')}/24`,
    late: fx(`=INDEX(SPAWN.STRIP.WINDOW(${at('inject')},${at('water')},${kind},{latencyOffset}),1,3)`),
    hatch: `=SPAWN.HATCH.TIME(${at('strip')},${at('water')})`, feed: `=${at('hatch')}+SPAWN.FEEDING.START(${at('strip')},${at('water')})-${at('strip')}`, fedFrom: `=INT(${at('feed')}+0.5)`,
    rearing: product?.rearingDays ?? 0, nursing: product?.nurseryDays ?? 0, weaned: `=${at('fedFrom')}+${at('rearing')}`, ready: `=${at('weaned')}+${at('nursing')}`, due: `=${ORDERS.cell('due', orderRow(pages, run))}`,
    kilograms: `=SUMIFS(${PAIRS.range('kilograms', pairsIn(pages))},${PAIRS.range('run', pairsIn(pages))},${at('run')})`, hormone: fx(`=${at('kilograms')}*{hormoneDose}`),
    hormoneWeek: fx(`=${mondayOf(`MAX({plannedOn},INT(${at('inject')})-{leadHormone})`)}`),
    expected: fx(`=${at('kilograms')}*1000*{eggShare}*{eggsPerGram}*{ovulating}`), toSet: run.eggs,
    eggs: counted(count('eggs'), `MIN(${at('toSet')},${at('expected')})`), larvae: counted(count('hatched'), fx(`${at('eggs')}*{hatch}`)), feeding: counted(count('larvae'), fx(`${at('larvae')}*{yolkSurvival}`)),
    fry: counted(count('weaned'), fx(`${at('feeding')}*{frySurvival}^(${at('rearing')}/{rearingDays})`)),
    fish: counted(count('handed'), fx(`${at('fry')}*IF(${at('nursing')}>0,{nurserySurvival}^(${at('nursing')}/{nurseryDays}),1)*{gradingShare}`)), planned: run.fish, males: run.males.length,
  };
}

/** The runs: when, with which fish, how many. Water, hour of stripping and eggs to set are open; counts come from Counts. */
export function runsSheet(pages: Pages): SheetModel {
  const { runs } = pages.plan;
  const sheet = pages.sheet('runs', 'Runs', 'Type the water you really have, or another hour to strip: the clock, the vats, the feed and the money follow. What you count goes on Counts.', {
    widths: [2, ...RUNS.widths], tab: 'C8742A', freeze: { rows: HEAD, columns: 3 }, print: { titleRows: [HEAD, HEAD] },
  });
  RUNS.headings(sheet, 44);
  runs.forEach((run, i) => {
    RUNS.row(sheet, FIRST + i, contents(pages, run, FIRST + i));
    sheet.height(FIRST + i, 16 * Math.max(1, Math.ceil(run.females.length / 3)));
  });
  if (runs.length === 0) sheet.put(`C${FIRST}`, styled('No run could be planned: Season says why.', 'quiet'));
  const last = lastRow(runs.length);
  if (runs.length > 0) sheet.table({ name: 'season_runs', range: `${RUNS.first}${HEAD}:${RUNS.last}${last}` });
  const down = (key: keyof typeof C): string => `${C[key]}${FIRST}:${C[key]}${last}`;
  sheet.when({ range: down('ready'), formula: `=$${C.ready}${FIRST}>$${C.due}${FIRST}`, style: 'bad' });
  sheet.when({ range: down('fish'), formula: `=$${C.fish}${FIRST}<0.9*$${C.planned}${FIRST}`, style: 'warning' });
  sheet.when({ range: down('inject'), formula: `=OR(MOD($${C.inject}${FIRST},1)<6/24,MOD($${C.inject}${FIRST},1)>=22/24)`, style: 'warning' });
  sheet.validate({ range: down('measured'), kind: 'decimal', min: 15, max: 35, message: 'Water where the fish and eggs are, °C.' });
  sheet.validate({ range: down('strip'), kind: 'date', min: 36526, max: 73050, message: 'Day and hour of stripping.' });
  sheet.validate({ range: down('toSet'), kind: 'decimal', min: 0, max: 1e9, message: 'Eggs to set in the vats, at most.' });
  return sheet.build();
}
