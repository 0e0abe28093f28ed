import { figuresFrom, learnRates, ratesFromCells } from '../../../shared/learn';
import { observe } from '../../../shared/learn/observe';
import { limitsOf } from '../../../shared/learn/observe';
import { femaleSpreadOf, latencyOffsetsOf } from '../../../shared/learn/toAssumptions';
import { trendsOf } from '../../../shared/learn/trends';
import { ratesWorkbook } from '../../../shared/books/learn';
import { ALL_RATE_KEYS } from '../../../shared/families/learning/rates';
import type { NumericField } from '../../../shared/records/fields';
import type { RunRecord } from '../../../shared/records/schema';
import { gridOf } from '../../season/support/support';
import { expectKept } from '../../support/kept';
import type { Plain } from '../support/demoFarm';
import { record } from '../support/demoFarm';
import { Chance } from '../support/farms';

/**
 * A farm whose records hold now this and now that: shares without counts, weights without numbers, periods too
 * short, failures, units mixed up, rows of one run, months without a date. What is seen in each and what is not.
 */
const MIDDLE: Readonly<Partial<Record<NumericField, number>>> = {
  femaleWeight: 1.2,
  hormoneDose: 0.5,
  temperature: 26.2,
  latency: 11,
  eggWeight: 130,
  eggsPerGram: 690,
  eggs: 90_000,
  eggYield: 0.11,
  sampleSize: 120,
  sampleGood: 96,
  fertilised: 70_000,
  fertilisedShare: 0.8,
  incubationTemperature: 26.5,
  incubationHours: 26,
  hatched: 45_000,
  hatchShare: 0.55,
  fry: 20_000,
  fingerlings: 12_000,
  stocked: 9000,
  alive: 6500,
  dead: 2000,
  survival: 0.7,
  startWeight: 0.05,
  endWeight: 1.1,
  days: 20,
  growthRate: 11,
  females: 1,
};
const PREPARATIONS = [
  'ready-made solution',
  'carp pituitary',
  'own-species pituitary',
  'PG',
  'a brew of our own',
];
const day = 45_300;

/** What else a line may hold: each by its own chance. */
function momentsAndWords(i: number, chance: Chance): Record<string, number | string> {
  const at = day + 9 * i + 0.85;
  const entries: readonly (readonly [field: string, share: number, value: () => number | string])[] = [
    ['date', 0.8, () => Math.floor(at)],
    ['injected', 0.6, () => at],
    ['stripped', 0.6, () => at + (11 + 2 * chance.bell()) / 24],
    ['hatchedAt', 0.3, () => at + (38 + 5 * chance.bell()) / 24],
    ['stockedAt', 0.3, () => Math.floor(at) + 4],
    ['emptiedAt', 0.3, () => Math.floor(at) + Math.round(4 + 40 * chance.next())],
    ['run', 0.5, () => `R${Math.floor(i / 2)}`],
    ['preparation', 0.7, () => PREPARATIONS[i % PREPARATIONS.length] ?? ''],
    ['species', 0.1, () => (chance.next() < 0.5 ? 'Common carp' : 'sea horse')],
    ['eggWeight', 0.08, () => 0],
    ['startWeight', 0.1, () => 0.004],
  ];
  return Object.fromEntries(
    entries.flatMap(([field, share, value]) => (chance.next() < share ? [[field, value()]] : [])),
  );
}

function messy(count: number, seed: number): RunRecord[] {
  const chance = new Chance(seed);
  const often = (share: number): boolean => chance.next() < share;
  return Array.from({ length: count }, (_, i) => {
    const plain: Record<string, number | string> = {};
    for (const [field, value] of Object.entries(MIDDLE)) {
      if (!often(0.45)) continue;
      const moved = value * Math.exp(0.5 * chance.bell() * (often(0.1) ? 4 : 0.6));
      const isShare = value < 1 && field !== 'startWeight' && field !== 'hormoneDose';
      plain[field] = isShare ? Math.min(1, moved) : Number(moved.toPrecision(4));
    }
    Object.assign(plain, momentsAndWords(i, chance));
    const one = record(i + 5, plain as Plain, often(0.07) ? ['a rule'] : []);
    return often(0.6) ? { ...one, hatchBase: often(0.5) ? ('eggs' as const) : ('fertilised' as const) } : one;
  });
}

const RECORDS = messy(90, 17);
const LOG = {
  times: Array.from({ length: 400 }, (_, i) => day + 0.4 * i),
  temperatures: Array.from({ length: 400 }, (_, i) => 26 + 1.5 * Math.sin(i / 9)),
};

test('what is seen in each record', () => {
  const seen = (settings: Parameters<typeof observe>[1]) => {
    const { observations, skipped, records, refused } = observe(RECORDS, settings);
    return {
      records,
      refused,
      seen: observations.map(({ rate, kind = '', value, k, n, record: { row } }) =>
        [
          row,
          rate,
          kind,
          value === undefined ? `${k ?? ''} of ${n ?? ''}` : Number(value.toPrecision(8)),
        ].join(' ¦ '),
      ),
      skipped: skipped.map(({ rate, because, record: { row } }) => [row, rate, because].join(' ¦ ')),
    };
  };
  expectKept('learn-seen', {
    plain: seen({}),
    log: seen({ log: LOG, preparation: 'carp pituitary', species: 'common carp' }),
    limits: ALL_RATE_KEYS.map((key) => [key, ...limitsOf(key)]),
  });
});

test('the rates of that farm, and what a plan takes of them', () => {
  const rates = learnRates(RECORDS, { confidence: 0.9 });
  const model = ratesWorkbook(rates);
  const [sheet] = model.sheets;
  if (!sheet) throw new Error('no sheet');
  const cells = gridOf(sheet);
  const read = ratesFromCells(cells);
  expectKept('learn-messy', {
    rates: rates.rates.map((rate) => ({ ...rate, sources: undefined, note: undefined })),
    unused: rates.unused,
    figures: [
      {},
      { month: 3 },
      { month: 11, preparation: 'carp pituitary' },
      { preparation: 'ready-made solution' },
      { preparation: 'own-species pituitary' },
    ].map((planned) => [planned, figuresFrom(rates.rates, planned)]),
    offsets: latencyOffsetsOf(rates.rates),
    spread: femaleSpreadOf(rates.rates),
    read,
    trends: trendsOf(RECORDS),
  });
});

test('a sheet of rates somebody typed into', () => {
  const [sheet] = ratesWorkbook(learnRates(RECORDS.slice(0, 25))).sheets;
  if (!sheet) throw new Error('no sheet');
  const { values, ...rest } = gridOf(sheet);
  const head = values.findIndex((line) => line.includes('Farm value'));
  const column = (title: string): number => values[head]?.indexOf(title) ?? -1;
  const typed: readonly (readonly [line: number, title: string, to: string | number])[] = [
    [1, 'Farm value', 0.5],
    [2, 'Farm value', -3],
    [3, 'Low', 'low'],
    [4, 'Runs', 2.5],
    [5, 'High', -1e6],
    [6, 'Farm value', 1e9],
    [8, 'Runs', -1],
    [9, 'Next run low', 1e7],
    [10, 'Rate', String(values[head + 12]?.[column('Rate')] ?? '')],
    [11, 'Farm value', ''],
  ];
  for (const [line, title, to] of typed) {
    const row = values[head + line];
    if (row) row[column(title)] = to;
  }
  const read = ratesFromCells({ ...rest, values });
  expectKept('learn-typed', {
    ...read,
    figures: figuresFrom(read.rates, { month: 4 }),
    none: ratesFromCells({ ...rest, values: values.slice(head + 1) }).leftOut,
  });
});
