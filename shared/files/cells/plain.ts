import { GT, LT } from '../package/xml';
import type { CellSpan } from './cells';

const SLASH = 0x2f;
const QUOTE = 0x22;
const [C, F, R, S, T, V] = [0x63, 0x66, 0x72, 0x73, 0x74, 0x76];
/** Letters and digits, of which style numbers and types are made. */
const isWordByte = (byte: number | undefined): boolean =>
  byte !== undefined &&
  ((byte >= 0x30 && byte <= 0x39) || (byte >= 0x61 && byte <= 0x7a) || (byte >= 0x41 && byte <= 0x5a));
/** After the closing tag of one letter that ends text without markup; -1 where there is other markup. */
function closeOf(bytes: Uint8Array, from: number, letter: number): number {
  let at = from;
  const { length } = bytes;
  while (at < length && bytes[at] !== LT) at++;
  return bytes[at + 1] === SLASH && bytes[at + 2] === letter && bytes[at + 3] === GT ? at + 4 : -1;
}

const isAt = (bytes: Uint8Array, at: number, a: number, b: number, c: number): boolean =>
  bytes[at] === a && bytes[at + 1] === b && bytes[at + 2] === c;

/**
 * Nearly every cell, <c r="B7" s="1" t="s"><f>…</f><v>12</v></c> with or without its parts, in one walk. What is
 * written in any other way is left to the steps of the walker.
 */
export class PlainCells {
  private row = 0;
  private column = 0;
  /** Parts beyond those of a plain cell were set and must be cleared. */
  isTouched = true;

  constructor(
    private readonly bytes: Uint8Array,
    private readonly cell: CellSpan,
  ) {}

  /** Sets the parts of the cell that starts here; after it, or -1 where it is not plain. */
  read(lt: number): number {
    const { bytes, cell } = this;
    if (!isAt(bytes, lt, LT, C, 0x20) || !isAt(bytes, lt + 3, R, 0x3d, QUOTE)) return -1;
    const placed = this.readPlace(lt + 6);
    if (placed < 0) return -1;
    if (this.isTouched) this.clear();
    cell.typeFrom = cell.typeTo = cell.styleFrom = cell.styleTo = -1;
    const end = this.readRest(placed);
    if (end < 0) {
      this.isTouched = true;
      return -1;
    }
    cell.start = lt;
    cell.row = this.row;
    cell.column = this.column;
    cell.end = end;
    return end;
  }

  private readRest(from: number): number {
    const { bytes, cell } = this;
    let at = this.readAttributes(from);
    if (at < 0 || bytes[at] !== GT) return -1;
    cell.openEnd = at + 1;
    at = this.readFormula(at + 1);
    if (at < 0 || !isAt(bytes, at, LT, V, GT)) return -1;
    cell.valueFrom = at + 3;
    at = closeOf(bytes, at + 3, V);
    if (at < 0 || !isAt(bytes, at, LT, SLASH, C) || bytes[at + 3] !== GT) return -1;
    cell.valueTo = at - 4;
    return at + 4;
  }

  /** The place of a plain cell; after its closing quote, or -1. */
  private readPlace(from: number): number {
    const { bytes } = this;
    let at = from;
    let column = 0;
    let row = 0;
    for (;;) {
      const letter = (bytes[at] as number) - 0x40;
      if (!(letter >= 1 && letter <= 26)) break;
      column = column * 26 + letter;
      at++;
    }
    for (;;) {
      const digit = (bytes[at] as number) - 0x30;
      if (!(digit >= 0 && digit <= 9)) break;
      row = row * 10 + digit;
      at++;
    }
    if (bytes[at] !== QUOTE || column < 1 || column > 16_384 || row < 1 || row > 1_048_576) return -1;
    this.column = column - 1;
    this.row = row - 1;
    return at + 1;
  }

  /** s="…" and t="…" in any order; at the > of the tag, or -1. */
  private readAttributes(from: number): number {
    const { bytes, cell } = this;
    let at = from;
    while (bytes[at] === 0x20) {
      const letter = bytes[at + 1];
      if ((letter !== S && letter !== T) || bytes[at + 2] !== 0x3d || bytes[at + 3] !== QUOTE) return -1;
      const start = at + 4;
      at = start;
      while (isWordByte(bytes[at])) at++;
      if (bytes[at] !== QUOTE) return -1;
      if (letter === S) {
        cell.styleFrom = start;
        cell.styleTo = at;
      } else {
        cell.typeFrom = start;
        cell.typeTo = at;
      }
      at++;
    }
    return at;
  }

  /** <f>…</f> where there is one; after it, or -1. */
  private readFormula(from: number): number {
    const { bytes, cell } = this;
    if (bytes[from + 1] !== F) return from;
    if (bytes[from] !== LT || bytes[from + 2] !== GT) return -1;
    const at = closeOf(bytes, from + 3, F);
    if (at < 0) return -1;
    this.isTouched = true;
    cell.formulaStart = from;
    cell.formulaOpenEnd = from + 3;
    cell.formulaCloseStart = at - 4;
    cell.formulaEnd = at;
    return at;
  }

  clear(): void {
    const { cell } = this;
    cell.cmFrom = cell.vmFrom = cell.formulaStart = cell.formulaOpenEnd = -1;
    cell.cmTo = cell.vmTo = cell.formulaCloseStart = cell.formulaEnd = -1;
    cell.inlineFrom = cell.inlineTo = -1;
    this.isTouched = false;
  }
}
