import type { Cell } from '../../base/values';
import { isError } from '../../base/values';
import { clockIn, readDate } from '../columns/cells/dates';
import { decimalIn, readNumber } from '../columns/cells/numbers';
import { unitOfText } from '../columns/cells/units';
import type { SheetCells } from '../read/sheetCells';
import { isWord } from '../words/lexicon';

/** What a cell holds, as far as its shape says. */
export const KIND = { blank: 0, number: 1, date: 2, clock: 3, word: 4, nothing: 5, error: 6 } as const;
export type CellKind = (typeof KIND)[keyof typeof KIND];

/** Signs and words people write for "none" or "not known". */
const NOTHING =
  /^(?:[-–—]+|n\/?a|nil|none|null|\?+|\.+|x|xx+|#n\/a|not (?:known|taken|done|counted)|nd|unknown|"|'')$/i;
const DIGIT = /\d/;
export const isNothingText = (text: string): boolean =>
  !DIGIT.test(text) &&
  (NOTHING.test(text.trim()) || isWord(text, 'value_nil') || isWord(text, 'value_missing'));

/** No figure at all, or a tag of one letter and a number: neither date nor unit (N5000 is money). */
const WORD_OR_TAG = /^(?:[^\p{N}]*|[a-mo-z][-_]?\d+)$/iu;

const LONGEST = 40;
const remembered = new Map<string, CellKind>();

function freshKind(text: string): CellKind {
  const trimmed = text.trim();
  if (trimmed === '') return KIND.blank;
  if (trimmed.length > LONGEST) return KIND.word;
  if (WORD_OR_TAG.test(trimmed)) return isNothingText(trimmed) ? KIND.nothing : KIND.word;
  if (readDate(trimmed, 'day first') !== undefined || readDate(trimmed, 'month first') !== undefined)
    return KIND.date;
  const { value, unit } = readNumber(trimmed, decimalIn(trimmed) ?? '.');
  if (!Number.isNaN(value) && unit === '') return /^\d{1,2}:\d\d/.test(trimmed) ? KIND.clock : KIND.number;
  if (clockIn(trimmed)) return KIND.clock;
  return !Number.isNaN(value) && unitOfText(unit) !== undefined ? KIND.number : KIND.word;
}

/**
 * Is it a letter and digits, as tags of fish and numbers of runs are? Long books have thousands of them, all
 * different; n is left out, because N5000 is money.
 */
function isTag(text: string): boolean {
  const { length } = text;
  const letter = text.charCodeAt(0) | 0x20;
  if (length < 2 || letter < 0x61 || letter > 0x7a || letter === 0x6e) return false;
  for (let i = 1; i < length; i++) {
    const code = text.charCodeAt(i);
    if (code < 0x30 || code > 0x39) return false;
  }
  return true;
}

export function kindOfText(text: string): CellKind {
  if (isTag(text)) return KIND.word;
  let kind = remembered.get(text);
  if (kind === undefined) {
    if (remembered.size > 20_000) remembered.clear();
    remembered.set(text, (kind = freshKind(text)));
  }
  return kind;
}

/** The kinds of a sheet's cells, worked out when asked for. */
export class Kinds {
  private readonly columns: (Uint8Array | undefined)[] = [];

  constructor(readonly sheet: SheetCells) {}

  at(position: number, column: number): CellKind {
    const source = this.sheet.columns[column];
    if (!source || position >= source.length) return KIND.blank;
    const list = (this.columns[column] ??= new Uint8Array(source.length).fill(255));
    const known = list[position] ?? 0;
    if (known !== 255) return known as CellKind;
    const number = source.numberAt(position);
    const kind = Number.isNaN(number)
      ? kindOf(source.cellAt(position))
      : source.isDateAt(position)
        ? number >= 1
          ? KIND.date
          : KIND.clock
        : KIND.number;
    list[position] = kind;
    return kind;
  }

  isData(position: number, column: number): boolean {
    const kind = this.at(position, column);
    return kind === KIND.number || kind === KIND.date || kind === KIND.clock;
  }
}

const known = new WeakMap<SheetCells, Kinds>();
/** Tables and forms of a sheet ask for the same kinds. */
export function kindsOf(sheet: SheetCells): Kinds {
  let kinds = known.get(sheet);
  if (!kinds) known.set(sheet, (kinds = new Kinds(sheet)));
  return kinds;
}

/** Of a cell that holds no number. */
function kindOf(cell: Cell): CellKind {
  if (cell === null || cell === '' || typeof cell === 'boolean') return KIND.blank;
  if (typeof cell === 'number') return KIND.number;
  return isError(cell) ? KIND.error : kindOfText(cell);
}
