import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { readXlsx } from 'hucre/xlsx';
import type { Cell } from '../../../shared/base/values';
import { isError, isGrid } from '../../../shared/base/values';
import { evaluate } from '../../../shared/catalogue/calculation';
import { writeXlsx } from '../../../shared/files';
import type { CellModel } from '../../../shared/sheet/workbook/model';
import { parseArea } from '../../../shared/sheet/formula/address';
import { bookOf } from '../../files/support/support';
import { hasSoffice, startJudge } from '../../files/share/support/soffice';
import { CELLS, FORMULAS as PLAIN, TURNING } from './formulas';

/**
 * What LibreOffice Calc 7.4 answers, kept in tests/data/formulas_libreoffice.tsv, so that this needs none. Run with
 * WITNESS=write to ask it anew. Errors are compared as errors: the two name some of them differently.
 */

const FORMULAS: readonly string[] = [...new Set([...PLAIN, ...TURNING])];
const FILE = join(__dirname, '..', '..', 'data', 'formulas_libreoffice.tsv');
/** Where Excel differs from LibreOffice, from Excel's own pages or its known answers (from memory). */
const EXCEL: Readonly<Record<string, string>> = {
  '0^0': '#NUM!',
  '1="1"': 'FALSE',
  '(-8)^(1/3)': '#NUM!',
  // Truth values come after texts, are no numbers in a range, and join as words.
  '"a"<TRUE': 'TRUE',
  'TRUE&""': 'TRUE',
  'CONCATENATE("a",1,TRUE)': 'a1TRUE',
  'SUM(C1:C5)': '45008.25',
  'SUM("3",TRUE,4)': '8',
  'SUM(A1,B4,"3")': '7',
  'COUNT(A1:C5)': '8',
  'SUMIF(A1:A5,">0",C1:C5)': '45007.75',
  'DATE(10000,1,1)': '#NUM!',
};

/** The reader turns numbers with a date format into days. */
const serialOf = (day: Date): number => {
  const serial = day.getTime() / 86_400_000 + 25_569;
  return serial < 60 ? serial - 1 : serial;
};

const written = (value: unknown): string =>
  value instanceof Date
    ? written(serialOf(value))
    : typeof value === 'number'
      ? String(Number(value.toPrecision(12)))
      : typeof value === 'boolean'
        ? String(value).toUpperCase()
        : value === null || value === undefined
          ? ''
          : String(value);
const ours = (formula: string): string => {
  const cells = (text: string): Cell[][] => {
    const area = parseArea(text);
    if (!area) return [[{ error: '#REF!' }]];
    return Array.from({ length: area.bottom - area.top + 1 }, (_, r) =>
      Array.from({ length: area.right - area.left + 1 }, (__, c) => {
        const address = String.fromCharCode(65 + area.left + c) + String(area.top + r + 1);
        const value = CELLS[address];
        return value === undefined || value === '' ? null : value;
      }),
    );
  };
  const answer = evaluate(`=${formula}`, {
    reference: (text) => {
      const grid = cells(text);
      return grid.length === 1 && grid[0]?.length === 1 ? (grid[0][0] ?? null) : grid;
    },
  });
  const cell = isGrid(answer) ? (answer[0]?.[0] ?? null) : answer;
  return isError(cell) ? cell.error : written(cell === null ? 0 : cell);
};

async function asked(): Promise<Map<string, string>> {
  const cells: Record<string, CellModel> = {};
  for (const [address, value] of Object.entries(CELLS)) if (value !== '') cells[address] = { value };
  FORMULAS.forEach((formula, i) => (cells[`H${i + 1}`] = { formula: `=${formula}` }));
  const judge = startJudge(true);
  try {
    const book = await readXlsx(judge.save(writeXlsx(bookOf(cells))));
    const rows = book.sheets[0]?.rows ?? [];
    return new Map(FORMULAS.map((formula, i) => [formula, written(rows[i]?.[7])]));
  } finally {
    judge.close();
  }
}

const kept = (): Map<string, string> =>
  new Map(
    readFileSync(FILE, 'utf8')
      .split('\n')
      .filter((line) => line.includes('\t') && !line.startsWith('#\t'))
      .map((line) => {
        const [formula = '', answer = ''] = line.split('\t');
        return [formula, answer];
      }),
  );

const same = (a: string, b: string): boolean =>
  a === b ||
  (a.startsWith('#') && b.startsWith('#')) ||
  (a !== '' && b !== '' && Math.abs(Number(a) - Number(b)) <= 1e-9 * Math.max(1, Math.abs(Number(b))));

if (process.env['WITNESS'] === 'write')
  test('asks LibreOffice', async () => {
    const answers = await asked();
    writeFileSync(FILE, [...answers].map(([formula, answer]) => `${formula}\t${answer}\n`).join(''));
  }, 240_000);

(existsSync(FILE) ? test : test.skip)('every formula answers as the witness does', () => {
  const answers = kept();
  expect(FORMULAS.length).toBeGreaterThanOrEqual(300);
  expect([...answers.keys()]).toEqual([...new Set(FORMULAS)]);
  const differing = FORMULAS.map(
    (formula) => [formula, ours(formula), EXCEL[formula] ?? answers.get(formula) ?? ''] as const,
  ).filter(([, mine, theirs]) => !same(mine, theirs));
  expect(differing).toEqual([]);
});

(hasSoffice ? test : test.skip)(
  'the witness still says what was kept',
  async () => {
    const now = await asked();
    expect([...kept()].filter(([formula, answer]) => !same(answer, now.get(formula) ?? ''))).toEqual([]);
  },
  240_000,
);
