import type { Area } from '../../formula/address';
import { parseArea } from '../../formula/address';
import { Cells, storedValue } from './cells';
import type { CellSpan, StoredValue } from './cells';
import type { SharedStrings } from './strings';
import { plainControls } from './strings';
import { attributes, nameEnd, TreeReader } from './xml';

const CELLS_PER_STEP = 20_000;
export type VisitCell = (cell: CellSpan, value: StoredValue | undefined) => void;

/** Every cell of a sheet in file order; texts are resolved, so that type s never reaches the visitor. */
export function* eachCell(bytes: Uint8Array, strings: SharedStrings, visit: VisitCell): Generator<number> {
  const tree = new TreeReader(bytes, 'sheetData');
  for (let data = tree.run(); data; data = tree.run()) {
    const cells = new Cells(bytes, data.openEnd);
    for (let count = 0; cells.next(); count++) {
      const value = storedValue(bytes, cells.cell);
      visit(cells.cell, value?.type === 's' ? { type: 'str', raw: strings.text(Number(value.raw)) } : value);
      if (count % CELLS_PER_STEP === CELLS_PER_STEP - 1) yield cells.cell.end / bytes.length;
    }
    tree.seek(cells.closeAt);
  }
}

/** The cells a stored array formula or what-if table fills beyond its own; undefined when it fills one. */
export function filledArea(bytes: Uint8Array, cell: CellSpan): Area | undefined {
  if (cell.formulaStart < 0 || cell.formulaOpenEnd - cell.formulaStart < 6) return undefined;
  const how = attributes(bytes, nameEnd(bytes, cell.formulaStart + 1), cell.formulaOpenEnd - 1);
  const kind = how.find((one) => one.name === 't')?.value;
  const area = kind === 'array' || kind === 'dataTable' ? parseArea(how.find((one) => one.name === 'ref')?.value ?? '') : undefined;
  return area && (area.top !== area.bottom || area.left !== area.right) ? area : undefined;
}

/**
 * A value as it counts for a digest: numbers to 15 significant digits, which every spreadsheet keeps when it saves a file;
 * an empty text is a blank.
 */
export function canonical({ type, raw }: StoredValue): string {
  switch (type) {
    case 'n': {
      const number = Number(raw);
      return `n${raw.length < 15 ? number : Number(number.toPrecision(15))}`;
    }
    case 'b': return raw === '1' || raw === 'true' ? 'b1' : 'b0';
    case 'e': return `e${raw}`;
    default: return raw === '' ? '' : `t${plainControls(raw)}`;
  }
}

/** Finds, among areas that do not overlap, the one a cell lies in. */
export class AreaIndex {
  private readonly byColumn = new Map<number, { readonly top: number; readonly bottom: number; readonly mark: number }[]>();

  constructor(areas: readonly (readonly [Area, number])[]) {
    for (const [area, mark] of areas) {
      for (let column = area.left; column <= area.right; column++) {
        const list = this.byColumn.get(column) ?? [];
        list.push({ top: area.top, bottom: area.bottom, mark });
        this.byColumn.set(column, list);
      }
    }
    for (const list of this.byColumn.values()) list.sort((a, b) => a.top - b.top);
  }

  /** The mark given with the area, or -1. */
  at(row: number, column: number): number {
    const list = this.byColumn.get(column);
    if (!list) return -1;
    let low = 0;
    let high = list.length - 1;
    while (low <= high) {
      const middle = (low + high) >> 1;
      const one = list[middle];
      if (!one) return -1;
      if (row < one.top) high = middle - 1;
      else if (row > one.bottom) low = middle + 1;
      else return one.mark;
    }
    return -1;
  }
}
