import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { auditSheets, sheetFromRange } from '../../shared/records';
import type { AuditReport } from '../../shared/records';
import { isError } from '../../shared/base/values';
import type { Cell } from '../../shared/base/values';
import { isDateFormat } from '../../shared/files/read/styles';
import { createExecutor, createOffice, installOffice } from '../../src/officeStandIn';
import type { StandInArea, StandInBook, CellReads } from '../../src/officeStandIn/book';
import { createMemoryBook } from '../../src/officeStandIn/memoryBook';
import type { Progress } from '../../taskpane/host/port';
import { readCells } from '../../taskpane/host/reading/records';
import { inShares } from '../../taskpane/pane/slices';
import { partsOf } from '../records/support/file';
import { largeCells } from './audit';
import type { Timing } from './catalogue';

/**
 * Records in an open workbook: read through the pane's own host code and the local sheet's object model, then
 * checked in slices as the pane does.
 */

const MEGABYTE = 1e6;
const RUNS = 3;
const DATES = 'yyyy-mm-dd hh:mm';

/**
 * The sheet as rows of values, formulas and formats; plain, so that a file can carry it to a process of its
 * own.
 */
export interface OpenRows {
  readonly values: Cell[][];
  readonly formulas: Cell[][];
  readonly formats: string[][];
}
export function openRows(): OpenRows {
  const cells = largeCells().map((row) => row.map(partsOf));
  return {
    values: cells.map((row) => row.map(({ value }) => value)),
    formulas: cells.map((row) =>
      row.map(({ value, formula }) => formula ?? (isError(value) ? value.error : value)),
    ),
    formats: cells.map((row) => row.map(({ isDate }) => (isDate ? DATES : 'General'))),
  };
}

/**
 * A book whose first sheet holds these rows. The book in memory keeps an object for each cell, which would be
 * measured too.
 */
export function bookOf({ values, formulas, formats }: OpenRows): StandInBook {
  const rows = { values, formulas, formats, text: [] } satisfies CellReads;
  return {
    ...createMemoryBook(),
    usedArea: (): StandInArea => ({
      row: 0,
      column: 0,
      rows: values.length,
      columns: values[0]?.length ?? 0,
    }),
    read: <K extends keyof CellReads>(_sheet: string, area: StandInArea, what: K): CellReads[K] =>
      rows[what]
        .slice(area.row, area.row + area.rows)
        .map((row) => row.slice(area.column, area.column + area.columns)) as CellReads[K],
  };
}

export function connect(book: StandInBook): void {
  const executor = createExecutor(book);
  const globals = createOffice({ executor });
  installOffice(globals);
  Object.assign(globalThis, { Excel: globals.Excel });
}

/** Reads the open sheet and checks it, as the command of the pane does; undefined when it was stopped. */
export async function checkOpenSheet(
  tell: (progress: Progress) => void,
  isStopped: () => boolean,
): Promise<AuditReport | undefined> {
  const reading = await readCells('sheet', tell, isStopped);
  if (!reading) return undefined;
  return inShares(
    auditSheets(
      reading.sheets.map((range) => sheetFromRange(range, isDateFormat)),
      {},
    ),
    { label: 'Checking the records', from: 50, to: 100 },
    tell,
    isStopped,
  );
}

export interface OpenTiming {
  readonly milliseconds: number;
  readonly processorMilliseconds: number;
  readonly readMilliseconds: number;
  readonly peakMegabytes: number;
  readonly emptyMegabytes: number;
  readonly records: number;
  readonly columns: number;
  readonly reports: number;
  readonly longestPause: number;
}

/** Best time of a few, highest memory, and the longest the pane would have had to wait for its turn. */
export async function timeOpen(rows: OpenRows): Promise<OpenTiming> {
  connect(bookOf(rows));
  const emptyMegabytes = process.memoryUsage().rss / MEGABYTE;
  let [best, processor, reading, peak, records, columns, reports, pause] = [
    Infinity,
    Infinity,
    Infinity,
    0,
    0,
    0,
    0,
    Infinity,
  ];
  for (let run = 0; run < RUNS; run++) {
    // What the last run left behind is not this one's.
    globalThis.gc?.();
    const [from, spentFrom] = [performance.now(), process.cpuUsage()];
    let [read, last, longest] = [0, from, 0];
    reports = 0;
    const report = await checkOpenSheet(
      ({ label }) => {
        const now = performance.now();
        [longest, last] = [Math.max(longest, now - last), now];
        if (label.startsWith('Checking')) read ||= now - from;
        reports++;
        peak = Math.max(peak, process.memoryUsage().rss);
      },
      () => false,
    );
    if (!report) throw new Error('It was stopped.');
    const spent = process.cpuUsage(spentFrom);
    [best, reading, pause] = [
      Math.min(best, performance.now() - from),
      Math.min(reading, read),
      Math.min(pause, longest),
    ];
    processor = Math.min(processor, (spent.user + spent.system) / 1000);
    records = report.records;
    columns = report.tables[0]?.mapping.filter(({ field }) => field !== undefined).length ?? 0;
  }
  return {
    milliseconds: best,
    processorMilliseconds: processor,
    readMilliseconds: reading,
    peakMegabytes: peak / MEGABYTE,
    emptyMegabytes,
    records,
    columns,
    reports,
    longestPause: pause,
  };
}

/** In a process of its own; the memory holds the workbook too, which in Excel is Excel's. */
export function openTimings(): Timing[] {
  const folder = mkdtempSync(join(tmpdir(), 'spawnbook-bench-'));
  const run = (what: string): string =>
    execFileSync(
      process.execPath,
      ['--expose-gc', 'src/build/run.mjs', 'tests/bench/auditOpenOnce.ts', what, join(folder, 'rows.json')],
      { encoding: 'utf8' },
    );
  run('make');
  const timing = JSON.parse(run('time')) as OpenTiming;
  rmSync(folder, { recursive: true });
  return [
    {
      name: 'records check of 50,000 rows × 20 columns, open workbook',
      value: timing.processorMilliseconds,
      unit: 'ms',
      limit: 3000,
    },
    {
      name: 'memory while checking that, workbook included',
      value: timing.peakMegabytes,
      unit: 'MB',
      limit: 400,
    },
  ];
}
