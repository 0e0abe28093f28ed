import { SOURCES } from '../../families/sources';
import { shortCitation } from '../living/reading/origin';
import { SheetBuilder, styled } from '../../sheet/workbook/build';
import { calculate } from '../../catalogue/calculation';
import type { NameModel, WorkbookModel } from '../../sheet/workbook/model';
import type { FarmRate, FarmRates } from '../../learn/learn';
import { MONTH_NAMES } from '../../units/dates';
import { rateSpec } from '../../families/learning/rates';

const HEAD = 4;
const WIDTHS = [2, 38, 22, 10, 9, 9, 9, 9, 9, 7, 9, 19, 11, 10, 46, 60];
const TITLES = [
  'Rate',
  'For',
  'Farm value',
  'Unit',
  'Low',
  'High',
  'Next run low',
  'Next run high',
  'Runs',
  'Own weight',
  'Rests on',
  'Literature',
  'Change',
  'Literature from',
  'Note',
];
const STANDING = {
  seen: 'published',
  memory: 'from memory, page not seen',
  practice: 'common practice, no source',
  computed: 'computed',
  standard: 'definition',
} as const;
const POINTS_PER_LINE = 13.5;

/** "Brzuska E. 2003 (published)", one for each source. */
const originOf = (rate: FarmRate): string =>
  rate.sources
    .map((key) => {
      const source = SOURCES[key];
      return source
        ? source.standing === 'practice'
          ? STANDING.practice
          : `${shortCitation(source.citation)} (${STANDING[source.standing]})`
        : key;
    })
    .join('; ');

/** In words, because a share of weight alone does not tell a reader what to do. */
export const restsOn = ({ runs, ownWeight }: Pick<FarmRate, 'runs' | 'ownWeight'>): string =>
  runs === 0
    ? ownWeight > 0.005
      ? "the farm's other runs"
      : 'literature only'
    : ownWeight < 0.5
      ? 'mostly literature'
      : ownWeight < 0.9
        ? 'mostly own runs'
        : 'own runs';

const WHOLE = { month: 'the whole year', preparation: 'a preparation not used yet' } as const;
const wholeText = (by: keyof typeof WHOLE | undefined): string => (by ? WHOLE[by] : 'every run');
const kindText = ({ key, kind }: FarmRate): string =>
  kind === undefined
    ? wholeText(rateSpec(key).kinds?.by)
    : typeof kind === 'number'
      ? (MONTH_NAMES[kind - 1] ?? '')
      : kind;

const words = (text: string): string => text.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`);
/** rate_egg_share, rate_egg_share_m03, rate_latency_offset_ready_made_solution */
export const rateName = ({ key, kind }: Pick<FarmRate, 'key' | 'kind'>): string =>
  `rate_${words(key)}${kind === undefined ? '' : typeof kind === 'number' ? `_m${String(kind).padStart(2, '0')}` : `_${kind.toLowerCase().replace(/[^a-z0-9]+/g, '_')}`}`;

/** Parts of a rate a formula may want, by the ending of the name and the column. */
const PARTS = [
  ['', 'D'],
  ['_low', 'F'],
  ['_high', 'G'],
  ['_next_low', 'H'],
  ['_next_high', 'I'],
  ['_runs', 'J'],
] as const;

function rateRow(sheet: SheetBuilder, rate: FarmRate, row: number): void {
  const { format } = rate;
  const number = (x: number) => styled(x, 'cell', { format });
  const isFarm = rate.kind === undefined;
  const [origin, note] = isFarm ? [originOf(rate), rate.note] : ['', ''];
  sheet.row(`B${row}`, [
    styled(rateSpec(rate.key).label, 'text'),
    styled(kindText(rate), 'text'),
    styled(rate.value, 'result', { format }),
    styled(rate.unit === 'share' ? '' : rate.unit, 'text'),
    number(rate.low),
    number(rate.high),
    number(rate.nextLow),
    number(rate.nextHigh),
    styled(rate.runs, 'cell', { format: '0' }),
    styled(rate.ownWeight, 'cell', { format: '0%' }),
    styled(restsOn(rate), 'text'),
    number(rateSpec(rate.key).literature),
    styled(`=D${row}-M${row}`, 'cell', {
      format: rate.unit === 'share' ? '+0.0%;-0.0%;0.0%' : `+${format};-${format};${format}`,
    }),
    styled(origin, 'text'),
    styled(note, 'text'),
  ]);
  const lines = Math.max(1, Math.ceil(origin.length / 44), Math.ceil(note.length / 58));
  sheet.height(row, Math.max(16, lines * POINTS_PER_LINE + 3));
}

function charts(sheet: SheetBuilder, rates: readonly FarmRate[], below: number): void {
  const rowOf = (rate: FarmRate): number => HEAD + 1 + rates.indexOf(rate);
  const ref = (column: string, list: readonly FarmRate[]): string =>
    sheet.ref(`${column}${rowOf(list[0] as FarmRate)}:${column}${rowOf(list.at(-1) as FarmRate)}`);
  const shares = rates.filter((r) => rateSpec(r.key).scale === 'share');
  const months = rates.filter((r) => r.key === 'eggShare' && r.kind !== undefined);
  if (shares.length > 0)
    sheet.chart({
      kind: 'column',
      title: 'Before and after: shares',
      categories: ref('B', shares),
      series: [
        { name: 'Literature', values: ref('M', shares), color: '7FA6A9' },
        { name: 'Farm', values: ref('D', shares), color: '12454F' },
      ],
      valueFormat: '0%',
      valueRange: [0, 1],
      from: `B${below}`,
      to: `G${below + 20}`,
    });
  if (months.length > 0)
    sheet.chart({
      kind: 'line',
      title: 'Egg weight of body weight, by month',
      categories: ref('C', months),
      series: [
        { name: 'Farm', values: ref('D', months) },
        { name: 'Low', values: ref('F', months), color: '7FA6A9' },
        { name: 'High', values: ref('G', months), color: '7FA6A9' },
      ],
      valueFormat: '0%',
      from: `H${below}`,
      to: `O${below + 20}`,
    });
}

const leftOutLines = ({ unused, refused }: FarmRates): (readonly [string, string, number])[] => [
  ...(refused > 0 ? [['All rates', 'the check of records found something in them', refused] as const] : []),
  ...unused.map(({ rate, because, count }) => [rateSpec(rate).label, because, count] as const),
];
/** Rows the block of unused records takes, with its headings and a blank row. */
const leftOutRows = (learned: FarmRates): number => {
  const { length } = leftOutLines(learned);
  return length === 0 ? 0 : length + 3;
};

function leftOut(sheet: SheetBuilder, learned: FarmRates, from: number): void {
  const lines = leftOutLines(learned);
  if (lines.length === 0) return;
  sheet.put(`B${from}`, 'Not used', 'section');
  sheet.row(`B${from + 1}`, ['Rate', 'Because', 'Records'], 'heading');
  lines.forEach(([rate, because, count], i) => {
    sheet.row(`B${from + 2 + i}`, [
      styled(rate, 'text'),
      styled(because, 'text'),
      styled(count, 'cell', { format: '0' }),
    ]);
    sheet.height(from + 2 + i, Math.max(16, Math.ceil(because.length / 20) * POINTS_PER_LINE + 3));
  });
}

export interface SheetOptions {
  /** Name of the sheet; Rates or Trends when left out. */
  readonly sheet?: string;
  readonly hatchery?: string;
}

/**
 * The rates as a sheet with names, so that formulas and a plan can read them: rate_hatch, rate_hatch_low,
 * rate_hatch_next_low …
 */
export function ratesWorkbook(
  learned: FarmRates,
  { sheet: title = 'Rates', hatchery = 'My hatchery' }: SheetOptions = {},
): WorkbookModel {
  const { rates } = learned;
  const below = HEAD + rates.length + 2;
  const chartRow = below + leftOutRows(learned) + 1;
  const sheet = new SheetBuilder(title, {
    widths: WIDTHS,
    tab: '12454F',
    freeze: { rows: HEAD, columns: 3 },
    hasGridlines: false,
    print: {
      landscape: true,
      titleRows: [HEAD, HEAD],
      footer: `${hatchery} · own rates`,
      breaksAbove: [chartRow],
    },
  });
  const percent = `${Math.round(100 * learned.confidence)} %`;
  sheet.put('B1', 'What your own runs say', 'title').height(1, 26);
  sheet.put(
    'B2',
    `${learned.records} records used. With few runs a figure leans on the literature, with many on your farm. Low and high: where the mean of many runs lies, next run: where a single one lies, both with ${percent} certainty.`,
    'subtitle',
  );
  sheet.row(`B${HEAD}`, TITLES, 'heading').height(HEAD, 30);
  const names: NameModel[] = [];
  rates.forEach((rate, i) => {
    const row = HEAD + 1 + i;
    rateRow(sheet, rate, row);
    for (const [ending, column] of PARTS)
      names.push({ name: `${rateName(rate)}${ending}`, refersTo: sheet.ref(`${column}${row}`) });
  });
  sheet.table({ name: 'rates', range: `B${HEAD}:P${HEAD + rates.length}` });
  leftOut(sheet, learned, below);
  charts(sheet, rates, chartRow);
  return calculate({ title: `${hatchery}: own rates`, sheets: [sheet.build()], names }).model;
}
