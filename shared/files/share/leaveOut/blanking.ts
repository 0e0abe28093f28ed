import type { Area, Place } from '../../../sheet/formula/address';
import { columnNumber, MAX_ROWS, parseArea } from '../../../sheet/formula/address';
import type { StoredValue } from '../../cells/cells';
import { sharedStrings } from '../../cells/strings';
import { lex } from '../references/lex';
import type { Opened } from '../open';
import { contains } from '../open';
import type { Progress } from '../decisions/options';
import { ReferenceFinder, overlaps } from '../references/references';
import { Refusal } from '../../package/refusal';
import type { FormulaCell } from '../decisions/scan';
import { scanSheet } from '../decisions/scan';
import { Telltales } from './telltales';
import { eachCell } from '../../cells/values';

/**
 * Works out which cells must be empty in the copy, so that what the user blanked cannot be read or guessed
 * from another cell.
 */

export function parseBlank({ book }: Opened, wish: string): { readonly sheet: number; readonly area: Area } {
  const bang = wish.lastIndexOf('!');
  const name = wish
    .slice(0, Math.max(0, bang))
    .replace(/^'(.*)'$/s, '$1')
    .replaceAll("''", "'");
  const sheet = book.sheets.find((one) => one.name.toLowerCase() === name.toLowerCase());
  const range = wish.slice(bang + 1).trim();
  const column = /^\$?([A-Za-z]{1,3})$/.exec(range)?.[1];
  const area =
    column === undefined
      ? parseArea(range)
      : { top: 0, bottom: MAX_ROWS - 1, left: columnNumber(column), right: columnNumber(column) };
  if (!sheet)
    throw new Refusal(
      `There is no sheet "${name}" to blank "${wish}" on. The sheets are: ${book.sheets.map((one) => one.name).join(', ')}.`,
    );
  if (!area)
    throw new Refusal(`"${range}" in "${wish}" is neither a column (Fish!C) nor a range (Fish!B2:D40).`);
  return { sheet: sheet.index, area };
}

const key = (sheet: number, { row, column }: Place): string => `${sheet}|${row}|${column}`;
const MAX_SPILL = 100_000;

/** What must be empty: ranges the user named, and single cells that would give them away. */
export class Blanked {
  readonly telltales = new Telltales();
  private readonly areas = new Map<number, Area[]>();
  /** Sheet → column → rows. */
  private readonly cells = new Map<number, Map<number, Set<number>>>();
  private readonly headings: readonly { readonly sheet: number; readonly area: Area }[];
  /** Cells that hold a number the user blanked; what is worked out from one of them alone gives it away. */
  private readonly numbers = new Set<string>();
  results = 0;
  found = 0;

  constructor(opened: Opened, wishes: readonly string[]) {
    for (const wish of wishes) {
      const { sheet, area } = parseBlank(opened, wish);
      this.areas.set(sheet, [...(this.areas.get(sheet) ?? []), area]);
    }
    // A table insists that its heading cells say what its columns are called.
    this.headings = opened.tables
      .filter((table) => table.top > table.area.top)
      .map((table) => ({ sheet: table.sheet, area: { ...table.area, bottom: table.top - 1 } }));
  }

  isHeading(sheet: number, place: Place): boolean {
    return this.headings.some((one) => one.sheet === sheet && contains(one.area, place));
  }
  isNamed(sheet: number, place: Place): boolean {
    return (
      (this.areas.get(sheet) ?? []).some((area) => contains(area, place)) && !this.isHeading(sheet, place)
    );
  }
  isBlank(sheet: number, place: Place): boolean {
    return (this.cells.get(sheet)?.get(place.column)?.has(place.row) ?? false) || this.isNamed(sheet, place);
  }
  isNumber(sheet: number, place: Place): boolean {
    return this.numbers.has(key(sheet, place));
  }
  touches(sheet: number, area: Area): boolean {
    if ((this.areas.get(sheet) ?? []).some((one) => overlaps(one, area))) return true;
    for (const [column, rows] of this.cells.get(sheet) ?? []) {
      if (column < area.left || column > area.right) continue;
      if (
        area.top === area.bottom
          ? rows.has(area.top)
          : [...rows].some((row) => row >= area.top && row <= area.bottom)
      )
        return true;
    }
    return false;
  }

  note(sheet: number, place: Place, { type, raw }: StoredValue): void {
    if (type === 'n') this.numbers.add(key(sheet, place));
    if (type === 'n' || type === 'str' || type === 'inlineStr') this.telltales.add(raw);
  }
  addCell(sheet: number, { row, column }: Place): void {
    const columns = this.cells.get(sheet) ?? new Map<number, Set<number>>();
    this.cells.set(sheet, columns);
    columns.set(column, (columns.get(column) ?? new Set<number>()).add(row));
  }
  addArea(sheet: number, area: Area): void {
    let count = 0;
    for (let row = area.top; row <= area.bottom; row++)
      for (let column = area.left; column <= area.right && count++ < MAX_SPILL; column++)
        this.addCell(sheet, { row, column });
  }
}

/**
 * Reads all values once: the named cells feed the words to look for, the others are kept if they hold one of
 * them.
 */
export function* planBlanking(
  opened: Opened,
  wishes: readonly string[],
  keeps: (sheet: number) => boolean,
): Generator<Progress, Blanked> {
  const blanked = new Blanked(opened, wishes);
  const strings = sharedStrings(opened);
  const sheets = opened.book.sheets.filter((sheet) => sheet.isWorksheet);
  for (const sheet of sheets) {
    const bytes = opened.pack.read(sheet.part);
    if (bytes)
      for (const done of eachCell(bytes, strings, (cell, value) => {
        if (value && blanked.isNamed(sheet.index, cell)) blanked.note(sheet.index, cell, value);
      }))
        yield { step: 'read', done };
  }
  const formulas: { sheet: number; cell: FormulaCell }[] = [];
  for (const sheet of sheets.filter((one) => keeps(one.index))) {
    const bytes = opened.pack.read(sheet.part);
    if (!bytes) continue;
    const steps = scanSheet(sheet, bytes, { of: () => 'own', readsAll: true, isPerCell: false });
    let step = steps.next();
    for (; !step.done; step = steps.next()) yield { step: 'read', done: step.value };
    for (const cell of step.value.cells) formulas.push({ sheet: sheet.index, cell });
  }
  spread(opened, blanked, formulas);
  for (const sheet of sheets.filter((one) => keeps(one.index))) yield* findTold(opened, blanked, sheet.index);
  return blanked;
}

/**
 * Results worked out from blanked cells that would give them away are blanked in turn, until there are no
 * more.
 */
function spread(
  opened: Opened,
  blanked: Blanked,
  formulas: readonly { sheet: number; cell: FormulaCell }[],
): void {
  const finder = new ReferenceFinder(opened.names, opened.tables);
  const read = formulas.map(({ sheet, cell }) => ({
    sheet,
    cell,
    found: finder.of(cell.text, lex(cell.text), sheet, cell.span).found,
  }));
  for (let grew = true; grew;) {
    grew = false;
    for (const { sheet, cell, found } of read) {
      if (blanked.isBlank(sheet, cell.span) || !cell.value) continue;
      const hits = found.filter((one) => blanked.touches(one.sheet, one.area));
      if (hits.length === 0 || !tells(blanked, cell, hits)) continue;
      blanked.addArea(sheet, cell.area);
      blanked.note(sheet, cell.span, cell.value);
      blanked.results++;
      grew = true;
    }
  }
}

function tells(
  blanked: Blanked,
  cell: FormulaCell,
  hits: readonly { readonly sheet: number; readonly area: Area }[],
): boolean {
  const { type, raw } = cell.value ?? { type: 'e', raw: '' };
  if (type === 'e' || type === 'b' || raw === '') return false;
  if (blanked.telltales.in(raw)) return true;
  // A number worked out from one blanked number can be worked back.
  if (type === 'n')
    return hits.some(
      ({ sheet, area }) =>
        area.top === area.bottom &&
        area.left === area.right &&
        blanked.isNumber(sheet, { row: area.top, column: area.left }),
    );
  // A text the formula spells out itself ("low") says nothing about what it read.
  return !cell.text.includes(`"${raw.replaceAll('"', '""')}"`);
}

/** Cells anywhere else that hold a blanked value as it is. */
function* findTold({ pack, book, ...opened }: Opened, blanked: Blanked, index: number): Generator<Progress> {
  const part = book.sheets[index]?.part;
  const bytes = part === undefined ? undefined : pack.read(part);
  if (!bytes || blanked.telltales.size === 0) return;
  yield* steps(
    eachCell(bytes, sharedStrings({ pack, book, ...opened }), (cell, value) => {
      if (
        !value ||
        value.type === 'b' ||
        value.type === 'e' ||
        blanked.isBlank(index, cell) ||
        blanked.isHeading(index, cell) ||
        !blanked.telltales.in(value.raw)
      )
        return;
      blanked.addCell(index, cell);
      blanked.found++;
    }),
  );
}

function* steps(inner: Generator<number>): Generator<Progress> {
  for (const done of inner) yield { step: 'read', done };
}
