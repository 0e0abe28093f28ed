import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { checkFile } from '../../shared/records';
import { makeFarm } from '../records/support/farm';
import { madeXlsx } from '../records/support/file';
import type { Made } from '../records/support/file';
import type { Timing } from './catalogue';

const ROWS = 50_000;
const RUNS = 3;
const MEGABYTE = 1e6;

/** A spawning book of 50,000 rows and 20 columns, one of them formulas. */
export function largeCells(): Made[][] {
  const [table] = makeFarm(77, ROWS).tables;
  if (!table) throw new Error('no table');
  const headings: Readonly<Record<string, string>> = {
    run: 'Run',
    date: 'Date',
    female: 'Female',
    femaleWeight: 'Female weight (kg)',
    hormoneDose: 'Dose (ml/kg)',
    hormoneVolume: 'Hormone (ml)',
    injected: 'Injected',
    temperature: 'Temp (°C)',
    stripped: 'Stripped',
    eggWeight: 'Egg weight (g)',
    eggsPerGram: 'Eggs per gram',
    eggs: 'Eggs',
    sampleSize: 'Eggs checked',
    sampleGood: 'Good eggs',
    fertilisedShare: 'Fert %',
    fertilised: 'Fertilised eggs',
    hatched: 'Larvae',
    hatchShare: 'Hatch %',
    fry: 'Fry',
    survival: 'Survival %',
  };
  const names = table.fields.filter((name) => name in headings);
  // Dates run on for 500 years at one row a day or two: they are folded into one century.
  const moment = (value: number): number => 36_526 + ((value - 45_900) * 30_000) / (4 * ROWS);
  const cells: Made[][] = table.rows.map((row, r) =>
    names.map((name): Made => {
      const value = row[name] ?? null;
      if (typeof value !== 'number') return value;
      if (name === 'date') return { value: Math.floor(moment(value)), isDate: true };
      if (name === 'injected' || name === 'stripped') {
        const [injected, stripped] = [row.injected, row.stripped];
        const start = Math.floor(moment(typeof row.date === 'number' ? row.date : value)) + 0.8;
        return {
          value:
            name === 'injected' || typeof injected !== 'number' || typeof stripped !== 'number'
              ? start
              : start + stripped - injected,
          isDate: true,
        };
      }
      return name === 'eggs' ? { value, formula: `=ROUND(J${r + 2}*K${r + 2},0)` } : value;
    }),
  );
  return [names.map((name) => headings[name] ?? name), ...cells];
}
export const largeBook = (): Uint8Array => madeXlsx([{ name: 'Spawning', cells: largeCells() }], 6);

export interface AuditTiming {
  readonly milliseconds: number;
  readonly processorMilliseconds: number;
  readonly peakMegabytes: number;
  readonly records: number;
  readonly found: number;
  readonly reports: number;
  readonly columns: number;
}

/** Reads and checks the file several times; the best time counts, and the highest memory. */
export function timeAudit(bytes: Uint8Array): AuditTiming {
  let [best, processor, peak, records, found, reports, columns] = [Infinity, Infinity, 0, 0, 0, 0, 0];
  for (let run = 0; run < RUNS; run++) {
    const [from, spentFrom] = [performance.now(), process.cpuUsage()];
    reports = 0;
    const checked = checkFile(bytes, 'book.xlsx', {}, () => {
      reports++;
      peak = Math.max(peak, process.memoryUsage().rss);
      return true;
    });
    const spent = process.cpuUsage(spentFrom);
    best = Math.min(best, performance.now() - from);
    processor = Math.min(processor, (spent.user + spent.system) / 1000);
    if (!('report' in checked)) throw new Error(JSON.stringify(checked));
    records = checked.report.records;
    found = checked.report.found;
    columns = checked.report.tables[0]?.mapping.filter(({ field }) => field !== undefined).length ?? 0;
  }
  return {
    milliseconds: best,
    processorMilliseconds: processor,
    peakMegabytes: peak / MEGABYTE,
    records,
    found,
    reports,
    columns,
  };
}

/** In a process of its own, so that the memory is that of the check. */
export function auditTimings(): Timing[] {
  const folder = mkdtempSync(join(tmpdir(), 'spawnbook-bench-'));
  const run = (what: string): string =>
    execFileSync(
      process.execPath,
      ['src/build/run.mjs', 'tests/bench/auditOnce.ts', what, join(folder, 'book.xlsx')],
      { encoding: 'utf8' },
    );
  run('make');
  const timing = JSON.parse(run('time')) as AuditTiming;
  rmSync(folder, { recursive: true });
  return [
    {
      name: 'records check of 50,000 rows × 20 columns, from file',
      value: timing.processorMilliseconds,
      unit: 'ms',
      limit: 2000,
      isForReadme: true,
    },
    { name: 'memory while checking it', value: timing.peakMegabytes, unit: 'MB', limit: 400 },
  ];
}
