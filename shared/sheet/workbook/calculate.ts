import type { Area } from '../formula/address';
import { addressOf, areaText } from '../formula/address';
import type { EagerFunction, FindFunction, Operand } from '../formula';
import { callsOf, evaluateBy } from '../formula';
import { evaluateTree } from '../formula/evaluate';
import type { Cell, Grid } from '../../base/values';
import { isGrid } from '../../base/values';
import type { FormulaNode } from './graph';
import { Places, formulaNodes, inOrder, targetOf } from './graph';
import type { CellModel, SheetModel, WorkbookModel } from './model';

export interface Calculated {
  readonly model: WorkbookModel;
  /** What did not come out: circles, references to nowhere, answers of another size than the model says. */
  readonly faults: readonly string[];
}

type Cells = Record<string, CellModel>;

const at = (node: FormulaNode): string => `${node.sheet.name} ${node.address}`;

/**
 * Ranges read lately, by sheet and place: what a range holds is calculated before whoever names it, so it is
 * read once.
 */
type Reads = Map<Cells, Map<string, Grid>>;

/** Blank cells of a range are null, as a sheet hands them over. */
const read = (reads: Reads, cells: Cells, area: Area): Operand => {
  if (area.top === area.bottom && area.left === area.right)
    return cells[addressOf(area.top, area.left)]?.value ?? null;
  let ofSheet = reads.get(cells);
  if (!ofSheet) reads.set(cells, (ofSheet = new Map<string, Grid>()));
  const key = areaText(area);
  let grid = ofSheet.get(key);
  if (!grid) ofSheet.set(key, (grid = readGrid(cells, area)));
  return grid;
};

const asArea = (value: Operand, text: string): Operand =>
  text.includes(':') && !isGrid(value) ? [[value]] : value;

function readGrid(cells: Cells, area: Area): Grid {
  const grid: Cell[][] = [];
  for (let row = area.top; row <= area.bottom; row++) {
    const line: Cell[] = [];
    for (let column = area.left; column <= area.right; column++)
      line.push(cells[addressOf(row, column)]?.value ?? null);
    grid.push(line);
  }
  return grid;
}

/** A formula alone in its cell that points at a blank shows 0. */
const shownValue = (cell: Cell | undefined): Exclude<Cell, null> =>
  cell === null || cell === undefined ? 0 : cell;

function writeSpill(cells: Cells, node: FormulaNode, answer: Grid): void {
  for (let row = node.area.top; row <= node.area.bottom; row++)
    for (let column = node.area.left; column <= node.area.right; column++) {
      const address = addressOf(row, column);
      cells[address] = {
        ...cells[address],
        value: shownValue(answer[row - node.area.top]?.[column - node.area.left] ?? null),
      };
    }
}

function put(cells: Cells, node: FormulaNode, answer: Operand): string | undefined {
  const { top, bottom, left, right } = node.area;
  const rows = bottom - top + 1;
  const columns = right - left + 1;
  if (!isGrid(answer)) {
    cells[node.address] = { ...cells[node.address], value: shownValue(answer) };
    return rows * columns > 1 ? `${at(node)} gives one cell, the model says ${rows} × ${columns}` : undefined;
  }
  writeSpill(cells, node, answer);
  const width = answer[0]?.length ?? 0;
  return answer.length === rows && width === columns
    ? undefined
    : `${at(node)} gives ${answer.length} × ${width} cells, the model says ${rows} × ${columns}`;
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
  const call = (name: string): EagerFunction | undefined =>
    today !== undefined && name.toUpperCase() === 'TODAY' ? () => today : calls(name);
  const places = new Places(model);
  const nodes = formulaNodes(model, places);
  const { order, circles } = inOrder(nodes);
  const cellsOf = new Map<SheetModel, Cells>(model.sheets.map((sheet) => [sheet, { ...sheet.cells }]));
  const faults = [
    ...nodes.flatMap((node) => node.faults.map((fault) => `${at(node)}: ${fault}`)),
    ...circles.map(
      (circle) => `${circle.map(at).join(' needs ')} needs ${circle[0] ? at(circle[0]) : ''}: a circle`,
    ),
  ];
  const inCircle = new Set(circles.flat());
  const reads: Reads = new Map();
  for (const node of order) {
    const cells = cellsOf.get(node.sheet) ?? {};
    const look = (kind: 'reference' | 'name', text: string): Operand => {
      const target = targetOf(kind === 'name' ? { kind, name: text } : { kind, text }, places, node.sheet);
      return target === undefined || typeof target === 'string'
        ? { error: kind === 'name' ? '#NAME?' : '#REF!' }
        : // An area of one cell is still an area: SUM passes over a text in it.
          asArea(read(reads, cellsOf.get(target.sheet) ?? {}, target.area), text);
    };
    const spill = (anchor: string): Operand => {
      const target = targetOf({ kind: 'spill', anchor }, places, node.sheet);
      return target === undefined || typeof target === 'string'
        ? { error: '#REF!' }
        : read(reads, cellsOf.get(target.sheet) ?? {}, target.area);
    };
    const answer: Operand = inCircle.has(node)
      ? { error: '#REF!', message: 'This formula needs its own answer.' }
      : node.tree
        ? evaluateTree(node.tree, {
            reference: (text) => look('reference', text),
            name: (text) => look('name', text),
            spill,
            call,
          })
        : evaluate(node.formula);
    const fault = put(cells, node, answer);
    if (fault) faults.push(fault);
  }
  return {
    model: { ...model, sheets: model.sheets.map((sheet) => ({ ...sheet, cells: cellsOf.get(sheet) ?? {} })) },
    faults,
  };
}
