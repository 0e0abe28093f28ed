import { styled } from '../../sheet/workbook/build';
import type { SheetModel } from '../../sheet/workbook/model';
import type { PlannedRun } from '../../season/result';
import { ORDERS, RUNS } from './columns';
import type { Pages } from './context';
import { FIRST, HEAD, lastRow } from './context';

const C = RUNS.letters;
/** Monday of the week a cell lies in; serial 2 stands for a Monday. */
export const mondayOf = (serial: string): string => `INT(${serial})-MOD(INT(${serial})-2,7)`;
export const pairsIn = ({ plan }: Pages): number =>
  plan.runs.reduce((sum, run) => sum + run.females.length, 0);
export const orderRow = ({ plan }: Pages, run: PlannedRun): number =>
  FIRST +
  Math.max(
    0,
    plan.orders.findIndex(({ order }) => order.name === run.order),
  );

/** Water expected at noon of the day of stripping: straight between the middles of two months. */
const usualWater = (strip: string): string => {
  const here = `INDEX({water},MONTH(${strip}))`;
  const next = `INDEX({water},MOD(MONTH(${strip})-1+IF(DAY(${strip})>15,1,11),12)+1)`;
  return `=IF(OR(${here}<10,${next}<10),NA(),${here}+(${next}-${here})*MIN(0.5,ABS(DAY(${strip})-15.5)/30))`;
};

// The yolk is asked for from the strip on and added to the hatch: asked from the hatch it would answer a
// round later in Excel.
function contents(pages: Pages, run: PlannedRun, row: number) {
  const { fx, plan } = pages;
  const product = plan.orders.find(({ order }) => order.name === run.order)?.product;
  const at = (key: keyof typeof C): string => `${C[key]}${row}`;
  return {
    run: run.run,
    order: `=${ORDERS.cell('order', orderRow(pages, run))}`,
    pairs: run.females.map(({ tag, male }) => `${tag} × ${male}`).join(', '),
    usual: fx(usualWater(at('strip'))),
    water: `=IF(ISNUMBER(${at('measured')}),${at('measured')},${at('usual')})`,
    strip: run.stripAt,
    latency: fx(`=SPAWN.LATENCY.HOURS(${at('water')},{preparation})+{latencyOffset}`),
    inject: `=${at('strip')}-${at('latency')}/24`,
    late: fx(`=INDEX(SPAWN.STRIP.WINDOW(${at('inject')},${at('water')},{preparation},{latencyOffset}),1,3)`),
    hatch: `=SPAWN.HATCH.TIME(${at('strip')},${at('water')})`,
    feed: `=${at('hatch')}+SPAWN.FEEDING.START(${at('strip')},${at('water')})-${at('strip')}`,
    fedFrom: `=INT(${at('feed')}+0.5)`,
    rearing: product?.rearingDays ?? 0,
    nursing: product?.nurseryDays ?? 0,
    weaned: `=${at('fedFrom')}+${at('rearing')}`,
    ready: `=${at('weaned')}+${at('nursing')}`,
    due: `=${ORDERS.cell('due', orderRow(pages, run))}`,
  };
}

/** The runs: when, and with which fish. Water and hour of stripping are open. */
export function runsSheet(pages: Pages): SheetModel {
  const { runs } = pages.plan;
  const sheet = pages.sheet(
    'runs',
    'Runs',
    'Type the water you really have, or another hour to strip: the clock, the vats, the ' +
      'feed and the money follow. How many fish stands on Fish.',
    {
      widths: [2, ...RUNS.widths],
      tab: 'C8742A',
      freeze: { rows: HEAD, columns: 3 },
      print: { titleRows: [HEAD, HEAD] },
    },
  );
  RUNS.headings(sheet, 44);
  runs.forEach((run, i) => {
    RUNS.row(sheet, FIRST + i, contents(pages, run, FIRST + i));
    sheet.height(FIRST + i, 16 * Math.max(1, Math.ceil(run.females.length / 2)));
  });
  if (runs.length === 0) sheet.put(`C${FIRST}`, styled('No run could be planned: Season says why.', 'quiet'));
  const last = lastRow(runs.length);
  if (runs.length > 0)
    sheet.table({ name: 'season_runs', range: `${RUNS.first}${HEAD}:${RUNS.last}${last}` });
  const down = (key: keyof typeof C): string => `${C[key]}${FIRST}:${C[key]}${last}`;
  sheet.when({ range: down('ready'), formula: `=$${C.ready}${FIRST}>$${C.due}${FIRST}`, style: 'bad' });
  sheet.when({
    range: down('inject'),
    formula: `=OR(MOD($${C.inject}${FIRST},1)<6/24,MOD($${C.inject}${FIRST},1)>=22/24)`,
    style: 'warning',
  });
  sheet.validate({
    range: down('measured'),
    kind: 'decimal',
    min: 15,
    max: 35,
    message: 'Water where the fish and eggs are, °C.',
  });
  sheet.validate({
    range: down('strip'),
    kind: 'date',
    min: 36526,
    max: 73050,
    message: 'Day and hour of stripping.',
  });
  return sheet.build();
}
