import type { Area, CellPlace } from '../../sheet/formula/address';
import type { PackageBook } from '../package/book';
import { holdsMacros, readBook } from '../package/book';
import { REFUSED, Refusal } from '../package/refusal';
import { ownCalls } from './references/calls';
import { isSpillReference } from './references/anchors';
import type { FormulaPiece } from './references/lex';
import { NameTable } from './references/names';
import type { ShareProgress } from './decisions/options';
import { Package } from '../package/package';
import type { Judge, SheetScan } from './decisions/scan';
import { scanSheet } from './decisions/scan';
import type { TableInfo } from './references/tables';
import { readTables } from './references/tables';

/** What the reader of the copy shall not get; the engine asks it about every formula. */
export interface Exclusion {
  /** Sheets that stay. */
  readonly keeps: (sheet: number) => boolean;
  /** Does the formula read something that will not be there? */
  readonly reads: (text: string, pieces: readonly FormulaPiece[], sheet: number) => boolean;
}

export interface Opened {
  readonly pack: Package;
  readonly book: PackageBook;
  readonly names: NameTable;
  readonly tables: readonly TableInfo[];
  /** Parts that hung together when the file came in. */
  readonly before: ReadonlySet<string>;
}

export function* openBook(file: Uint8Array): Generator<ShareProgress, Opened> {
  const steps = Package.open(file);
  let step = steps.next();
  for (; !step.done; step = steps.next()) yield { step: 'unpack', done: step.value };
  const pack = step.value;
  const book = readBook(pack);
  if (holdsMacros(pack, book)) throw new Refusal(REFUSED.macros);
  if (!pack.has('[Content_Types].xml')) throw new Refusal(REFUSED.noWorkbook);
  return {
    pack,
    book,
    names: new NameTable(book),
    tables: readTables(pack, book),
    before: new Set(pack.reached().map(({ part }) => part.toLowerCase())),
  };
}

export function judgeOf(names: NameTable, exclusion?: Exclusion): Judge {
  const of: Judge['of'] = (text, pieces, sheet) => {
    if (ownCalls(text, pieces, names.isDefinedFor(text, sheet)).length > 0 || names.uses(text, pieces, sheet))
      return 'own';
    if (exclusion?.reads(text, pieces, sheet)) return 'cut';
    return isSpillReference(text, pieces) ? 'spill' : 'keep';
  };
  return { of, readsAll: names.hasTainted };
}

export function* scanSheets({ pack, book }: Opened, judge: Judge): Generator<ShareProgress, SheetScan[]> {
  const sheets = book.sheets.filter((sheet) => sheet.isWorksheet);
  const scans: SheetScan[] = [];
  for (const [i, info] of sheets.entries()) {
    const bytes = pack.read(info.part);
    if (!bytes) continue;
    const steps = scanSheet(info, bytes, judge);
    let step = steps.next();
    for (; !step.done; step = steps.next()) yield { step: 'read', done: (i + step.value) / sheets.length };
    scans.push(step.value);
    yield { step: 'read', done: (i + 1) / sheets.length };
  }
  return scans;
}

export const contains = (area: Area, { row, column }: CellPlace): boolean =>
  row >= area.top && row <= area.bottom && column >= area.left && column <= area.right;
