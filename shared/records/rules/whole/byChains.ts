// Long: products of several figures of a line, and what stands alone in its group, its file or its row of ages
import type { NumericField } from '../../fields';
import type { RecordTable } from '../../table';
import { plain } from '../show';
import { boundsOf, robustOfPicked } from '../figures/statistics';
import type { At, Suspicion } from './suspect';
import { headingAt, isComputed, isSlip, oddness } from './suspect';

/** A figure that is the product of others by what the columns mean, up to one factor of the farm. */
interface Chain {
  readonly result: NumericField;
  readonly inputs: readonly (NumericField | 'span')[];
}
const chain = (result: NumericField, ...inputs: Chain['inputs'][number][]): Chain => ({ result, inputs });
/** Of several ways to say one result, the one that holds best in the table is taken. */
const CHAINS: readonly Chain[] = [
  chain('hatched', 'eggs', 'fertilisedShare', 'hatchShare'),
  chain('hatched', 'eggs', 'hatchShare'),
  chain('hatched', 'fertilised', 'hatchShare'),
  chain('fertilised', 'eggs', 'fertilisedShare'),
  chain('treatAmount', 'treatRate', 'volume'),
  chain('materialDose', 'treatRate', 'volume'),
  chain('degreeHours', 'temperature', 'latency'),
  chain('degreeHours', 'temperature', 'span'),
  chain('eggs', 'eggWeight', 'eggsPerGram'),
  chain('eggs', 'eggVolume', 'eggsPerMl'),
  chain('sampleGood', 'sampleSize', 'fertilisedShare'),
  chain('sampleWeight', 'sampleCount', 'weight'),
  chain('biomass', 'fish', 'weight'),
  chain('feed', 'biomass', 'ration'),
  chain('hormoneVolume', 'femaleWeight', 'hormoneDose'),
  chain('fry', 'hatched', 'survival'),
  chain('fish', 'hatched', 'survival'),
  chain('alive', 'stocked', 'survival'),
  chain('amount', 'sold', 'priceEach'),
  chain('amount', 'sold', 'priceThousand'),
  chain('amount', 'quantity', 'unitPrice'),
];

const LEAST = 5;
/** Products that follow this closely are no chance. */
const MOST_SPREAD = 0.06;
const LEAST_OFF = Math.log10(1.25);
const MOST_BROKEN = 0.4;

const columnOf = (table: RecordTable, field: NumericField): number =>
  table.mapping.findIndex((one) => one.field === field && !one.isRepeated && one.confidence >= 0.4);

/** Hours from injection to strip, also across midnight where only the clock is written. */
function spans(table: RecordTable): Float64Array | undefined {
  const [from, to] = [table.read.injected?.values, table.read.stripped?.values];
  if (!from || !to) return undefined;
  return from.map((x, i) => {
    const off = (to[i] ?? NaN) - x;
    return 24 * (x < 1 && (to[i] ?? NaN) < 1 ? ((off % 1) + 1) % 1 : off);
  });
}
const valuesOf = (table: RecordTable, field: NumericField | 'span'): Float64Array | undefined =>
  field === 'span' ? spans(table) : table.read[field]?.values;

interface Followed {
  readonly chain: Chain;
  /** Result by product in a line, and its logarithm; NaN where either says nothing above nought. */
  readonly ratio: (record: number) => number;
  readonly log: (record: number) => number;
  readonly middle: number;
  readonly spread: number;
  readonly n: number;
}
function follow(table: RecordTable, one: Chain): Followed | undefined {
  const result = valuesOf(table, one.result);
  const inputs = one.inputs.map((field) => valuesOf(table, field));
  if (!result || columnOf(table, one.result) < 0 || inputs.some((list) => list === undefined))
    return undefined;
  const made = (i: number): number => {
    let product = 1;
    for (const list of inputs) product *= list?.[i] ?? NaN;
    return product;
  };
  const log = (i: number): number => {
    const [x, y] = [result[i] ?? NaN, made(i)];
    return x > 0 && y > 0 ? Math.log10(x / y) : NaN;
  };
  const { middle, spread, n } = robustOfPicked(result.length, log);
  if (n < LEAST || !(spread < MOST_SPREAD)) return undefined;
  return { chain: one, ratio: (i) => (result[i] ?? NaN) / made(i), log, middle, spread, n };
}

function cellsOf(
  table: RecordTable,
  { chain: one }: Followed,
  record: number,
  off: number,
): Suspicion['cells'] {
  const parts = [one.result, ...one.inputs].flatMap(
    (field, i): (At & { weight: number; meant: number | undefined })[] => {
      const column = field === 'span' ? -1 : columnOf(table, field);
      if (column < 0) return [];
      const at = { record, column };
      const seen = table.columns[column]?.plain[record] ?? NaN;
      const wanted = seen * 10 ** (i === 0 ? -off : off);
      const meant = Number(wanted.toPrecision(4));
      const slip = isSlip(seen, meant) ? 3 : 1;
      return [
        {
          ...at,
          weight: isComputed(table, at) ? 0.02 : (1 + Math.min(12, oddness(table, at))) * slip,
          meant: isSlip(seen, meant) ? meant : undefined,
        },
      ];
    },
  );
  const sum = parts.reduce((all, { weight }) => all + weight, 0);
  return parts.map(({ weight, ...rest }) => ({ ...rest, share: weight / sum }));
}

/** Lines in which a product by meaning does not come out as in the others. */
export function brokenChains(table: RecordTable): Suspicion[] {
  const best = new Map<NumericField, Followed>();
  for (const one of CHAINS) {
    const found = follow(table, one);
    if (found && found.spread < (best.get(one.result)?.spread ?? Infinity)) best.set(one.result, found);
  }
  return [...best.values()].flatMap((found): Suspicion[] => {
    const { chain: one, ratio, log, middle, spread, n } = found;
    const limit = Math.max(LEAST_OFF, 6 * spread);
    const [low, high] = boundsOf(middle, limit);
    const broken: number[] = [];
    for (let record = 0; record < table.length; record++)
      if (!(ratio(record) > low && ratio(record) < high) && Math.abs(log(record) - middle) > limit)
        broken.push(record);
    if (broken.length > Math.max(1, MOST_BROKEN * n)) return [];
    const names = one.inputs
      .filter((field): field is NumericField => field !== 'span')
      .map((field) => `"${headingAt(table, columnOf(table, field))}"`);
    return broken.map((record) => {
      const off = log(record) - middle;
      return {
        rule: 'WHOLE.CHAIN',
        weight: 1.5,
        cells: cellsOf(table, found, record, off),
        sentence: `"${headingAt(table, columnOf(table, one.result))}" is ${plain(10 ** Math.abs(off), 3)} times too ${off > 0 ? 'much' : 'little'} for ${names.join(' and ')}, by what the other ${n - broken.length} lines say.`,
      };
    });
  });
}

/** What a tank or a bag keeps: its water, its weight. */
const KEPT: readonly NumericField[] = ['volume', 'packWeight'];
const MOST_OFTEN = 0.85;
/** A tank holds the same water every day: one line that says otherwise by a slip of the hand. */
export function unlikeItsGroup(table: RecordTable): Suspicion[] {
  return KEPT.flatMap((field): Suspicion[] => {
    const column = columnOf(table, field);
    const list = table.columns[column]?.plain;
    if (column < 0 || !list) return [];
    const groups = field === 'volume' ? (table.texts.vat ?? []) : [];
    const counts = new Map<string, Map<number, number>>();
    list.forEach((x, i) => {
      if (Number.isNaN(x)) return;
      const mine = counts.get(groups[i] ?? '') ?? new Map<number, number>();
      counts.set(groups[i] ?? '', mine.set(x, (mine.get(x) ?? 0) + 1));
    });
    const modes = new Map(
      [...counts].map(
        ([group, mine]) => [group, [...mine].sort((a, b) => b[1] - a[1])[0]?.[0] ?? NaN] as const,
      ),
    );
    const filled = list.filter((x) => !Number.isNaN(x)).length;
    const usual = list.filter((x, i) => x === modes.get(groups[i] ?? '')).length;
    if (usual < MOST_OFTEN * filled || usual === filled) return [];
    return Array.from(list.entries()).flatMap(([record, x]): Suspicion[] => {
      const mode = modes.get(groups[record] ?? '') ?? NaN;
      if (Number.isNaN(x) || x === mode || !isSlip(x, mode) || counts.get(groups[record] ?? '')?.get(x) !== 1)
        return [];
      return [
        {
          rule: 'WHOLE.KEPT',
          weight: 1.3,
          cells: [{ record, column, share: 1, meant: mode }],
          sentence: `"${headingAt(table, column)}" is ${plain(x, 6)} here and ${plain(mode, 6)} in the other lines${groups[record] ? ` of ${groups[record]}` : ''}.`,
        },
      ];
    });
  });
}

const LEAST_TIMES = 6;
/** In one column of a matrix: ten times the day before and the day after, and right again without the nought. */
export function leapsInMatrix(table: RecordTable): Suspicion[] {
  return table.mapping.flatMap(({ isRepeated, field }, column): Suspicion[] => {
    const list = table.columns[column]?.plain;
    if (!isRepeated || field === 'dead' || !list) return [];
    const rows = Array.from(list.entries()).filter(([, x]) => x > 0);
    return rows.flatMap(([record, x], i): Suspicion[] => {
      const [before, after] = [rows[i - 1]?.[1] ?? NaN, rows[i + 1]?.[1] ?? NaN];
      const times = Math.min(x / before, x / after);
      const isBack = x / 10 <= 1.7 * Math.max(before, after);
      return times >= LEAST_TIMES && isBack
        ? [
            {
              rule: 'WHOLE.WILD',
              weight: 1.2,
              cells: [{ record, column, share: 1, meant: x / 10 }],
              sentence: `${plain(x, 6)} under "${headingAt(table, column)}" is nothing like ${plain(before, 6)} in the line above and ${plain(after, 6)} below.`,
            },
          ]
        : [];
    });
  });
}

/** Fish of one line counted at growing ages: they do not become more. */
export function moreWithAge(table: RecordTable): Suspicion[] {
  const columns = table.mapping.flatMap(({ isRepeated, field }, i) =>
    isRepeated && field === 'fish' ? [i] : [],
  );
  const middles = columns.map((column) => table.columns[column]?.content.middle ?? NaN);
  if (!middles.every((x, i) => i === 0 || x < (middles[i - 1] ?? NaN))) return [];
  const found: Suspicion[] = [];
  for (let record = 0; record < table.length; record++)
    for (const [i, column] of columns.entries()) {
      const before = columns[i - 1];
      if (before === undefined) continue;
      const [was, now] = [
        table.columns[before]?.plain[record] ?? NaN,
        table.columns[column]?.plain[record] ?? NaN,
      ];
      if (!(now > 1.001 * was)) continue;
      const odd = [before, column].map((one) => 0.5 + oddness(table, { record, column: one }));
      const sum = (odd[0] ?? 0) + (odd[1] ?? 0);
      found.push({
        rule: 'WHOLE.PART',
        weight: 1.6,
        cells: [before, column].map((one, k) => ({ record, column: one, share: (odd[k] ?? 0) / sum })),
        sentence: `More under "${headingAt(table, column)}" (${plain(now, 9)}) than there were under "${headingAt(table, before)}" (${plain(was, 9)}).`,
      });
    }
  return found.length > Math.max(1, 0.2 * table.length) ? [] : found;
}
