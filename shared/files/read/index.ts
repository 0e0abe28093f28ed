import { parseAddress, parseArea, splitReference } from '../../sheet/formula/address';
import type { NameModel, SheetModel, TableModel, WorkbookModel } from '../../sheet/workbook/model';
import { runNow } from '../../base/steps';
import { FormulaBudget } from '../cells/reader';
import { sharedStrings } from '../cells/strings';
import { fromFile } from '../formulas';
import type { NameInfo, SheetInfo } from '../package/book';
import { holdsMacros, readBook } from '../package/book';
import { scanXml, tagsNamed } from '../package/events';
import { Package } from '../package/package';
import { REFUSED, Refusal } from '../package/refusal';
import { all, textOf } from '../package/xml';
import { revealCellText } from '../text';
import { readSettings } from '../settings';
import { readCharts } from './charts';
import { RulesReader } from './rules';
import type { SheetContext, SheetParts } from './sheet';
import { readSheetParts } from './sheet';
import { readStyles } from './styles';

/**
 * A file as a workbook model, with what the model cannot carry named in `lost`; or the sentence that says why
 * it cannot be read.
 */
export type ReadResult =
  { readonly model: WorkbookModel; readonly lost: readonly string[] } | { readonly fault: string };
export const isUnreadable = (result: ReadResult): result is { readonly fault: string } => 'fault' in result;

interface Names {
  readonly names: readonly NameModel[];
  readonly titleRows: ReadonlyMap<number, readonly [number, number]>;
  readonly lost: readonly string[];
}

function readNames(list: readonly NameInfo[]): Names {
  const names: NameModel[] = [];
  const titleRows = new Map<number, readonly [number, number]>();
  const lost = new Set<string>();
  for (const { name, scope, comment, isHidden, text } of list) {
    if (name === '_xlnm.Print_Titles' && scope !== undefined) {
      const rows = text
        .split(',')
        .map((part) => parseArea(splitReference(part).area))
        .find((area) => area && area.left === 0 && area.right > 1000);
      if (rows) titleRows.set(scope, [rows.top + 1, rows.bottom + 1]);
    } else if (name.startsWith('_xlnm.') || isHidden) continue;
    else if (scope !== undefined) lost.add('Names that belong to one sheet');
    else names.push({ name, refersTo: fromFile(text).slice(1), ...(comment ? { comment } : {}) });
  }
  return { names, titleRows, lost: [...lost] };
}

function readTable(pack: Package, part: string): TableModel | undefined {
  const bytes = pack.read(part);
  const [table] = bytes ? tagsNamed(bytes, part, 'table') : [];
  const [name, range] = [table?.get('displayName') || table?.get('name'), table?.get('ref')];
  return name && range && parseArea(range)
    ? { name, range, ...((table?.number('totalsRowCount') ?? 0) > 0 ? { hasTotals: true } : {}) }
    : undefined;
}

/** Notes by address: the texts of all runs joined. */
function readNotes(pack: Package, part: string): ReadonlyMap<string, string> {
  const notes = new Map<string, string>();
  const bytes = pack.read(part);
  let ref = '';
  let isText = false;
  if (bytes)
    scanXml(bytes, part, {
      open: (tag) => {
        if (tag.name === 'comment') ref = tag.get('ref') ?? '';
        else if (tag.name === 't') isText = true;
      },
      text: (text) => {
        if (isText && parseAddress(ref)) notes.set(ref, (notes.get(ref) ?? '') + revealCellText(text));
      },
      close: (name) => {
        if (name === 't') isText = false;
      },
    });
  return notes;
}

const LOST_PARTS = new Map([
  ['pivotTable', 'Pivot tables (their values are kept)'],
  ['threadedComment', 'Threads of comments (the first text is kept)'],
]);

const printOf = (
  parts: SheetParts,
  titleRows: readonly [number, number] | undefined,
): NonNullable<SheetModel['print']> => ({
  ...(parts.isLandscape ? { landscape: true } : {}),
  ...(parts.isOnePage ? { onePage: true } : {}),
  ...(titleRows ? { titleRows } : {}),
  ...(parts.footer ? { footer: parts.footer } : {}),
  ...(parts.breaks.length > 0 ? { breaksAbove: parts.breaks } : {}),
});

function readSheet(
  pack: Package,
  entry: SheetInfo,
  context: SheetContext,
  titleRows: readonly [number, number] | undefined,
  lost: Set<string>,
): SheetModel {
  const bytes = pack.read(entry.part) ?? new Uint8Array();
  const reader = new RulesReader(context.styles);
  const parts = readSheetParts(bytes, entry.part, context, reader);
  const { rules } = reader;
  const relations = pack.relations(entry.part).filter(({ isExternal }) => !isExternal);
  const cells = { ...parts.cells };
  for (const { target } of relations.filter(({ type }) => type === 'comments'))
    for (const [address, note] of readNotes(pack, target)) cells[address] = { ...cells[address], note };
  const tables = relations
    .filter(({ type }) => type === 'table')
    .flatMap(({ target }) => readTable(pack, target) ?? []);
  const drawn = relations
    .filter(({ type }) => type === 'drawing')
    .map(({ target }) => readCharts(pack, target));
  const charts = drawn.flatMap((d) => d.charts);
  const beside = relations.flatMap(({ type }) => LOST_PARTS.get(type) ?? []);
  for (const what of [...parts.lost, ...rules.lost, ...drawn.flatMap((d) => d.lost), ...beside])
    lost.add(what);
  const print = printOf(parts, titleRows);
  const some = <T>(key: string, list: readonly T[]): Record<string, readonly T[]> =>
    list.length > 0 ? { [key]: list } : {};
  return {
    name: entry.name,
    widths: Array.from(parts.widths, (width: number | undefined) => width ?? DEFAULT_WIDTH),
    cells,
    ...(parts.tab ? { tab: parts.tab } : {}),
    ...(entry.isHidden ? { isHidden: true } : {}),
    ...(parts.freeze ? { freeze: parts.freeze } : {}),
    ...(parts.isProtected ? { isProtected: true } : {}),
    ...(parts.hasGridlines === false ? { hasGridlines: false } : {}),
    ...(Object.keys(print).length > 0 ? { print } : {}),
    ...(Object.keys(parts.heights).length > 0 ? { heights: parts.heights } : {}),
    ...some('merges', parts.merges),
    ...some('tables', tables),
    ...some('validations', rules.validations),
    ...some('conditionals', rules.conditionals),
    ...some('charts', charts),
  };
}

const DEFAULT_WIDTH = 9;

function titleOf(pack: Package): string {
  const part =
    pack.related('', 'core-properties')?.target ?? pack.related('', 'coreProperties')?.target ?? '';
  const found = pack.tree(part);
  const [title] = found ? all(found.root, 'title') : [];
  return found && title ? textOf(found.bytes, title) : '';
}

function readWorkbook(pack: Package): { readonly model: WorkbookModel; readonly lost: readonly string[] } {
  const book = readBook(pack);
  const { is1904, sheets: entries } = book;
  const style = pack.related(book.part, 'styles')?.target;
  const styles = readStyles(style === undefined ? undefined : pack.read(style));
  const context: SheetContext = {
    strings: sharedStrings({ pack, book }),
    styles,
    dateStyles: styles.cells.map(({ isDate }) => isDate),
    is1904,
    budget: new FormulaBudget(),
  };
  const { names, titleRows, lost: lostNames } = readNames(book.names);
  const lost = new Set(lostNames);
  const readable = entries.filter(({ isWorksheet }) => isWorksheet);
  if (readable.length < entries.length) lost.add('Sheets that hold only a chart or old macros');
  if (readable.length === 0) throw new Refusal(REFUSED.noSheet);
  if (holdsMacros(pack, book)) lost.add('Macros');
  if (is1904) lost.add('Dates counted from 1904 are now counted from 1900 (they show the same days)');
  const sheets = readable.map((entry) => readSheet(pack, entry, context, titleRows.get(entry.index), lost));
  const settings = readSettings(pack, book);
  return {
    model: {
      title: titleOf(pack),
      sheets,
      names,
      ...(Object.keys(settings).length > 0 ? { settings } : {}),
    },
    lost: [...lost],
  };
}

/** Reads the bytes of an .xlsx file. Never throws for a bad file: the fault is a sentence. */
export function readXlsx(bytes: Uint8Array): ReadResult {
  try {
    return readWorkbook(runNow(Package.open(bytes)));
  } catch (error) {
    if (error instanceof Refusal) return { fault: error.sentence };
    throw error;
  }
}
