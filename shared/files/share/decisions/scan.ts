import type { Area, CellPlace } from '../../../sheet/formula/address';
import { parseArea } from '../../../sheet/formula/address';
import type { SheetInfo } from '../../package/book';
import { Cells, storedValue } from '../../cells/cells';
import type { CellSpan, StoredValue } from '../../cells/cells';
import { REFUSED, Refusal } from '../../package/refusal';
import { shiftFormula } from '../references/lex';
import type { Element } from '../../package/xml';
import { TreeReader, attributes, checkEncoding, nameEnd, textBetween } from '../../package/xml';

/** How a formula is stored. */
export type FormulaKind = 'plain' | 'array' | 'shared' | 'whatIf';

export interface FormulaCell {
  readonly span: CellSpan;
  readonly kind: FormulaKind;
  /** In file spelling, moved to this cell when it is shared. */
  readonly text: string;
  /** The cells it fills. */
  readonly area: Area;
  readonly value: StoredValue | undefined;
  readonly verdict: ScanVerdict;
  /** Cells that share one stored formula carry the same mark. */
  readonly group: object | undefined;
}

/**
 * own    holds a call of ours and must become a value
 * cut    reads what is left out of the copy and must become a value
 * blank  stands where the copy shall be empty
 * spill  is a native formula that reads a spilled range, whose text may change
 * keep   stays as it is
 */
export type ScanVerdict = 'own' | 'cut' | 'blank' | 'spill' | 'keep';
export interface Judge {
  readonly of: (text: string, sheet: number, place?: CellPlace) => ScanVerdict;
  /** Must every formula be read, or only those in which our prefix is seen? */
  readonly readsAll: boolean;
  /** Can the cells of one shared formula be judged differently? */
  readonly isPerCell: boolean;
}

export interface SheetScan {
  readonly info: SheetInfo;
  readonly bytes: Uint8Array;
  readonly root: Element;
  /** Formulas that do not stay as they are, in file order. */
  readonly cells: readonly FormulaCell[];
  readonly whatIf: readonly FormulaCell[];
  /** Formulas that stay. */
  readonly kept: number;
}

interface Group {
  master:
    | { readonly row: number; readonly column: number; readonly text: string; readonly verdict: ScanVerdict }
    | undefined;
  readonly members: CellSpan[];
}

const CELLS_PER_STEP = 20_000;
/** Characters of shared formulas written out: a file of a few kilobytes could ask for gigabytes. */
const MOST_SHARED_TEXT = 10_000_000;

class SheetReader {
  readonly found: FormulaCell[] = [];
  readonly whatIf: FormulaCell[] = [];
  kept = 0;
  private written = 0;
  private readonly groups = new Map<string, Group>();

  constructor(
    private readonly bytes: Uint8Array,
    private readonly sheet: number,
    private readonly judge: Judge,
    private readonly needle: (from: number, to: number) => boolean,
  ) {}

  take(cell: CellSpan): void {
    const { bytes } = this;
    const how =
      cell.formulaOpenEnd - cell.formulaStart > 4
        ? attributes(bytes, nameEnd(bytes, cell.formulaStart + 1), cell.formulaOpenEnd - 1)
        : [];
    const say = (name: string): string => how.find((one) => one.name === name)?.value ?? '';
    const kind = say('t');
    if (kind === 'shared') this.share(cell, say('si'));
    else if (kind === 'dataTable')
      this.whatIf.push(this.formula(cell, 'whatIf', '', 'keep', parseArea(say('ref'))));
    else
      this.single(
        cell,
        kind === 'array' ? 'array' : 'plain',
        kind === 'array' ? parseArea(say('ref')) : undefined,
      );
  }

  private text(cell: CellSpan): string | undefined {
    return this.needle(cell.formulaOpenEnd, cell.formulaCloseStart)
      ? textBetween(this.bytes, cell.formulaOpenEnd, cell.formulaCloseStart)
      : undefined;
  }

  private single(cell: CellSpan, kind: FormulaKind, area: Area | undefined): void {
    const text = this.text(cell);
    const verdict = text === undefined ? 'keep' : this.judge.of(text, this.sheet, cell);
    if (verdict === 'keep') this.kept++;
    else this.found.push(this.formula(cell, kind, text ?? '', verdict, area));
  }

  private formula(
    cell: CellSpan,
    kind: FormulaKind,
    text: string,
    verdict: ScanVerdict,
    area: Area | undefined,
    group?: object,
  ): FormulaCell {
    const own = { top: cell.row, left: cell.column, bottom: cell.row, right: cell.column };
    return {
      span: { ...cell },
      kind,
      text,
      verdict,
      group,
      area: area ?? own,
      value: storedValue(this.bytes, cell),
    };
  }

  /**
   * The cells of a shared formula hold only its number; its text stands in one of them, not always the first.
   */
  private share(cell: CellSpan, number: string): void {
    let group = this.groups.get(number);
    const isMaster = cell.formulaCloseStart > cell.formulaOpenEnd;
    if (isMaster && group?.master) {
      this.flush(group);
      group = undefined;
    }
    if (!group) this.groups.set(number, (group = { master: undefined, members: [] }));
    if (isMaster) {
      const text = this.text(cell);
      group.master = {
        row: cell.row,
        column: cell.column,
        text: text ?? '',
        verdict: text === undefined ? 'keep' : this.judge.of(text, this.sheet),
      };
    }
    if (group.master?.verdict === 'keep' && !isMaster && !this.judge.isPerCell) this.kept++;
    else group.members.push({ ...cell });
  }

  private flush(group: Group): void {
    const { master, members } = group;
    const read = !master
      ? []
      : members.map((cell) => {
          const text = shiftFormula(master.text, cell.row - master.row, cell.column - master.column);
          this.written += text.length;
          if (this.written > MOST_SHARED_TEXT) throw new Refusal(REFUSED.formulas);
          return {
            cell,
            text,
            verdict: this.judge.isPerCell ? this.judge.of(text, this.sheet, cell) : master.verdict,
          };
        });
    if (read.every(({ verdict }) => verdict === 'keep')) this.kept += members.length;
    else
      for (const { cell, text, verdict } of read)
        this.found.push(this.formula(cell, 'shared', text, verdict, undefined, group));
  }

  finish(): void {
    for (const group of this.groups.values()) this.flush(group);
    this.found.sort((a, b) => a.span.start - b.span.start);
  }
}

/** Reads one sheet: the tree around the cells, and the formulas in them that matter. */
export function* scanSheet(info: SheetInfo, bytes: Uint8Array, judge: Judge): Generator<number, SheetScan> {
  checkEncoding(bytes, info.part);
  const tree = new TreeReader(bytes, 'sheetData');
  const reader = new SheetReader(
    bytes,
    info.index,
    judge,
    judge.readsAll ? () => true : (from, to) => mayMatter(bytes, from, to),
  );
  for (let data = tree.run(); data; data = tree.run()) {
    const cells = new Cells(bytes, data.openEnd);
    for (let count = 0; cells.next(); count++) {
      if (cells.cell.formulaStart >= 0) reader.take(cells.cell);
      if (count % CELLS_PER_STEP === CELLS_PER_STEP - 1) yield cells.cell.end / bytes.length;
    }
    tree.seek(cells.closeAt);
  }
  reader.finish();
  return { info, bytes, root: tree.whole(), cells: reader.found, whatIf: reader.whatIf, kept: reader.kept };
}

const letterIs = (bytes: Uint8Array, at: number, lower: number): boolean => ((bytes[at] ?? 0) | 32) === lower;
/** The letters of `lower`, in any case, around the one at `at`. */
const wordAround = (bytes: Uint8Array, at: number, first: number, lower: readonly number[]): boolean =>
  lower.every((letter, i) => letterIs(bytes, at - first + i, letter));
const SPAWN = [0x73, 0x70, 0x61, 0x77, 0x6e];
const ANCHOR = [0x61, 0x6e, 0x63, 0x68, 0x6f, 0x72];

/**
 * Quick look without decoding: our prefix, a spilled range, or text that must be decoded before anything can
 * be said.
 */
function mayMatter(bytes: Uint8Array, from: number, to: number): boolean {
  for (let i = from; i < to; i++) {
    const byte = bytes[i] ?? 0;
    const letter = byte | 32;
    if (letter === 0x77 && wordAround(bytes, i, 3, SPAWN)) return true;
    if (letter === 0x68 && wordAround(bytes, i, 3, ANCHOR)) return true;
    if (byte === 0x3c || (byte === 0x26 && bytes[i + 1] === 0x23)) return true;
  }
  return false;
}
