// Long: one rule with its sentences; it would not read better in pieces.
import type { SheetCells } from '../../read/sheetCells';
import { formulaAt, valueAt } from '../../read/sheetCells';
import type { CellError } from '../../../base/values';
import { isError } from '../../../base/values';
import type { RecordTable, Spot } from '../../table';
import type { BookRule, ExampleCell, TableRule, TableVerdict } from '../rule';
import { plain } from '../show';

/** Fewer formulas than this are no column of formulas. */
const LEAST = 5;
const MOST_SHARE = 0.7;
const LONGEST_SHOWN = 60;
const short = (formula: string): string =>
  formula.length > LONGEST_SHOWN ? `${formula.slice(0, LONGEST_SHOWN)}…` : formula;

const [QUOTE, LONGEST_ROW] = [34, 7];
const isDigit = (code: number): boolean => code >= 48 && code <= 57;
const isCapital = (code: number): boolean => code >= 65 && code <= 90;
/** After the digits of a row: what makes them part of a name, a number or a call. */
const goesOn = (code: number): boolean =>
  isCapital(code) || (code >= 97 && code <= 122) || code === 40 || code === 46 || code === 95;
/** The text of a formula between the rows that move along, and how far off these are. */
interface Form {
  readonly pieces: readonly string[];
  readonly steps: readonly number[];
  readonly text: string;
}
/** Distance of another row from that of the formula, counted from 0. */
type Distance = (to: number) => number;
/**
 * A formula as it reads from its own row: rows that move along become distances. Read letter by letter, because long
 * books have one in every line.
 */
function formOf(formula: string, distance: Distance): Form {
  const [pieces, steps]: [string[], number[]] = [[], []];
  let [copied, i] = [0, 0];
  while (i < formula.length) {
    const code = formula.charCodeAt(i);
    if (code === QUOTE) {
      const close = formula.indexOf('"', i + 1);
      i = close < 0 ? i + 1 : close + 1;
      continue;
    }
    if (!isDigit(code)) {
      i++;
      continue;
    }
    const from = i;
    while (i < formula.length && isDigit(formula.charCodeAt(i))) i++;
    // A sign of money in front keeps the row where it is: it does not move along.
    const moves = from > 0 && isCapital(formula.charCodeAt(from - 1));
    if (!moves || i - from > LONGEST_ROW || goesOn(formula.charCodeAt(i))) continue;
    pieces.push(formula.slice(copied, from));
    steps.push(distance(Number(formula.slice(from, i)) - 1));
    copied = i;
  }
  pieces.push(formula.slice(copied));
  return {
    pieces,
    steps,
    text: pieces.map((piece, k) => (k === 0 ? piece : `[${steps[k - 1] ?? 0}]${piece}`)).join(''),
  };
}
/** Does the formula read like another one? Most of a column do, and then no text is made. */
function isOfForm(formula: string, { pieces, steps }: Form, distance: Distance): boolean {
  let i = 0;
  for (let k = 0; k < pieces.length; k++) {
    if (k > 0) {
      let row = 0;
      const from = i;
      for (; isDigit(formula.charCodeAt(i)); i++) row = row * 10 + formula.charCodeAt(i) - 48;
      if (i === from || i - from > LONGEST_ROW || distance(row - 1) !== steps[k - 1]) return false;
    }
    const piece = pieces[k] ?? '';
    if (!formula.startsWith(piece, i)) return false;
    i += piece.length;
  }
  return i === formula.length;
}
export const relativeTo = (
  formula: string,
  row: number,
  /** Distance of another row, where rows between that hold no record do not count. */
  distance: Distance = (to) => to - row,
): string => formOf(formula, distance).text;

interface FormulaColumn {
  readonly sheet: SheetCells;
  readonly column: number;
  readonly header: string;
  readonly form: string;
  readonly example: string;
  readonly count: number;
  readonly odd: readonly { readonly position: number; readonly formula: string | undefined }[];
}

interface FormulaCell {
  readonly position: number;
  readonly formula: string | undefined;
  readonly form: string;
}

/** Cells of the body that hold a formula or a typed number. */
function formulaCells(sheet: SheetCells, column: number, body: readonly number[]): FormulaCell[] {
  const formulas = sheet.columns[column]?.formulas ?? [];
  const records = recordsByRow(sheet, body);
  const cells: FormulaCell[] = [];
  const stored = sheet.columns[column];
  let before: Form | undefined;
  for (let record = 0; record < body.length; record++) {
    const position = body[record] ?? 0;
    const formula = formulas[position];
    if (formula === undefined) {
      if (!Number.isNaN(stored?.numberAt(position) ?? NaN)) cells.push({ position, formula, form: '' });
      continue;
    }
    const row = sheet.rows[position] ?? 0;
    const distance = (to: number): number => {
      const other = records[to] ?? NONE;
      return other === NONE ? to - row : other - record;
    };
    if (!before || !isOfForm(formula, before, distance)) before = formOf(formula, distance);
    cells.push({ position, formula, form: before.text });
  }
  return cells;
}
const NONE = -1;
/** The record that stands in each row of the sheet. */
function recordsByRow(sheet: SheetCells, body: readonly number[]): Int32Array {
  const records = new Int32Array((sheet.rows.at(-1) ?? 0) + 1).fill(NONE);
  for (const [record, position] of body.entries()) records[sheet.rows[position] ?? 0] = record;
  return records;
}

function formulaColumn(
  sheet: SheetCells,
  column: number,
  header: string,
  body: readonly number[],
): FormulaColumn | undefined {
  if ((sheet.columns[column]?.formulas.length ?? 0) === 0) return undefined;
  const cells = formulaCells(sheet, column, body);
  const forms = new Map<string, number>();
  for (const { formula, form } of cells)
    if (formula !== undefined) forms.set(form, (forms.get(form) ?? 0) + 1);
  const [form, count] = [...forms].sort((x, y) => y[1] - x[1])[0] ?? ['', 0];
  if (count < LEAST || count < MOST_SHARE * cells.length) return undefined;
  return {
    sheet,
    column,
    header,
    form,
    count,
    example: cells.find((cell) => cell.form === form)?.formula ?? '',
    // The first line begins what the others go on with.
    odd: cells.filter((cell, i) => cell.form !== form && !(i === 0 && /\[-1\]/.test(form))),
  };
}

/** Two rules ask for the same columns. */
const known = new WeakMap<RecordTable, readonly FormulaColumn[]>();
function columnsOf(table: RecordTable): readonly FormulaColumn[] {
  const { rows } = table;
  let found = known.get(table);
  if (!found) {
    found = rows
      ? rows.columns.flatMap(
          ({ column, header }) => formulaColumn(rows.sheet, column, header, rows.body) ?? [],
        )
      : [];
    known.set(table, found);
  }
  return found;
}

const formulaVerdicts = (table: RecordTable, isTyped: boolean): readonly TableVerdict[] | string => {
  const columns = columnsOf(table);
  if (columns.length === 0) return `no column with ${LEAST} formulas of one form`;
  return columns.flatMap(({ sheet, column, header, example, count, odd }) =>
    odd
      .filter(({ formula }) => (formula === undefined) === isTyped)
      .map(({ position, formula }): TableVerdict => {
        const spot: Spot = { sheet, position, column };
        const value = valueAt(sheet, position, column);
        return isTyped
          ? {
              spot,
              seen: typeof value === 'number' ? plain(value, 6) : String(value),
              expected: short(example),
              sentence: `A number is typed over the formula of the column "${header}"; its ${count} other rows have ${short(example)}.`,
            }
          : {
              spot,
              seen: short(formula ?? ''),
              expected: short(example),
              sentence: `The formula differs from the ${count} others of the column "${header}", which read like ${short(example)}.`,
            };
      }),
  );
};

/** A call that lost its add-in: a link to another workbook stands in front of it. */
const LINKED = /!\s{0,9}(?:_xldudf_)?SPAWN[._]/gi;
/** What stands in front of a link is a path and a sheet's name; Excel takes no longer formula. */
const LONGEST_LINK = 300;
const LONGEST_FORMULA = 8192;
const JOINS = /[!()+*,;=]/;
const NAMES_FILE = /[\w.\\:-]\.xl\w/i;

/** Does the text end with the name of a file: [2]Sheet, 'C:\\a b.xlsx', farm.xlsx? Read from its end, once. */
function endsWithFile(text: string): boolean {
  let from = text.length;
  while (from > 0 && !JOINS.test(text[from - 1] ?? '')) from--;
  const isPaired = (open: string, close: string): boolean => {
    const end = text.lastIndexOf(close);
    return end >= from && text.lastIndexOf(open, end - 1) >= 0 && text[end - 1] !== open;
  };
  return isPaired('[', ']') || isPaired("'", "'") || NAMES_FILE.test(text.slice(from));
}

function isLinked(formula: string): boolean {
  // A link has this sign; most formulas read their own sheet.
  if (!formula.includes('!') || formula.length > LONGEST_FORMULA) return false;
  for (const { index } of formula.matchAll(LINKED))
    if (endsWithFile(formula.slice(Math.max(0, index - LONGEST_LINK), index))) return true;
  return false;
}
const OWN_CALL = /SPAWN[._]/i;

function eachError(sheets: readonly SheetCells[], visit: (spot: Spot, value: CellError) => void): void {
  for (const sheet of sheets)
    for (const [column, cells] of sheet.columns.entries())
      cells?.eachOther((value, position) => {
        if (isError(value)) visit({ sheet, position, column }, value);
      });
}
function eachFormula(sheets: readonly SheetCells[], visit: (spot: Spot, formula: string) => void): void {
  for (const sheet of sheets)
    for (const [column, cells] of sheet.columns.entries())
      for (const [position, formula] of cells?.formulas.entries() ?? [])
        if (formula !== undefined) visit({ sheet, position, column }, formula);
}

function errors(_: unknown, sheets: readonly SheetCells[]): readonly TableVerdict[] {
  const found: TableVerdict[] = [];
  eachError(sheets, (spot, value) => {
    const formula = formulaAt(spot.sheet, spot.position, spot.column);
    // NA() is written on purpose: charts leave such a point out.
    if (value.error === '#N/A' && /\bNA\(\)/.test(formula ?? '')) return;
    const isOwn = formula !== undefined && OWN_CALL.test(formula);
    found.push({
      spot,
      seen: value.error,
      expected: 'a value',
      sentence: isOwn
        ? `A Spawnbook formula shows ${value.error}: open the pane and use Repair, or mend what it reads.`
        : `The cell shows ${value.error}${formula === undefined ? '' : ` from ${short(formula)}`}; everything worked out from it fails too.`,
    });
  });
  return found;
}

function links(_: unknown, sheets: readonly SheetCells[]): readonly TableVerdict[] {
  const found: TableVerdict[] = [];
  eachFormula(sheets, (spot, formula) => {
    if (!isLinked(formula)) return;
    found.push({
      spot,
      seen: short(formula),
      expected: 'the function without a link',
      sentence: `The formula calls Spawnbook through a link to another file (${short(formula)}): it will not calculate until Repair takes the link out.`,
    });
  });
  return found;
}

const HEAD = ['Run', 'Egg weight (g)', 'Eggs per gram', 'Eggs'] as const;
const row = (i: number, eggs?: ExampleCell): readonly ExampleCell[] => [
  `R${i}`,
  120 + i,
  650 + 3 * i,
  eggs ?? [(120 + i) * (650 + 3 * i), `=B${i + 1}*C${i + 1}`],
];
const rowsWith = (odd: number, cell: ExampleCell): readonly (readonly ExampleCell[])[] => [
  HEAD,
  ...Array.from({ length: 9 }, (_, i) => row(i + 1, i + 1 === odd ? cell : undefined)),
];
const clean = { sheets: { Runs: rowsWith(0, null) }, because: 'One formula all the way down.' } as const;

export const formulaTableRules: readonly TableRule[] = [
  {
    id: 'FORMULA.TYPED',
    scope: 'table',
    severity: 'unlikely',
    title: 'A number typed over a formula',
    needs: [[]],
    check: (table) => formulaVerdicts(table, true),
    checks: 'Numbers in a column in which at least 70 % of the cells hold one formula.',
    why: 'It does not follow when the numbers before it change, and nobody sees that.',
    sources: ['PRACTICE'],
    examples: [
      {
        sheets: { Runs: rowsWith(5, 84_000) },
        says: 'typed over',
        because: 'Row 5 holds 84,000 where the others multiply.',
      },
      clean,
    ],
  },
  {
    id: 'FORMULA.DIFFERS',
    scope: 'table',
    severity: 'unlikely',
    title: 'A formula unlike its neighbours',
    needs: [[]],
    check: (table) => formulaVerdicts(table, false),
    checks: 'Formulas that read other cells than the formulas above and below, rows moving along.',
    why: 'A formula copied from the wrong row, or mended in one place only.',
    sources: ['PRACTICE'],
    examples: [
      {
        sheets: { Runs: rowsWith(5, [80_000, '=B5*C6']) },
        says: 'differs',
        because: 'It takes the weight of the row above.',
      },
      clean,
    ],
  },
];

export const formulaBookRules: readonly BookRule[] = [
  {
    id: 'CELL.ERROR',
    scope: 'book',
    severity: 'impossible',
    title: 'An error in a cell',
    needs: [[]],
    check: errors,
    checks: 'Cells whose last value is an error.',
    why: 'What reads the cell shows an error too, or leaves the row out without saying so.',
    sources: ['DEFINITION'],
    examples: [
      {
        sheets: { Runs: rowsWith(5, [{ error: '#DIV/0!' }, '=B6/0']) },
        says: '#DIV/0!',
        because: 'Divided by nothing.',
      },
      clean,
    ],
  },
  {
    id: 'FORMULA.LINK',
    scope: 'book',
    severity: 'impossible',
    title: 'A Spawnbook formula tied to another file',
    needs: [[]],
    check: links,
    checks: 'Calls of our functions with a link such as [2]! in front.',
    why:
      'It happens when a sheet is opened where the add-in is missing and saved again; the ' +
      'call is then dead.',
    sources: ['PRACTICE'],
    examples: [
      {
        sheets: { Runs: rowsWith(5, [80_000, '=[2]!_xldudf_SPAWN_EGGS_BYWEIGHT(B6,C6,D6)']) },
        says: 'link',
        because: 'The link [2]! is left in front.',
      },
      clean,
    ],
  },
];
