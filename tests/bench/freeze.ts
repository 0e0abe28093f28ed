import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { columnLetters } from '../../shared/sheet/formula/address';
import { simpleBook } from '../files/share/support/parts';
import type { Timing } from './catalogue';
import { freezeBrowserTimings } from './freezeBrowser';

/**
 * Freezing a workbook of 50,000 calls among a million cells, beside a general library that loads and saves
 * the same file.
 */

/** Work that no change of ours makes faster or slower: how fast the machine was while all this was measured. */
export const WITNESS = 'openpyxl loads and saves that file, processor time: the pace of this machine';

const ROWS = 50_000;
const NUMBERS = 18;

/** Numbers in A to R, a call in S, a native formula on it in T. */
function millionCells(): Uint8Array {
  const rows = Array.from({ length: ROWS }, (_, i) => {
    const r = i + 2;
    const numbers = Array.from(
      { length: NUMBERS },
      (__, c) =>
        `<c r="${columnLetters(c)}${r}"><v>${c === 0 ? 6 + (i % 300) / 100 : c === 1 ? 20 + (i % 90) / 10 : (i * 37 + c * 101) % 9973}</v></c>`,
    ).join('');
    const share = ((i * 7919) % 100_000) / 1e6;
    return `<row r="${r}">${numbers}<c r="S${r}" cm="1"><f t="array" ref="S${r}">_xldudf_SPAWN_AMMONIA_SHARE(A${r},B${r})</f><v>${share}</v></c><c r="T${r}"><f>S${r}*100</f><v>${share * 100}</v></c></row>`;
  }).join('');
  return simpleBook({
    sheets: {
      Log: `<?xml version="1.0" encoding="UTF-8"?>\n<worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData>${rows}</sheetData></worksheet>`,
    },
  });
}

/**
 * What a general library costs that only loads and saves; undefined where it is not installed. Its copy also
 * loses the cached values.
 */
const OPENPYXL =
  'import ' +
  'sys,time,resource,openpyxl\nt=time.process_time()\nopenpyxl.load_workbook(sys.argv[1]).save(sys.argv[2])\nprint(int((time.process_time()-t)*1000), ' +
  'resource.getrusage(resource.RUSAGE_SELF).ru_maxrss/1024)';
function openpyxl(from: string, to: string): { readonly ms: number; readonly megabytes: number } | undefined {
  for (const python of ['python3', '/usr/bin/python3']) {
    try {
      const [ms = NaN, megabytes = NaN] = execFileSync(python, ['-c', OPENPYXL, from, to], {
        encoding: 'utf8',
        stdio: ['ignore', 'pipe', 'ignore'],
      })
        .trim()
        .split(' ')
        .map(Number);
      return { ms, megabytes };
    } catch {
      continue;
    }
  }
  return undefined;
}

interface Once {
  readonly ms: number;
  readonly processorMs: number;
  readonly megabytes: number;
  readonly frozen: number;
  readonly verifyMs: number;
  readonly matches: boolean;
}

export async function freezeTimings(): Promise<Timing[]> {
  const folder = mkdtempSync(join(tmpdir(), 'spawnbook-bench-'));
  try {
    const file = join(folder, 'in.xlsx');
    const bytes = millionCells();
    writeFileSync(file, bytes);
    const run = (...more: readonly string[]): Once =>
      JSON.parse(
        execFileSync(
          process.execPath,
          ['src/build/run.mjs', 'tests/bench/freezeOnce.ts', file, join(folder, 'out.xlsx'), ...more],
          { encoding: 'utf8' },
        ),
      ) as Once;
    // The best of three: a machine that is disturbed for a second would be taken for a slower program.
    const once = [run(), run(), run()].reduce((best, one) =>
      one.processorMs < best.processorMs ? one : best,
    );
    // A column of 50,000 numbers that nothing reads: emptied, and the copy searched for every one of them.
    const leaving = run('Log!C');
    if (once.frozen !== ROWS || !once.matches) throw new Error('the copy is not what it should be');
    const other = openpyxl(file, join(folder, 'other.xlsx'));
    if (!other) console.log('openpyxl (python3-openpyxl) is not installed here: no comparison with it');
    return [
      {
        name: 'freeze 50,000 calls in a million cells, processor time',
        value: once.processorMs / 1000,
        unit: 's',
        limit: 5,
        isForReadme: true,
      },
      { name: 'freeze, peak memory of the process', value: once.megabytes, unit: 'MB', limit: 400 },
      { name: 'verify that copy ÷ making it', value: once.verifyMs / once.ms, unit: '×', limit: 0.6 },
      {
        name: 'leave out a column of 50,000 cells and search the copy ÷ plain freeze, processor time',
        value: leaving.processorMs / once.processorMs,
        unit: '×',
        limit: 2.5,
      },
      { name: 'leave out, peak memory of the process', value: leaving.megabytes, unit: 'MB', limit: 550 },
      ...(other
        ? [
            {
              name: WITNESS,
              value: other.ms / 1000,
              unit: 's',
              isForReadme: true,
            },
            {
              name: 'freeze ÷ openpyxl load and save, processor time',
              value: once.processorMs / other.ms,
              unit: '×',
              limit: 0.2,
              isForReadme: true,
            },
            {
              name: 'freeze memory ÷ openpyxl memory',
              value: once.megabytes / other.megabytes,
              unit: '×',
              limit: 1,
            },
          ]
        : []),
      ...(await freezeBrowserTimings(bytes, ROWS, once.ms)),
    ];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
