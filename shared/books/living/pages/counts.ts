import type { SheetBuilder } from '../../../sheet/workbook/build';
import type { SheetModel } from '../../../sheet/workbook/model';
import { COUNT_STAGES, EVENT_KINDS } from '../../../season/types';
import type { LivingPages } from '../context';
import { lastCount } from '../context';
import { HEAD } from '../layout';

const RANGE = 'The ends of an estimate hold the truth 19 times in 20.';
/** What a line of the log may say. */
export const LOG_KINDS = [...EVENT_KINDS, 'counted'] as const;

/** The three fields of an estimate, asked one by one so that an empty line stays empty. */
const estimate = (isFilled: string, call: string): readonly [string, string, string] =>
  [1, 2, 3].map((field) => `=IF(${isFilled},INDEX(${call},1,${field}),"")`) as [string, string, string];

/** Limits of typed counts: nothing below zero, and a most that a slip of a digit passes. */
const guardOf =
  <K extends string>(sheet: SheetBuilder, table: { readonly own: (from: K, to: K) => string }) =>
  (from: K, to: K, max: number, message: string): void => {
    sheet.validate({ range: table.own(from, to), kind: 'decimal', min: 0, max, message });
  };

function eggsTable(pages: LivingPages, sheet: SheetBuilder): void {
  const { eggs, pairs, batches } = pages.tables;
  eggs.headings(sheet, 44);
  pages.rows.batches.forEach((_, i) => {
    const row = eggs.first + i;
    const here = (key: keyof typeof eggs.letters): string => eggs.here(key, row);
    const [all, low, high] = estimate(
      `AND(${here('grams')}>0,COUNT(${here('g1')}:${here('n3')})=6)`,
      `SPAWN.EGGS.BYWEIGHT(${here('grams')},${here('g1')}:${here('g3')},${here('n1')}:${here('n3')})`,
    );
    const [fertilised] = estimate(
      `COUNT(${here('looked')}:${here('alive')})=2`,
      `SPAWN.FERTILISATION.SHARE(${here('alive')},${here('looked')})`,
    );
    eggs.line(sheet, row, {
      batch: `=${batches.there('batch', batches.first + i)}`,
      grams: `=SUMIFS(${pairs.range('grams')},${pairs.range('batch')},${here('batch')})`,
      eggs: all,
      low,
      high,
      fertilised,
    });
  });
  const guard = guardOf(sheet, eggs);
  guard('ph', 'ph', 14, 'pH of its vats once aired, after the reading has stopped moving.');
  guard('alkalinity', 'alkalinity', 20, 'Alkalinity in meq/L; empty if not measured.');
  guard('g1', 'g3', 100, 'Weight of a small sample of eggs in grams, blotted as the whole was.');
  guard('n1', 'n3', 1e6, 'Eggs counted in that sample.');
  guard('looked', 'alive', 1e5, 'Eggs looked at, and of these alive: clear is alive, white is dead.');
}

function fryTable(pages: LivingPages, sheet: SheetBuilder): void {
  const { fry, batches } = pages.tables;
  sheet.put(`B${fry.head - 1}`, 'Larvae and fry', 'section');
  fry.headings(sheet, 44);
  pages.rows.batches.forEach((batch, i) => {
    const row = fry.first + i;
    const here = (key: keyof typeof fry.letters): string => fry.here(key, row);
    const [larvae, low, high] = estimate(
      `COUNT(${here('litres')}:${here('l3')})=7`,
      `SPAWN.LARVAE.BYVOLUME(${here('litres')},${here('ml1')}:${here('ml3')},${here('l1')}:${here('l3')})`,
    );
    fry.line(sheet, row, {
      batch: `=${batches.there('batch', batches.first + i)}`,
      hatched: lastCount(batch, 'larvae') ?? {},
      larvae: lastCount(batch, 'feeding') ?? larvae,
      low,
      high,
      weaned: lastCount(batch, 'weaned') ?? {},
      weight: batch.weighed?.grams ?? {},
      weighed: batch.weighed?.on ?? {},
    });
  });
  const guard = guardOf(sheet, fry);
  guard('litres', 'ml3', 1e6, 'Water the larvae are in (L), and samples of it (mL).');
  guard('l1', 'l3', 1e6, 'Larvae counted in that sample.');
  guard('hatched', 'hatched', 1e8, 'Counted or well estimated; empty until then.');
  guard('weaned', 'weaned', 1e8, 'Counted or well estimated; empty until then.');
  guard('weight', 'weight', 100, 'Weight of one fish in grams: weigh 100 together, divide by 100.');
}

function logTable(pages: LivingPages, sheet: SheetBuilder): void {
  const { log } = pages.tables;
  sheet.put(`B${log.head - 1}`, 'As it happens: dead, sold, lost, released, counted', 'section');
  log.headings(sheet, 30);
  // A log that was typed is carried line by line as it stood; the batches' own counts come from it.
  const lines = (pages.typed ? [] : pages.rows.batches).flatMap((batch) => [
    ...batch.events.map((event) => ({ ...event, batch: batch.name, what: event.kind, stage: undefined })),
    ...batch.counts.map((count) => ({
      at: count.at,
      number: count.number,
      batch: batch.name,
      what: 'counted' as const,
      stage: count.stage,
      order: undefined,
      paid: undefined,
      note: undefined,
    })),
  ]);
  lines.sort((a, b) => a.at - b.at);
  for (let i = 0; i < log.lines; i++) {
    const entry = lines[i];
    log.line(
      sheet,
      log.first + i,
      entry
        ? {
            at: entry.at,
            batch: entry.batch,
            what: entry.what,
            number: entry.number,
            ...(entry.stage ? { stage: entry.stage } : {}),
            ...(entry.order === undefined ? {} : { order: entry.order }),
            ...(entry.paid === undefined ? {} : { paid: entry.paid }),
            ...(entry.note === undefined ? {} : { note: entry.note }),
          }
        : {},
    );
  }
  sheet
    .validate({ range: log.own('what'), kind: 'list', items: LOG_KINDS, message: 'What happened.' })
    .validate({
      range: log.own('stage'),
      kind: 'list',
      items: COUNT_STAGES,
      message: 'Of what, where something was counted; fish are those alive.',
    })
    .validate({ range: log.own('number'), kind: 'decimal', min: 0, max: 5e7, message: 'How many.' });
}

/** Open lines of the log that print, for writing by hand. */
const PRINTED_LINES = 10;
const usedLines = (pages: LivingPages): number =>
  pages.rows.batches.reduce((sum, b) => sum + b.events.length + b.counts.length, 0);

/** Everything that is counted: eggs, larvae, fry, deaths and sales. */
export function countsSheet(pages: LivingPages): SheetModel {
  const { eggs, log } = pages.tables;
  const sheet = pages.sheet(
    'counts',
    'Counts',
    `Samples and counts; what is empty keeps what was planned. ${RANGE}`,
    {
      widths: [2, ...eggs.widths],
      tab: '0B4F2A',
      freeze: { rows: HEAD, columns: 2 },
      print: { titleRows: [HEAD, HEAD], area: `A1:Q${log.first + usedLines(pages) + PRINTED_LINES}` },
    },
  );
  eggsTable(pages, sheet);
  fryTable(pages, sheet);
  logTable(pages, sheet);
  return sheet.build();
}
