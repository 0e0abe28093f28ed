import type { Area } from '../../../sheet/formula/address';
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import type { SharedStrings } from '../../cells/strings';
import { AreaIndex, canonical, eachSpan, filledArea, isPlainNumber, resolvedValue } from '../../cells/values';
import type { CellSpan } from '../../cells/cells';
import type { StoredValue } from '../../cells/stored';
import { bytesOf } from '../../package/xml';

/** What is known of the cells of one block after reading the copy. */
export interface BlockFacts {
  first: StoredValue | undefined;
  firstStyle: string;
  low: number | undefined;
  high: number | undefined;
  readonly digest: string;
  /** Cells that hold something, an empty text included. */
  held: number;
}
export interface SheetFacts {
  readonly typed: number;
  readonly typedDigest: string;
  readonly results: number;
  readonly resultsDigest: string;
  /** In the order of the areas given. */
  readonly blocks: readonly BlockFacts[];
}

const SHORT = 16;
const ROOM = 32_768;
const LONGEST_NUMBER = 64;

class Feed {
  private readonly sha = sha256.create();
  private buffer: Uint8Array | undefined;
  private filled = 0;
  private row = -1;
  count = 0;

  add(line: string): void {
    this.count++;
    this.write(line);
  }

  /** A row is named once, in front of its first cell. */
  addText(row: number, column: number, text: string): void {
    this.count++;
    this.write(row === this.row ? `${column}\t${text}\n` : `#${row}\n${column}\t${text}\n`);
    this.row = row;
  }

  private write(line: string): void {
    const bytes = bytesOf(line);
    if (bytes.length > ROOM - this.filled) this.flush();
    if (bytes.length > ROOM) this.sha.update(bytes);
    else {
      this.room().set(bytes, this.filled);
      this.filled += bytes.length;
    }
  }

  /** The line of a number as it is stored, without making a text of it. */
  addNumber(row: number, column: number, bytes: Uint8Array, from: number, to: number): void {
    this.count++;
    if (ROOM - this.filled < LONGEST_NUMBER) this.flush();
    const room = this.room();
    let at = this.filled;
    if (row !== this.row) {
      this.row = row;
      room[at++] = 0x23;
      at = writeInteger(room, at, row);
      room[at++] = 0x0a;
    }
    at = writeInteger(room, at, column);
    room[at++] = 0x09;
    room[at++] = 0x6e;
    for (let i = from; i < to; i++) room[at++] = bytes[i] as number;
    room[at++] = 0x0a;
    this.filled = at;
  }

  private room(): Uint8Array {
    return (this.buffer ??= new Uint8Array(ROOM));
  }
  private flush(): void {
    this.sha.update(this.room().subarray(0, this.filled));
    this.filled = 0;
  }
  hex(): string {
    if (this.filled > 0) this.flush();
    return bytesToHex(this.sha.digest());
  }
}

function writeInteger(out: Uint8Array, at: number, n: number): number {
  let digits = 1;
  for (let size = 10; size <= n; size *= 10) digits++;
  for (let i = at + digits - 1, rest = n; i >= at; i--, rest = Math.floor(rest / 10))
    out[i] = 0x30 + (rest % 10);
  return at + digits;
}

type Gathered = Omit<BlockFacts, 'digest'> & { readonly lines: string[] };

/**
 * Reads the values of one sheet into three groups: what was frozen (by block), what was typed, and what
 * remaining formulas give. The same reading makes the page and verifies it later.
 */
export function* sheetFacts(
  bytes: Uint8Array,
  strings: SharedStrings,
  blocks: readonly (readonly Area[])[],
  countsOnly = false,
): Generator<number, SheetFacts> {
  const index = new AreaIndex(blocks.flatMap((areas, mark) => areas.map((area) => [area, mark] as const)));
  const gathered: Gathered[] = blocks.map(() => ({
    first: undefined,
    firstStyle: '',
    low: undefined,
    high: undefined,
    held: 0,
    lines: [],
  }));
  const typed = new Feed();
  const results = new Feed();
  let filled: Area[] = [];
  const groupOf = (cell: CellSpan): Feed =>
    cell.formulaStart >= 0 ||
    filled.some(
      (one) =>
        cell.row >= one.top && cell.row <= one.bottom && cell.column >= one.left && cell.column <= one.right,
    )
      ? results
      : typed;
  const slowly = (cell: CellSpan, block: Gathered | undefined): void => {
    const value = resolvedValue(bytes, cell, strings);
    if (!value) return;
    if (block) block.held++;
    const text = countsOnly ? '' : canonical(value);
    if (text === '') return;
    if (block)
      gather(
        block,
        `${cell.row}\t${cell.column}\t${text}\n`,
        value,
        cell.styleFrom < 0 ? '' : String.fromCharCode(...bytes.subarray(cell.styleFrom, cell.styleTo)),
      );
    else groupOf(cell).addText(cell.row, cell.column, text);
  };
  yield* eachSpan(bytes, (cell) => {
    const { row, column } = cell;
    const mark = index.at(row, column);
    const block = mark < 0 ? undefined : gathered[mark];
    if (countsOnly && !block) return;
    const area = countsOnly ? undefined : filledArea(bytes, cell);
    if (area) filled = [...filled.filter((one) => one.bottom >= row), area];
    if (
      !block &&
      cell.typeFrom < 0 &&
      cell.valueFrom >= 0 &&
      isPlainNumber(bytes, cell.valueFrom, cell.valueTo)
    )
      groupOf(cell).addNumber(row, column, bytes, cell.valueFrom, cell.valueTo);
    else slowly(cell, block);
  });
  return {
    typed: typed.count,
    typedDigest: typed.hex().slice(0, SHORT),
    results: results.count,
    resultsDigest: results.hex().slice(0, SHORT),
    blocks: gathered.map(({ lines, ...facts }) => ({ ...facts, digest: digestOf(lines).slice(0, SHORT) })),
  };
}

function gather(block: Gathered, line: string, value: StoredValue, style: string): void {
  block.lines.push(line);
  if (!block.first) {
    block.first = value;
    block.firstStyle = style;
  }
  if (value.type !== 'n') return;
  const number = Number(value.raw);
  block.low = Math.min(block.low ?? number, number);
  block.high = Math.max(block.high ?? number, number);
}

export function digestOf(lines: readonly string[]): string {
  const feed = new Feed();
  for (const line of lines) feed.add(line);
  return feed.hex();
}
