import { styled } from '../../workbook/build';
import type { SheetModel } from '../../workbook/model';
import { ASSUMPTIONS } from '../../plan/assumptions';
import { DAY, HEAD, MOMENT, WHOLE, lastRow, sheetOf } from './context';
import type { Season } from './context';

/** Columns other sheets read. */
export const RUN_COLUMNS = { run: 'B', order: 'C', inject: 'H', strip: 'F', hatch: 'J', feed: 'K', ready: 'L', due: 'M', now: 'R' } as const;

/** The runs: when, with which fish, how many; temperature, strip and counts are open. */
export function runsSheet(season: Season): SheetModel {
  const { book, plan } = season;
  const sheet = sheetOf(season, 'Runs', 'Runs', 'Type the water you really have, another hour to strip, or a count: times, orders and money follow.', {
    widths: [2, 6, 22, 26, 14, 19, 9, 19, 19, 19, 19, 13, 13, 10, 10, 11, 11, 11], tab: 'C8742A', freeze: { rows: HEAD, columns: 3 },
  });
  sheet.row(`B${HEAD}`, ['Run', 'Order', 'Females × males', 'Water, °C', 'Strip at', 'Latency, h', 'Inject at', 'Too late to strip', 'First hatch', 'First feed', 'Ready', 'Due', 'Hormone, mL', 'Eggs', 'Fish planned', 'Fish counted', 'Fish now'], 'heading').height(HEAD, 32);
  const offset = book.assumptions.latencyOffset ?? ASSUMPTIONS.latencyOffset.planned;
  const kind = `"${book.preparation}"`;
  plan.runs.forEach((run, i) => {
    const r = HEAD + 1 + i;
    const rearing = run.readyAt - run.feedFrom;
    sheet.row(`B${r}`, [
      styled(run.run, 'cell'), styled(run.order, 'label'), styled(run.females.map(({ tag, male }) => `${tag} × ${male}`).join(', '), 'text'),
      styled(Math.round(run.temperature * 10) / 10, 'input', { format: '0.0' }), styled(run.stripAt, 'input', { format: MOMENT }),
      styled(`=SPAWN.LATENCY.HOURS(E${r},${kind})+${offset}`, 'cell', { format: '0.0' }), styled(`=F${r}-G${r}/24`, 'result', { format: MOMENT }),
      styled(`=INDEX(SPAWN.STRIP.WINDOW(F${r}-G${r}/24,E${r},${kind},${offset}),1,3)`, 'cell', { format: MOMENT }),
      styled(`=SPAWN.HATCH.TIME(F${r},E${r})`, 'cell', { format: MOMENT }), styled(`=SPAWN.FEEDING.START(J${r},E${r})`, 'cell', { format: MOMENT }),
      styled(`=INT(K${r}+0.5)+${rearing}`, 'cell', { format: DAY }), styled(run.due, 'cell', { format: DAY }),
      styled(run.hormone, 'cell', { format: '0.00' }), styled(run.eggs, 'cell', { format: WHOLE }), styled(run.fish, 'cell', { format: WHOLE }),
      styled({}, 'blank', { format: WHOLE }), styled(`=IF(ISNUMBER(Q${r}),Q${r},P${r})`, 'result', { format: WHOLE }),
    ]);
    sheet.height(r, 16 * Math.max(1, Math.ceil(run.females.length / 3)));
  });
  const last = lastRow(plan.runs.length);
  sheet.when({ range: `L${HEAD + 1}:L${last}`, formula: `=$L${HEAD + 1}>$M${HEAD + 1}`, style: 'bad' });
  sheet.validate({ range: `E${HEAD + 1}:E${last}`, kind: 'decimal', min: 15, max: 35, message: 'Water where the fish and eggs are, °C.' });
  sheet.validate({ range: `F${HEAD + 1}:F${last}`, kind: 'date', min: 36526, max: 73050, message: 'Day and hour of stripping.' });
  sheet.validate({ range: `Q${HEAD + 1}:Q${last}`, kind: 'whole', min: 0, max: 5_000_000, message: 'Fish counted, or expected from a later count.' });
  return sheet.build();
}
