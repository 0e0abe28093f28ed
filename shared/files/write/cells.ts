import { addressOf, parseAddress } from '../../sheet/formula/address';
import type { Cell } from '../../base/values';
import { isError } from '../../base/values';
import type { CellModel } from '../../sheet/workbook/model';
import { hasCustomCall, toFile } from '../formulas';
import { escapeCellText } from '../text';
import type { StyleTable } from './styleTable';

/** Characters of one cell (ISO/IEC 29500-1, 18.18.75 ST_Xstring as Excel limits it; from memory). */
export const LONGEST_TEXT = 32_767;
/** Errors the format knows; the younger ones are shown as #VALUE! until the next calculation. */
const FILE_ERRORS = new Set(['#NULL!', '#DIV/0!', '#VALUE!', '#REF!', '#NAME?', '#NUM!', '#N/A']);

/** Texts of all sheets, each once. */
export class SharedTexts {
  private readonly numbers = new Map<string, number>();
  private uses = 0;
  add(text: string): number {
    this.uses++;
    const known = this.numbers.get(text);
    if (known !== undefined) return known;
    this.numbers.set(text, this.numbers.size);
    return this.numbers.size - 1;
  }
  xml(): string {
    const items = [...this.numbers.keys()].map(
      (text) =>
        `<si><t${/^\s|\s$|\n/.test(text) ? ' xml:space="preserve"' : ''}>${escapeCellText(text)}</t></si>`,
    );
    return `<sst xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" count="${this.uses}" uniqueCount="${items.length}">${items.join('')}</sst>`;
  }
}

export interface CellWriting {
  readonly styles: StyleTable;
  readonly texts: SharedTexts;
  isDynamic: boolean;
  /** Is the formula proven to work with single cells? */
  readonly isSingle: (formula: string) => boolean;
}

interface Stored {
  readonly type: string;
  readonly value: string;
}
const stored = (value: Exclude<Cell, null> | undefined, texts: SharedTexts | undefined): Stored => {
  if (value === undefined) return { type: '', value: '' };
  if (typeof value === 'number')
    return Number.isFinite(value)
      ? { type: '', value: `<v>${value}</v>` }
      : { type: ' t="e"', value: '<v>#NUM!</v>' };
  if (typeof value === 'boolean') return { type: ' t="b"', value: `<v>${value ? 1 : 0}</v>` };
  if (isError(value))
    return { type: ' t="e"', value: `<v>${FILE_ERRORS.has(value.error) ? value.error : '#VALUE!'}</v>` };
  const text = value.slice(0, LONGEST_TEXT);
  return texts
    ? { type: ' t="s"', value: `<v>${texts.add(text)}</v>` }
    : { type: ' t="str"', value: `<v>${escapeCellText(text)}</v>` };
};

/**
 * One cell. A formula with a custom function, and one that may answer or work through more than one cell, is
 * stored as a dynamic array: cm="1" and the range it covers.
 */
export function cellXml(address: string, cell: CellModel, context: CellWriting): string {
  const style = context.styles.of(cell);
  const look = style === undefined ? '' : ` s="${style}"`;
  if (cell.formula === undefined) {
    const { type, value } = stored(cell.value === '' ? undefined : cell.value, context.texts);
    return value || look ? `<c r="${address}"${look}${type}${value ? `>${value}</c>` : '/>'}` : '';
  }
  const { type, value } = stored(cell.value, undefined);
  const text = escapeCellText(toFile(cell.formula));
  if (cell.spill === undefined && !hasCustomCall(cell.formula) && context.isSingle(cell.formula))
    return `<c r="${address}"${look}${type}><f>${text}</f>${value}</c>`;
  context.isDynamic = true;
  return `<c r="${address}"${look}${type} cm="1"><f t="array" ref="${covered(address, cell.spill)}">${text}</f>${value}</c>`;
}

const covered = (address: string, spill: readonly [number, number] | undefined): string => {
  const place = parseAddress(address);
  const [rows, columns] = spill ?? [1, 1];
  return place && rows * columns > 1
    ? `${address}:${addressOf(place.row + rows - 1, place.column + columns - 1)}`
    : address;
};

/** Rows in order, cells in order within them. */
export function rowsXml(
  cells: Readonly<Record<string, CellModel>>,
  heights: Readonly<Record<number, number>>,
  context: CellWriting,
): { readonly xml: string; readonly dimension: string } {
  const rows = new Map<number, (readonly [number, string, CellModel])[]>();
  let right = 0;
  for (const [address, cell] of Object.entries(cells)) {
    const place = parseAddress(address);
    if (!place) throw new Error(`${address} is not an address`);
    right = Math.max(right, place.column);
    const row = rows.get(place.row);
    if (row) row.push([place.column, address, cell]);
    else rows.set(place.row, [[place.column, address, cell]]);
  }
  for (const row of Object.keys(heights)) if (!rows.has(Number(row) - 1)) rows.set(Number(row) - 1, []);
  const order = [...rows.keys()].sort((a, b) => a - b);
  const xml = order
    .map((row) => {
      const height = heights[row + 1];
      const inner = (rows.get(row) ?? [])
        .sort(([a], [b]) => a - b)
        .map(([, address, cell]) => cellXml(address, cell, context))
        .join('');
      return `<row r="${row + 1}"${height === undefined ? '' : ` ht="${height}" customHeight="1"`}${inner ? `>${inner}</row>` : '/>'}`;
    })
    .join('');
  return { xml, dimension: order.length > 0 ? `A1:${addressOf(order.at(-1) ?? 0, right)}` : 'A1' };
}
