import type { Area } from '../../../sheet/formula/address';
import { parseArea } from '../../../sheet/formula/address';
import type { Book } from '../book';
import type { Package } from '../../package/package';
import type { RuleFate } from '../leaveOut/rules';
import type { Edit } from '../../package/splice';
import { cut, put } from '../../package/splice';
import { all, attribute, child, escapeXml, textOf } from '../../package/xml';

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

export function readTables(pack: Package, book: Book): TableInfo[] {
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

/** The cells a table reference means, for the forms people write; `row` is the row of the formula. */
export function tableArea(
  tables: readonly TableInfo[],
  reference: string,
  row: number,
): { readonly sheet: number; readonly area: Area } | undefined {
  const match = /^(?:'(?:[^']|'')+'!|[^![\]]+!)?([^[\]!]*)\[(.*)\]$/s.exec(reference);
  const name = match?.[1]?.toLowerCase() ?? '';
  const table = tables.find((one) => one.name.toLowerCase() === name);
  if (!table || match?.[2] === undefined) return undefined;
  const inner = match[2].trim();
  const [, isThisRow, column] = /^(@|\[#This Row\]\s*,\s*)?\[?([^[\]#@]*)\]?$/i.exec(inner) ?? [];
  if (column === undefined) return undefined;
  const at = table.columns.findIndex(
    (one) => one.toLowerCase() === column.replace(/'(.)/g, '$1').toLowerCase(),
  );
  const left = column === '' ? table.area.left : table.area.left + at;
  const right = column === '' ? table.area.right : left;
  if (column !== '' && at < 0) return undefined;
  return {
    sheet: table.sheet,
    area: isThisRow
      ? { top: row, bottom: row, left, right }
      : { top: table.top, bottom: table.bottom, left, right },
  };
}
