import type { RangeCells } from '../records/read/sheetCells';
import { addressOf } from '../sheet/formula/address';
import type { Cell } from '../base/values';
import { isError } from '../base/values';
import type { Estimate } from '../families/learning/kernels/estimate';
import { MONTH_NAMES } from '../units/dates';
import { limitsOf } from './observe';
import type { RateKey } from '../families/learning/rates';
import { ALL_RATE_KEYS, rateSpec } from '../families/learning/rates';

/** A rate as a sheet of rates says it; its farm value may be typed over by the user. */
export interface ReadRate extends Omit<Estimate, 'ownWeight'> {
  readonly key: RateKey;
  /** Preparation or month (1 to 12); undefined for the farm as a whole. */
  readonly kind: string | number | undefined;
  /** No run speaks of it, and yet the value is not that of the literature: the user typed it. */
  readonly isTyped: boolean;
}

export interface RatesRead {
  readonly rates: readonly ReadRate[];
  /** One sentence for each rate that was not taken, with its cell. */
  readonly leftOut: readonly string[];
}

const COLUMNS = {
  rate: 'Rate',
  kind: 'For',
  value: 'Farm value',
  low: 'Low',
  high: 'High',
  nextLow: 'Next run low',
  nextHigh: 'Next run high',
  runs: 'Runs',
  literature: 'Literature',
} as const;
type Column = keyof typeof COLUMNS;
const NUMBERS = ['value', 'low', 'high', 'nextLow', 'nextHigh', 'runs'] as const satisfies readonly Column[];
const NEEDED = ['rate', 'kind', ...NUMBERS] as const satisfies readonly Column[];

const wordOf = (cell: Cell | undefined): string =>
  typeof cell === 'string' ? cell.toLowerCase().replace(/\s+/g, ' ').trim() : '';
const KEYS = new Map(ALL_RATE_KEYS.map((key) => [wordOf(rateSpec(key).label), key]));
const MONTHS = MONTH_NAMES.map(wordOf);
/** Below the rates stands what was not used, in the same columns. */
const END = 'not used';

interface Heading {
  readonly row: number;
  readonly columns: ReadonlyMap<Column, number>;
}
function headingOf({ values }: RangeCells): Heading | undefined {
  for (const [row, line] of values.entries()) {
    const said = line.map(wordOf);
    const columns = new Map(
      Object.entries(COLUMNS).map(([column, title]) => [column as Column, said.indexOf(wordOf(title))]),
    );
    if (NEEDED.every((column) => (columns.get(column) ?? -1) >= 0)) return { row, columns };
  }
  return undefined;
}

/** The farm as a whole is said in words that name no kind. */
function kindOf(key: RateKey, cell: Cell | undefined): string | number | undefined {
  const by = rateSpec(key).kinds?.by;
  const month = MONTHS.indexOf(wordOf(cell));
  if (by === 'month') return month < 0 ? undefined : month + 1;
  return by === 'preparation' &&
    typeof cell === 'string' &&
    !/^\s*(a preparation not used yet)?\s*$/i.test(cell)
    ? cell.trim()
    : undefined;
}

const shown = (cell: Cell | undefined): string =>
  cell === null || cell === undefined || cell === ''
    ? 'blank'
    : isError(cell)
      ? cell.error
      : typeof cell === 'string'
        ? `the text “${cell.slice(0, 40)}”`
        : String(cell);
const inUnit = (key: RateKey, x: number): string =>
  rateSpec(key).unit === 'share'
    ? `${Number((100 * x).toPrecision(3))} %`
    : `${Number(x.toPrecision(3))} ${rateSpec(key).unit}`.trim();

/** What is wrong with a number of a rate, if anything. Ends of intervals may reach further than a value. */
function faultOf(key: RateKey, column: (typeof NUMBERS)[number], cell: Cell | undefined): string | undefined {
  if (typeof cell !== 'number' || !Number.isFinite(cell)) return `${shown(cell)}, not a number`;
  if (column === 'runs')
    return Number.isInteger(cell) && cell >= 0 ? undefined : `${cell}, not a number of runs`;
  const [least, most] = limitsOf(key);
  return column !== 'value' || (cell >= least && cell <= most)
    ? undefined
    : `${inUnit(key, cell)}, but it lies between ${inUnit(key, least)} and ${inUnit(key, most)}`;
}

interface Line {
  readonly row: number;
  readonly at: (column: Column) => Cell | undefined;
  readonly place: (column: Column) => string;
}

function rateFrom(key: RateKey, { at, place }: Line): ReadRate | string {
  for (const column of NUMBERS) {
    const fault = faultOf(key, column, at(column));
    if (fault !== undefined)
      return `${rateSpec(key).label} is left out: ${COLUMNS[column]} in ${place(column)} is ${fault}.`;
  }
  const [value, low, high, nextLow, nextHigh, runs] = NUMBERS.map((column) => at(column) as number) as [
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  if (low > high || nextLow > nextHigh)
    return `${rateSpec(key).label} is left out: in row ${place('low').replace(/\D/g, '')} a low end is above its high end.`;
  const literature = at('literature');
  // A value typed over the farm's own may lie outside its interval: the interval reaches to it.
  return {
    key,
    kind: kindOf(key, at('kind')),
    value,
    low: Math.min(low, value),
    high: Math.max(high, value),
    nextLow: Math.min(nextLow, value),
    nextHigh: Math.max(nextHigh, value),
    runs,
    isTyped: runs === 0 && value !== (typeof literature === 'number' ? literature : rateSpec(key).literature),
  };
}

function linesOf(cells: RangeCells, { row: head, columns }: Heading): Line[] {
  const below = cells.values.slice(head + 1);
  const end = below.findIndex((line) => wordOf(line[columns.get('rate') ?? 0]) === END);
  return below.slice(0, end < 0 ? undefined : end).map((line, i): Line => {
    const row = head + 1 + i;
    return {
      row,
      at: (column) => line[columns.get(column) ?? -1],
      place: (column) => addressOf(cells.top + row, cells.left + (columns.get(column) ?? 0)),
    };
  });
}

/**
 * A sheet of rates, as ratesWorkbook wrote it and a user may have changed it, back to figures. Rows and
 * columns may have moved; what cannot be a figure is left out with a sentence, never mended.
 */
export function ratesFromCells(cells: RangeCells): RatesRead {
  const heading = headingOf(cells);
  if (!heading)
    return {
      rates: [],
      leftOut: [
        `No rates were found on ${cells.name}: their headings (${NEEDED.map((column) => COLUMNS[column]).join(', ')}) must stand in one row.`,
      ],
    };
  const rates: ReadRate[] = [];
  const leftOut: string[] = [];
  for (const line of linesOf(cells, heading)) {
    const key = KEYS.get(wordOf(line.at('rate')));
    if (!key) continue;
    const got = rateFrom(key, line);
    if (typeof got === 'string') leftOut.push(got);
    else if (rates.some((one) => one.key === key && one.kind === got.kind))
      leftOut.push(`${rateSpec(key).label} stands twice: row ${cells.top + line.row + 1} is left out.`);
    else rates.push(got);
  }
  const learned = new Set(rates.filter(({ runs }) => runs > 0).map(({ key }) => key));
  return { rates: rates.map((one) => ({ ...one, isTyped: one.isTyped && !learned.has(one.key) })), leftOut };
}
