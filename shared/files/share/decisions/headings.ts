import { columnLetters, MAX_ROWS, quoteSheet } from '../../../sheet/formula/address';
import type { StoredValue } from '../../cells/stored';
import { openBook } from '../open';
import type { Opened } from '../open';
import type { ShareProgress } from './options';
import { Refusal } from '../../package/refusal';
import { sharedStrings } from '../../cells/strings';
import { eachCell } from '../../cells/values';
import { attribute } from '../../package/xml';

/**
 * What a person can choose from when something shall be left out of a copy: sheets, and columns by the words
 * above them.
 */

export interface ColumnChoice {
  readonly letter: string;
  readonly heading: string;
  /** Filled cells below the heading. */
  readonly filled: number;
  /** The cells below the heading, as FreezeOptions.blank takes them. */
  readonly cells: string;
}
export interface SheetChoice {
  readonly name: string;
  readonly isHidden: boolean;
  /** Charts alone on a sheet and the like have no columns. */
  readonly isWorksheet: boolean;
  readonly columns: readonly ColumnChoice[];
}

const LONGEST = 60;
const isText = ({ type }: StoredValue): boolean => type === 's' || type === 'str' || type === 'inlineStr';

interface Row {
  readonly at: number;
  readonly words: Map<number, string>;
  readonly filled: Set<number>;
}

/** Words side by side over filled cells are headings; the block below, down to an empty row, holds none. */
export class Finder {
  private readonly rows: Row[] = [];
  private readonly counts = new Map<number, number>();
  private readonly found = new Map<number, { readonly words: string[]; readonly row: number }>();
  private isInBlock = false;

  constructor(private readonly headings: ReadonlyMap<number, ReadonlySet<number>>) {}

  add(row: number, column: number, value: StoredValue): void {
    let now = this.rows.at(-1);
    if (now?.at !== row) {
      this.close();
      now = { at: row, words: new Map(), filled: new Set() };
      this.rows.push(now);
      if (this.rows.length > 2) this.rows.shift();
    }
    now.filled.add(column);
    if (isText(value) && value.raw.trim() !== '' && value.raw.length <= LONGEST)
      now.words.set(column, value.raw.trim());
    const heading = this.found.get(column);
    if (heading && row > heading.row) this.counts.set(column, (this.counts.get(column) ?? 0) + 1);
  }

  /** The last row is complete: was the one above it a row of headings? */
  close(): void {
    const now = this.rows.at(-1);
    const above = this.rows.length > 1 ? this.rows[0] : undefined;
    if (!now) return;
    if (!above || above.at !== now.at - 1) this.isInBlock = false;
    else if (!this.isInBlock && isHeadingRow(above, now)) this.take(above, now);
    const table = this.headings.get(now.at);
    if (table) for (const column of table) this.name(column, now);
  }

  private take(above: Row, now: Row): void {
    this.isInBlock = true;
    for (const column of above.words.keys()) {
      this.name(column, above);
      if (now.filled.has(column)) this.counts.set(column, Math.max(1, this.counts.get(column) ?? 0));
    }
  }

  private name(column: number, row: Row): void {
    const word = row.words.get(column);
    const known = this.found.get(column);
    if (word === undefined) return;
    if (!known) this.found.set(column, { words: [word], row: row.at });
    else if (!known.words.includes(word) && known.words.length < 3) known.words.push(word);
  }

  columns(sheet: string): ColumnChoice[] {
    this.close();
    return [...this.found]
      .sort(([a], [b]) => a - b)
      .map(([column, { words, row }]) => {
        const letter = columnLetters(column);
        return {
          letter,
          heading: words.join(' / '),
          filled: this.counts.get(column) ?? 0,
          cells: `${quoteSheet(sheet)}!${letter}${row + 2}:${letter}${MAX_ROWS}`,
        };
      })
      .filter(({ filled }) => filled > 0);
  }
}

function isHeadingRow(above: Row, now: Row): boolean {
  const columns = [...above.words.keys()];
  if (
    columns.length < 2 ||
    above.filled.size > above.words.size ||
    new Set(above.words.values()).size < columns.length
  )
    return false;
  const beside = columns.filter((column) => above.words.has(column + 1) || above.words.has(column - 1));
  const below = columns.filter((column) => now.filled.has(column)).length;
  // A form to be filled in has headings over many empty cells.
  return beside.length >= 2 && below > 0 && below * 3 >= columns.length;
}

function headingRows({ tables }: Opened, sheet: number): Map<number, Set<number>> {
  const rows = new Map<number, Set<number>>();
  for (const { area, top } of tables.filter((table) => table.sheet === sheet && table.top > table.area.top)) {
    const columns = rows.get(top - 1) ?? new Set<number>();
    for (let column = area.left; column <= area.right; column++) columns.add(column);
    rows.set(top - 1, columns);
  }
  return rows;
}

/** undefined when the file cannot be read; inspectSteps then says why. */
export function* choiceSteps(file: Uint8Array): Generator<ShareProgress, readonly SheetChoice[] | undefined> {
  try {
    const opened = yield* openBook(file);
    const strings = sharedStrings(opened);
    const { book, pack } = opened;
    const choices: SheetChoice[] = [];
    for (const [i, sheet] of book.sheets.entries()) {
      const bytes = sheet.isWorksheet ? pack.read(sheet.part) : undefined;
      const finder = new Finder(headingRows(opened, sheet.index));
      if (bytes)
        for (const done of eachCell(bytes, strings, ({ row, column }, value) => {
          if (value && value.raw !== '') finder.add(row, column, value);
        }))
          yield { step: 'read', done: (i + done) / book.sheets.length };
      choices.push({
        name: sheet.name,
        isWorksheet: sheet.isWorksheet,
        isHidden: /hidden/i.test(attribute(book.bytes, sheet.element, 'state')?.value ?? ''),
        columns: finder.columns(sheet.name),
      });
    }
    return choices;
  } catch (error) {
    if (error instanceof Refusal) return undefined;
    throw error;
  }
}
