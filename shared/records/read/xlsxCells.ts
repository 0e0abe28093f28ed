import { runNow } from '../../base/steps';
import { Cells } from '../../files/cells/cells';
import type { CellSpan } from '../../files/cells/cells';
import type { CellContext } from '../../files/cells/reader';
import { CellReader, FormulaBudget } from '../../files/cells/reader';
import { sharedStrings } from '../../files/cells/strings';
import { readBook } from '../../files/package/book';
import type { SheetInfo } from '../../files/package/book';
import { Package } from '../../files/package/package';
import { REFUSED, Refusal } from '../../files/package/refusal';
import { all, attribute, checkEncoding, TreeReader } from '../../files/package/xml';
import { readStyles } from '../../files/read/styles';
import { parseArea } from '../../sheet/formula/address';
import type { SheetCells } from './sheetCells';
import { SheetReader } from './sheetCells';

/** Thrown inside this folder; the sentence says what is wrong with the file and what to do. */
export class BadFile extends Error {}

const CELLS_PER_STEP = 40_000;

function take(cell: CellSpan, reader: CellReader, builder: SheetReader): void {
  const isDate = cell.styleFrom >= 0 && reader.isDate(cell);
  const number = reader.typedNumber(cell);
  if (!Number.isNaN(number)) {
    builder.putNumber(cell.row, cell.column, number, isDate);
    return;
  }
  const value = reader.value(cell);
  const formula = cell.formulaStart < 0 ? undefined : reader.formula(cell);
  if (value !== null || formula !== undefined)
    builder.put(cell.row, cell.column, value, isDate, formula && `=${formula.text}`);
}

/** The cells of one sheet into its builder, through the walker that every reader of a file uses. */
function* readSheet(
  bytes: Uint8Array,
  { part, name }: SheetInfo,
  context: CellContext,
  budget: FormulaBudget,
): Generator<number, SheetCells> {
  checkEncoding(bytes, part);
  const builder = new SheetReader(name);
  const reader = new CellReader(bytes, context, budget);
  const tree = new TreeReader(bytes, 'sheetData');
  for (let data = tree.run(); data; data = tree.run()) {
    const cells = new Cells(bytes, data.openEnd);
    const { cell } = cells;
    for (let count = 0; cells.next(); count++) {
      if (count % CELLS_PER_STEP === CELLS_PER_STEP - 1) yield cell.end / bytes.length;
      take(cell, reader, builder);
    }
    tree.seek(cells.closeAt);
  }
  for (const merge of all(tree.whole(), 'mergeCell')) {
    const area = parseArea(attribute(bytes, merge, 'ref')?.value ?? '');
    if (area) builder.merges.push(area);
  }
  return builder.build();
}

const CORE = 'docProps/core.xml';
const OWN = /<dc:creator>Spawnbook<\/dc:creator>/;
/** Plans, dosing sheets and their copies name Spawnbook as their author. */
const isOwnWorkbook = (pack: Package): boolean => {
  const core = pack.has(CORE) ? pack.read(CORE) : undefined;
  return core !== undefined && OWN.test(new TextDecoder().decode(core));
};

function* readSheets(bytes: Uint8Array): Generator<number, readonly SheetCells[]> {
  const pack = runNow(Package.open(bytes));
  yield 0.1;
  const book = readBook(pack);
  const style = pack.related(book.part, 'styles')?.target;
  const context: CellContext = {
    strings: sharedStrings({ pack, book }),
    dateStyles: readStyles(style === undefined ? undefined : pack.read(style)).cells.map(
      ({ isDate }) => isDate,
    ),
    is1904: book.is1904,
  };
  const sheets = book.sheets.filter(({ isWorksheet }) => isWorksheet);
  if (sheets.length === 0) throw new Refusal(REFUSED.noSheet);
  const isOwn = isOwnWorkbook(pack);
  const budget = new FormulaBudget();
  const found: SheetCells[] = [];
  const total = sheets.reduce((sum, { part }) => sum + (pack.read(part)?.length ?? 0), 1);
  let done = 0;
  for (const sheet of sheets) {
    const part = pack.read(sheet.part) ?? new Uint8Array();
    const steps = readSheet(part, sheet, context, budget);
    let step = steps.next();
    for (; !step.done; step = steps.next()) yield 0.1 + 0.9 * ((done + step.value * part.length) / total);
    done += part.length;
    found.push(isOwn ? { ...step.value, isWorkedOut: true } : step.value);
  }
  return found;
}

/** Reads the sheets of an .xlsx file, yielding the share done. */
export function* readXlsxCells(bytes: Uint8Array): Generator<number, readonly SheetCells[]> {
  try {
    return yield* readSheets(bytes);
  } catch (error) {
    if (error instanceof Refusal) throw new BadFile(error.sentence);
    throw error;
  }
}
