import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Cell } from '../../../shared/base/values';
import { isError } from '../../../shared/base/values';
import { calculate } from '../../../shared/catalogue/calculation';
import { repairCalls } from '../../../shared/catalogue/sharing';
import { readXlsx, writeXlsx } from '../../../shared/files';
import type { CellModel, WorkbookModel } from '../../../shared/sheet/workbook/model';
import { readable } from '../../files/support/support';
import { chance } from '../../support/chance';

/**
 * Somebody else's record sheet, written by another program: a merged title, blanks, texts among numbers, dates
 * as text, a protected sheet. Ten formulas are typed beside it and copied down 2,000 rows. Every row answers or
 * says why not; nothing of the sheet changes on the way through a file, LibreOffice and back.
 */

const ROWS = 2000;
const FIRST = 4;
const folder = mkdtempSync(join(tmpdir(), 'spawnbook-someone-'));
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

const convert = (file: string, out: string): void => {
  execFileSync(
    'soffice',
    [
      '--headless',
      '--norestore',
      `-env:UserInstallation=${pathToFileURL(join(folder, 'profile')).href}`,
      '--convert-to',
      'xlsx',
      '--outdir',
      join(folder, out),
      join(folder, file),
    ],
    { stdio: 'pipe', timeout: 280_000 },
  );
};
const modelOf = (path: string): WorkbookModel =>
  readable(readXlsx(new Uint8Array(readFileSync(join(folder, path))))).model;

type Value = number | string | null;
const random = chance(20_261_128);
const draw = (low: number, high: number, digits: number): number =>
  Number((low + random() * (high - low)).toFixed(digits));
const oneOf = (values: readonly Value[], often: () => Value): Value =>
  random() < 0.08 ? (values[Math.floor(random() * values.length)] ?? null) : often();

/** Day, pH, °C, weight of a female, fish, weight of a fish, money. */
const lines = Array.from({ length: ROWS }, (_, i): readonly Value[] => [
  oneOf(['12/03/26', '3 April', null], () => 46_000 + i),
  oneOf(['acid', null, 61, 7.85], () => draw(4.4, 8.6, 1)),
  oneOf(['cold', null, 81, 4], () => draw(23, 30, 1)),
  oneOf(['1,4 kg', null, -1], () => draw(0.8, 2.6, 2)),
  oneOf(['many', null, 0], () => Math.round(draw(500, 30_000, 0))),
  oneOf(['?', null], () => draw(0.02, 8, 3)),
  oneOf(['paid', null], () => draw(10, 900, 2)),
]);

const FORMULAS: readonly ((row: number) => string)[] = [
  (r) => `=SPAWN.BUFFER.AIRED(600,B${r})`,
  (r) => `=SPAWN.AMMONIA.SHARE(B${r},C${r})`,
  (r) => `=SPAWN.HATCH.TIME(A${r},C${r})`,
  (r) => `=SPAWN.LATENCY.HOURS(C${r})`,
  (r) => `=SPAWN.FEEDING.START(A${r},C${r})`,
  (r) => `=SPAWN.OXYGEN.SATURATION(C${r})`,
  (r) => `=SPAWN.FEED.DAILY(E${r},F${r},0.1)`,
  (r) => `=SPAWN.HORMONE.VOLUME(D${r},0.5)`,
  (r) => `=SPAWN.COST.PERFISH(G${r},E${r})`,
  (r) => `=SPAWN.GROWTH.SGR(F${r},F${r}*2,7)`,
];
const COLUMNS = 'IJKLMNOPQR';

const escaped = (text: string): string => text.replace(/&/g, '&amp;').replace(/</g, '&lt;');
const flatCell = (value: Value): string =>
  value === null
    ? '<table:table-cell/>'
    : typeof value === 'number'
      ? `<table:table-cell office:value-type="float" office:value="${value}"/>`
      : `<table:table-cell office:value-type="string"><text:p>${escaped(value)}</text:p></table:table-cell>`;
const flatRow = (values: readonly Value[]): string =>
  `<table:table-row>${values.map(flatCell).join('')}</table:table-row>`;
/** OpenDocument 1.3, flat: the other program's own form. */
const flatBook = (): string => `<?xml version="1.0" encoding="UTF-8"?>
<office:document xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0" office:version="1.3" office:mimetype="application/vnd.oasis.opendocument.spreadsheet"><office:body><office:spreadsheet><table:table table:name="Records" table:protected="true">
<table:table-row><table:table-cell table:number-columns-spanned="7" office:value-type="string"><text:p>Records of the farm</text:p></table:table-cell><table:covered-table-cell table:number-columns-repeated="6"/></table:table-row>
<table:table-row/>
${flatRow(['Day', 'pH', 'Water °C', 'Female kg', 'Fish', 'Weight g', 'Spent'])}
${lines.map(flatRow).join('\n')}
</table:table></office:spreadsheet></office:body></office:document>`;

let theirs: WorkbookModel;
let ours: WorkbookModel;
beforeAll(() => {
  writeFileSync(join(folder, 'theirs.fods'), flatBook());
  convert('theirs.fods', '.');
  theirs = modelOf('theirs.xlsx');
  const [sheet] = theirs.sheets;
  if (!sheet) throw new Error('no sheet');
  const typed = Object.fromEntries(
    lines.flatMap((_, i) =>
      FORMULAS.map((formula, k): [string, CellModel] => [
        `${COLUMNS[k] ?? ''}${FIRST + i}`,
        { formula: formula(FIRST + i) },
      ]),
    ),
  );
  ours = calculate({ ...theirs, sheets: [{ ...sheet, cells: { ...sheet.cells, ...typed } }] }).model;
});

const cellsIn = (model: WorkbookModel): Readonly<Record<string, CellModel>> => model.sheets[0]?.cells ?? {};

test('what the other program wrote is read whole', () => {
  const cells = cellsIn(theirs);
  expect(cells.A1?.value).toBe('Records of the farm');
  expect(theirs.sheets[0]?.merges).toEqual(['A1:G1']);
  const wrong = lines.flatMap((line, i) =>
    line.flatMap((value, k) => {
      const got = cells[`${'ABCDEFG'[k] ?? ''}${FIRST + i}`]?.value ?? null;
      return got === value ? [] : [`row ${FIRST + i}: ${String(value)} read as ${JSON.stringify(got)}`];
    }),
  );
  expect(wrong).toEqual([]);
});

test('every row of ten columns answers with a number, or with an error that says a sentence', () => {
  const cells = cellsIn(ours);
  const answers = { numbers: 0, sentences: 0 };
  const dumb: string[] = [];
  for (const [k] of FORMULAS.entries())
    for (const [i] of lines.entries()) {
      const address = `${COLUMNS[k] ?? ''}${FIRST + i}`;
      const value = cells[address]?.value ?? null;
      if (typeof value === 'number' && Number.isFinite(value)) answers.numbers++;
      else if (isError(value) && /\.$/.test(value.message ?? '')) answers.sentences++;
      else dumb.push(`${address}: ${JSON.stringify(value)}`);
    }
  expect(dumb.slice(0, 5)).toEqual([]);
  expect(answers.numbers + answers.sentences).toBe(ROWS * FORMULAS.length);
  // About one cell in twelve cannot be used; most columns look at two.
  expect(answers.sentences / (ROWS * FORMULAS.length)).toBeGreaterThan(0.03);
  expect(answers.sentences / (ROWS * FORMULAS.length)).toBeLessThan(0.2);
});

test('a pH of 61 and water of 81 are errors of their cells alone, and say what was given', () => {
  const cells = cellsIn(ours);
  const rowsWith = (k: number, value: Value): number[] =>
    lines.flatMap((line, i) => (line[k] === value ? [FIRST + i] : []));
  for (const [column, k, given] of [
    ['I', 1, 61],
    ['L', 2, 81],
  ] as const) {
    const rows = rowsWith(k, given);
    expect(rows.length).toBeGreaterThan(5);
    for (const row of rows) {
      const value = cells[`${column}${row}`]?.value ?? null;
      expect(isError(value) ? value.message : value).toContain(String(given));
    }
  }
});

const isAlike = (value: Cell, wanted: Cell): boolean => {
  if (isError(wanted)) return isError(value);
  return typeof wanted === 'number' && typeof value === 'number'
    ? Math.abs(value - wanted) <= 1e-9 * Math.max(1, Math.abs(wanted))
    : value === wanted;
};

test('saved, opened in LibreOffice, saved there, opened again: the same cells, the same formulas, the same answers', () => {
  writeFileSync(join(folder, 'ours.xlsx'), writeXlsx(ours));
  const direct = cellsIn(modelOf('ours.xlsx'));
  convert('ours.xlsx', 'elsewhere');
  const mended = repairCalls(new Uint8Array(readFileSync(join(folder, 'elsewhere', 'ours.xlsx'))));
  if (mended.kind !== 'made') throw new Error(mended.sentence);
  const elsewhere = cellsIn(readable(readXlsx(mended.bytes)).model);
  const wrong: string[] = [];
  for (const [address, cell] of Object.entries(cellsIn(ours))) {
    const values = [direct[address]?.value ?? null, elsewhere[address]?.value ?? null];
    const wanted = cell.value ?? null;
    if (!values.every((value) => isAlike(value, wanted)))
      wrong.push(`${address}: ${JSON.stringify({ wanted, values })}`);
    if (cell.formula !== undefined && direct[address]?.formula !== cell.formula)
      wrong.push(`${address}: ${direct[address]?.formula ?? 'no formula'}`);
  }
  expect(wrong.slice(0, 8)).toEqual([]);
});
