import type { CellModel, SheetModel, WorkbookModel } from '../../shared/sheet/workbook/model';
import { addressOf, parseAddress } from '../../shared/sheet/formula/address';

/**
 * A workbook as a person would go through it: column by column, with equal formulas that run down a column said
 * once. Two workbooks that differ in any cell, look, rule, width or chart differ in these lines.
 */
const REFERENCE = /(?<![\w.])(\$?[A-Z]{1,3})(\d+)(?![\w(.])/g;
/** A formula with its rows counted from its own: `$C5` in row 7 is `$C[-2]`. */
const relative = (formula: string, row: number): string =>
  formula.replace(REFERENCE, (_, column: string, at: string) => `${column}[${Number(at) - row}]`);

const number = (value: unknown): string =>
  typeof value === 'number'
    ? String(Number(value.toPrecision(8)))
    : typeof value === 'object' && value !== null
      ? JSON.stringify(value)
      : value === undefined
        ? '·'
        : String(value);

interface Placed extends CellModel {
  readonly row: number;
  readonly column: number;
}
const lookOf = ({ style, format, note, spill, look }: CellModel): string =>
  [style, format, note && `note ${note}`, spill && `spills ${spill.join('×')}`, look && JSON.stringify(look)]
    .filter(Boolean)
    .join(' | ');
const kindOf = (cell: Placed): string =>
  `${cell.column} ${lookOf(cell)} ${cell.formula === undefined ? '' : relative(cell.formula, cell.row + 1)}`;

function cellLines({ cells }: SheetModel): string[] {
  const placed = Object.entries(cells)
    .flatMap(([address, cell]): Placed[] => {
      const place = parseAddress(address);
      return place ? [{ ...cell, ...place }] : [];
    })
    .sort((a, b) => a.column - b.column || a.row - b.row);
  const runs: Placed[][] = [];
  for (const cell of placed) {
    const run = runs.at(-1);
    const last = run?.at(-1);
    if (run && last && last.row === cell.row - 1 && kindOf(last) === kindOf(cell)) run.push(cell);
    else runs.push([cell]);
  }
  return runs.flatMap((run) => {
    const [first] = run;
    if (!first) return [];
    const [from, to] = [addressOf(first.row, first.column), addressOf(run.at(-1)?.row ?? 0, first.column)];
    const look = lookOf(first);
    const values = run.map(({ value }) => number(value));
    return [
      `${from === to ? from : `${from}:${to}`}${look && ` [${look}]`}${first.formula === undefined ? '' : ` ${first.formula}`}`,
      ...(values.every((value) => value === '·') ? [] : [`  ${values.join(' ¦ ')}`]),
    ];
  });
}

export const sheetText = (sheet: SheetModel): unknown => {
  const { heights, validations = [], conditionals = [], charts = [], ...rest } = sheet;
  return {
    ...Object.fromEntries(
      Object.entries(rest)
        .filter(([key]) => key !== 'cells')
        .map(([key, value]) => [key, JSON.stringify(value)]),
    ),
    heights: JSON.stringify(heights),
    validations: validations.map((one) => JSON.stringify(one)),
    conditionals: conditionals.map((one) => JSON.stringify(one)),
    charts: charts.map((one) => JSON.stringify(one)),
    cells: cellLines(sheet),
  };
};
export const bookText = ({ title, names, settings, sheets }: WorkbookModel): unknown => ({
  title,
  settings,
  names: names.map(({ name, refersTo, comment = '' }) => `${name} ${refersTo} ${comment}`.trim()),
  sheets: sheets.map(sheetText),
});
