import type { SheetModel } from '../../sheet/workbook/model';
import { CAUTIONS } from '../../functions/cautions';
import { heightFor } from '../../sheet/workbook/build';
import { PAIRS, RUNS } from './columns';
import type { Pages } from './context';
import { FIRST, HEAD, lastRow } from './context';

/** Which female with which male in which run, her dose from her weight, and room for what happened. */
export function pairsSheet(pages: Pages): SheetModel {
  const lines = pages.plan.runs.flatMap((run, i) =>
    run.females.map((fish) => ({ ...fish, run: run.run, at: FIRST + i })),
  );
  const c = PAIRS.letters;
  const sheet = pages.sheet(
    'pairs',
    'Pairs: weigh, dose, strip',
    'Type each weight over the one of the plan; the dose follows. A hormone is a ' +
      'medicine: ask a vet, follow the leaflet and local rules.',
    {
      widths: [2, ...PAIRS.widths],
      tab: 'C8742A',
      freeze: { rows: HEAD, columns: 3 },
      print: { titleRows: [HEAD, HEAD] },
    },
  );
  PAIRS.headings(sheet);
  lines.forEach(({ tag, male, kilograms, run, at }, i) => {
    const row = FIRST + i;
    PAIRS.row(sheet, row, {
      run,
      female: tag,
      male,
      kilograms,
      dose: pages.fx(`=SPAWN.HORMONE.VOLUME(${c.kilograms}${row},{hormoneDose})`),
      inject: `=${RUNS.cell('inject', at)}`,
      strip: `=${RUNS.cell('strip', at)}`,
    });
    sheet.height(row, 18);
  });
  const last = lastRow(lines.length);
  if (lines.length > 0)
    sheet.table({ name: 'season_pairs', range: `${PAIRS.first}${HEAD}:${PAIRS.last}${last}` });
  sheet.validate({
    range: `${c.kilograms}${FIRST}:${c.kilograms}${last}`,
    kind: 'decimal',
    min: 0.05,
    max: 15,
    message: 'Weight of this female in kg.',
  });
  for (const key of ['injected', 'stripped'] as const)
    sheet.validate({
      range: `${c[key]}${FIRST}:${c[key]}${last}`,
      kind: 'date',
      min: 36526,
      max: 73050,
      message: 'Day and clock time.',
    });
  sheet.validate({
    range: `${c.grams}${FIRST}:${c.grams}${last}`,
    kind: 'decimal',
    min: 0,
    max: 5000,
    message: 'Weight of her eggs in grams.',
  });
  sheet.validate({
    range: `${c.alive}${FIRST}:${c.alive}${last}`,
    kind: 'whole',
    min: 0,
    max: 100,
    message: 'Living eggs of a hundred counted, twelve hours after fertilising.',
  });
  const caution = CAUTIONS['HORMONE'] ?? '';
  return sheet
    .merge(`B${last + 2}:L${last + 2}`, `Take care: ${caution}`, 'warning')
    .height(last + 2, heightFor([caution, 130]))
    .build();
}
