import type { Area } from '../../formula/address';
import { Sha256 } from './sha256';
import type { SharedStrings } from './strings';
import { AreaIndex, canonical, eachCell, filledArea } from './values';
import type { StoredValue } from './cells';
import { bytesOf } from './xml';

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
const CHUNK = 500;

class Feed {
  private readonly sha = new Sha256();
  private lines: string[] = [];
  count = 0;
  add(line: string): void {
    this.count++;
    if (this.lines.push(line) >= CHUNK) this.flush();
  }
  private flush(): void {
    this.sha.update(bytesOf(this.lines.join('')));
    this.lines = [];
  }
  hex(): string {
    this.flush();
    return this.sha.hex();
  }
}

type Gathered = Omit<BlockFacts, 'digest'> & { readonly lines: string[] };

/**
 * Reads the values of one sheet into three groups: what was frozen (by block), what was typed, and what remaining formulas give.
 * The same reading makes the page and verifies it later.
 */
export function* sheetFacts(bytes: Uint8Array, strings: SharedStrings, blocks: readonly (readonly Area[])[], countsOnly = false): Generator<number, SheetFacts> {
  const index = new AreaIndex(blocks.flatMap((areas, mark) => areas.map((area) => [area, mark] as const)));
  const gathered: Gathered[] = blocks.map(() => ({ first: undefined, firstStyle: '', low: undefined, high: undefined, held: 0, lines: [] }));
  const typed = new Feed();
  const results = new Feed();
  let filled: Area[] = [];
  yield* eachCell(bytes, strings, (cell, value) => {
    const { row, column } = cell;
    const block = gathered[index.at(row, column)];
    if (block && value) block.held++;
    if (countsOnly) return;
    const area = filledArea(bytes, cell);
    if (area) filled = [...filled.filter((one) => one.bottom >= row), area];
    const text = value ? canonical(value) : '';
    if (!value || text === '') return;
    const line = `${row}\t${column}\t${text}\n`;
    if (block) gather(block, line, value, cell.styleFrom < 0 ? '' : String.fromCharCode(...bytes.subarray(cell.styleFrom, cell.styleTo)));
    else if (cell.formulaStart >= 0 || filled.some((one) => row >= one.top && row <= one.bottom && column >= one.left && column <= one.right)) results.add(line);
    else typed.add(line);
  });
  return {
    typed: typed.count, typedDigest: typed.hex().slice(0, SHORT), results: results.count, resultsDigest: results.hex().slice(0, SHORT),
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
