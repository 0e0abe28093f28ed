import type { Area } from '../formula/address';
import { addressOf, parseAddress } from '../formula/address';
import type { EagerFunction, FindFunction, Operand } from '../formula';
import { callsOf, evaluateBy } from '../formula';
import { evaluateTree } from '../formula/evaluate';
import type { Cell, Grid } from '../../base/values';
import { isGrid } from '../../base/values';
import type { FormulaNode } from './graph';
import type { Target } from './places';
import { formulaNodes, inOrder } from './graph';
import { Places, targetOf } from './places';
import type { CellModel, SheetModel, WorkbookModel } from './model';

export interface Calculated {
  readonly model: WorkbookModel;
  /** What did not come out: circles, references to nowhere, answers of another size than the model says. */
  readonly faults: readonly string[];
}

const at = (node: FormulaNode): string => `${node.sheet.name} ${node.address}`;

/** What the cells of a sheet hold so far, by row and column. */
type Values = Cell[][];
const valuesOf = (sheet: SheetModel): Values => {
  const values: Values = [];
  for (const address in sheet.cells) {
    const value = sheet.cells[address]?.value;
    const place = value === undefined ? undefined : parseAddress(address);
    if (place) (values[place.row] ??= [])[place.column] = value ?? null;
  }
  return values;
};

/** A formula alone in its cell that points at a blank shows 0. */
const shownValue = (cell: Cell | undefined): Exclude<Cell, null> =>
  cell === null || cell === undefined ? 0 : cell;

function put(values: Values, node: FormulaNode, answer: Operand): string | undefined {
  const { top, bottom, left, right } = node.area;
  const rows = bottom - top + 1;
  const columns = right - left + 1;
  if (!isGrid(answer)) {
    (values[top] ??= [])[left] = shownValue(answer);
    return rows * columns > 1 ? `${at(node)} gives one cell, the model says ${rows} × ${columns}` : undefined;
  }
  for (let row = top; row <= bottom; row++)
    for (let column = left; column <= right; column++)
      (values[row] ??= [])[column] = shownValue(answer[row - top]?.[column - left]);
  const width = answer[0]?.length ?? 0;
  return answer.length === rows && width === columns
    ? undefined
    : `${at(node)} gives ${answer.length} × ${width} cells, the model says ${rows} × ${columns}`;
}

/** Values of a model's cells while it is calculated. */
class Reading {
  private readonly values: ReadonlyMap<SheetModel, Values>;
  /** Ranges read before: what a range holds is calculated before whoever names it, so it is read once. */
  private readonly ranges = new Map<SheetModel, Map<string, Grid>>();
  private readonly byTarget = new Map<Target, Grid>();

  constructor(model: WorkbookModel) {
    this.values = new Map(model.sheets.map((sheet) => [sheet, valuesOf(sheet)]));
  }

  of(sheet: SheetModel): Values {
    return this.values.get(sheet) ?? [];
  }
  /** Blank cells of a range are null, as a sheet hands them over. */
  cells(target: Target, isRange: boolean): Operand {
    const { top, bottom, left, right } = target.area;
    if (top !== bottom || left !== right) return this.range(target);
    const cell = this.of(target.sheet)[top]?.[left] ?? null;
    // An area of one cell is still an area: SUM passes over a text in it.
    return isRange ? [[cell]] : cell;
  }
  private range(target: Target): Grid {
    const same = this.byTarget.get(target);
    if (same) return same;
    const { sheet, area } = target;
    let ofSheet = this.ranges.get(sheet);
    if (!ofSheet) this.ranges.set(sheet, (ofSheet = new Map<string, Grid>()));
    const key = `${area.top}:${area.left}:${area.bottom}:${area.right}`;
    let grid = ofSheet.get(key);
    if (!grid) ofSheet.set(key, (grid = readGrid(this.of(sheet), area)));
    this.byTarget.set(target, grid);
    return grid;
  }
}

function readGrid(values: Values, { top, bottom, left, right }: Area): Grid {
  const grid: Cell[][] = [];
  for (let row = top; row <= bottom; row++) {
    const from = values[row];
    const line: Cell[] = [];
    for (let column = left; column <= right; column++) line.push(from?.[column] ?? null);
    grid.push(line);
  }
  return grid;
}

/** The cells of a sheet with what was worked out for its formulas. */
function filled(sheet: SheetModel, nodes: readonly FormulaNode[], values: Values): SheetModel {
  if (nodes.length === 0) return sheet;
  const given = new Map<string, Exclude<Cell, null>>();
  const set = (address: string, row: number, column: number): void => {
    const value = values[row]?.[column];
    if (value !== undefined && value !== null) given.set(address, value);
  };
  for (const { address, area } of nodes)
    if (area.top === area.bottom && area.left === area.right) set(address, area.top, area.left);
    else
      for (let row = area.top; row <= area.bottom; row++)
        for (let column = area.left; column <= area.right; column++) set(addressOf(row, column), row, column);
  // One pass: a large sheet copied first and written over then costs twice.
  const cells: Record<string, CellModel> = {};
  for (const address in sheet.cells) {
    const value = given.get(address);
    const cell = sheet.cells[address];
    if (!cell) continue;
    if (value === undefined) {
      cells[address] = cell;
      continue;
    }
    cells[address] = { ...cell, value };
    given.delete(address);
  }
  for (const [address, value] of given) cells[address] = { value };
  return { ...sheet, cells };
}

/**
 * Fills the value of every formula cell, and the cells a spilled answer covers, by calculating the workbook
 * in the order of need. `today` is what TODAY() answers: the day is handed in, never looked up. `calls` stands
 * for another host's way of calling.
 */
export function calculateBy(
  find: FindFunction,
  model: WorkbookModel,
  today?: number,
  calls = callsOf(find),
): Calculated {
  const evaluate = evaluateBy(find);
  const call = remembered((name: string): EagerFunction | undefined =>
    today !== undefined && name.toUpperCase() === 'TODAY' ? () => today : calls(name),
  );
  const places = new Places(model);
  const nodes = formulaNodes(model, places);
  const { order, circles } = inOrder(nodes);
  const faults = [
    ...nodes.flatMap((node) => node.faults.map((fault) => `${at(node)}: ${fault}`)),
    ...circles.map(
      (circle) => `${circle.map(at).join(' needs ')} needs ${circle[0] ? at(circle[0]) : ''}: a circle`,
    ),
  ];
  const inCircle = new Set(circles.flat());
  const reading = new Reading(model);
  for (const node of order) {
    const { shape, rows } = node;
    const look = (kind: 'reference' | 'name', text: string): Operand => {
      const moved = shape.moved.get(text);
      return moved
        ? reading.cells(moved.by(rows), kind === 'reference' && text.includes(':'))
        : { error: kind === 'name' ? '#NAME?' : '#REF!' };
    };
    const spill = (anchor: string): Operand => {
      const target = targetOf({ kind: 'spill', anchor }, places, node.sheet);
      return target === undefined || typeof target === 'string'
        ? { error: '#REF!' }
        : reading.cells(target, false);
    };
    const answer: Operand = inCircle.has(node)
      ? { error: '#REF!', message: 'This formula needs its own answer.' }
      : shape.tree
        ? evaluateTree(shape.tree, {
            reference: (text) => look('reference', text),
            name: (text) => look('name', text),
            spill,
            call,
          })
        : evaluate(node.formula);
    const fault = put(reading.of(node.sheet), node, answer);
    if (fault) faults.push(fault);
  }
  const bySheet = new Map<SheetModel, FormulaNode[]>(model.sheets.map((sheet) => [sheet, []]));
  for (const node of nodes) bySheet.get(node.sheet)?.push(node);
  return {
    model: {
      ...model,
      sheets: model.sheets.map((sheet) => filled(sheet, bySheet.get(sheet) ?? [], reading.of(sheet))),
    },
    faults,
  };
}

/** A function of a text that is asked the same thing thousands of times. */
function remembered<T>(ask: (text: string) => T): (text: string) => T {
  const known = new Map<string, T>();
  return (text) => {
    let answer = known.get(text);
    if (answer === undefined && !known.has(text)) known.set(text, (answer = ask(text)));
    return answer as T;
  };
}
