import type { Cell, ErrorCode } from '../../base/values';
import type { Area } from '../../sheet/formula/address';
import { parseArea } from '../../sheet/formula/address';
import { serialOfIsoMoment } from '../../units/dates';
import { movedFormula, pieceTokens } from '../formulas';
import type { Token } from '../../sheet/formula/tokenize';
import { attributes, nameEnd, rawText, textBetween } from '../package/xml';
import { revealCellText } from '../text';
import type { CellSpan } from './cells';
import { inlineText } from './stored';
import { numberAt } from './numbers';
import type { SharedStrings } from './strings';

/** What the spans of the walker mean: values as the sheet has them, formulas as they read in their own cell. */

export interface CellContext {
  readonly strings: SharedStrings;
  /** By style number: does its format show a date? */
  readonly dateStyles: readonly boolean[];
  readonly is1904: boolean;
}

/** Days between the two ways of counting dates. */
const DAYS_1904 = 1462;
/** Characters of formulas that are kept of one file; beyond them a file of a few kilobytes could ask for gigabytes. */
const MOST_FORMULA_TEXT = 10_000_000;
const KNOWN_ERRORS = new Set<string>([
  '#VALUE!',
  '#N/A',
  '#NUM!',
  '#DIV/0!',
  '#REF!',
  '#NAME?',
  '#NULL!',
  '#SPILL!',
  '#CALC!',
  '#BUSY!',
]);

export interface StoredFormula {
  /** In file spelling, without the sign in front. */
  readonly text: string;
  /** The cells it fills, when it is stored with them. */
  readonly area: Area | undefined;
}

interface Shared {
  readonly tokens: readonly Token[];
  readonly row: number;
  readonly column: number;
}

/** Reads the cells of one sheet; the texts of shared formulas are remembered from cell to cell. */
export class CellReader {
  private readonly shared = new Map<string, Shared>();
  /** A what-if table stood somewhere: its cells are values. */
  hasWhatIf = false;

  constructor(
    private readonly bytes: Uint8Array,
    private readonly context: CellContext,
    private readonly budget: FormulaBudget = new FormulaBudget(),
  ) {}

  style(cell: CellSpan): number {
    return cell.styleFrom < 0 ? 0 : numberAt(this.bytes, cell.styleFrom, cell.styleTo);
  }
  isDate(cell: CellSpan): boolean {
    return this.context.dateStyles[this.style(cell)] ?? false;
  }

  value(cell: CellSpan): Cell {
    const { bytes, context } = this;
    if (cell.inlineFrom >= 0 && cell.valueFrom < 0)
      return revealCellText(inlineText(bytes, cell.inlineFrom, cell.inlineTo));
    const type = typeOf(bytes, cell);
    // A formula that gives an empty text may be stored without a value.
    if (cell.valueFrom < 0) return type === 'str' && cell.formulaStart >= 0 ? '' : null;
    if (type === 'n') return this.number(cell);
    if (type === 's') {
      const index = numberAt(bytes, cell.valueFrom, cell.valueTo);
      return context.strings.has(index) ? revealCellText(context.strings.text(index)) : null;
    }
    return valueOfType(type, textBetween(bytes, cell.valueFrom, cell.valueTo));
  }

  /** A number that no formula works out, as most cells of a record book are; NaN for any other cell. */
  typedNumber(cell: CellSpan): number {
    if (cell.formulaStart >= 0 || cell.valueFrom < 0 || cell.inlineFrom >= 0) return NaN;
    if (cell.typeFrom >= 0 && typeOf(this.bytes, cell) !== 'n') return NaN;
    return this.number(cell) ?? NaN;
  }

  private number(cell: CellSpan): number | null {
    const value = numberAt(this.bytes, cell.valueFrom, cell.valueTo);
    if (!Number.isFinite(value)) return null;
    return this.context.is1904 && this.isDate(cell) ? value + DAYS_1904 : value;
  }

  /** Only the first cell of a shared formula holds its text; the others read it from where they stand. */
  formula(cell: CellSpan): StoredFormula | undefined {
    if (cell.formulaStart < 0) return undefined;
    const { bytes } = this;
    const how =
      cell.formulaOpenEnd - cell.formulaStart > 4
        ? attributes(bytes, nameEnd(bytes, cell.formulaStart + 1), cell.formulaOpenEnd - 1)
        : [];
    const say = (name: string): string => how.find((one) => one.name === name)?.value ?? '';
    const kind = say('t');
    if (kind === 'dataTable') {
      this.hasWhatIf = true;
      return undefined;
    }
    const text =
      cell.formulaCloseStart > cell.formulaOpenEnd
        ? textBetween(bytes, cell.formulaOpenEnd, cell.formulaCloseStart)
        : '';
    if (kind === 'shared') return this.sharedFormula(cell, text, say('si'));
    if (text === '' || !this.budget.take(text.length)) return undefined;
    return { text, area: kind === 'array' ? parseArea(say('ref')) : undefined };
  }

  private sharedFormula(cell: CellSpan, text: string, key: string): StoredFormula | undefined {
    const { row, column } = cell;
    if (text !== '') {
      this.shared.set(key, { tokens: pieceTokens(text), row, column });
      return this.budget.take(text.length) ? { text, area: undefined } : undefined;
    }
    const first = this.shared.get(key);
    if (!first || this.budget.isUsedUp) return undefined;
    const moved = movedFormula(first.tokens, row - first.row, column - first.column);
    return this.budget.take(moved.length) ? { text: moved, area: undefined } : undefined;
  }
}

const [NUMBER, SHARED_TEXT] = [0x6e, 0x73];
/** The commonest types by their one letter: this is asked of every cell of a workbook. */
function typeOf(bytes: Uint8Array, { typeFrom, typeTo }: CellSpan): string {
  if (typeFrom < 0) return 'n';
  if (typeTo === typeFrom + 1) {
    if (bytes[typeFrom] === SHARED_TEXT) return 's';
    if (bytes[typeFrom] === NUMBER) return 'n';
  }
  return rawText(bytes, typeFrom, typeTo);
}

export class FormulaBudget {
  private left = MOST_FORMULA_TEXT;
  get isUsedUp(): boolean {
    return this.left <= 0;
  }
  take(characters: number): boolean {
    this.left -= characters;
    return this.left > 0;
  }
}

function valueOfType(type: string, raw: string): Cell {
  if (type === 'str' || type === 'inlineStr') return revealCellText(raw);
  if (type === 'b') return raw === '1' || raw === 'true';
  if (type === 'e') return { error: (KNOWN_ERRORS.has(raw) ? raw : '#VALUE!') as ErrorCode };
  if (type === 'd') return serialOfIsoMoment(raw) ?? raw;
  return raw;
}
