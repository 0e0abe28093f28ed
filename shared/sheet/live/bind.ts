import type { Cell, CellError, Grid } from '../../base/values';
import { isGrid } from '../../base/values';
import type { Area } from '../formula/address';
import { parseArea, splitReference } from '../formula/address';
import type { Binding, Compiled } from '../formula/compile';
import { compileNode } from '../formula/compile';
import type { EagerFunction, Operand } from '../formula/evaluate';
import { lazyFunction } from '../formula/evaluate';

import { isFault, parse } from '../formula/parse';
import type { RangeNode, SheetStore, Slot } from './store';

/** What a formula of the workbook can name beside cells of its own sheet. */
export interface Surroundings {
  readonly sheet: (name: string) => SheetStore | undefined;
  /** What a name stands for, as a formula without its =. */
  readonly name: (name: string) => string | undefined;
  /** Cells of Table[Column] below the heading. */
  readonly column: (text: string) => { readonly sheet: SheetStore; readonly area: Area } | undefined;
  readonly call: (name: string) => EagerFunction | undefined;
}

const nothing = (): Operand => null;

/** A formula in its cell: what it reads, how it is worked out, and how it stands in the work under way. */
export class LiveFormula {
  cells: Slot[] = [];
  areas: RangeNode[] = [];
  run: Compiled<undefined> = nothing;
  /** Cells the answer covers, and those it would need but cannot have. */
  spill: Area | undefined;
  wanted: Area | undefined;
  /** Has to be worked out: something it reads has another value now. */
  needs = true;
  isInCircle = false;
  /** Never worked out yet. */
  isFresh = true;
  /** Depends on names, other sheets or tables: bound again when those change. */
  isBoundLoosely = false;
  asksClock = false;
  /** Functions that are not known here. */
  unknown: string[] | undefined;
  constructor(
    readonly slot: Slot,
    readonly text: string,
  ) {}
}

const noName = (name: string): CellError => ({ error: '#NAME?', message: `There is no name ${name}.` });
const noFunction = (name: string): CellError => ({
  error: '#NAME?',
  message: `There is no function ${name}.`,
});
const NOWHERE: CellError = { error: '#REF!' };
/** A name that stands for names that stand for names: some end. */
const DEEPEST = 20;
const CLOCK = new Set(['TODAY', 'NOW']);

/** Enters a formula with the cells, ranges and names it reads; one binder for all formulas of a workbook. */
export class Binder implements Binding<undefined> {
  private depth = 0;
  private formula: LiveFormula = new LiveFormula(undefined as never, '');
  constructor(private readonly around: Surroundings) {}

  private one(slot: Slot): Compiled<undefined> {
    this.formula.cells.push(slot);
    slot.take(this.formula);
    return () => slot.value;
  }
  private many(node: RangeNode): Compiled<undefined> {
    this.formula.areas.push(node);
    node.take(this.formula);
    return () => node.read();
  }

  readonly reference = (text: string): Compiled<undefined> => {
    const target = this.targetOf(text);
    if (!target) return () => NOWHERE;
    const { sheet, area } = target;
    return text.includes(':') || text.includes('[') || area.top !== area.bottom || area.left !== area.right
      ? this.many(sheet.ranges.take(sheet, area))
      : this.one(sheet.slot(area.top, area.left));
  };

  private targetOf(text: string): { readonly sheet: SheetStore; readonly area: Area } | undefined {
    if (text.includes('[')) {
      this.formula.isBoundLoosely = true;
      return this.around.column(text);
    }
    const { sheet: name, area: areaOf } = splitReference(text);
    if (name !== undefined) this.formula.isBoundLoosely = true;
    const sheet = name === undefined ? this.formula.slot.sheet : this.around.sheet(name);
    const area = parseArea(areaOf);
    return sheet && area && { sheet, area };
  }

  readonly name = (name: string): Compiled<undefined> => {
    this.formula.isBoundLoosely = true;
    const text = this.around.name(name);
    const tree = text === undefined || this.depth >= DEEPEST ? undefined : parse(text);
    if (!tree || isFault(tree)) return () => noName(name);
    // One cell by its name is one cell, however its address is written.
    this.depth++;
    const meant = compileNode(tree, this);
    this.depth--;
    return tree.kind === 'reference' ? (scope) => single(meant(scope)) : meant;
  };

  readonly call = (name: string): EagerFunction => {
    const fn = this.around.call(name);
    if (CLOCK.has(name.toUpperCase())) this.formula.asksClock = true;
    if (fn) return fn;
    this.stranger(name);
    return () => noFunction(name);
  };

  readonly spill = (anchor: string): Compiled<undefined> => {
    const target = this.targetOf(anchor);
    if (!target) return () => NOWHERE;
    const slot = target.sheet.slot(target.area.top, target.area.left);
    this.one(slot);
    return () => {
      const area = slot.formula?.spill;
      return area ? gridOf(slot.sheet, area) : NOWHERE;
    };
  };

  private stranger(name: string): void {
    const { formula } = this;
    (formula.unknown ??= []).push(name.toUpperCase());
  }

  /** Reads the formula anew: when it comes, and when names, sheets or tables have changed. */
  bind(formula: LiveFormula): void {
    unbind(formula);
    this.formula = formula;
    formula.isBoundLoosely = false;
    formula.asksClock = false;
    formula.unknown = undefined;
    const tree = parse(formula.text);
    if (!isFault(tree)) {
      formula.run = compileNode(tree, this);
      return;
    }
    const fault: CellError = {
      error: '#NAME?',
      message: `The formula cannot be read: ${tree.fault} (at character ${tree.at + 1}).`,
    };
    formula.run = () => fault;
    for (const name of callsIn(formula.text))
      if (!lazyFunction(name) && !this.around.call(name)) this.stranger(name);
  }
}

const single = (value: Operand): Operand =>
  isGrid(value) && value.length === 1 && value[0]?.length === 1 ? (value[0][0] ?? null) : value;

const gridOf = (sheet: SheetStore, { top, bottom, left, right }: Area): Grid =>
  Array.from({ length: bottom - top + 1 }, (_, r) =>
    Array.from({ length: right - left + 1 }, (__, c): Cell => sheet.slot(top + r, left + c).value),
  );

export function unbind(formula: LiveFormula): void {
  for (const slot of formula.cells) slot.leave(formula);
  for (const node of formula.areas) node.sheet.ranges.leave(node, formula);
  formula.cells = [];
  formula.areas = [];
}

/** Names of functions in a text that cannot be read as a formula here. */
const CALL = /([\p{L}_][\p{L}\p{N}_.]*)\(/gu;
const callsIn = (text: string): string[] =>
  [...text.replaceAll(/"(?:[^"]|"")*"/g, '""').matchAll(CALL)].map((match) => match[1] ?? '');
