import type { Cell } from '../../../shared/base/values';
import { isError } from '../../../shared/base/values';
import { fits, formatReference, isWholeColumns, isWholeRows } from '../address';
import type { StandInArea, CellReads } from '../book';
import { fail } from '../failure';
import { asOneOf, asText, asWhole, readInput, shaped } from '../input';
import type { Env, ObjectNode } from '../node';
import { settled } from '../node';
import { conditionalFormatsNode } from './conditional';
import { locate, placeOf, rememberPlace, sheetById } from './find';
import { formatNode } from './format';
import { guardChange, guardContent } from './guard';
import { dataValidationNode } from './validation';
import { worksheetNode } from './worksheet';

/** Above this many cells Excel answers null instead of an array. */
const READ_LIMIT = 5_000_000;

const shown = (cell: Cell): number | string | boolean =>
  cell === null ? '' : isError(cell) ? cell.error : cell;
const valueType = (cell: Cell): string => {
  if (cell === null || cell === '') return 'Empty';
  if (isError(cell)) return 'Error';
  return { number: 'Double', string: 'String', boolean: 'Boolean' }[
    typeof cell as 'number' | 'string' | 'boolean'
  ];
};

const reader =
  (env: Env, sheet: string, area: StandInArea) =>
  async <K extends keyof CellReads, T>(what: K, show: (cells: CellReads[K]) => T): Promise<T | null> => {
    if (area.rows * area.columns > READ_LIMIT || isWholeRows(area) || isWholeColumns(area)) return null;
    const book = what === 'formats' ? env.book : await settled(env);
    return show(await book.read(sheet, area, what));
  };

async function writeCells(env: Env, sheet: string, area: StandInArea, given: unknown): Promise<void> {
  const lines = shaped(given, area);
  await guardContent(env.book, sheet, area);
  const needsFormats = lines.some((line) => line.some((cell) => typeof cell === 'string' && cell !== ''));
  const formats = needsFormats ? await env.book.read(sheet, area, 'formats') : [];
  const cells = lines.map((line, r) => line.map((cell, c) => readInput(cell, formats[r]?.[c] === '@')));
  await env.book.write(sheet, area, cells);
}

async function writeFormats(env: Env, sheet: string, area: StandInArea, given: unknown): Promise<void> {
  const lines = shaped(given, area).map((line) =>
    line.map((format) =>
      format === null
        ? undefined
        : typeof format === 'string'
          ? format || 'General'
          : fail('InvalidArgument', 'A number format is a text.'),
    ),
  );
  await guardChange(env.book, sheet, 'format');
  await env.book.setNumberFormats(sheet, area, lines);
}

const scalarsOf = (env: Env, sheet: string, area: StandInArea): ObjectNode['scalars'] => {
  const read = reader(env, sheet, area);
  const isOneCell = area.rows === 1 && area.columns === 1;
  return {
    Address: async () => formatReference((await sheetById(env.book, sheet)).name, area),
    CellCount: () => (area.rows * area.columns > 2 ** 31 - 1 ? -1 : area.rows * area.columns),
    RowCount: () => area.rows,
    ColumnCount: () => area.columns,
    RowIndex: () => area.row,
    ColumnIndex: () => area.column,
    Values: () => read('values', (cells) => cells.map((line) => line.map(shown))),
    ValueTypes: () => read('values', (cells) => cells.map((line) => line.map(valueType))),
    Formulas: () => read('formulas', (cells) => cells.map((line) => line.map(shown))),
    Text: () => read('text', (cells) => cells),
    NumberFormat: () => read('formats', (cells) => cells),
    HasSpill: async () => {
      const book = await settled(env);
      if (isOneCell) return (await book.spillArea(sheet, area.row, area.column)) !== undefined;
      return null;
    },
  };
};

/** Cells reached from a range, relative to its first cell; outside the sheet there is nothing. */
const moved = (env: Env, sheet: string, area: StandInArea): ObjectNode =>
  fits(area)
    ? rangeNode(env, sheet, area)
    : fail('InvalidArgument', 'The range would lie outside the sheet.');

const navigationOf = (env: Env, sheet: string, area: StandInArea): NonNullable<ObjectNode['methods']> => ({
  GetCell: (row, column) =>
    moved(env, sheet, {
      row: area.row + asWhole(row, 'row'),
      column: area.column + asWhole(column, 'column'),
      rows: 1,
      columns: 1,
    }),
  GetRow: (row) => moved(env, sheet, { ...area, row: area.row + asWhole(row, 'row'), rows: 1 }),
  GetColumn: (column) =>
    moved(env, sheet, { ...area, column: area.column + asWhole(column, 'column'), columns: 1 }),
  GetLastRow: () => moved(env, sheet, { ...area, row: area.row + area.rows - 1, rows: 1 }),
  GetResizedRange: (rows, columns) =>
    moved(env, sheet, {
      ...area,
      rows: area.rows + asWhole(rows, 'rows'),
      columns: area.columns + asWhole(columns, 'columns'),
    }),
  GetAbsoluteResizedRange: (rows, columns) =>
    moved(env, sheet, { ...area, rows: asWhole(rows, 'rows'), columns: asWhole(columns, 'columns') }),
  GetOffsetRange: (rows, columns) =>
    moved(env, sheet, {
      ...area,
      row: area.row + asWhole(rows, 'rows'),
      column: area.column + asWhole(columns, 'columns'),
    }),
  /** The smallest range around this one and another on the same sheet. */
  GetBoundingRect: async (other) => {
    const found = placeOf(other) ?? (await locate(env.book, sheet, asText(other, 'anotherRange')));
    if (found.sheet !== sheet) return fail('InvalidArgument', 'The other range is on another sheet.');
    const [row, column] = [Math.min(area.row, found.area.row), Math.min(area.column, found.area.column)];
    return moved(env, sheet, {
      row,
      column,
      rows: Math.max(area.row + area.rows, found.area.row + found.area.rows) - row,
      columns: Math.max(area.column + area.columns, found.area.column + found.area.columns) - column,
    });
  },
  GetUsedRangeOrNullObject: async (valuesOnly) => {
    const used = await (await settled(env)).usedArea(sheet, valuesOnly === true);
    const found = used && intersection(used, area);
    return found ? rangeNode(env, sheet, found) : null;
  },
  GetSpillingToRangeOrNullObject: async () => {
    if (area.rows * area.columns !== 1)
      return fail('InvalidArgument', 'Ask one cell for the range it spills to.');
    const spill = await (await settled(env)).spillArea(sheet, area.row, area.column);
    return spill ? rangeNode(env, sheet, spill) : null;
  },
  GetSpillParentOrNullObject: async () => {
    if (area.rows * area.columns !== 1)
      return fail('InvalidArgument', 'Ask one cell for the cell that spills into it.');
    const parent = await (await settled(env)).spillParent(sheet, area.row, area.column);
    return parent ? rangeNode(env, sheet, { ...parent, rows: 1, columns: 1 }) : null;
  },
});

export function intersection(a: StandInArea, b: StandInArea): StandInArea | undefined {
  const row = Math.max(a.row, b.row);
  const column = Math.max(a.column, b.column);
  const rows = Math.min(a.row + a.rows, b.row + b.rows) - row;
  const columns = Math.min(a.column + a.columns, b.column + b.columns) - column;
  return rows > 0 && columns > 0 ? { row, column, rows, columns } : undefined;
}

const actionsOf = (env: Env, sheet: string, area: StandInArea): NonNullable<ObjectNode['methods']> => ({
  Select: () => env.book.select(sheet, area),
  Clear: async (applyTo) => {
    const what = asOneOf(applyTo ?? 'All', ['All', 'Contents', 'Formats'], 'applyTo');
    await (what === 'Formats' ? guardChange(env.book, sheet, 'format') : guardContent(env.book, sheet, area));
    await env.book.clear(sheet, area, what);
  },
  Merge: async (across) => {
    await guardChange(env.book, sheet, 'structure');
    const pieces =
      across === true
        ? Array.from({ length: area.rows }, (_, i) => ({ ...area, row: area.row + i, rows: 1 }))
        : [area];
    for (const piece of pieces) await env.book.merge(sheet, piece);
  },
  Unmerge: async () => {
    await guardChange(env.book, sheet, 'structure');
    await env.book.unmerge(sheet, area);
  },
});

export function rangeNode(env: Env, sheet: string, area: StandInArea): ObjectNode {
  let reference: string | undefined;
  const write = (given: unknown): Promise<void> => writeCells(env, sheet, area, given);
  const node: ObjectNode = {
    type: 'Range',
    identity: () => (reference === undefined ? {} : { _ReferenceId: reference }),
    scalars: scalarsOf(env, sheet, area),
    setters: {
      Values: write,
      Formulas: write,
      NumberFormat: (given) => writeFormats(env, sheet, area, given),
    },
    links: {
      Worksheet: () => worksheetNode(env, sheet),
      Format: () => formatNode(env, sheet, area),
      DataValidation: () => dataValidationNode(env, sheet, area),
      ConditionalFormats: () => conditionalFormatsNode(env, sheet, area),
    },
    methods: {
      ...navigationOf(env, sheet, area),
      ...actionsOf(env, sheet, area),
      // Excel's client asks this before it hands over a large array in pieces.
      _ValidateArraySize: (rows, columns) => {
        if (asWhole(rows, 'rows') !== area.rows || asWhole(columns, 'columns') !== area.columns)
          fail('InvalidArgument', 'The array is not as large as the range.');
      },
      // A kept range stays the same cells in later batches, whatever the call that found it would find then.
      _KeepReference: () => {
        reference ??= `range:${env.nextReference++}`;
        env.references.set(reference, node);
      },
      _ReleaseReference: () => {
        if (reference !== undefined) env.references.delete(reference);
      },
    },
  };
  return rememberPlace(node, { sheet, area });
}
