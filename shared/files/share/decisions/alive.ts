import type { Area } from '../../../sheet/formula/address';
import { parseArea } from '../../../sheet/formula/address';
import type { NamedParam, SheetFunction } from '../../../functions/define';
import { HEADINGS } from '../../../functions/define';
import type { FindFunction, Operand, Resolver } from '../../../sheet/formula';
import { callsOf } from '../../../sheet/formula';
import { evaluateWith } from '../../../sheet/formula/evaluate';
import type { Cell } from '../../../base/values';
import { isError, isGrid } from '../../../base/values';
import type { PackageBook } from '../../package/book';
import { argumentsAfter, ownCalls, typedForm } from '../references/calls';
import type { StoredValue } from '../../cells/stored';
import { lex } from '../references/lex';
import type { NameTable } from '../references/names';
import { prefixSheet } from '../references/names';
import type { FormulaCell } from './scan';
import type { TableInfo } from '../references/tables';
import { tableArea } from '../references/tables';

/** Keeps a formula alive without the add-in: our calls become the built-in formula their record names. */

const SIMPLE = /^\s*(?:[\w$.]+|"(?:[^"]|"")*")\s*$/;

function argumentText(param: NamedParam, given: string | undefined): string | undefined {
  if (given !== undefined && given.trim() !== '')
    return SIMPLE.test(given) ? given.trim() : `(${given.trim()})`;
  if (param.kind === 'flag') return String(param.default).toUpperCase();
  const fallback = 'default' in param ? param.default : undefined;
  return typeof fallback === 'number'
    ? String(fallback)
    : typeof fallback === 'string'
      ? `"${fallback}"`
      : undefined;
}

/** What Excel takes; a longer text did not come from it. */
const LONGEST_FORMULA = 8_192;

/** Without brackets around the whole. */
const unwrap = (text: string): string =>
  text.startsWith('(') && argumentsAfter(text, 0)?.end === text.length ? unwrap(text.slice(1, -1)) : text;

/** The record's native formula with these arguments; undefined when an argument it needs was left out. */
export function nativeCall(fn: SheetFunction, args: readonly string[]): string | undefined {
  if (fn.native === undefined || args.length > fn.params.length) return undefined;
  if (fn.params.some((param, i) => param.name === HEADINGS && args[i] !== undefined)) return undefined;
  let isWhole = true;
  const text = fn.native.replace(/^=/, '').replace(/\{(\w+)\}/g, (_, name: string) => {
    const i = fn.params.findIndex((param) => param.name === name);
    const param = fn.params[i];
    const argument = param && argumentText(param, args[i]);
    if (argument === undefined) isWhole = false;
    return argument ?? '';
  });
  return isWhole ? `(${unwrap(text)})` : undefined;
}

/**
 * The formula with every call of ours replaced; undefined when one of them has no native twin. Inner calls
 * come first.
 */
export function nativeForm(text: string, find: FindFunction): string | undefined {
  let now = text;
  if (text.length > LONGEST_FORMULA) return undefined;
  for (let calls = ownCalls(now); calls.length > 0; calls = ownCalls(now)) {
    const call = calls.at(-1);
    const found = call && argumentsAfter(now, call.piece.end);
    const fn = call && find(call.name);
    const native = fn && found ? nativeCall(fn, found.args) : undefined;
    if (!call || !found || native === undefined || call.piece.kind !== 'call') return undefined;
    now = now.slice(0, call.piece.from) + native + now.slice(found.end);
  }
  return unwrap(now);
}

/** Last values of all cells, to try a native formula on. */
export class LastValues {
  private readonly sheets = new Map<number, Map<number, Cell>>();
  constructor(
    private readonly book: Pick<PackageBook, 'sheets'>,
    private readonly names: NameTable,
    private readonly tables: readonly TableInfo[],
    private readonly find: FindFunction,
  ) {}

  set(sheet: number, row: number, column: number, { type, raw }: StoredValue): void {
    const cells = this.sheets.get(sheet) ?? new Map<number, Cell>();
    cells.set(
      row * 16_384 + column,
      type === 'n'
        ? Number(raw)
        : type === 'b'
          ? raw === '1' || raw === 'true'
          : type === 'e'
            ? { error: raw as '#N/A' }
            : raw,
    );
    this.sheets.set(sheet, cells);
  }

  private area(sheet: number, area: Area): Operand {
    const cells = this.sheets.get(sheet);
    const height = area.bottom - area.top + 1;
    const width = area.right - area.left + 1;
    if (height * width > 100_000) return { error: '#REF!' };
    const grid = Array.from({ length: height }, (_, r) =>
      Array.from({ length: width }, (__, c) => cells?.get((area.top + r) * 16_384 + area.left + c) ?? null),
    );
    return height === 1 && width === 1 ? (grid[0]?.[0] ?? null) : grid;
  }

  resolver(sheet: number, row: number): Resolver {
    const reference = (text: string): Operand => {
      const [piece] = lex(text);
      if (piece?.kind === 'table') {
        const found = tableArea(this.tables, text, row);
        return found ? this.area(found.sheet, found.area) : { error: '#REF!' };
      }
      const prefix = piece ? text.slice(piece.from, piece.at) : '';
      const at = prefix
        ? this.book.sheets.find((one) => one.name.toLowerCase() === prefixSheet(prefix).toLowerCase())?.index
        : sheet;
      const area = piece && parseArea(text.slice(piece.at));
      return area && at !== undefined ? this.area(at, area) : { error: '#REF!' };
    };
    return {
      reference,
      call: callsOf(this.find),
      name: (word) => {
        const [piece] = lex(word);
        const name = piece && this.names.find(word, piece, sheet);
        return name && !name.text.includes('(')
          ? evaluateWith(`=${name.text}`, { reference })
          : { error: '#NAME?' };
      },
    };
  }

  /** Does the native formula give the values that stand in the cells now? */
  agrees(sheet: number, cell: FormulaCell, native: string): boolean {
    const answer = evaluateWith(typedForm(native), this.resolver(sheet, cell.span.row));
    const stored = this.area(sheet, cell.area);
    const [a, b] = [isGrid(answer) ? answer : [[answer]], isGrid(stored) ? stored : [[stored]]];
    return (
      a.length === b.length &&
      a.every(
        (line, r) => line.length === b[r]?.length && line.every((one, c) => same(one, b[r]?.[c] ?? null)),
      )
    );
  }
}

const same = (a: Cell, b: Cell): boolean =>
  typeof a === 'number' && typeof b === 'number'
    ? Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b))
    : !isError(a) && !isError(b) && (a ?? '') === (b ?? '');
