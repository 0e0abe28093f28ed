import type { Area } from '../../../sheet/formula/address';
import { parseArea } from '../../../sheet/formula/address';
import type { PackageBook } from '../../package/book';
import type { Package } from '../../package/package';
import type { RuleFate } from '../leaveOut/rules';
import type { Edit } from '../../package/splice';
import { cut, put } from '../../package/splice';
import { all, attribute, child, textOf } from '../../package/xml';
import { escapeXml } from '../../text';

export interface TableInfo {
  readonly name: string;
  readonly part: string;
  readonly sheet: number;
  readonly area: Area;
  readonly columns: readonly string[];
  /** Rows of data, without headings and totals. */
  readonly top: number;
  readonly bottom: number;
}

export function readTables(pack: Package, book: PackageBook): TableInfo[] {
  return book.sheets
    .filter((sheet) => sheet.isWorksheet)
    .flatMap((sheet) =>
      pack
        .relations(sheet.part)
        .filter((relation) => relation.type === 'table')
        .flatMap((relation) => {
          const found = pack.tree(relation.target);
          if (!found) return [];
          const { bytes, root } = found;
          const say = (name: string): string | undefined => attribute(bytes, root, name)?.value;
          const area = parseArea(say('ref') ?? '');
          if (!area) return [];
          const columns = all(child(root, 'tableColumns'), 'tableColumn').map(
            (one) => attribute(bytes, one, 'name')?.value ?? '',
          );
          return [
            {
              name: say('displayName') ?? say('name') ?? '',
              part: relation.target,
              sheet: sheet.index,
              area,
              columns,
              top: area.top + Number(say('headerRowCount') ?? 1),
              bottom: area.bottom - Number(say('totalsRowCount') ?? 0),
            },
          ];
        }),
    );
}

/** A table keeps the formula of a column, to fill new rows with it; there it must go as well. */
export function editTable(
  pack: Package,
  table: TableInfo,
  fate: (formula: string, sheet: number) => RuleFate,
): { readonly edits: Edit[]; readonly dropped: string[] } {
  const found = pack.tree(table.part);
  if (!found) return { edits: [], dropped: [] };
  const { bytes, root } = found;
  const edits: Edit[] = [];
  const dropped: string[] = [];
  for (const formula of all(root, 'calculatedColumnFormula', 'totalsRowFormula')) {
    const one = fate(textOf(bytes, formula), table.sheet);
    if (one === 'keep') continue;
    if (one !== 'drop') {
      edits.push(put(formula.openEnd, formula.closeStart, escapeXml(one.text)));
      continue;
    }
    edits.push(cut(formula));
    const column = formula.parent;
    if (!column) continue;
    dropped.push(`${table.name}[${attribute(bytes, column, 'name')?.value ?? ''}]`);
    const custom = attribute(bytes, column, 'totalsRowFunction');
    // "custom" promises a formula that is no longer there.
    if (formula.name === 'totalsRowFormula' && custom?.value === 'custom') edits.push(cut(custom));
  }
  return { edits, dropped };
}

type Rows = 'data' | 'all' | 'headers' | 'totals' | 'this';
const ROWS = new Map<string, Rows>([
  ['#data', 'data'],
  ['#all', 'all'],
  ['#headers', 'headers'],
  ['#totals', 'totals'],
  ['#this row', 'this'],
]);

interface Specifier {
  readonly rows: readonly Rows[];
  readonly columns: readonly string[];
}

/** What stands in the brackets of Table[…]: words like #All, one column, or a run of columns. */
function specifierOf(inner: string): Specifier | undefined {
  const word = inner.trim();
  if (word === '') return { rows: ['data'], columns: [] };
  if (!/[[\]]/.test(word.replace(/'./g, ''))) {
    const rows = ROWS.get(word.toLowerCase());
    if (rows) return { rows: [rows], columns: [] };
    return word.startsWith('@')
      ? { rows: ['this'], columns: word === '@' ? [] : [word.slice(1)] }
      : { rows: ['data'], columns: [word] };
  }
  const rows: Rows[] = word.startsWith('@') ? ['this'] : [];
  const columns: string[] = [];
  const shape = word.replace(/^@/, '').replace(/\[((?:[^[\]']|'.)*)\]/g, (_, item: string) => {
    const known = ROWS.get(item.trim().toLowerCase());
    if (known) rows.push(known);
    else columns.push(item);
    return known ? 'r' : 'c';
  });
  return /^(?:r|\s|,)*(?:c(?:\s*:\s*c)?)?\s*$/.test(shape)
    ? { rows: rows.length > 0 ? rows : ['data'], columns }
    : undefined;
}

function rowsOf(table: TableInfo, rows: readonly Rows[], row: number): readonly [number, number] {
  const { area, top, bottom } = table;
  const spans: Readonly<Record<Rows, readonly [number, number]>> = {
    data: [top, bottom],
    all: [area.top, area.bottom],
    headers: [area.top, top - 1],
    totals: [bottom + 1, area.bottom],
    this: [row, row],
  };
  const chosen = rows.map((one) => spans[one]).filter(([a, b]) => b >= a);
  return [Math.min(...chosen.map(([a]) => a)), Math.max(...chosen.map(([, b]) => b))];
}

const unquoted = (column: string): string => column.trim().replace(/'(.)/g, '$1').toLowerCase();

/** The cells a table reference means; `row` is the row of the formula. */
export function tableArea(
  tables: readonly TableInfo[],
  reference: string,
  row: number,
): { readonly sheet: number; readonly area: Area } | undefined {
  const match = /^(?:'(?:[^']|'')+'!|[^![\]]+!)?([^[\]!]*)\[(.*)\]$/s.exec(reference);
  const name = match?.[1]?.toLowerCase() ?? '';
  const table = tables.find((one) => one.name.toLowerCase() === name);
  const specifier = table && specifierOf(match?.[2] ?? '');
  if (!specifier) return undefined;
  const at = specifier.columns.map((column) =>
    table.columns.findIndex((one) => one.toLowerCase() === unquoted(column)),
  );
  if (at.some((one) => one < 0)) return undefined;
  const [top, bottom] = rowsOf(table, specifier.rows, row);
  if (!Number.isFinite(top)) return undefined;
  return {
    sheet: table.sheet,
    area: {
      top,
      bottom,
      left: table.area.left + (at.length > 0 ? Math.min(...at) : 0),
      right: at.length > 0 ? table.area.left + Math.max(...at) : table.area.right,
    },
  };
}
