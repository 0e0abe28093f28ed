// Long: one pass over a workbook; the steps share its state.
import { append } from '../../append';
import type { Area, CellPlace } from '../../../sheet/formula/address';
import { columnNumber, MAX_ROWS, parseArea } from '../../../sheet/formula/address';
import { sharedStrings } from '../../cells/strings';
import { eachSpan, resolvedValue } from '../../cells/values';
import { Refusal } from '../../package/refusal';
import type { ShareProgress } from '../decisions/options';
import { scanSheet } from '../decisions/scan';
import type { Opened } from '../open';
import { contains } from '../open';
import { lex } from '../references/lex';
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
  reason: LeaveOutReason | undefined;
}

const MOST_SINGLE = 20_000;
const MOST_PASSES = 40;
const NO_READS = { plain: [], summed: [], sums: '', isUnsure: false };

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
  /** Named cells that hold something. */
  private readonly left = new CellSet();
  private readonly leftCells: [number, CellPlace][] = [];
  private readonly leftNumbers = new Set<number>();
  /** Cells that go because of what they are worked out from. */
  private readonly gone = new CellSet();
  private readonly owners = new Map<number, Node>();
  private readonly index = new ReaderIndex();
  private readonly headings: readonly Reference[];

  constructor(opened: Opened, wishes: readonly string[]) {
    this.finder = new ReferenceFinder(opened.names, opened.tables);
    for (const wish of wishes) {
      const { sheet, area } = parseBlank(opened, wish);
      this.named.addArea(sheet, area);
    }
    // A table insists that its heading cells say what its columns are called.
    this.headings = opened.tables
      .filter((table) => table.top > table.area.top)
      .map((table) => ({ sheet: table.sheet, area: { ...table.area, bottom: table.top - 1 } }));
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

  addLeft(sheet: number, { row, column }: CellPlace, isNumber: boolean): void {
    const place = { row, column };
    this.left.add(sheet, place);
    this.leftCells.push([sheet, place]);
    if (isNumber) this.leftNumbers.add(idOf(sheet, place));
  }

  addNode(sheet: number, area: Area, reads: Reads, kind: Node['kind'] = 'formula'): void {
    const at = this.nodes.length;
    this.nodes.push({ sheet, area, reads, kind, reason: undefined });
    for (const one of reads.plain) this.index.add(one.sheet, one.area, at);
  }

  /** Follows the values from cell to cell until nothing more goes. */
  settle(): void {
    if (this.left.size === 0) return;
    const waiting = [...this.leftCells];
    for (const node of this.nodes) {
      if (this.isNamed(node.sheet, { row: node.area.top, column: node.area.left }))
        this.go(node, 'reads', waiting);
      else if (node.reads.isUnsure) this.go(node, 'untold', waiting);
    }
    this.spread(waiting);
    for (let pass = 1; this.checkSums(pass === MOST_PASSES); pass++);
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
      for (const place of this.left.within(next.sheet, next.area)) {
        const id = idOf(next.sheet, place);
        if (this.leftNumbers.has(id)) found.add(id);
      }
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

/** Reads every sheet once for the values left out and once for the formulas, and follows what they feed. */
export function* planFlow(opened: Opened, wishes: readonly string[]): Generator<ShareProgress, Flow> {
  const flow = new Flow(opened, wishes);
  const strings = sharedStrings(opened);
  const sheets = opened.book.sheets.filter((sheet) => sheet.isWorksheet);
  for (const { part, index } of sheets) {
    const bytes = opened.pack.read(part);
    if (!bytes) continue;
    for (const done of eachSpan(bytes, (cell) => {
      if (!flow.isNamed(index, cell)) return;
      const value = resolvedValue(bytes, cell, strings);
      if (!value) return;
      flow.addLeft(index, cell, value.type === 'n' || value.type === 'd');
      flow.values.add(value);
    }))
      yield { step: 'read', done };
  }
  for (const sheet of sheets) {
    const bytes = opened.pack.read(sheet.part);
    if (!bytes) continue;
    const steps = scanSheet(sheet, bytes, { of: () => 'own', readsAll: true, isPerCell: false });
    let step = steps.next();
    for (; !step.done; step = steps.next()) yield { step: 'read', done: step.value };
    for (const { area, text, span } of step.value.cells)
      flow.addNode(sheet.index, area, readsOf(flow.finder, text, lex(text), sheet.index, span));
    for (const { area } of step.value.whatIf) flow.addNode(sheet.index, area, whatIfReads(sheet.index, area));
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
