// Long: the stand-in for one object of Excel's model, member by member.
import type { Cell, Grid } from '../../shared/base/values';
import { isError, isGrid } from '../../shared/base/values';
import { contains } from './address';
import { withSetting } from './settings';
import type { StandInArea, StandInBook, CellReads, NameState, Selection, TableState } from './book';
import type { MemoryCell } from './memorySheet';
import { columnOfKey, hasContent, keyOf, MemorySheet, rowOfKey } from './memorySheet';

/** A book in memory, for tests: it stores all a sheet can say; what formulas give comes from outside. */

export interface MemoryFormula {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly formula: string;
}
export interface Calculation {
  readonly formulas: readonly MemoryFormula[];
  /** By sheet name; null for blank. */
  readonly valueAt: (sheet: string, row: number, column: number) => Cell;
  readonly names: readonly NameState[];
  readonly tables: readonly TableState[];
  /** Stores what a formula gives; a grid spills. */
  readonly give: (cell: MemoryFormula, value: Cell | Grid) => void;
}
export type Calculate = (calculation: Calculation) => void;

const text = (cell: Cell): string => {
  if (cell === null) return '';
  if (isError(cell)) return cell.error;
  return typeof cell === 'boolean' ? String(cell).toUpperCase() : String(cell);
};

const READ: {
  readonly [K in keyof CellReads]: (
    sheet: MemorySheet,
    row: number,
    column: number,
    cell: MemoryCell | undefined,
  ) => CellReads[K][number][number];
} = {
  values: (_sheet, _row, _column, cell) => cell?.value ?? null,
  formulas: (_sheet, _row, _column, cell) => cell?.formula ?? cell?.value ?? null,
  formats: (sheet, row, column) => sheet.numberFormat(row, column),
  text: (_sheet, _row, _column, cell) => text(cell?.value ?? null),
};

export interface MemoryBook extends StandInBook {
  /** How many undo steps the changes so far make. */
  readonly undoSteps: () => number;
  /** How often calculation ran. */
  readonly calculations: () => number;
}

interface State {
  sheets: MemorySheet[];
  active: string;
  selection: Selection;
  tables: TableState[];
  names: NameState[];
  settings: Readonly<Record<string, unknown>>;
  isDirty: boolean;
  nextId: number;
  undoSteps: number;
  calculations: number;
}

type Tools = State & { readonly sheet: (id: string) => MemorySheet };

function spill(sheet: MemorySheet, cell: MemoryFormula, grid: Grid): void {
  const target = sheet.touch(cell.row, cell.column);
  const places = grid
    .flatMap((line, r) => line.map((value, c) => ({ row: cell.row + r, column: cell.column + c, value })))
    .slice(1);
  const isBlocked = places.some(({ row, column }) => {
    const there = sheet.at(row, column);
    return there !== undefined && hasContent(there);
  });
  if (isBlocked) {
    target.value = { error: '#SPILL!' };
    return;
  }
  target.value = grid[0]?.[0] ?? null;
  for (const { row, column, value } of places)
    Object.assign(sheet.touch(row, column), { value, spilledFrom: keyOf(cell.row, cell.column) });
}

function recalculate(state: State, calculate: Calculate): void {
  state.calculations += 1;
  state.isDirty = false;
  const byName = new Map(state.sheets.map((s) => [s.state.name.toLowerCase(), s]));
  const formulas: MemoryFormula[] = [];
  for (const sheet of state.sheets)
    for (const [key, cell] of sheet.cells) {
      if (cell.spilledFrom !== undefined) {
        cell.value = null;
        delete cell.spilledFrom;
      }
      if (cell.formula !== undefined)
        formulas.push({
          sheet: sheet.state.name,
          row: rowOfKey(key),
          column: columnOfKey(key),
          formula: cell.formula,
        });
    }
  calculate({
    formulas,
    names: state.names,
    tables: state.tables,
    valueAt: (name, row, column) => byName.get(name.toLowerCase())?.at(row, column)?.value ?? null,
    give: (cell, value) => {
      const sheet = byName.get(cell.sheet.toLowerCase());
      if (sheet) spill(sheet, cell, isGrid(value) ? value : [[value]]);
    },
  });
}

const sheetMembers = (tools: Tools, ids: (prefix: string) => string) => ({
  sheets: () => tools.sheets.map((s) => s.state),
  addSheet: (name: string) => {
    const id = ids('{sheet');
    tools.sheets.push(
      new MemorySheet({ id: `${id}}`, name, visibility: 'Visible', tabColor: '', showGridlines: true }),
    );
    return `${id}}`;
  },
  changeSheet: (id: string, { position, ...patch }: Parameters<StandInBook['changeSheet']>[1]) => {
    const sheet = tools.sheet(id);
    sheet.state = { ...sheet.state, ...patch };
    if (position === undefined) return;
    tools.sheets = tools.sheets.filter((s) => s !== sheet);
    tools.sheets.splice(position, 0, sheet);
  },
  deleteSheet: (id: string) => {
    tools.sheets = tools.sheets.filter((s) => s.state.id !== id);
    tools.tables = tools.tables.filter((t) => t.sheet !== id);
    tools.names = tools.names.filter((n) => n.scope !== id);
    if (tools.active === id) tools.active = tools.sheets[0]?.state.id ?? '';
    if (tools.selection.sheet === id)
      tools.selection = { sheet: tools.active, area: { row: 0, column: 0, rows: 1, columns: 1 } };
  },
  activeSheet: () => tools.active,
  activate: (id: string) => {
    tools.active = id;
    tools.selection = { sheet: id, area: { row: 0, column: 0, rows: 1, columns: 1 } };
  },
  selection: () => tools.selection,
  select: (sheet: string, area: StandInArea) => {
    tools.active = sheet;
    tools.selection = { sheet, area };
  },
});

const cellMembers = (tools: Tools) => ({
  read: <K extends keyof CellReads>(id: string, area: StandInArea, what: K): CellReads[K] => {
    const sheet = tools.sheet(id);
    return sheet.map(area, (row, column, cell) => READ[what](sheet, row, column, cell)) as CellReads[K];
  },
  write: (id: string, area: StandInArea, cells: Parameters<StandInBook['write']>[2]) => {
    tools.sheet(id).write(area, cells);
    tools.isDirty = true;
  },
  setNumberFormats: (
    id: string,
    area: StandInArea,
    formats: Parameters<StandInBook['setNumberFormats']>[2],
  ) => {
    tools.sheet(id).setNumberFormats(area, formats);
  },
  clear: (id: string, area: StandInArea, what: 'All' | 'Contents' | 'Formats') => {
    tools.sheet(id).clear(area, what);
    tools.isDirty = true;
  },
  usedArea: (id: string, valuesOnly: boolean) => tools.sheet(id).used(valuesOnly),
  spillArea: (id: string, row: number, column: number): StandInArea | undefined => {
    const sheet = tools.sheet(id);
    const filled = [...sheet.cells]
      .filter(([, cell]) => cell.spilledFrom === keyOf(row, column))
      .map(([key]) => key);
    if (filled.length === 0) return undefined;
    const rows = filled.map(rowOfKey).reduce((a, b) => Math.max(a, b), row) - row + 1;
    return {
      row,
      column,
      rows,
      columns: filled.map(columnOfKey).reduce((a, b) => Math.max(a, b), column) - column + 1,
    };
  },
  spillParent: (id: string, row: number, column: number) => {
    const sheet = tools.sheet(id);
    const here = keyOf(row, column);
    const from =
      sheet.cells.get(here)?.spilledFrom ??
      ([...sheet.cells.values()].some(({ spilledFrom }) => spilledFrom === here) ? here : undefined);
    return from === undefined ? undefined : { row: rowOfKey(from), column: columnOfKey(from) };
  },
  validation: (id: string, area: StandInArea) => tools.sheet(id).at(area.row, area.column)?.validation,
  setValidation: (id: string, area: StandInArea, rule: Parameters<StandInBook['setValidation']>[2]) => {
    const sheet = tools.sheet(id);
    for (const [row, line] of sheet.map(area, (r) => r).entries())
      for (const column of line.keys()) {
        const cell = sheet.touch(area.row + row, area.column + column);
        if (rule) cell.validation = rule;
        else delete cell.validation;
      }
  },
  note: (id: string, row: number, column: number) => tools.sheet(id).at(row, column)?.note ?? '',
  setNote: (id: string, row: number, column: number, note: string) => {
    const cell = tools.sheet(id).touch(row, column);
    if (note === '') delete cell.note;
    else cell.note = note;
  },
});

const lookMembers = (tools: Tools) => ({
  format: (id: string, area: StandInArea) => tools.sheet(id).format(area),
  setFormat: (id: string, area: StandInArea, patch: Parameters<StandInBook['setFormat']>[2]) => {
    tools.sheet(id).setFormat(area, patch);
  },
  border: (id: string, area: StandInArea, edge: Parameters<StandInBook['border']>[2]) =>
    tools.sheet(id).at(area.row, area.column)?.borders?.[edge] ?? {
      style: 'None' as const,
      color: '#000000',
    },
  setBorder: (
    id: string,
    area: StandInArea,
    edge: Parameters<StandInBook['setBorder']>[2],
    border: Parameters<StandInBook['setBorder']>[3],
  ) => {
    const sheet = tools.sheet(id);
    for (let r = area.row; r < area.row + area.rows; r++)
      for (let c = area.column; c < area.column + area.columns; c++) {
        const cell = sheet.touch(r, c);
        cell.borders = { ...cell.borders, [edge]: border };
      }
  },
  autofitColumns: (id: string, area: StandInArea) => {
    const sheet = tools.sheet(id);
    for (let c = area.column; c < Math.min(area.column + area.columns, 256); c++) {
      const lengths = [...sheet.cells]
        .filter(([key]) => columnOfKey(key) === c)
        .map(([, cell]) => text(cell.value).length);
      if (lengths.length > 0) sheet.columnWidths.set(c, lengths.reduce((a, b) => Math.max(a, b)) * 5.5 + 6);
    }
  },
  merges: (id: string) => tools.sheet(id).merges,
  merge: (id: string, area: StandInArea) => {
    const sheet = tools.sheet(id);
    sheet.merges = [...sheet.merges.filter((m) => !contains(area, m)), area];
  },
  unmerge: (id: string, area: StandInArea) => {
    const sheet = tools.sheet(id);
    sheet.merges = sheet.merges.filter((m) => !contains(area, m));
  },
});

const replaced = <T extends { readonly id: string }>(list: readonly T[], item: T): T[] =>
  list.some((x) => x.id === item.id) ? list.map((x) => (x.id === item.id ? item : x)) : [...list, item];

const objectMembers = (tools: Tools, ids: (prefix: string) => string) => ({
  tables: () => tools.tables,
  addTable: (sheet: string, area: StandInArea, name: string) => {
    const id = ids('table');
    tools.tables = [
      ...tools.tables,
      { id, name, sheet, area, style: 'TableStyleMedium2', showTotals: false },
    ];
    return id;
  },
  changeTable: (id: string, patch: Parameters<StandInBook['changeTable']>[1]) => {
    tools.tables = tools.tables.map((t) => {
      if (t.id !== id) return t;
      const grown = Number(patch.showTotals ?? t.showTotals) - Number(t.showTotals);
      return { ...t, ...patch, area: { ...t.area, rows: t.area.rows + grown } };
    });
  },
  deleteTable: (id: string) => {
    tools.tables = tools.tables.filter((t) => t.id !== id);
  },
  names: () => tools.names,
  putName: (name: NameState) => {
    tools.names = [...tools.names.filter((n) => n.name !== name.name || n.scope !== name.scope), name];
    tools.isDirty = true;
  },
  deleteName: (name: string, scope?: string) => {
    tools.names = tools.names.filter((n) => n.name !== name || n.scope !== scope);
  },
  settings: () => tools.settings,
  putSetting: (key: string, value: unknown) => {
    tools.settings = withSetting(tools.settings, key, value);
  },
  conditionals: (id: string) => tools.sheet(id).conditionals,
  putConditional: (id: string, rule: Parameters<StandInBook['putConditional']>[1]) => {
    const sheet = tools.sheet(id);
    sheet.conditionals = replaced(sheet.conditionals, rule);
  },
  deleteConditional: (id: string, rule: string) => {
    const sheet = tools.sheet(id);
    sheet.conditionals = sheet.conditionals.filter((c) => c.id !== rule);
  },
  charts: (id: string) => tools.sheet(id).charts,
  putChart: (id: string, chart: Parameters<StandInBook['putChart']>[1]) => {
    const sheet = tools.sheet(id);
    sheet.charts = replaced(sheet.charts, chart);
  },
  deleteChart: (id: string, chart: string) => {
    const sheet = tools.sheet(id);
    sheet.charts = sheet.charts.filter((c) => c.id !== chart);
  },
  freeze: (id: string) => tools.sheet(id).freeze,
  setFreeze: (id: string, rows: number, columns: number) => {
    tools.sheet(id).freeze = { rows, columns };
  },
  protection: (id: string) => tools.sheet(id).protection,
  setProtection: (id: string, state: Parameters<StandInBook['setProtection']>[1]) => {
    tools.sheet(id).protection = state;
  },
  page: (id: string) => tools.sheet(id).page,
  setPage: (id: string, patch: Parameters<StandInBook['setPage']>[1]) => {
    const sheet = tools.sheet(id);
    sheet.page = { ...sheet.page, ...patch };
  },
});

/** Starts with one empty sheet, Sheet1. */
export function createMemoryBook(calculate: Calculate = () => undefined): MemoryBook {
  const first = new MemorySheet({
    id: '{sheet1}',
    name: 'Sheet1',
    visibility: 'Visible',
    tabColor: '',
    showGridlines: true,
  });
  const state: State = {
    sheets: [first],
    active: '{sheet1}',
    selection: { sheet: '{sheet1}', area: { row: 0, column: 0, rows: 1, columns: 1 } },
    tables: [],
    names: [],
    settings: {},
    isDirty: false,
    nextId: 2,
    undoSteps: 0,
    calculations: 0,
  };
  const tools: Tools = Object.assign(state, {
    sheet: (id: string): MemorySheet => {
      const found = state.sheets.find((s) => s.state.id === id);
      if (!found) throw new Error(`no sheet ${id}`);
      return found;
    },
  });
  const ids = (prefix: string): string => `${prefix}${state.nextId++}`;
  const settle = (): void => {
    if (state.isDirty) recalculate(state, calculate);
  };
  return {
    ...sheetMembers(tools, ids),
    ...cellMembers(tools),
    ...lookMembers(tools),
    ...objectMembers(tools, ids),
    group: async (work) => {
      state.undoSteps += 1;
      return work();
    },
    settle,
    calculate: () => {
      state.isDirty = true;
      settle();
    },
    undoSteps: () => state.undoSteps,
    calculations: () => state.calculations,
  };
}
