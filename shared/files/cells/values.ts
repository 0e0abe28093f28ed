import type { Area } from '../../sheet/formula/address';
import { parseArea } from '../../sheet/formula/address';
import { Cells } from './cells';
import { storedValue } from './stored';
import type { CellSpan } from './cells';
import type { StoredValue } from './stored';
import type { SharedStrings } from './strings';
import { revealCellText } from '../text';
import type { Element } from '../package/xml';
import { attributes, nameEnd, TreeReader } from '../package/xml';

const CELLS_PER_STEP = 20_000;
export type VisitCell = (cell: CellSpan, value: StoredValue | undefined) => void;

/**
 * Every cell of a sheet in file order; the visitor reads of it what it needs. Returns the tree of what stands
 * around the cells.
 */
export function* eachSpan(bytes: Uint8Array, visit: (cell: CellSpan) => void): Generator<number, Element> {
  const tree = new TreeReader(bytes, 'sheetData');
  for (let data = tree.run(); data; data = tree.run()) {
    const cells = new Cells(bytes, data.openEnd);
    for (let count = 0; cells.next(); count++) {
      visit(cells.cell);
      if (count % CELLS_PER_STEP === CELLS_PER_STEP - 1) yield cells.cell.end / bytes.length;
    }
    tree.seek(cells.closeAt);
  }
  return tree.whole();
}

/** The value of a cell with shared texts resolved, so that type s does not appear. */
export function resolvedValue(
  bytes: Uint8Array,
  cell: CellSpan,
  strings: SharedStrings,
): StoredValue | undefined {
  const value = storedValue(bytes, cell);
  return value?.type === 's' ? { type: 'str', raw: strings.text(Number(value.raw)) } : value;
}

export const eachCell = (
  bytes: Uint8Array,
  strings: SharedStrings,
  visit: VisitCell,
): Generator<number, Element> =>
  eachSpan(bytes, (cell) => {
    visit(cell, resolvedValue(bytes, cell, strings));
  });

/** The cells a stored array formula or what-if table fills beyond its own; undefined when it fills one. */
export function filledArea(bytes: Uint8Array, cell: CellSpan): Area | undefined {
  if (cell.formulaStart < 0 || cell.formulaOpenEnd - cell.formulaStart < 6) return undefined;
  const how = attributes(bytes, nameEnd(bytes, cell.formulaStart + 1), cell.formulaOpenEnd - 1);
  const kind = how.find((one) => one.name === 't')?.value;
  const area =
    kind === 'array' || kind === 'dataTable'
      ? parseArea(how.find((one) => one.name === 'ref')?.value ?? '')
      : undefined;
  return area && (area.top !== area.bottom || area.left !== area.right) ? area : undefined;
}

/**
 * A value as it counts for a digest: numbers to 15 significant digits, which every spreadsheet keeps when it
 * saves a file; an empty text is a blank.
 */
export function canonical({ type, raw }: StoredValue): string {
  switch (type) {
    case 'n': {
      const number = Number(raw);
      return `n${raw.length < 15 ? number : Number(number.toPrecision(15))}`;
    }
    case 'b':
      return raw === '1' || raw === 'true' ? 'b1' : 'b0';
    case 'e':
      return `e${raw}`;
    default:
      return raw === '' ? '' : `t${revealCellText(raw)}`;
  }
}

const isDigit = (byte: number | undefined): boolean => byte !== undefined && byte >= 0x30 && byte <= 0x39;

const ZERO = 0x30;
const POINT = 0x2e;
const MINUS = 0x2d;

/**
 * A leading 0 stands alone or in front of a point; 0.001 at the smallest, far above what is printed with an
 * exponent.
 */
const startsPlain = (bytes: Uint8Array, from: number, to: number): boolean =>
  bytes[from] !== ZERO ||
  to - from === 1 ||
  (bytes[from + 1] === POINT && (bytes[from + 2] !== ZERO || bytes[from + 3] !== ZERO));

/** Is the number stored exactly as its canonical form prints it? True of nearly all, and saves reading it. */
export function isPlainNumber(bytes: Uint8Array, from: number, to: number): boolean {
  if (to - from > 14) return false;
  const first = bytes[from] === MINUS ? from + 1 : from;
  if (
    !isDigit(bytes[first]) ||
    !startsPlain(bytes, first, to) ||
    (first > from && bytes[first] === ZERO && to - first === 1)
  )
    return false;
  let points = 0;
  for (let i = first; i < to; i++) {
    if (bytes[i] === POINT && points === 0) points++;
    else if (!isDigit(bytes[i])) return false;
  }
  const last = bytes[to - 1];
  return points === 0 || (last !== ZERO && last !== POINT);
}

/** Finds, among areas that do not overlap, the one a cell lies in. */
export class AreaIndex {
  private readonly byColumn = new Map<
    number,
    { readonly top: number; readonly bottom: number; readonly mark: number }[]
  >();

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
