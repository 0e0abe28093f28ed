// Long: one pass over the cells of a sheet, kind by kind.
import type { Area } from '../../../sheet/formula/address';
import { parseArea } from '../../../sheet/formula/address';
import type { SheetInfo } from '../../package/book';
import { Cells } from '../../cells/cells';
import { storedValue } from '../../cells/stored';
import type { CellSpan } from '../../cells/cells';
import type { StoredValue } from '../../cells/stored';
import { REFUSED, Refusal } from '../../package/refusal';
import type { FormulaPiece } from '../references/lex';
import { lex, shiftFormula } from '../references/lex';
import type { Element } from '../../package/xml';
import { TreeReader, attributes, checkEncoding, nameEnd, textBetween } from '../../package/xml';

/** How a formula is stored. */
export type FormulaKind = 'plain' | 'array' | 'shared' | 'whatIf';

export interface FormulaCell {
  readonly span: CellSpan;
  readonly kind: FormulaKind;
  /** In file spelling, moved to this cell when it is shared. */
  readonly text: string;
  /** The pieces of the text: each formula is taken apart once. */
  readonly pieces: readonly FormulaPiece[];
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
  readonly of: (text: string, pieces: readonly FormulaPiece[], sheet: number) => ScanVerdict;
  /** Must every formula be read, or only those in which our prefix is seen? */
  readonly readsAll: boolean;
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

/** A formula and its pieces. */
interface Read {
  readonly text: string;
  readonly pieces: readonly FormulaPiece[];
}
const UNREAD: Read = { text: '', pieces: [] };

interface Group {
  master:
    | { readonly row: number; readonly column: number; readonly read: Read; readonly verdict: ScanVerdict }
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
      this.whatIf.push(this.formula(cell, 'whatIf', UNREAD, 'keep', parseArea(say('ref'))));
    else
      this.single(
        cell,
        kind === 'array' ? 'array' : 'plain',
        kind === 'array' ? parseArea(say('ref')) : undefined,
      );
  }

  private read(cell: CellSpan): Read | undefined {
    if (!this.needle(cell.formulaOpenEnd, cell.formulaCloseStart)) return undefined;
    const text = textBetween(this.bytes, cell.formulaOpenEnd, cell.formulaCloseStart);
    return { text, pieces: lex(text) };
  }

  private single(cell: CellSpan, kind: FormulaKind, area: Area | undefined): void {
    const read = this.read(cell);
    const verdict = read ? this.judge.of(read.text, read.pieces, this.sheet) : 'keep';
    if (verdict === 'keep' || !read) this.kept++;
    else this.found.push(this.formula(cell, kind, read, verdict, area));
  }

  private formula(
    cell: CellSpan,
    kind: FormulaKind,
    { text, pieces }: Read,
    verdict: ScanVerdict,
    area: Area | undefined,
    group?: object,
  ): FormulaCell {
    const own = { top: cell.row, left: cell.column, bottom: cell.row, right: cell.column };
    return {
      span: { ...cell },
      kind,
      text,
      pieces,
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
      const read = this.read(cell);
      group.master = {
        row: cell.row,
        column: cell.column,
        read: read ?? UNREAD,
        verdict: read ? this.judge.of(read.text, read.pieces, this.sheet) : 'keep',
      };
    }
    if (group.master?.verdict === 'keep' && !isMaster) this.kept++;
    else group.members.push({ ...cell });
  }

  private flush(group: Group): void {
    const { master, members } = group;
    if (!master || master.verdict === 'keep') {
      this.kept += members.length;
      return;
    }
    const { row, column, read, verdict } = master;
    for (const cell of members) {
      const text = shiftFormula(read.text, read.pieces, cell.row - row, cell.column - column);
      this.written += text.length;
      if (this.written > MOST_SHARED_TEXT) throw new Refusal(REFUSED.formulas);
      const own = text === read.text ? read : { text, pieces: lex(text) };
      this.found.push(this.formula(cell, 'shared', own, verdict, undefined, group));
    }
  }

  finish(): void {
    for (const group of this.groups.values()) this.flush(group);
    this.found.sort((a, b) => a.span.start - b.span.start);
  }
}

/**
 * A scan of every formula, each judged now. Cells that share one stored formula stay together when one of them
 * changes.
 */
export function judged(scan: SheetScan, verdictOf: (cell: FormulaCell, i: number) => ScanVerdict): SheetScan {
  const verdicts = scan.cells.map(verdictOf);
  const broken = new Set(
    scan.cells.filter((cell, i) => cell.group && verdicts[i] !== 'keep').map((cell) => cell.group),
  );
  const cells = scan.cells.flatMap((cell, i) => {
    const verdict = verdicts[i] ?? 'keep';
    if (verdict === 'keep' && !(cell.group && broken.has(cell.group))) return [];
    return verdict === cell.verdict ? cell : { ...cell, verdict };
  });
  return { ...scan, cells, kept: scan.kept + scan.cells.length - cells.length };
}

/** Reads one sheet: the tree around the cells, and the formulas in them that matter; `visit` sees every cell. */
export function* scanSheet(
  info: SheetInfo,
  bytes: Uint8Array,
  judge: Judge,
  visit?: (cell: CellSpan) => void,
): Generator<number, SheetScan> {
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
      visit?.(cells.cell);
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
