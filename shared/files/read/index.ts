import { parseArea, splitReference } from '../../sheet/formula/address';
import type { NameModel, SheetModel, TableModel, WorkbookModel } from '../../sheet/workbook/model';
import { fromFile } from '../formulas';
import { revealCellText } from '../text';
import { readCharts } from './charts';
import type { Container } from './container';
import { Unreadable, openContainer } from './container';
import { readRules } from './rules';
import { BadXml, scan, tagsNamed } from './scan';
import type { SheetContext, SheetParts } from './sheet';
import { readSheetParts, readTexts } from './sheet';
import type { FileStyles } from './styles';
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

function readNames(xml: string): Names {
  const names: NameModel[] = [];
  const titleRows = new Map<number, readonly [number, number]>();
  const lost = new Set<string>();
  let current:
    | {
        name: string;
        local: number | undefined;
        comment: string | undefined;
        isHidden: boolean;
        text: string;
      }
    | undefined;
  scan(xml, {
    open: (tag) => {
      if (tag.name === 'definedName')
        current = {
          name: tag.get('name') ?? '',
          local: tag.number('localSheetId'),
          comment: tag.get('comment'),
          isHidden: tag.flag('hidden'),
          text: '',
        };
    },
    text: (text) => {
      if (current) current.text += text;
    },
    close: (name) => {
      if (name !== 'definedName' || !current) return;
      const { name: key, local, comment, isHidden, text } = current;
      current = undefined;
      if (key === '_xlnm.Print_Titles' && local !== undefined) {
        const rows = text
          .split(',')
          .map((part) => parseArea(splitReference(part).area))
          .find((area) => area && area.left === 0 && area.right > 1000);
        if (rows) titleRows.set(local, [rows.top + 1, rows.bottom + 1]);
      } else if (key.startsWith('_xlnm.') || isHidden) return;
      else if (local !== undefined) lost.add('Names that belong to one sheet');
      else names.push({ name: key, refersTo: fromFile(text).slice(1), ...(comment ? { comment } : {}) });
    },
  });
  return { names, titleRows, lost: [...lost] };
}

function readTable(xml: string): TableModel | undefined {
  const [table] = tagsNamed(xml, 'table');
  const [name, range] = [table?.get('displayName') ?? table?.get('name'), table?.get('ref')];
  return name && range
    ? { name, range, ...((table?.number('totalsRowCount') ?? 0) > 0 ? { hasTotals: true } : {}) }
    : undefined;
}

/** Notes by address: the texts of all runs joined. */
function readNotes(xml: string): ReadonlyMap<string, string> {
  const notes = new Map<string, string>();
  let ref = '';
  let isText = false;
  scan(xml, {
    open: (tag) => {
      if (tag.name === 'comment') ref = tag.get('ref') ?? '';
      else if (tag.name === 't') isText = true;
    },
    text: (text) => {
      if (isText && ref) notes.set(ref, (notes.get(ref) ?? '') + revealCellText(text));
    },
    close: (name) => {
      if (name === 't') isText = false;
    },
  });
  return notes;
}

interface SheetEntry {
  readonly name: string;
  readonly path: string;
  readonly isHidden: boolean;
}

function readFooter(xml: string): string | undefined {
  const footer = /<(?:\w+:)?oddFooter>([^<]*)</.exec(xml)?.[1];
  const left = footer && /&amp;L(?:&amp;8)?((?:(?!&amp;[CR]).)*)/.exec(footer)?.[1];
  return left ? left.replaceAll('&amp;&amp;', '&') : undefined;
}

const LOST_PARTS: Readonly<Record<string, string>> = {
  pivotTable: 'Pivot tables (their values are kept)',
  threadedComment: 'Threads of comments (the first text is kept)',
};

const printOf = (
  parts: SheetParts,
  footer: string | undefined,
  titleRows: readonly [number, number] | undefined,
): NonNullable<SheetModel['print']> => ({
  ...(parts.isLandscape ? { landscape: true } : {}),
  ...(parts.isOnePage ? { onePage: true } : {}),
  ...(titleRows ? { titleRows } : {}),
  ...(footer ? { footer } : {}),
  ...(parts.breaks.length > 0 ? { breaksAbove: parts.breaks } : {}),
});

function readSheet(
  container: Container,
  entry: SheetEntry,
  context: SheetContext,
  titleRows: readonly [number, number] | undefined,
  lost: Set<string>,
): SheetModel {
  const xml = container.text(entry.path);
  if (xml === undefined)
    throw new Unreadable(
      `The sheet "${entry.name}" is missing from the file. Open it in Excel and let Excel repair it.`,
    );
  const parts = readSheetParts(xml, context);
  const rules = readRules(xml, context.styles);
  const relations = container.relations(entry.path);
  const cells = { ...parts.cells };
  for (const { target } of relations.filter(({ kind }) => kind === 'comments'))
    for (const [address, note] of readNotes(container.text(target) ?? ''))
      cells[address] = { ...cells[address], note };
  const tables = relations
    .filter(({ kind }) => kind === 'table')
    .flatMap(({ target }) => readTable(container.text(target) ?? '') ?? []);
  const drawn = relations
    .filter(({ kind }) => kind === 'drawing')
    .map(({ target }) => readCharts(container, target));
  const charts = drawn.flatMap((d) => d.charts);
  const beside = relations.flatMap(({ kind }) => LOST_PARTS[kind] ?? []);
  for (const what of [...parts.lost, ...rules.lost, ...drawn.flatMap((d) => d.lost), ...beside])
    lost.add(what);
  const print = printOf(parts, readFooter(xml), titleRows);
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

function workbookPath(container: Container): string {
  const path = container.relations('').find(({ kind }) => kind === 'officeDocument')?.target;
  if (path !== undefined && container.text(path) !== undefined) return path;
  if (container.paths.some((p) => p.startsWith('word/')))
    throw new Unreadable('This is a Word document, not a workbook.');
  throw new Unreadable('This zip file holds no workbook. Pick the .xlsx file itself.');
}

function readWorkbook(container: Container): {
  readonly model: WorkbookModel;
  readonly lost: readonly string[];
} {
  const path = workbookPath(container);
  const xml = container.text(path) ?? '';
  const relations = container.relations(path);
  const target = (kind: string): string | undefined => {
    const found = relations.find((r) => r.kind === kind);
    return found && container.text(found.target);
  };
  const styles: FileStyles = readStyles(target('styles'));
  const is1904 = tagsNamed(xml, 'workbookPr').some((tag) => tag.flag('date1904'));
  const context: SheetContext = { texts: readTexts(target('sharedStrings')), styles, is1904 };
  const { names, titleRows, lost: lostNames } = readNames(xml);
  const lost = new Set(lostNames);
  const entries = tagsNamed(xml, 'sheet').map((tag, index) => {
    const relation = relations.find(({ id }) => id === tag.get('id'));
    return {
      index,
      relation,
      name: tag.get('name') ?? `Sheet${index + 1}`,
      path: relation?.target ?? '',
      isHidden: (tag.get('state') ?? 'visible') !== 'visible',
    };
  });
  const readable = entries.filter(({ relation }) => relation?.kind === 'worksheet');
  if (readable.length < entries.length) lost.add('Sheets that hold only a chart or old macros');
  if (readable.length === 0) throw new Unreadable('The file holds no sheet with cells.');
  if (relations.some(({ kind }) => kind === 'vbaProject')) lost.add('Macros');
  if (is1904) lost.add('Dates counted from 1904 are now counted from 1900 (they show the same days)');
  const sheets = readable.map((entry) =>
    readSheet(container, entry, context, titleRows.get(entry.index), lost),
  );
  const title = /<(?:\w+:)?title>([^<]*)</.exec(container.text('docProps/core.xml') ?? '')?.[1] ?? '';
  return { model: { title: tagText(title), sheets, names }, lost: [...lost] };
}

const tagText = (text: string): string =>
  text.replaceAll('&lt;', '<').replaceAll('&gt;', '>').replaceAll('&quot;', '"').replaceAll('&amp;', '&');

/** Reads the bytes of an .xlsx file. Never throws for a bad file: the fault is a sentence. */
export function readXlsx(bytes: Uint8Array): ReadResult {
  try {
    return readWorkbook(openContainer(bytes));
  } catch (error) {
    if (error instanceof Unreadable) return { fault: error.message };
    if (error instanceof BadXml)
      return { fault: `The file is damaged (${error.message}). Open it in Excel and let Excel repair it.` };
    throw error;
  }
}
