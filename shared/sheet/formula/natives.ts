// Long: one built-in function a line.
import type { Cell, CellError, Grid } from '../../base/values';
import { isError, isGrid } from '../../base/values';
import type { AGGREGATE_NAMES, EagerFunction, Operand } from './evaluate';
import { LOOKUPS } from './lookups';
import { stretch, toNumber, toText } from './operators';
import { formatText, isDay } from './textFormat';
import { midnightOf, serialOfDay } from '../../units/dates';

/**
 * The built-in functions that plans, checks and copies use, as Excel defines them. Not a spreadsheet: hosts
 * calculate with their own engines, this gives the values stored beside formulas and the answers in the
 * terminal.
 */

const bad = (error: CellError['error']): CellError => ({ error });
const flat = (args: readonly (Operand | undefined)[]): Cell[] =>
  args.flatMap((arg) => (isGrid(arg) ? arg.flat() : [arg ?? null]));

/** Numbers as SUM sees them: text and booleans inside ranges are passed over, typed ones are converted. */
export function numbers(args: readonly (Operand | undefined)[]): number[] | CellError {
  const found: number[] = [];
  for (const arg of args)
    if (isGrid(arg)) {
      for (const line of arg)
        for (const cell of line)
          if (typeof cell === 'number') found.push(cell);
          else if (isError(cell)) return cell;
    } else {
      const read = toNumber(arg ?? null);
      if (isError(read)) return read;
      found.push(read);
    }
  return found;
}

const overNumbers =
  (apply: (xs: number[]) => Cell): EagerFunction =>
  (args) => {
    const xs = numbers(args);
    if (isError(xs)) return xs;
    const answer = apply(xs);
    return typeof answer === 'number' && !Number.isFinite(answer) ? bad('#NUM!') : answer;
  };

/** A function of single numbers that stretches over ranges. `atLeast` numbers must be given. */
const perCell =
  (atLeast: number, apply: (...xs: number[]) => number | CellError): EagerFunction =>
  (args) =>
    args.length < atLeast
      ? bad('#N/A')
      : stretch(
          args.map((arg) => arg ?? null),
          (cells) => {
            const xs: number[] = [];
            for (const cell of cells) {
              const x = toNumber(cell);
              if (isError(x)) return x;
              xs.push(x);
            }
            const y = apply(...xs);
            return typeof y === 'number' && !Number.isFinite(y) ? bad('#NUM!') : y;
          },
        );

const isAbout =
  (test: (cell: Cell) => boolean): EagerFunction =>
  ([value]) =>
    stretch([value ?? null], ([cell = null]) => test(cell));

const sum = (xs: readonly number[]): number => xs.reduce((total, x) => total + x, 0);
const mean = (xs: readonly number[]): Cell => (xs.length === 0 ? bad('#DIV/0!') : sum(xs) / xs.length);

/** Decimal rounding as Excel shows it: the 15-digit value is what gets rounded. */
const decimal =
  (how: (x: number) => number) =>
  (x: number, digits = 0): number => {
    const scale = 10 ** Math.trunc(digits);
    return (Math.sign(x) * how(Number((Math.abs(x) * scale).toPrecision(15)))) / scale;
  };

const logical =
  (all: boolean): EagerFunction =>
  (args) => {
    const cells = flat(args).filter((cell) => typeof cell !== 'string' && cell !== null);
    const failed = cells.find(isError);
    if (failed) return failed;
    return cells.length === 0 ? bad('#VALUE!') : all ? cells.every(Boolean) : cells.some(Boolean);
  };

const secondsOf = (serial: number): number => Math.round((serial - Math.floor(serial)) * 86_400) % 86_400;

const variance = (xs: readonly number[]): Cell => {
  if (xs.length < 2) return bad('#DIV/0!');
  const m = sum(xs) / xs.length;
  return sum(xs.map((x) => (x - m) ** 2)) / (xs.length - 1);
};

const sumProduct: EagerFunction = (args) => {
  const product = args.reduce<Operand>(
    (left, right) =>
      stretch([left, right ?? null], ([a = null, b = null]) => {
        if (isError(a)) return a;
        if (isError(b)) return b;
        return typeof a === 'number' && typeof b === 'number' ? a * b : 0;
      }),
    1,
  );
  const xs = numbers([product]);
  return isError(xs) ? xs : sum(xs);
};

const textOf = (args: readonly (Operand | undefined)[]): string | CellError => {
  let joined = '';
  for (const cell of flat(args)) {
    const piece = toText(cell);
    if (isError(piece)) return piece;
    joined += piece;
  }
  return joined;
};

const numbersOf = (cells: Grid): number => cells.flat().filter((cell) => typeof cell === 'number').length;

const AGGREGATES: Readonly<Record<(typeof AGGREGATE_NAMES)[number], EagerFunction>> = {
  SUM: overNumbers(sum),
  AVERAGE: overNumbers(mean),
  MIN: overNumbers((xs) => (xs.length ? xs.reduce((a, b) => (b < a ? b : a)) : 0)),
  MAX: overNumbers((xs) => (xs.length ? xs.reduce((a, b) => (b > a ? b : a)) : 0)),
  PRODUCT: overNumbers((xs) => xs.reduce((p, x) => p * x, 1)),
  MEDIAN: overNumbers((xs) => {
    const sorted = xs.toSorted((a, b) => a - b);
    const half = Math.floor(sorted.length / 2);
    return sorted.length === 0
      ? bad('#NUM!')
      : sorted.length % 2
        ? (sorted[half] ?? 0)
        : ((sorted[half - 1] ?? 0) + (sorted[half] ?? 0)) / 2;
  }),
  'STDEV.S': overNumbers((xs) => {
    const v = variance(xs);
    return typeof v === 'number' ? Math.sqrt(v) : v;
  }),
  COUNT: (args) =>
    sum(args.map((arg) => (isGrid(arg) ? numbersOf(arg) : isError(toNumber(arg ?? null)) ? 0 : 1))),
  COUNTA: (args) => flat(args).filter((cell) => cell !== null).length,
  COUNTBLANK: (args) => flat(args).filter((cell) => cell === null || cell === '').length,
  AND: logical(true),
  OR: logical(false),
};

const MATHS: Readonly<Record<string, EagerFunction>> = {
  ABS: perCell(1, Math.abs),
  SQRT: perCell(1, Math.sqrt),
  EXP: perCell(1, Math.exp),
  LN: perCell(1, Math.log),
  LOG10: perCell(1, Math.log10),
  LOG: perCell(1, (x, base = 10) => Math.log(x) / Math.log(base)),
  POWER: perCell(2, (x = 0, y = 0) => x ** y),
  SIGN: perCell(1, Math.sign),
  INT: perCell(1, Math.floor),
  TRUNC: perCell(1, decimal(Math.floor)),
  ROUND: perCell(1, decimal(Math.round)),
  ROUNDUP: perCell(1, decimal(Math.ceil)),
  ROUNDDOWN: perCell(1, decimal(Math.floor)),
  MOD: perCell(2, (x = 0, y = 0) => (y === 0 ? bad('#DIV/0!') : x - y * Math.floor(x / y))),
  CEILING: perCell(2, (x = 0, step = 1) =>
    step === 0 ? 0 : Math.ceil(Number((x / step).toPrecision(15))) * step,
  ),
  FLOOR: perCell(2, (x = 0, step = 1) =>
    step === 0 ? bad('#DIV/0!') : Math.floor(Number((x / step).toPrecision(15))) * step,
  ),
  PI: () => Math.PI,
};

const ofDay =
  (of: (serial: number, type?: number) => number) =>
  (x = 0, type?: number): number | CellError =>
    isDay(x) ? of(x, type) : bad('#NUM!');

/** Years below 1900 count from 1900, as Excel reads them. */
function dateOf(y = 0, m = 1, d = 1): number | CellError {
  const year = Math.trunc(y);
  if (year < 0 || year > 9999) return bad('#NUM!');
  const serial = serialOfDay(year < 1900 ? year + 1900 : year, Math.trunc(m), Math.trunc(d));
  return isDay(serial) ? serial : bad('#NUM!');
}

function timeOf(h = 0, m = 0, s = 0): number | CellError {
  const seconds = Math.trunc(h) * 3600 + Math.trunc(m) * 60 + Math.trunc(s);
  return seconds < 0 ? bad('#NUM!') : (seconds / 86_400) % 1;
}

const DATES: Readonly<Record<string, EagerFunction>> = {
  DATE: perCell(3, dateOf),
  TIME: perCell(3, timeOf),
  YEAR: perCell(
    1,
    ofDay((x) => midnightOf(x).getUTCFullYear()),
  ),
  MONTH: perCell(
    1,
    ofDay((x) => midnightOf(x).getUTCMonth() + 1),
  ),
  DAY: perCell(
    1,
    ofDay((x) => midnightOf(x).getUTCDate()),
  ),
  HOUR: perCell(
    1,
    ofDay((x) => Math.floor(secondsOf(x) / 3600)),
  ),
  MINUTE: perCell(
    1,
    ofDay((x) => Math.floor(secondsOf(x) / 60) % 60),
  ),
  SECOND: perCell(
    1,
    ofDay((x) => secondsOf(x) % 60),
  ),
  WEEKDAY: perCell(
    1,
    ofDay((x, type = 1) => (type === 2 ? ((Math.floor(x) + 5) % 7) + 1 : ((Math.floor(x) + 6) % 7) + 1)),
  ),
};

const ABOUT: Readonly<Record<string, EagerFunction>> = {
  NOT: ([value]) =>
    stretch([value ?? null], ([cell = null]) => {
      const x = toNumber(cell);
      return isError(x) ? x : x === 0;
    }),
  ISNUMBER: isAbout((cell) => typeof cell === 'number'),
  ISTEXT: isAbout((cell) => typeof cell === 'string'),
  ISBLANK: isAbout((cell) => cell === null),
  ISERROR: isAbout(isError),
  ISNA: isAbout((cell) => isError(cell) && cell.error === '#N/A'),
  ISLOGICAL: isAbout((cell) => typeof cell === 'boolean'),
  N: ([value]) =>
    stretch([value ?? null], ([cell = null]) =>
      isError(cell) ? cell : typeof cell === 'string' ? 0 : Number(cell),
    ),
  NA: () => bad('#N/A'),
  TRUE: () => true,
  FALSE: () => false,
};

const textFunction =
  (apply: (s: string) => Cell): EagerFunction =>
  ([value]) =>
    stretch([value ?? null], ([cell = null]) => {
      const s = toText(cell);
      return isError(s) ? s : apply(s);
    });

const WILD: Readonly<Record<string, string>> = { '?': '.', '*': '.*' };
/** Where a text begins in another, large or small letters alike; ? stands for one letter, * for any, ~ before them. */
const search: EagerFunction = ([wanted, within, start]) =>
  stretch([wanted ?? null, within ?? null, start ?? 1], ([find = null, text = null, from = 1]) => {
    const [sought, all] = [toText(find), toText(text)];
    if (isError(sought) || isError(all)) return isError(sought) ? sought : all;
    const at = toNumber(from);
    if (isError(at)) return at;
    const pattern = sought.replace(/~[?*~]|[\s\S]/g, (sign) =>
      sign.length > 1 ? `\\${sign.charAt(1)}` : (WILD[sign] ?? sign.replace(/[.+^${}()|[\]\\]/, '\\$&')),
    );
    const begin = Math.trunc(at) - 1;
    const found = begin < 0 ? -1 : all.slice(begin).search(new RegExp(pattern, 'is'));
    return found < 0 ? bad('#VALUE!') : begin + found + 1;
  });

const TEXTS: Readonly<Record<string, EagerFunction>> = {
  SEARCH: search,
  CONCAT: textOf,
  CONCATENATE: textOf,
  TEXTJOIN: ([separator, skip, ...rest]) => {
    const glue = toText(isGrid(separator) ? (separator[0]?.[0] ?? null) : (separator ?? null));
    if (isError(glue)) return glue;
    const pieces = flat(rest)
      .filter((cell) => !skip || (cell !== null && cell !== ''))
      .map(toText);
    return pieces.find(isError) ?? pieces.join(glue);
  },
  LEN: textFunction((s) => s.length),
  TRIM: textFunction((s) => s.trim().replace(/ +/g, ' ')),
  UPPER: textFunction((s) => s.toUpperCase()),
  LOWER: textFunction((s) => s.toLowerCase()),
  VALUE: ([value]) => stretch([value ?? null], ([cell = null]) => toNumber(cell)),
  TEXT: ([value, format]) =>
    stretch([value ?? null, format ?? null], ([cell = null, code = null]) =>
      typeof cell === 'number' && typeof code === 'string'
        ? (formatText(cell, code) ?? bad('#VALUE!'))
        : isError(cell)
          ? cell
          : toText(cell),
    ),
};

const NATIVES: Readonly<Record<string, EagerFunction>> = {
  ...AGGREGATES,
  SUMPRODUCT: sumProduct,
  ...MATHS,
  ...DATES,
  ...ABOUT,
  ...TEXTS,
  ...LOOKUPS,
};

export const nativeFunction = (name: string): EagerFunction | undefined => {
  const key = name.toUpperCase().replace(/^_XLFN\./, '');
  return Object.hasOwn(NATIVES, key) ? NATIVES[key] : undefined;
};
