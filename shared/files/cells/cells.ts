// Long: one walker over bytes; its state is shared by every step.
import { REFUSED, Refusal } from '../package/refusal';
import { PlainCells } from './plain';
import { LT, isBlankByte, nameEnd, rawText, skipSpecial, tagEnd } from '../package/xml';

/** Where a cell and its parts stand in the bytes of a sheet; -1 where there is no such part. */
export interface CellSpan {
  row: number;
  column: number;
  start: number;
  openEnd: number;
  end: number;
  typeFrom: number;
  typeTo: number;
  styleFrom: number;
  styleTo: number;
  /** Attributes with the blank in front of them. */
  cmFrom: number;
  cmTo: number;
  vmFrom: number;
  vmTo: number;
  formulaStart: number;
  formulaOpenEnd: number;
  formulaCloseStart: number;
  formulaEnd: number;
  valueFrom: number;
  valueTo: number;
  inlineFrom: number;
  inlineTo: number;
}

const NONE: CellSpan = {
  row: -1,
  column: -1,
  start: -1,
  openEnd: -1,
  end: -1,
  typeFrom: -1,
  typeTo: -1,
  styleFrom: -1,
  styleTo: -1,
  cmFrom: -1,
  cmTo: -1,
  vmFrom: -1,
  vmTo: -1,
  formulaStart: -1,
  formulaOpenEnd: -1,
  formulaCloseStart: -1,
  formulaEnd: -1,
  valueFrom: -1,
  valueTo: -1,
  inlineFrom: -1,
  inlineTo: -1,
};

const SLASH = 0x2f;
const COLON = 0x3a;
/** Points; no spreadsheet makes a row taller (ISO/IEC 29500-1, 18.3.1.73). */
const TALLEST = 409.5;
const broken = (): Refusal => new Refusal(REFUSED.damaged('the cells of a sheet cannot be read'));

/** Walks the cells of one sheetData, one call of next() per cell; `cell` is the same object every time. */
export class Cells {
  readonly cell: CellSpan = { ...NONE };
  private readonly plain: PlainCells;
  private at: number;
  private row = -1;
  private column = -1;
  /** Where </sheetData> starts, once next() has said false. */
  closeAt = -1;
  /** Rows whose height somebody set, by row. */
  readonly heights = new Map<number, number>();

  constructor(
    private readonly bytes: Uint8Array,
    from: number,
  ) {
    this.at = from;
    this.plain = new PlainCells(bytes, this.cell);
  }

  next(): boolean {
    const end = this.plain.read(this.at);
    if (end >= 0) {
      this.at = end;
      this.row = this.cell.row;
      this.column = this.cell.column;
      return true;
    }
    const { bytes } = this;
    for (;;) {
      const lt = this.nextTag();
      if (lt < 0) throw broken();
      const second = bytes[lt + 1];
      if (second === 0x21 || second === 0x3f) {
        this.at = skipSpecial(bytes, lt);
        continue;
      }
      if (second === SLASH) {
        if (this.isNamed(lt + 2, 'sheetData')) {
          this.closeAt = lt;
          return false;
        }
        this.at = tagEnd(bytes, lt) + 1;
        continue;
      }
      const name = this.localAt(lt + 1);
      const stop = nameEnd(bytes, name);
      const gt = tagEnd(bytes, stop);
      this.at = gt + 1;
      if (stop - name === 1 && bytes[name] === 0x63) {
        this.readCell(lt, stop, gt);
        return true;
      }
      if (stop - name === 3 && bytes[name] === 0x72) this.readRow(stop, gt);
    }
  }

  /** Tags stand close together here: looking byte by byte beats calling indexOf. */
  private nextTag(): number {
    const { bytes } = this;
    const { length } = bytes;
    let i = this.at;
    while (i < length && bytes[i] !== LT) i++;
    return i < length ? i : -1;
  }

  private localAt(from: number): number {
    const { bytes } = this;
    for (let i = from; i < from + 40; i++) {
      const byte = bytes[i];
      if (byte === COLON) return i + 1;
      if (byte === 0x3e || byte === SLASH || isBlankByte(byte)) break;
    }
    return from;
  }

  private isNamed(from: number, name: string): boolean {
    const at = this.localAt(from);
    for (let i = 0; i < name.length; i++) if (this.bytes[at + i] !== name.charCodeAt(i)) return false;
    return nameEnd(this.bytes, at) - at === name.length;
  }

  private readRow(from: number, gt: number): void {
    this.row++;
    this.column = -1;
    let height = NaN;
    let isSet = false;
    this.eachAttribute(from, gt, (name, width, valueFrom, valueTo) => {
      if (width === 1 && this.bytes[name] === 0x72)
        this.row = Number(rawText(this.bytes, valueFrom, valueTo)) - 1;
      else if (width === 2 && this.bytes[name] === 0x68)
        height = Number(rawText(this.bytes, valueFrom, valueTo));
      else if (width === 12 && rawText(this.bytes, name, name + width) === 'customHeight')
        isSet = /^(?:1|true)$/.test(rawText(this.bytes, valueFrom, valueTo));
    });
    if (!(this.row >= 0 && this.row < 1_048_576)) throw broken();
    if (isSet && height >= 0 && height <= TALLEST) this.heights.set(this.row, height);
  }

  private eachAttribute(
    from: number,
    gt: number,
    visit: (name: number, width: number, valueFrom: number, valueTo: number, start: number) => void,
  ): void {
    const { bytes } = this;
    for (let i = from; i < gt;) {
      const start = i;
      while (isBlankByte(bytes[i])) i++;
      const name = i;
      while (i < gt && bytes[i] !== 0x3d && !isBlankByte(bytes[i])) i++;
      const width = i - name;
      while (i < gt && bytes[i] !== 0x22 && bytes[i] !== 0x27) i++;
      if (i >= gt) return;
      const close = bytes.indexOf(bytes[i] as number, i + 1);
      if (close < 0 || close > gt) return;
      visit(name, width, i + 1, close, start);
      i = close + 1;
    }
  }

  private readCell(lt: number, stop: number, gt: number): void {
    const { cell, bytes } = this;
    this.plain.clear();
    this.plain.isTouched = true;
    cell.typeFrom = cell.typeTo = cell.styleFrom = cell.styleTo = cell.valueFrom = cell.valueTo = -1;
    this.column++;
    cell.start = lt;
    cell.openEnd = gt + 1;
    this.eachAttribute(this.skipPlace(stop, gt), gt, this.cellAttribute);
    cell.row = this.row < 0 ? 0 : this.row;
    cell.column = this.column;
    if (bytes[gt - 1] === SLASH) {
      cell.end = gt + 1;
      return;
    }
    this.readContent(lt);
  }

  /** Nearly every cell begins with r="…"; returns where the other attributes start. */
  private skipPlace(stop: number, gt: number): number {
    const { bytes } = this;
    if (
      bytes[stop] !== 0x20 ||
      bytes[stop + 1] !== 0x72 ||
      bytes[stop + 2] !== 0x3d ||
      bytes[stop + 3] !== 0x22
    )
      return stop;
    let close = stop + 4;
    while (close < gt && bytes[close] !== 0x22) close++;
    this.readPlace(stop + 4, close);
    return close + 1;
  }

  private readonly cellAttribute = (
    name: number,
    width: number,
    valueFrom: number,
    valueTo: number,
    start: number,
  ): void => {
    const { bytes, cell } = this;
    const letter = bytes[name];
    if (width === 2 && bytes[name + 1] === 0x6d) {
      if (letter === 0x63) {
        cell.cmFrom = start;
        cell.cmTo = valueTo + 1;
      }
      if (letter === 0x76) {
        cell.vmFrom = start;
        cell.vmTo = valueTo + 1;
      }
    }
    if (width !== 1) return;
    if (letter === 0x74) {
      cell.typeFrom = valueFrom;
      cell.typeTo = valueTo;
    } else if (letter === 0x73) {
      cell.styleFrom = valueFrom;
      cell.styleTo = valueTo;
    } else if (letter === 0x72) this.readPlace(valueFrom, valueTo);
  };

  private readPlace(from: number, to: number): void {
    const { bytes } = this;
    let column = 0;
    let i = from;
    for (; i < to; i++) {
      const code = (bytes[i] ?? 0) | 0x20;
      if (code < 0x61 || code > 0x7a) break;
      column = column * 26 + code - 0x60;
    }
    let row = 0;
    for (; i < to; i++) {
      const digit = (bytes[i] ?? 0) - 0x30;
      if (digit < 0 || digit > 9) throw broken();
      row = row * 10 + digit;
    }
    if (column < 1 || column > 16_384 || row < 1 || row > 1_048_576) throw broken();
    this.column = column - 1;
    this.row = row - 1;
  }

  private readContent(cellStart: number): void {
    const { bytes, cell } = this;
    let depth = 0;
    let part = 0;
    for (let lt = this.nextTag(); lt >= 0; lt = this.nextTag()) {
      const second = bytes[lt + 1];
      if (second === 0x21 || second === 0x3f) {
        this.at = skipSpecial(bytes, lt);
        continue;
      }
      const gt = tagEnd(bytes, lt);
      this.at = gt + 1;
      if (second === SLASH) {
        if (depth === 0) {
          // The tag that closes must be the one that was opened.
          if (
            this.localAt(lt + 2) - lt - 1 !== this.localAt(cellStart + 1) - cellStart ||
            !this.isNamed(lt + 2, 'c')
          )
            throw broken();
          cell.end = gt + 1;
          return;
        }
        if (--depth === 0) this.closePart(part, lt, gt + 1);
        continue;
      }
      const isEmpty = bytes[gt - 1] === SLASH;
      if (depth === 0) {
        part = this.openPart(lt, gt + 1);
        if (isEmpty) this.closePart(part, gt + 1, gt + 1);
      }
      if (!isEmpty) depth++;
    }
    throw broken();
  }

  private openPart(lt: number, openEnd: number): number {
    const { cell } = this;
    const name = this.localAt(lt + 1);
    const width = nameEnd(this.bytes, name) - name;
    const first = this.bytes[name] ?? 0;
    if (width === 1 && first === 0x66) {
      cell.formulaStart = lt;
      cell.formulaOpenEnd = openEnd;
      return 1;
    }
    if (width === 1 && first === 0x76) {
      cell.valueFrom = openEnd;
      return 2;
    }
    if (width === 2 && first === 0x69) {
      cell.inlineFrom = openEnd;
      return 3;
    }
    return 0;
  }

  private closePart(part: number, closeStart: number, end: number): void {
    const { cell } = this;
    if (part === 1) {
      cell.formulaCloseStart = closeStart;
      cell.formulaEnd = end;
    }
    if (part === 2) cell.valueTo = closeStart;
    if (part === 3) cell.inlineTo = closeStart;
  }
}
