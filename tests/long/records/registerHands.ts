// Long: five ways of laying a register out, and how each writes numbers, dates and hours
/**
 * Registers by seed, as hatcheries keep them in six mixtures of languages: units in a line or column of their own,
 * headings over headings, numbered columns, one run a column, a block a month with its subtotal, a sheet a month, two
 * tables side by side, dead and left under every tank; a second language in some headings; a date written once for the
 * lines of a day; thousands and decimals as text; sums typed or by formula. Tables: registerTables.ts.
 */
import type { ExampleCell } from '../../../shared/records/rules/rule';
import { columnLetters } from '../../../shared/sheet/formula/address';
import type { Draw } from '../../records/support/farm';
import { drawer, round } from '../../records/support/farm';
import type { Fault, Line, Table, Under, Value } from './registerTables';
import {
  buffering,
  cash,
  feeding,
  incubating,
  injecting,
  meals,
  pressing,
  sampling,
  selling,
  sorting,
  thing,
  weekly,
} from './registerTables';
import type { RegisterTongue } from './registerWords';
import { registerForms, TONGUES } from './registerWords';
import type { StrangeBook, StrangeColumn, StrangeSheet } from './strangers';
import { WrittenSheet } from './writtenSheet';

const MAKERS = [
  pressing,
  weekly,
  incubating,
  selling,
  buffering,
  injecting,
  meals,
  cash,
  feeding,
  sorting,
  sampling,
] as const;
const LAYOUTS = ['rows', 'across', 'rows', 'blocks', 'pages', 'beside', 'rows', 'tanks'] as const;
type Layout = (typeof LAYOUTS)[number];

interface Style {
  readonly tongue: RegisterTongue;
  /** Some headings stand in this one. */
  readonly second: RegisterTongue;
  readonly units: 'line' | 'bracket' | 'none';
  readonly dates: 'serial' | 'dots' | 'month' | 'short';
  readonly clocks: 'serial' | 'h' | ':' | 'pm' | 'hrs';
  readonly ditto: 'none' | 'blank' | 'mark';
  readonly isComma: boolean;
  readonly isThousands: boolean;
  readonly isFormula: boolean;
  readonly isMerged: boolean;
  readonly isNumbered: boolean;
}
const SECOND: Readonly<Record<RegisterTongue, RegisterTongue>> = {
  ng: 'fr',
  ea: 'ng',
  fr: 'ng',
  pt: 'ng',
  es: 'pt',
  id: 'ng',
};
const isEnglish = (tongue: RegisterTongue): boolean => tongue === 'ng' || tongue === 'ea';
function styleOf(draw: Draw, tongue: RegisterTongue): Style {
  return {
    tongue,
    second: SECOND[tongue],
    units: draw.pick(['line', 'line', 'bracket', 'none'] as const),
    dates: draw.pick(['serial', 'dots', 'month', 'short'] as const),
    clocks: draw.pick(
      isEnglish(tongue) ? (['serial', 'pm', 'hrs'] as const) : (['serial', 'h', ':'] as const),
    ),
    ditto: draw.pick(['none', 'none', 'none', 'blank', 'mark'] as const),
    isComma: !isEnglish(tongue) && draw.random() < 0.5,
    isThousands: draw.random() < 0.3,
    isFormula: draw.random() < 0.4,
    isMerged: draw.random() < 0.45,
    isNumbered: draw.random() < 0.25,
  };
}

const MONTHS: Readonly<Record<RegisterTongue, string>> = {
  ng: 'Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec',
  ea: 'Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec',
  fr: 'janv févr mars avr mai juin juil août sept oct nov déc',
  pt: 'jan fev mar abr mai jun jul ago set out nov dez',
  es: 'ene feb mar abr may jun jul ago sep oct nov dic',
  id: 'Jan Feb Mar Apr Mei Jun Jul Agu Sep Okt Nov Des',
};
const pad = (x: number): string => String(x).padStart(2, '0');
function dateIn(serial: number, { dates, tongue }: Style): [ExampleCell, string?] {
  const d = new Date(Date.UTC(1899, 11, 30) + Math.floor(serial) * 864e5);
  const [y, m, day] = [d.getUTCFullYear(), d.getUTCMonth(), pad(d.getUTCDate())];
  if (dates === 'serial') return [Math.floor(serial), 'dd/mm/yyyy'];
  if (dates === 'dots') return [`${day}.${pad(m + 1)}.${y}`];
  if (dates === 'short') return [`${day}/${pad(m + 1)}/${pad(y % 100)}`];
  return [`${day} ${MONTHS[tongue].split(' ')[m] ?? ''} ${y}`];
}
function clockIn(serial: number, clocks: Style['clocks']): [ExampleCell, string?] {
  const minutes = Math.round((serial % 1) * 1440) % 1440;
  const [h, m] = [Math.floor(minutes / 60), minutes % 60];
  if (clocks === 'serial') return [minutes / 1440, 'hh:mm'];
  if (clocks === 'pm') return [`${h % 12 === 0 ? 12 : h % 12}.${pad(m)}${h < 12 ? 'am' : 'pm'}`];
  if (clocks === 'hrs') return [`${pad(h)}${pad(m)} hrs`];
  return [`${pad(h)}${clocks}${pad(m)}`];
}
const NO_HOUR: Readonly<Record<Style['clocks'], string>> = {
  serial: '26:10',
  h: '19h75',
  ':': '24:85',
  pm: '17.80pm',
  hrs: '2575 hrs',
};
/** 12 500 in French, 12.500 where the comma is the decimal mark, 12,500 in English. */
const grouped = (x: number, tongue: RegisterTongue): string =>
  String(x).replaceAll(/\B(?=(\d{3})+$)/g, isEnglish(tongue) ? ',' : tongue === 'fr' ? ' ' : '.');
function written(key: string, value: Value, style: Style): [ExampleCell, string?] {
  const { kind, digits = 0 } = thing(key);
  if (typeof value !== 'number' || kind === 'text') return [value];
  if (kind === 'date') return dateIn(value, style);
  if (kind === 'clock') return clockIn(value, style.clocks);
  const number = round(value, digits);
  if (Number.isInteger(number) && style.isThousands && number >= 10_000)
    return [grouped(number, style.tongue)];
  return style.isComma && digits > 0 ? [number.toFixed(digits).replace('.', ',')] : [number];
}
const say = (key: string, draw: Draw, { tongue, second }: Style): string =>
  draw.pick(registerForms(key, draw.random() < 0.15 ? second : tongue));
const headed = (key: string, draw: Draw, style: Style): string => {
  const { unit } = thing(key);
  const words = say(key, draw, style);
  return unit !== undefined && style.units === 'bracket' ? `${words} (${unit})` : words;
};

class Leaf extends WrittenSheet implements StrangeSheet {
  readonly columns: StrangeColumn[] = [];
  describe(row: number, column: number, key: string): void {
    if (key !== 'note') this.columns.push({ sheet: this.name, row, column, fields: thing(key).is });
  }
}
type Spot = readonly [row: number, column: number];
/** Where a key of a line stands, and its sum where one does. */
interface Placed {
  readonly leaf: Leaf;
  readonly lines: readonly Line[];
  readonly at: (line: number, key: string) => Spot;
  readonly sum?: (key: string) => Spot;
}

const ditto = (key: string, i: number, lines: readonly Line[], style: Style): Value | undefined =>
  thing(key).kind === 'date' && style.ditto !== 'none' && i > 0 && lines[i]?.[key] === lines[i - 1]?.[key]
    ? style.ditto === 'mark'
      ? '"'
      : null
    : undefined;
function cellOf(key: string, i: number, lines: readonly Line[], style: Style): [ExampleCell, string?] {
  const again = ditto(key, i, lines, style);
  return again === undefined ? written(key, lines[i]?.[key] ?? null, style) : [again];
}
const total = (lines: readonly Line[], key: string): number =>
  round(
    lines.reduce((sum, line) => sum + Number(line[key] ?? 0), 0),
    2,
  );

/** The lines of headings; answers the first row below. */
function heading(
  leaf: Leaf,
  keys: readonly string[],
  heads: readonly string[],
  top: number,
  left: number,
  draw: Draw,
  style: Style,
): number {
  const unders = keys.map((key) => thing(key).under);
  const isOver = (c: number): boolean =>
    unders[c] !== undefined && (unders[c] === unders[c + 1] || unders[c] === unders[c - 1]);
  const hasTwo = style.isMerged && keys.some((_, c) => isOver(c));
  keys.forEach((_, c) => {
    if (hasTwo && isOver(c) && unders[c] !== unders[c - 1])
      leaf.put(top, left + c, say(unders[c] as Under, draw, style));
    // A heading merged down over both lines stands in the upper one.
    leaf.put(top + (hasTwo && isOver(c) ? 1 : 0), left + c, heads[c] ?? '');
  });
  let below = top + (hasTwo ? 2 : 1);
  if (style.units === 'line') {
    keys.forEach((key, c) => leaf.put(below, left + c, thing(key).unit ?? null));
    below++;
  }
  if (style.isNumbered) {
    keys.forEach((_, c) => leaf.put(below, left + c, `(${c + 1})`));
    below++;
  }
  return below;
}

function asRows(
  leaf: Leaf,
  table: Table,
  lines: readonly Line[],
  heads: readonly string[],
  top: number,
  left: number,
  draw: Draw,
  style: Style,
): Placed & { readonly below: number } {
  const { keys, sums = [] } = table;
  let first = heading(leaf, keys, heads, top, left, draw, style);
  if (table.name === 'cash') {
    const [line] = lines;
    leaf.put(first, left + keys.indexOf('what'), say('carried', draw, style));
    const brought = Number(line?.balance) - Number(line?.inMoney ?? 0) + Number(line?.outMoney ?? 0);
    leaf.put(first, left + keys.indexOf('balance'), ...written('balance', brought, style));
    first++;
  }
  keys.forEach((key, c) => {
    lines.forEach((_, i) => leaf.put(first + i, left + c, ...cellOf(key, i, lines, style)));
    leaf.describe(first, left + c, key);
  });
  const foot = first + lines.length;
  if (sums.length > 0) {
    leaf.put(foot, left, say('total', draw, style));
    for (const key of sums) {
      const c = left + keys.indexOf(key);
      if (c < left) continue;
      const name = columnLetters(c);
      const isNumbers = lines.every((_, i) => typeof leaf.cells[first + i]?.[c] !== 'string');
      const sum = total(lines, key);
      leaf.put(
        foot,
        c,
        style.isFormula && isNumbers ? [sum, `=SUM(${name}${first + 1}:${name}${foot})`] : sum,
      );
    }
  }
  return {
    leaf,
    lines,
    at: (line, key) => [first + line, left + keys.indexOf(key)],
    sum: (key) => [foot, left + keys.indexOf(key)],
    below: foot + (sums.length > 0 ? 1 : 0),
  };
}

/** One run a column, what is written down the first column, units in the second. */
function asColumns(leaf: Leaf, table: Table, heads: readonly string[], draw: Draw, style: Style): Placed {
  const { keys, lines, sums = [] } = table;
  const [top, left] = [2, style.units === 'line' ? 2 : 1];
  if (style.units === 'line') leaf.put(top - 1, 1, say('unit', draw, style));
  keys.forEach((key, r) => {
    leaf.put(top + r, 0, heads[r] ?? '');
    if (style.units === 'line') leaf.put(top + r, 1, thing(key).unit ?? null);
    lines.forEach((_, i) => leaf.put(top + r, left + i, ...cellOf(key, i, lines, style)));
    leaf.describe(top + r, left, key);
  });
  const end = left + lines.length;
  if (sums.length > 0) leaf.put(top, end, say('total', draw, style));
  for (const key of sums) if (keys.includes(key)) leaf.put(top + keys.indexOf(key), end, total(lines, key));
  return {
    leaf,
    lines,
    at: (line, key) => [top + keys.indexOf(key), left + line],
    sum: (key) => [top + keys.indexOf(key), end],
  };
}

interface Spoilt {
  readonly kind: string;
  readonly sheet: string;
  readonly cells: readonly Spot[];
  readonly write: () => void;
}
const fits = ({ keys, sums = [] }: Table, key: string): boolean =>
  key.startsWith('+') ? sums.includes(key.slice(1)) && keys.includes(key.slice(1)) : keys.includes(key);

function spoilts(table: Table, placed: readonly Placed[], draw: Draw, style: Style): Spoilt[] {
  return table.faults.flatMap((fault): Spoilt[] => {
    const part = draw.pick(placed);
    const { key, or = [], copies } = fault;
    const plain = key.replace('+', '');
    const isDate = thing(plain).kind === 'date';
    const open = part.lines.flatMap((line, i) =>
      i > 1 &&
      i < part.lines.length - 1 &&
      line[plain] &&
      !(isDate && line[plain] === part.lines[i - 1]?.[plain])
        ? [i]
        : [],
    );
    if (!fits(table, key) || open.length === 0) return [];
    const line = draw.pick(open);
    const spot = (one: string): Spot =>
      one.startsWith('+') && part.sum ? part.sum(one.slice(1)) : part.at(line, one);
    const others = copies === 'line' ? table.keys.map(spot) : or.filter((one) => fits(table, one)).map(spot);
    return [
      {
        kind: `${fault.kind} (${key})`,
        sheet: part.leaf.name,
        cells: [spot(key), ...others],
        write: () => spoil(table, part, fault, line, spot, style),
      },
    ];
  });
}
function spoil(
  { keys }: Table,
  { leaf, lines }: Placed,
  fault: Fault,
  line: number,
  spot: (key: string) => Spot,
  style: Style,
): void {
  const { key, swaps, copies } = fault;
  const here = lines[line] ?? {};
  const put = (one: string, value: Value): void => leaf.put(...spot(one), ...written(one, value, style));
  if (copies)
    for (const one of copies === 'line' ? keys.filter((k) => k !== 'run') : [key])
      put(one, lines[line - 1]?.[one] ?? null);
  else if (swaps) {
    put(key, here[swaps] ?? null);
    put(swaps, here[key] ?? null);
  } else if (fault.isNoHour) leaf.put(...spot(key), NO_HOUR[style.clocks]);
  else if (key.startsWith('+')) {
    const [row, column] = spot(key);
    leaf.put(row, column, fault.to(total(lines, key.slice(1)), here));
  } else put(key, fault.to(Number(here[key] ?? 0), here));
}

interface Kept {
  readonly name: string;
  readonly leaves: readonly Leaf[];
  readonly faults: readonly Spoilt[];
}

/** Dead and left under every tank, a line a day, deaths of the day at the side. */
function tanks(draw: Draw, style: Style): Kept {
  const leaf = new Leaf('1');
  const count = 3 + Math.floor(draw.between(0, 4));
  const days = 12 + Math.floor(draw.between(0, 6));
  leaf.put(0, 0, say('deaths', draw, style));
  leaf.put(2, 0, say('date', draw, style));
  const [dead, close, sum] = [say('dead', draw, style), say('close', draw, style), say('total', draw, style)];
  const end = 1 + 2 * count;
  leaf.put(2, end, sum);
  const left = Array.from({ length: count }, () => 100 * Math.round(draw.between(20, 90)));
  const name = draw.pick(registerForms('tank', style.tongue));
  leaf.describe(4, 0, 'date');
  leaf.columns.push({ sheet: '1', row: 4, column: end, fields: ['deadTotal', 'dead'] });
  for (let k = 0; k < count; k++) {
    leaf.put(2, 1 + 2 * k, `${name} ${k + 1}`);
    leaf.put(3, 1 + 2 * k, dead);
    leaf.put(3, 2 + 2 * k, close);
    leaf.describe(4, 1 + 2 * k, 'dead');
    leaf.describe(4, 2 + 2 * k, 'close');
  }
  for (let d = 0; d < days; d++) {
    leaf.put(4 + d, 0, ...dateIn(45_700 + d, style));
    let all = 0;
    for (let k = 0; k < count; k++) {
      const died = Math.floor(draw.between(0, 3) * draw.between(1, 8));
      left[k] = (left[k] ?? 0) - died;
      all += died;
      leaf.put(4 + d, 1 + 2 * k, died);
      leaf.put(4 + d, 2 + 2 * k, left[k] ?? 0);
    }
    leaf.put(4 + d, end, all);
  }
  const [row, k] = [7 + Math.floor(draw.between(0, 5)), Math.floor(draw.between(0, count))];
  const change = (
    kind: string,
    at: Spot,
    cell: (was: number) => number,
    or: readonly Spot[] = [],
  ): Spoilt => ({
    kind,
    sheet: '1',
    cells: [at, ...or],
    write: () => leaf.put(...at, cell(Number(leaf.cells[at[0]]?.[at[1]] ?? 0))),
  });
  const [one, two]: [Spot, Spot] = [
    [row, 1 + 2 * k],
    [row, 2 + 2 * k],
  ];
  return {
    name: `tanks ${style.tongue}`,
    leaves: [leaf],
    faults: [
      change('wrong total (side)', [row, end], (was) => was + 12),
      change('extra nought (dead)', one, (was) => (was + 5) * 100, [two, [row, end]]),
      change('minus (dead)', one, (was) => -was - 4, [two, [row, end]]),
      change('ledger (left)', two, (was) => was + 700, [one, [row - 1, 2 + 2 * k], [row + 1, 2 + 2 * k]]),
    ],
  };
}

const BOOKS = 40;
const halves = (lines: readonly Line[]): Line[][] => {
  const middle = Math.ceil(lines.length / 2);
  return [lines.slice(0, middle), lines.slice(middle)];
};
function laid(layout: Layout, table: Table, draw: Draw, style: Style): { leaves: Leaf[]; placed: Placed[] } {
  const heads = table.keys.map((key) => headed(key, draw, style));
  const leaf = new Leaf(draw.pick(['1', 'A', 'Feuil1', 'Sheet1']));
  leaf.put(0, 0, say('sheet', draw, style));
  if (layout === 'across') return { leaves: [leaf], placed: [asColumns(leaf, table, heads, draw, style)] };
  if (layout === 'pages') {
    const pages = halves(table.lines).map((lines, i) => {
      const page = new Leaf(MONTHS[style.tongue].split(' ')[i + 3] ?? String(i));
      return asRows(page, table, lines, heads, i, 0, draw, style);
    });
    return { leaves: pages.map((page) => page.leaf), placed: pages };
  }
  if (layout === 'blocks') {
    let top = 2;
    const blocks = halves(table.lines).map((lines, i) => {
      leaf.put(top, 0, MONTHS[style.tongue].split(' ')[i + 6] ?? '');
      const block = asRows(leaf, table, lines, heads, top + 1, 0, draw, style);
      top = block.below + 2;
      return block;
    });
    return { leaves: [leaf], placed: blocks };
  }
  return { leaves: [leaf], placed: [asRows(leaf, table, table.lines, heads, 2, 0, draw, style)] };
}

/** Book `b` of a seed: one kind of table in one layout, with a second beside it now and then. */
function make(seed: number, b: number): Kept {
  const draw = drawer(seed * 97 + 13 * b + 5);
  const tongue = TONGUES[(b + seed) % TONGUES.length] ?? 'ng';
  const style = styleOf(draw, tongue);
  const layout = LAYOUTS[(b + Math.floor(b / LAYOUTS.length)) % LAYOUTS.length] ?? 'rows';
  if (layout === 'tanks') return tanks(draw, style);
  const maker = MAKERS[(b + seed) % MAKERS.length] ?? pressing;
  const table = maker(draw);
  const { leaves, placed } = laid(layout, table, draw, style);
  const faults = spoilts(table, placed, draw, style);
  const name = `${table.name} ${layout} ${tongue} ${style.units} ${style.dates} ${style.clocks}${style.isMerged ? ' merged' : ''}${style.isNumbered ? ' numbered' : ''}${style.isThousands ? ' thousands' : ''}${style.isComma ? ' comma' : ''}${style.ditto === 'none' ? '' : ` ditto ${style.ditto}`}`;
  const [leaf] = leaves;
  if (layout !== 'beside' || !leaf) return { name, leaves, faults };
  const other = (MAKERS[(b + seed + 3) % MAKERS.length] ?? weekly)(draw);
  const heads = other.keys.map((key) => headed(key, draw, style));
  const right = asRows(leaf, other, other.lines, heads, 2, table.keys.length + 1, draw, style);
  return {
    name: `${name} + ${other.name}`,
    leaves,
    faults: [...faults, ...spoilts(other, [right], draw, style)],
  };
}

const bookOf = ({ name, leaves }: Kept): StrangeBook => ({
  name,
  sheets: leaves,
  columns: leaves.flatMap(({ columns }) => columns),
});
export const cleanRegisters = (seed: number): StrangeBook[] =>
  Array.from({ length: BOOKS }, (_, b) => bookOf(make(seed, b)));
/** One fault a book. */
export const spoiltRegisters = (seed: number): StrangeBook[] =>
  Array.from({ length: BOOKS }, (_, b) => b).flatMap((b) =>
    make(seed, b).faults.flatMap((_, f): StrangeBook[] => {
      const kept = make(seed, b);
      const fault = kept.faults[f];
      if (!fault) return [];
      fault.write();
      return [{ ...bookOf(kept), fault: { kind: fault.kind, sheet: fault.sheet, cells: fault.cells } }];
    }),
  );
