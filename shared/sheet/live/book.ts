// Long: the state of a workbook and what changes it belong together.
import type { Cell } from '../../base/values';
import type { Area } from '../formula/address';
import type { EagerFunction, FindFunction } from '../formula';
import { callsOf } from '../formula';
import type { Surroundings } from './bind';
import { Binder, LiveFormula, unbind } from './bind';
import { inOrderOfNeed } from './order';
import { uncover } from './spill';
import type { Slot } from './store';
import { keyOf, SheetStore } from './store';
import type { LiveAnswer } from './work';
import { rootsOf, sameCell, Work } from './work';

/** A cell as it is typed: a formula with the value that was stored beside it, or a value. null empties it. */
export interface LiveCell {
  readonly row: number;
  readonly column: number;
  readonly value: Cell;
  readonly formula?: string;
}
export interface LiveName {
  readonly name: string;
  readonly refersTo: string;
}
export interface LiveTable {
  readonly name: string;
  readonly sheet: string;
  readonly area: Area;
}

/** Answers that grow into cells others read make those be worked out again; some end. */
const MOST_PASSES = 20;

/**
 * A workbook that is kept calculated: only what hangs on a change is worked out again. Answers are those of
 * calculating it whole (workbook/calculate.ts): both share the reading of formulas, operators and functions.
 */
export class LiveBook {
  private readonly sheets = new Map<string, SheetStore>();
  private byName = new Map<string, SheetStore>();
  private names = new Map<string, string>();
  private tables = new Map<string, LiveTable>();
  private readonly loose = new Set<LiveFormula>();
  private readonly clocks = new Set<LiveFormula>();
  private readonly strangers = new Set<LiveFormula>();
  private readonly touched = new Set<Slot>();
  private readonly dirty = new Set<LiveFormula>();
  private readonly retold = new Set<LiveFormula>();
  private isRebound = false;
  private readonly around: Surroundings;
  private readonly binder: Binder;
  private today: number | undefined;

  constructor(find: FindFunction) {
    const calls = callsOf(find);
    const known = new Map<string, EagerFunction | undefined>();
    const clock: EagerFunction = () => this.today ?? { error: '#N/A' };
    this.around = {
      sheet: (name) => this.byName.get(name.toLowerCase()),
      name: (name) => this.names.get(name.toLowerCase()),
      column: (text) => this.columnOf(text),
      call(name) {
        const key = name.toUpperCase();
        if (key === 'TODAY') return clock;
        if (!known.has(key)) known.set(key, calls(key));
        return known.get(key);
      },
    };
    this.binder = new Binder(this.around);
  }

  /** The day TODAY() answers, as a serial. */
  setToday(serial: number): void {
    if (serial === this.today) return;
    this.today = serial;
    for (const formula of this.clocks) this.soil(formula);
  }

  /** Sheets by id with their names, all of them: what is missing goes, with its cells. */
  setSheets(sheets: readonly { readonly id: string; readonly name: string }[]): void {
    const ids = new Set(sheets.map(({ id }) => id));
    for (const [id, sheet] of this.sheets)
      if (!ids.has(id)) {
        this.replace(id, []);
        this.sheets.delete(id);
        for (const slot of sheet.slots.values()) this.touched.add(slot);
      }
    const before = [...this.byName].map(([name, { id }]) => `${id} ${name}`).join();
    for (const { id, name } of sheets) {
      const sheet = this.sheets.get(id);
      if (sheet) sheet.name = name;
      else this.sheets.set(id, new SheetStore(id, name));
    }
    this.byName = new Map([...this.sheets.values()].map((sheet) => [sheet.name.toLowerCase(), sheet]));
    if ([...this.byName].map(([name, { id }]) => `${id} ${name}`).join() !== before) this.isRebound = true;
  }

  setNames(names: readonly LiveName[]): void {
    const next = new Map(names.map((n) => [n.name.toLowerCase(), n.refersTo.replace(/^=/, '')]));
    if (next.size !== this.names.size || [...next].some(([name, text]) => this.names.get(name) !== text))
      this.isRebound = true;
    this.names = next;
  }

  setTables(tables: readonly LiveTable[]): void {
    this.tables = new Map(tables.map((table) => [table.name.toLowerCase(), table]));
    this.isRebound = true;
  }

  /** Cells that were typed, cleared or written; the others of the sheet stay. */
  set(id: string, cells: Iterable<LiveCell>): void {
    const sheet = this.sheets.get(id);
    if (sheet) for (const cell of cells) this.put(sheet, cell);
  }

  /** All cells of a sheet; those not given are blank. After rows or columns were moved. */
  replace(id: string, cells: readonly LiveCell[]): void {
    const sheet = this.sheets.get(id);
    if (!sheet) return;
    const kept = new Set(cells.map(({ row, column }) => keyOf(row, column)));
    for (const [key, { row, column, value, formula, cover: from }] of sheet.slots)
      if (!kept.has(key) && (formula !== undefined || (value !== null && !from)))
        this.put(sheet, { row, column, value: null });
    this.set(id, cells);
  }

  private put(sheet: SheetStore, { row, column, value, formula: text }: LiveCell): void {
    const slot = sheet.slot(row, column);
    const old = slot.formula;
    if (text !== undefined && old?.text === text) {
      // What is shown there is not what is known here: it is told again.
      if (!sameCell(slot.value, value)) this.retold.add(old);
      return;
    }
    if (old) this.drop(old);
    if (slot.cover && (value !== null || text !== undefined)) {
      this.soil(slot.cover);
      slot.cover = undefined;
    }
    if (text === undefined) {
      if (slot.cover || (!old && sameCell(slot.value, value))) return;
      slot.value = value;
      this.touched.add(slot);
    } else {
      slot.value = value;
      const formula = new LiveFormula(slot, text);
      slot.formula = formula;
      this.arrive(formula);
      this.touched.add(slot);
    }
    if (slot.value !== null) sheet.reach(row, column);
  }

  private drop(formula: LiveFormula): void {
    for (const slot of uncover(formula)) this.touched.add(slot);
    formula.slot.sheet.blocked.delete(formula);
    formula.slot.formula = undefined;
    formula.slot.value = null;
    unbind(formula);
    for (const list of [this.loose, this.clocks, this.strangers, this.dirty, this.retold])
      list.delete(formula);
  }

  /** Where names or sheets have changed as well, it is bound with all the others that hang on those. */
  private arrive(formula: LiveFormula): void {
    if (!this.isRebound) {
      this.enter(formula);
      return;
    }
    this.loose.add(formula);
    this.soil(formula);
  }

  private enter(formula: LiveFormula): void {
    this.binder.bind(formula);
    this.keep(this.loose, formula, formula.isBoundLoosely);
    this.keep(this.clocks, formula, formula.asksClock);
    this.keep(this.strangers, formula, formula.unknown !== undefined);
    this.soil(formula);
  }

  private keep(list: Set<LiveFormula>, formula: LiveFormula, isIn: boolean): void {
    if (isIn) list.add(formula);
    else list.delete(formula);
  }

  private soil(formula: LiveFormula): void {
    formula.needs = true;
    this.dirty.add(formula);
  }

  private columnOf(text: string): { readonly sheet: SheetStore; readonly area: Area } | undefined {
    const [, name = '', heading] = /^([^[]+)\[([^[\]]+)\]$/.exec(text) ?? [];
    const table = this.tables.get(name.toLowerCase());
    const sheet = table && this.sheets.get(table.sheet);
    if (!sheet || heading === undefined) return undefined;
    const { top, bottom, left, right } = table.area;
    for (let column = left; column <= right; column++)
      if (sheet.slots.get(keyOf(top, column))?.value === heading)
        return { sheet, area: { top: top + 1, bottom, left: column, right: column } };
    return undefined;
  }

  /** Functions in formulas that are not known here; nothing of the workbook is trusted while there are any. */
  unknown(): readonly string[] {
    return [...new Set([...this.strangers].flatMap((formula) => formula.unknown ?? []))];
  }

  get formulaCount(): number {
    let count = 0;
    for (const { slots } of this.sheets.values())
      for (const slot of slots.values()) if (slot.formula) count++;
    return count;
  }

  value(id: string, row: number, column: number): Cell {
    return this.sheets.get(id)?.slots.get(keyOf(row, column))?.value ?? null;
  }

  sheet(id: string): SheetStore | undefined {
    return this.sheets.get(id);
  }
  get surroundings(): Surroundings {
    return this.around;
  }

  /** The answers of a sheet are told again: somebody has lost them. */
  tellAgain(id: string): void {
    for (const { formula } of this.sheets.get(id)?.slots.values() ?? [])
      if (formula) this.retold.add(formula);
  }

  /** Every formula anew, whatever changed. */
  soilAll(): void {
    for (const { slots } of this.sheets.values())
      for (const { formula } of slots.values()) if (formula) this.soil(formula);
  }

  /** Works out what hangs on the changes since the last time; answers what has another value now. */
  calculate(): LiveAnswer[] {
    this.rebind();
    const work = new Work();
    const { touched, dirty } = this;
    for (let pass = 0; pass < MOST_PASSES && (touched.size > 0 || dirty.size > 0); pass++) {
      const groups = inOrderOfNeed(rootsOf(touched, dirty));
      touched.clear();
      dirty.clear();
      for (const group of groups) work.group(group);
      for (const slot of work.late.splice(0)) touched.add(slot);
      for (const formula of work.blockedNow.splice(0)) dirty.add(formula);
    }
    touched.clear();
    dirty.clear();
    const retold = [...this.retold];
    this.retold.clear();
    return work.answers(retold);
  }

  private rebind(): void {
    for (const { row, column, sheet } of this.touched)
      for (const { sheet: id, area } of this.tables.values())
        if (id === sheet.id && row === area.top && column >= area.left && column <= area.right)
          this.isRebound = true;
    if (!this.isRebound) return;
    this.isRebound = false;
    for (const formula of [...this.loose]) this.enter(formula);
  }
}
