import { heightFor } from '../../../sheet/workbook/build';
import type { Content, SheetBuilder } from '../../../sheet/workbook/build';
import type { SheetModel } from '../../../sheet/workbook/model';
import { CAUTIONS } from '../../../functions/cautions';
import { BATCH_STATES } from '../../../season/types';
import type { SeasonBatch } from '../../../season/types';
import type { WorkingKey } from '../columns';
import type { LivingPages } from '../context';
import { HEAD } from '../layout';

/** More parents than this and their words take a second line. */
const WIDE = 21;

function contents(pages: LivingPages, batch: SeasonBatch, i: number) {
  const { batches, workings, shares, log } = pages.tables;
  const row = batches.first + i;
  const here = (key: keyof typeof batches.letters): string => batches.here(key, row);
  const of = (key: WorkingKey): Content => `=${workings.there(key, workings.first + i)}`;
  const given = pages.givenOf(batch);
  const { days } = pages.tables;
  const own = `(${days.range('batch')}=${here('batch')})`;
  const part = `SUMIFS(${shares.range('part')},${shares.range('batch')},${here('batch')})`;
  const sold = `SUMIFS(${log.range('number')},${log.range('batch')},${here('batch')},${log.range('what')},"sold")-${workings.there('soldThen', workings.first + i)}`;
  return {
    batch: batch.name,
    state: batch.state,
    parents: batch.pairs.map(({ female, male }) => `${female} × ${male}`).join(', '),
    measured: typeof given.measured === 'number' ? given.measured : {},
    water: of('water'),
    inject: of('inject'),
    look: of('look'),
    strip: batch.stripAt,
    late: of('late'),
    hatchAt: of('hatchAt'),
    feed: of('feed'),
    leaves: of('leaves'),
    toSet: batch.eggs,
    feeding: of('feeding'),
    promised: `=SUMIFS(${shares.range('handOver')},${shares.range('batch')},${here('batch')})`,
    change: `=SUMPRODUCT(MAX(${own}*${days.range('change')}))`,
    air: `=IF(COUNTIFS(${days.range('batch')},${here('batch')})=0,"",SUMPRODUCT(MIN((${days.range('batch')}<>${here('batch')})*1000000+${days.range('air')})))`,
    net: of('netArea'),
    extra: `=MAX(0,IF(${part}>0,SUMIFS(${shares.range('fishThen')},${shares.range('batch')},${here('batch')})/${part},IF(OR(${here('state')}="lost",${here('state')}="over"),0,${workings.there('fish', workings.first + i)}*${workings.there('still', workings.first + i)}))-${here('promised')}-(${sold}))`,
  };
}

function pairsTable(pages: LivingPages, sheet: SheetBuilder): void {
  const { pairs, workings } = pages.tables;
  sheet.put(
    `B${pairs.head - 1}`,
    pages.rows.batches.length > 0
      ? `="Females: weigh, dose in "&${workings.there('hormoneUnit', workings.first)}&", strip"`
      : 'Females: weigh, dose, strip',
    'section',
  );
  pairs.headings(sheet);
  pages.rows.pairs.forEach((pair, i) => {
    const row = pairs.first + i;
    const here = (key: keyof typeof pairs.letters): string => pairs.here(key, row);
    const of = (key: WorkingKey): string => workings.find(key, 'batch', here('batch'));
    pairs.line(sheet, row, {
      batch: pair.batch,
      female: pair.female,
      male: pair.male,
      kilograms: pair.kilograms,
      dose: `=IF(${of('kilograms')}>0,${here('kilograms')}*${of('hormone')}/${of('kilograms')},0)`,
      inject: `=${of('inject')}`,
      strip: `=${of('strip')}`,
    });
  });
  sheet
    .validate({
      range: pairs.own('kilograms'),
      kind: 'decimal',
      min: 0.05,
      max: 15,
      message: 'Weight of this female in kg.',
    })
    .validate({
      range: pairs.own('grams'),
      kind: 'decimal',
      min: 0,
      max: 5000,
      message: 'Eggs of this female in grams.',
    })
    .validateDays(pairs.own('injected'), 'Day and hour, as it really was.');
  const text = CAUTIONS['HORMONE'] ?? '';
  sheet
    .merge(`B${pairs.last + 2}:Q${pairs.last + 2}`, `Take care: ${text}`, 'warning')
    .height(pairs.last + 2, heightFor([text, 150]));
}

/** The batches: when, and with which fish. Water, hour of stripping and eggs to set are open. */
export function batchesSheet(pages: LivingPages): SheetModel {
  const { batches } = pages.tables;
  const sheet = pages.sheet(
    'batches',
    'Batches',
    'Type the water you really have or another hour to strip: clock, vats, feed and money follow. ' +
      'A batch that is gone: pick over or lost.',
    {
      widths: [2, ...batches.widths],
      tab: 'C8742A',
      freeze: { rows: HEAD, columns: 3 },
      print: { titleRows: [HEAD, HEAD] },
    },
  );
  batches.headings(sheet, 44);
  pages.rows.batches.forEach((batch, i) => {
    const words = batch.pairs.reduce((sum, { female, male }) => sum + female.length + male.length + 5, 0);
    batches.line(sheet, batches.first + i, contents(pages, batch, i));
    sheet.height(batches.first + i, 16 * Math.max(1, Math.ceil(words / WIDE)));
  });
  if (pages.rows.batches.length === 0)
    sheet.put(`D${batches.first}`, 'No batch could be planned: Today says why.', 'quiet');
  if (pages.rows.batches.length > 0) sheet.table({ name: 'season_batches', range: batches.area });
  const first = batches.first;
  sheet
    .when({
      range: batches.own('inject'),
      formula: `=OR(MOD(${batches.here('inject', first)},1)<6/24,MOD(${batches.here('inject', first)},1)>=22/24)`,
      style: 'warning',
    })
    .validate({
      range: batches.own('measured'),
      kind: 'decimal',
      min: 15,
      max: 36,
      message: 'Water where the fish and eggs are, °C.',
    })
    .validateDays(batches.own('strip'), 'Day and hour of stripping.')
    .validate({
      range: batches.own('toSet'),
      kind: 'decimal',
      min: 0,
      max: 1e9,
      message: 'Eggs to set in the vats, at most.',
    })
    .validate({
      range: batches.own('state'),
      kind: 'list',
      items: ['planned', ...BATCH_STATES],
      message: 'planned may still move; fixed is ordered or injected; growing stands in the vats.',
    });
  pairsTable(pages, sheet);
  return sheet.build();
}
