import { parseArea, splitReference } from '../../../shared/sheet/formula/address';
import type { Cell, Grid } from '../../../shared/base/values';
import { holdsOwnCall } from '../../screens/messages/state/formulaRepair';
import { addressOf, cellFrom } from './cells';
import { withExcel } from '../excelErrors';
import type { CallCell, Scan, PortTell } from '../port';
import type { UsedSheet } from './used';
import { batches, CELLS_PER_SYNC, usedSheets } from './used';

interface Slice {
  readonly sheet: string;
  readonly top: number;
  readonly left: number;
  readonly range: Excel.Range;
  readonly cells: number;
}

const slicesOf = ({ name, range }: UsedSheet): Slice[] => {
  const rows = Math.max(1, Math.floor(CELLS_PER_SYNC / range.columnCount));
  return Array.from({ length: Math.ceil(range.rowCount / rows) }, (_, i) => {
    const count = Math.min(rows, range.rowCount - i * rows);
    const part = range.getCell(i * rows, 0).getResizedRange(count - 1, range.columnCount - 1);
    return {
      sheet: name,
      top: range.rowIndex + i * rows,
      left: range.columnIndex,
      range: part,
      cells: count * range.columnCount,
    };
  });
};

class Values {
  private readonly sheets = new Map<string, Map<number, readonly unknown[]>>();
  private readonly corners = new Map<
    string,
    { readonly left: number; readonly right: number; readonly bottom: number }
  >();

  add({ sheet, top, left, range }: Slice): void {
    const key = sheet.toLowerCase();
    const rows = this.sheets.get(key) ?? new Map<number, readonly unknown[]>();
    range.values.forEach((row, i) => rows.set(top + i, row));
    this.sheets.set(key, rows);
    const bottom = Math.max(this.corners.get(key)?.bottom ?? 0, top + range.values.length - 1);
    this.corners.set(key, { left, right: left + (range.values[0]?.length ?? 1) - 1, bottom });
  }

  lookUp(reference: string, home: string): Grid | undefined {
    const { sheet = home, area: text } = splitReference(reference);
    const area = parseArea(text);
    const rows = this.sheets.get(sheet.toLowerCase());
    const corner = this.corners.get(sheet.toLowerCase());
    if (!area || !rows || !corner) return undefined;
    const bottom = Math.min(area.bottom, Math.max(area.top, corner.bottom));
    const right = Math.min(area.right, Math.max(area.left, corner.right));
    return Array.from({ length: bottom - area.top + 1 }, (_, r): Cell[] =>
      Array.from({ length: right - area.left + 1 }, (_c, c) =>
        cellFrom(rows.get(area.top + r)?.[area.left + c - corner.left]),
      ),
    );
  }
}

const callsIn = ({ sheet, top, left, range }: Slice): CallCell[] =>
  range.formulas.flatMap((row: readonly unknown[], r) =>
    row.flatMap((formula, c): CallCell[] =>
      holdsOwnCall(formula)
        ? [{ sheet, address: addressOf(top + r, left + c), formula, value: cellFrom(range.values[r]?.[c]) }]
        : [],
    ),
  );

/** Reads every used cell once and keeps what formulas of ours refer to. */
export const scanCalls = (tell: PortTell): Promise<Scan> =>
  withExcel(async (context) => {
    const used = await usedSheets(context);
    const groups = batches(used.flatMap(slicesOf), ({ cells }) => cells);
    const values = new Values();
    const calls: CallCell[] = [];
    let done = 0;
    for (const group of groups) {
      for (const { range } of group) range.load('formulas,values');
      // One sync for a group of slices: a single one for the whole workbook can exceed what the web version
      // sends.
      await context.sync();
      for (const slice of group) {
        values.add(slice);
        calls.push(...callsIn(slice));
      }
      done++;
      tell({ label: 'Reading the workbook', done, total: groups.length });
    }
    return { calls, sheets: used.length, lookUp: (reference, sheet) => values.lookUp(reference, sheet) };
  });
