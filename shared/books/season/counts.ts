import type { SheetBuilder } from '../../sheet/workbook/build';
import type { SheetModel } from '../../sheet/workbook/model';
import { EGG_COUNTS, FRY_COUNTS, PAIRS, RUNS } from './columns';
import type { Pages } from './context';
import { FIRST, HEAD, lastRow } from './context';
import { pairsIn } from './runs';

const E = EGG_COUNTS.letters;
const F = FRY_COUNTS.letters;
const RANGE = 'The ends of an estimate hold the truth 19 times in 20.';

/** The three fields of an estimate, asked one by one so that an empty line stays empty. */
const estimate = (isFilled: string, call: string): readonly [string, string, string] =>
  [1, 2, 3].map((field) => `=IF(${isFilled},INDEX(${call},1,${field}),"")`) as [string, string, string];

const guardIn =
  (sheet: SheetBuilder, last: number) =>
  (from: string, to: string, kind: 'whole' | 'decimal', max: number, message: string): void => {
    sheet.validate({ range: `${from}${FIRST}:${to}${last}`, kind, min: 0, max, message });
  };

/** The eggs of each run: estimated from weighed samples, and how many of them live. */
export function eggCountsSheet(pages: Pages): SheetModel {
  const { runs } = pages.plan;
  const sheet = pages.sheet(
    'eggCounts',
    'Egg counts',
    `Weigh all eggs on Pairs, three small samples here, and count those. Empty cells keep what was planned. ${RANGE}`,
    {
      widths: [2, ...EGG_COUNTS.widths],
      tab: '0B4F2A',
      freeze: { rows: HEAD, columns: 3 },
      print: { titleRows: [HEAD, HEAD] },
    },
  );
  EGG_COUNTS.headings(sheet, 44);
  runs.forEach((_, i) => {
    const row = FIRST + i;
    const [eggs, eggsLow, eggsHigh] = estimate(
      `AND(${E.grams}${row}>0,COUNT(${E.g1}${row}:${E.n3}${row})=6)`,
      `SPAWN.EGGS.BYWEIGHT(${E.grams}${row},${E.g1}${row}:${E.g3}${row},${E.n1}${row}:${E.n3}${row})`,
    );
    const [fertilised, fertilisedLow, fertilisedHigh] = estimate(
      `COUNT(${E.looked}${row}:${E.alive}${row})=2`,
      `SPAWN.FERTILISATION.SHARE(${E.alive}${row},${E.looked}${row})`,
    );
    EGG_COUNTS.row(sheet, row, {
      run: `=${RUNS.cell('run', row)}`,
      order: `=${RUNS.cell('order', row)}`,
      grams: `=SUMIFS(${PAIRS.range('grams', pairsIn(pages))},${PAIRS.range('run', pairsIn(pages))},${E.run}${row})`,
      eggs,
      eggsLow,
      eggsHigh,
      fertilised,
      fertilisedLow,
      fertilisedHigh,
    });
    sheet.height(row, 20);
  });
  const guard = guardIn(sheet, lastRow(runs.length));
  guard(E.g1, E.g3, 'decimal', 100, 'Weight of a small sample of eggs in grams, blotted as the whole was.');
  guard(E.n1, E.n3, 'whole', 1e6, 'Eggs counted in that sample.');
  guard(
    E.looked,
    E.alive,
    'whole',
    1e5,
    'Eggs looked at, and of these alive: clear is alive, white is dead.',
  );
  return sheet.build();
}

/** Larvae, fry and fish of each run, estimated from samples of the water or counted. */
export function fryCountsSheet(pages: Pages): SheetModel {
  const { runs } = pages.plan;
  const sheet = pages.sheet(
    'fryCounts',
    'Fry counts',
    `Three samples of the stirred water give the larvae at first feed. Empty cells keep what was planned; a run that is lost: type 0 under fish counted out. ${RANGE}`,
    {
      widths: [2, ...FRY_COUNTS.widths],
      tab: '0B4F2A',
      freeze: { rows: HEAD, columns: 3 },
      print: { titleRows: [HEAD, HEAD] },
    },
  );
  FRY_COUNTS.headings(sheet, 44);
  runs.forEach((_, i) => {
    const row = FIRST + i;
    const [larvae, larvaeLow, larvaeHigh] = estimate(
      `COUNT(${F.litres}${row}:${F.l3}${row})=7`,
      `SPAWN.LARVAE.BYVOLUME(${F.litres}${row},${F.ml1}${row}:${F.ml3}${row},${F.l1}${row}:${F.l3}${row})`,
    );
    FRY_COUNTS.row(sheet, row, {
      run: `=${RUNS.cell('run', row)}`,
      order: `=${RUNS.cell('order', row)}`,
      larvae,
      larvaeLow,
      larvaeHigh,
    });
    sheet.height(row, 20);
  });
  const guard = guardIn(sheet, lastRow(runs.length));
  guard(F.litres, F.ml3, 'decimal', 1e6, 'Water the larvae are in (L), and samples of it (mL).');
  guard(F.l1, F.l3, 'whole', 1e6, 'Larvae counted in that sample.');
  for (const key of ['hatched', 'weaned', 'handed'] as const)
    guard(F[key], F[key], 'whole', 1e8, 'Counted or well estimated; empty until then.');
  return sheet.build();
}
