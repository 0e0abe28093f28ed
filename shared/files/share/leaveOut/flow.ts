// Long: one pass over a workbook; the steps share its state.
import { append } from '../../append';
import type { Area, CellPlace } from '../../../sheet/formula/address';
import { columnNumber, MAX_COLUMNS, MAX_ROWS, parseArea } from '../../../sheet/formula/address';
import type { CellSpan } from '../../cells/cells';
import type { StoredValue } from '../../cells/stored';
import type { SharedStrings } from '../../cells/strings';
import { sharedStrings } from '../../cells/strings';
import { resolvedValue } from '../../cells/values';
import { Refusal } from '../../package/refusal';
import type { ShareProgress } from '../decisions/options';
import type { FormulaCell, Judge, ScanVerdict, SheetScan } from '../decisions/scan';
import { judged, scanSheet } from '../decisions/scan';
import { isSpillReference } from '../references/anchors';
import { ownCalls } from '../references/calls';
import type { Opened } from '../open';
import { contains } from '../open';
import type { FormulaPiece } from '../references/lex';
import type { Reference } from '../references/references';
import { ReferenceFinder } from '../references/references';
import { CellSet, ReaderIndex } from './cellSet';
import { pivotFlows } from './pivots';
import type { Reads } from './reads';
import { readsOf } from './reads';
import { SafeSums } from './sums';
import { LeftValues } from './values';

/**
 * Which cells must be empty in the copy: those the user named, and by data flow everything worked out from them,
 * unless it is a sum over so many that none of them can be told.
 */

export type LeaveOutReason = 'reads' | 'few' | 'untold' | 'pivot';

interface Node {
  readonly sheet: number;
  /** The cells its answer fills. */
  readonly area: Area;
  readonly reads: Reads;
  readonly kind: 'formula' | 'pivot';
  /** What becomes of the formula when nothing it reads is left out. */
  readonly otherwise: ScanVerdict;
  reason: LeaveOutReason | undefined;
}

const MOST_SINGLE = 20_000;
const MOST_PASSES = 40;
const NO_READS: Reads = { plain: [], summed: [], sums: '', counted: [], isUnsure: false };
const WHOLE_SHEET: Area = { top: 0, left: 0, bottom: MAX_ROWS - 1, right: MAX_COLUMNS - 1 };

const idOf = (sheet: number, { row, column }: CellPlace): number =>
  (sheet * 1_048_576 + row) * 16_384 + column;

export function parseBlank({ book }: Opened, wish: string): { readonly sheet: number; readonly area: Area } {
  const bang = wish.lastIndexOf('!');
  const name = wish
    .slice(0, Math.max(0, bang))
    .replace(/^'(.*)'$/s, '$1')
    .replaceAll("''", "'");
  const sheet = book.sheets.find((one) => one.name.toLowerCase() === name.toLowerCase());
  const range = wish.slice(bang + 1).trim();
  const column = /^\$?([A-Za-z]{1,3})$/.exec(range)?.[1];
  const area =
    column === undefined
      ? parseArea(range)
      : { top: 0, bottom: MAX_ROWS - 1, left: columnNumber(column), right: columnNumber(column) };
  if (!sheet)
    throw new Refusal(
      `There is no sheet "${name}" to blank "${wish}" on. The sheets are: ${book.sheets.map((one) => one.name).join(', ')}.`,
    );
  if (!area)
    throw new Refusal(`"${range}" in "${wish}" is neither a column (Fish!C) nor a range (Fish!B2:D40).`);
  return { sheet: sheet.index, area };
}

export class Flow {
  readonly values = new LeftValues();
  readonly finder: ReferenceFinder;
  readonly nodes: Node[] = [];
  /** Ranges as named, filled or not. */
  private readonly named = new CellSet();
  private readonly wished = new Set<number>();
  /** Named cells that hold something. */
  private readonly leftNumbers = new CellSet();
  private readonly leftTexts = new CellSet();
  /** Every formula, in the order of the file, by sheet. */
  private readonly scans = new Map<number, { readonly scan: SheetScan; readonly nodes: readonly Node[] }>();
  /** Cells that go because of what they are worked out from. */
  private readonly gone = new CellSet();
  private readonly safe = new CellSet();
  private readonly owners = new Map<number, Node>();
  private readonly index = new ReaderIndex();
  private readonly headings: readonly Reference[];

  constructor(
    opened: Opened,
    private readonly leftOut: LeftOut,
  ) {
    this.finder = new ReferenceFinder(opened.names, opened.tables);
    for (const wish of leftOut.wishes) {
      const { sheet, area } = parseBlank(opened, wish);
      this.named.addArea(sheet, area);
      this.wished.add(sheet);
    }
    if (!leftOut.keepResults) for (const sheet of leftOut.sheets) this.named.addArea(sheet, WHOLE_SHEET);
    // A table insists that its heading cells say what its columns are called.
    this.headings = opened.tables
      .filter((table) => table.top > table.area.top)
      .map((table) => ({ sheet: table.sheet, area: { ...table.area, bottom: table.top - 1 } }));
  }

  get hasWishes(): boolean {
    return this.leftOut.wishes.length > 0;
  }
  isSafeSum(sheet: number, place: CellPlace): boolean {
    return this.safe.has(sheet, place);
  }
  /** Is the whole sheet left out? */
  isWhole(sheet: number): boolean {
    return this.leftOut.sheets.includes(sheet);
  }
  leavesOut(sheet: number): boolean {
    return this.isWhole(sheet) || this.wished.has(sheet);
  }
  isHeading(sheet: number, place: CellPlace): boolean {
    return this.headings.some((one) => one.sheet === sheet && contains(one.area, place));
  }
  isNamed(sheet: number, place: CellPlace): boolean {
    return this.named.has(sheet, place) && !this.isHeading(sheet, place);
  }
  isBlank(sheet: number, place: CellPlace): boolean {
    return this.gone.has(sheet, place) || this.isNamed(sheet, place);
  }
  touches({ sheet, area }: Reference): boolean {
    return this.named.touches(sheet, area) || this.gone.touches(sheet, area);
  }

  addLeft(sheet: number, place: CellPlace, value: StoredValue): void {
    this.values.add(value);
    if (!this.isNamed(sheet, place)) return;
    const isNumber = value.type === 'n' || value.type === 'd';
    (isNumber ? this.leftNumbers : this.leftTexts).add(sheet, place);
  }

  addNode(
    sheet: number,
    area: Area,
    reads: Reads,
    kind: Node['kind'] = 'formula',
    otherwise: ScanVerdict = 'keep',
  ): Node {
    const at = this.nodes.length;
    const node: Node = { sheet, area, reads, kind, otherwise, reason: undefined };
    this.nodes.push(node);
    for (const one of reads.plain) this.index.add(one.sheet, one.area, at);
    return node;
  }
  addScan(scan: SheetScan, nodes: readonly Node[]): void {
    this.scans.set(scan.info.index, { scan, nodes });
  }

  /** The formulas of the sheets that stay, each read once and judged now that the flow is known. */
  judgedScans(keeps: (sheet: number) => boolean): SheetScan[] {
    return [...this.scans.values()]
      .filter(({ scan }) => keeps(scan.info.index))
      .map(({ scan, nodes }) => judged(scan, (cell, i) => this.verdict(cell, nodes[i], keeps)));
  }
  private verdict(cell: FormulaCell, node: Node | undefined, keeps: (sheet: number) => boolean): ScanVerdict {
    if (!node) return 'keep';
    if (this.isBlank(node.sheet, cell.span)) return 'blank';
    if (node.otherwise === 'own') return 'own';
    const { plain, summed, counted, isUnsure } = node.reads;
    const isOut = (one: Reference): boolean => !keeps(one.sheet) || this.touches(one);
    return isUnsure || plain.some(isOut) || summed.some(isOut) || counted.some(isOut)
      ? 'cut'
      : node.otherwise;
  }

  /** Follows the values from cell to cell until nothing more goes. */
  settle(): void {
    if (this.leftNumbers.size + this.leftTexts.size === 0) return;
    const waiting: [number, CellPlace][] = [];
    for (const node of this.nodes) {
      if (this.isNamed(node.sheet, { row: node.area.top, column: node.area.left }))
        this.go(node, 'reads', waiting);
      else if (node.reads.isUnsure) this.go(node, 'untold', waiting);
    }
    for (const set of [this.leftNumbers, this.leftTexts])
      set.each((sheet, place) => {
        for (const reader of this.index.hit(sheet, place)) this.goAt(reader, waiting);
      });
    this.spread(waiting);
    for (let pass = 1; this.checkSums(pass === MOST_PASSES); pass++);
    for (const { sheet, area, reads, reason } of this.nodes)
      if (reason === undefined && reads.summed.some((one) => this.touches(one)))
        this.safe.add(sheet, { row: area.top, column: area.left });
  }

  private spread(waiting: [number, CellPlace][]): void {
    for (let next = waiting.pop(); next; next = waiting.pop())
      for (const reader of this.index.hit(next[0], next[1])) this.goAt(reader, waiting);
  }
  private goAt(reader: number, waiting: [number, CellPlace][]): void {
    const node = this.nodes[reader];
    if (node) this.go(node, node.kind === 'pivot' ? 'pivot' : 'reads', waiting);
  }

  private go(node: Node, reason: LeaveOutReason, waiting: [number, CellPlace][]): void {
    if (node.reason !== undefined) return;
    node.reason = reason;
    const { sheet, area } = node;
    if ((area.bottom - area.top + 1) * (area.right - area.left + 1) > MOST_SINGLE) {
      this.gone.addArea(sheet, area);
      for (const reader of this.index.hitArea(sheet, area)) this.goAt(reader, waiting);
      return;
    }
    for (let row = area.top; row <= area.bottom; row++)
      for (let column = area.left; column <= area.right; column++) {
        const place = { row, column };
        this.owners.set(idOf(sheet, place), node);
        if (this.gone.add(sheet, place)) waiting.push([sheet, place]);
      }
  }

  /** TRUE when a sum had to go, so that everything must be looked at again. */
  private checkSums(isLast: boolean): boolean {
    const sums = new SafeSums();
    const supports = new Map<string, ReadonlySet<number>>();
    const failed: Node[] = [];
    for (const node of this.nodes) {
      const { summed, sums: kind } = node.reads;
      if (node.reason !== undefined || summed.length === 0 || !summed.some((one) => this.touches(one)))
        continue;
      const key = JSON.stringify(summed);
      let support = supports.get(key);
      if (!support) supports.set(key, (support = this.roots(summed)));
      if (isLast || (support.size > 0 && !sums.admit(support, kind))) failed.push(node);
    }
    const waiting: [number, CellPlace][] = [];
    for (const node of failed) this.go(node, 'few', waiting);
    this.spread(waiting);
    return failed.length > 0 && !isLast;
  }

  /** The left-out numbers that a sum is worked out from, through everything between. */
  private roots(from: readonly Reference[]): Set<number> {
    const found = new Set<number>();
    const seen = new Set<Node>();
    const waiting = [...from];
    for (let next = waiting.pop(); next; next = waiting.pop()) {
      for (const place of this.leftNumbers.within(next.sheet, next.area)) found.add(idOf(next.sheet, place));
      for (const place of this.gone.within(next.sheet, next.area)) {
        const owner = this.owners.get(idOf(next.sheet, place));
        if (!owner || seen.has(owner)) continue;
        seen.add(owner);
        append(waiting, owner.reads.plain);
        append(waiting, owner.reads.summed);
      }
    }
    return found;
  }

  /** Formulas and pivot tables that go, by sheet and reason. */
  lost(): { readonly sheet: number; readonly reason: LeaveOutReason; readonly areas: readonly Area[] }[] {
    const groups = new Map<string, { sheet: number; reason: LeaveOutReason; areas: Area[] }>();
    for (const { sheet, area, reason } of this.nodes) {
      if (reason === undefined || this.isNamed(sheet, { row: area.top, column: area.left })) continue;
      const key = `${sheet}|${reason}`;
      const group = groups.get(key);
      if (group) group.areas.push(area);
      else groups.set(key, { sheet, reason, areas: [area] });
    }
    return [...groups.values()];
  }
}

/** Nothing is judged while the formulas are read: what becomes of them hangs on all of them. */
const EVERY_FORMULA: Judge = { of: () => 'own', readsAll: true };

/** What becomes of a formula when nothing it reads is left out. */
function otherwise(
  { names }: Opened,
  text: string,
  pieces: readonly FormulaPiece[],
  sheet: number,
): ScanVerdict {
  if (ownCalls(text, pieces, names.isDefinedFor(text, sheet)).length > 0 || names.uses(text, pieces, sheet))
    return 'own';
  return isSpillReference(text, pieces) ? 'spill' : 'keep';
}

/** What is left out: cells and columns by wish, and whole sheets. */
export interface LeftOut {
  readonly wishes: readonly string[];
  readonly sheets: readonly number[];
  /** Results worked out from the sheets stay; only their values are looked for in the copy. */
  readonly keepResults: boolean;
}

/** Reads every sheet once, values left out and formulas together, and follows what they feed. */
export function* planFlow(opened: Opened, left: LeftOut): Generator<ShareProgress, Flow> {
  const flow = new Flow(opened, left);
  const strings = sharedStrings(opened);
  for (const sheet of opened.book.sheets.filter((one) => one.isWorksheet)) {
    const bytes = opened.pack.read(sheet.part);
    if (!bytes) continue;
    const steps = scanSheet(sheet, bytes, EVERY_FORMULA, collector(flow, bytes, sheet.index, strings));
    let step = steps.next();
    for (; !step.done; step = steps.next()) yield { step: 'read', done: step.value };
    const scan = step.value;
    const nodes = scan.cells.map(({ area, text, pieces, span }) => {
      const reads = readsOf(flow.finder, text, pieces, sheet.index, span);
      return flow.addNode(sheet.index, area, reads, 'formula', otherwise(opened, text, pieces, sheet.index));
    });
    flow.addScan(scan, nodes);
    for (const { area } of scan.whatIf) flow.addNode(sheet.index, area, whatIfReads(sheet.index, area));
  }
  for (const { sheet, area, source } of pivotFlows(opened, flow.finder))
    flow.addNode(
      sheet,
      area,
      source ? { ...NO_READS, plain: source } : { ...NO_READS, isUnsure: true },
      'pivot',
    );
  flow.settle();
  return flow;
}

/** Notes the values of the cells left out, while the sheet is walked for its formulas. */
function collector(
  flow: Flow,
  bytes: Uint8Array,
  sheet: number,
  strings: SharedStrings,
): ((cell: CellSpan) => void) | undefined {
  if (!flow.leavesOut(sheet)) return undefined;
  const isWhole = flow.isWhole(sheet);
  return (cell) => {
    if (!isWhole && !flow.isNamed(sheet, cell)) return;
    const value = resolvedValue(bytes, cell, strings);
    if (!value) return;
    flow.addLeft(sheet, cell, value);
  };
}

/** A what-if table works out the formula at its corner with the values along its edges. */
const whatIfReads = (sheet: number, area: Area): Reads => ({
  ...NO_READS,
  plain: [
    {
      sheet,
      area: { ...area, top: Math.max(0, area.top - 1), left: Math.max(0, area.left - 1), bottom: area.top },
    },
    {
      sheet,
      area: { ...area, top: Math.max(0, area.top - 1), left: Math.max(0, area.left - 1), right: area.left },
    },
  ],
});
