import type { IRange, IStyleData } from '@univerjs/core';
import { HorizontalAlign, WrapStrategy } from '@univerjs/core';
import type { UniverBook } from '../../univer/book';
import { hex } from '../../univer/book/formats';
import { element } from '../frame/elements';

/**
 * A sheet on paper, through the browser's own printing: its values as they are drawn, with looks, merged cells
 * and the page set-up of the workbook. Printed to a file it is a PDF.
 */
const MOST_CELLS = 60_000;
/** A4 between its margins, in pixels; every sheet is one page wide. */
const PAPER = { landscape: 1040, portrait: 715 };
const SMALLEST = 0.3;

const SIDES = [
  ['t', 'top'],
  ['r', 'right'],
  ['b', 'bottom'],
  ['l', 'left'],
] as const;
const styleText = (style: IStyleData): string =>
  [
    style.bg?.rgb ? `background:${hex(style.bg.rgb)}` : '',
    style.cl?.rgb ? `color:${hex(style.cl.rgb)}` : '',
    style.bl === 1 ? 'font-weight:bold' : '',
    style.it === 1 ? 'font-style:italic' : '',
    style.fs ? `font-size:${style.fs}pt` : '',
    style.ht === HorizontalAlign.RIGHT ? 'text-align:right' : '',
    style.ht === HorizontalAlign.CENTER ? 'text-align:center' : '',
    style.ht === HorizontalAlign.LEFT ? 'text-align:left' : '',
    style.tb === WrapStrategy.WRAP ? 'white-space:normal' : '',
    ...SIDES.map(([side, name]) => {
      const line = style.bd?.[side];
      return line?.s ? `border-${name}:1px solid ${hex(line.cl.rgb) || '#888'}` : '';
    }),
  ]
    .filter(Boolean)
    .join(';');

interface Merged {
  readonly starts: ReadonlyMap<string, IRange>;
  readonly covered: ReadonlySet<string>;
}
function mergedOf(ranges: readonly IRange[]): Merged {
  const starts = new Map<string, IRange>();
  const covered = new Set<string>();
  for (const range of ranges) {
    starts.set(`${range.startRow},${range.startColumn}`, range);
    for (let r = range.startRow; r <= range.endRow; r++)
      for (let c = range.startColumn; c <= range.endColumn; c++)
        if (r !== range.startRow || c !== range.startColumn) covered.add(`${r},${c}`);
  }
  return { starts, covered };
}

interface Size {
  readonly rows: number;
  readonly columns: number;
}

function lineOf(open: UniverBook, sheet: string, row: number, size: Size, merged: Merged): HTMLElement {
  const own = open.context.sheet(sheet);
  const line = document.createElement('tr');
  line.style.height = `${own.getRowHeight(row)}px`;
  for (let column = 0; column < size.columns; column++) {
    if (merged.covered.has(`${row},${column}`)) continue;
    const cell = document.createElement('td');
    const value = open.cells.value(sheet, row, column);
    cell.textContent = open.cells.text(sheet, row, column);
    cell.style.cssText = styleText(own.getComposedCellStyle(row, column) as IStyleData);
    if (typeof value === 'number' && cell.style.textAlign === '') cell.style.textAlign = 'right';
    const range = merged.starts.get(`${row},${column}`);
    if (range) {
      cell.colSpan = range.endColumn - range.startColumn + 1;
      cell.rowSpan = range.endRow - range.startRow + 1;
    }
    line.append(cell);
  }
  return line;
}

function sizeOf(open: UniverBook, sheet: string): Size {
  const used = open.cells.usedArea(sheet, false);
  const size = used
    ? { rows: used.row + used.rows, columns: used.column + used.columns }
    : { rows: 1, columns: 1 };
  if (size.rows * size.columns > MOST_CELLS)
    throw new Error(
      'This sheet is too large to print from here. Save it and print it from a spreadsheet program.',
    );
  return size;
}

function columnsOf(open: UniverBook, sheet: string, count: number): HTMLElement {
  const columns = document.createElement('colgroup');
  for (let column = 0; column < count; column++) {
    const one = document.createElement('col');
    one.style.width = `${open.context.sheet(sheet).getColumnWidth(column)}px`;
    columns.append(one);
  }
  return columns;
}

const widthOf = (open: UniverBook, sheet: string, count: number): number =>
  Array.from({ length: count }, (_, i) => open.context.sheet(sheet).getColumnWidth(i)).reduce(
    (sum, width) => sum + width,
    0,
  );

/** Lays the sheet out in the page's own print area. */
export async function layOutForPrint(open: UniverBook, sheet: string): Promise<void> {
  const size = sizeOf(open, sheet);
  const merged = mergedOf(open.context.sheet(sheet).getMergeData());
  const { landscape, titleRows } = await open.book.page(sheet);
  const { breaksAbove = [] } = open.beside.of(sheet).print ?? {};
  const head = document.createElement('thead');
  const body = document.createElement('tbody');
  for (let row = 0; row < size.rows; row++) {
    const line = lineOf(open, sheet, row, size, merged);
    if (breaksAbove.includes(row + 1)) line.style.breakBefore = 'page';
    const repeats = titleRows !== undefined && row >= titleRows[0] && row <= titleRows[1];
    (repeats ? head : body).append(line);
  }
  const table = document.createElement('table');
  table.append(columnsOf(open, sheet, size.columns), head, body);
  const width = widthOf(open, sheet, size.columns);
  const paper = landscape ? PAPER.landscape : PAPER.portrait;
  table.style.width = `${width}px`;
  if (width > paper) table.style.zoom = String(Math.max(SMALLEST, paper / width));
  const style = document.createElement('style');
  style.textContent = `@page { size: A4 ${landscape ? 'landscape' : 'portrait'}; margin: 10mm; }`;
  element('print-area', HTMLElement).replaceChildren(style, table);
}

export async function printSheet(open: UniverBook, sheet: string): Promise<void> {
  await layOutForPrint(open, sheet);
  window.print();
}
