import type { AssumptionKey } from '../assumptions';

/**
 * What a hatchery learns from its runs, with what is believed before its first one. Spreads stand on the
 * scale of the rate: share – ln(p/(1 − p)) for farms; runs as their standard deviation ÷ √(M(1 − M)), which
 * is between 0 and 1 log   – natural logarithm · difference – the unit itself
 */
export interface RateSpec {
  readonly key: string;
  readonly label: string;
  /** As the sheet prints it. */
  readonly unit: string;
  readonly format: string;
  readonly scale: 'share' | 'log' | 'difference';
  readonly literature: number;
  /** Standard deviation of farm means around the literature. */
  readonly farms: number;
  /** Usual spread between runs of one farm, and the factor it is known to. */
  readonly runs: number;
  readonly runsFactor: number;
  /** Runs come in kinds that differ more than runs of one kind do. */
  readonly kinds?: { readonly by: 'preparation' | 'month'; readonly spread: number; readonly factor: number };
  /** Nothing above this can be; ends of intervals are cut there. */
  readonly most?: number;
  /** The figure of the season plan it replaces. */
  readonly assumption?: AssumptionKey;
  /** Keys of shared/sources.ts. */
  readonly sources: readonly string[];
  /** What the literature value is, and how the spreads were reached. */
  readonly note: string;
}

const SHARE = { unit: 'share', format: '0.0%', scale: 'share', runsFactor: 1.8 } as const;
const CHOSEN = 'Spreads are chosen here, no source.';

export const RATES = {
  latencyOffset: {
    key: 'latencyOffset',
    label: 'Strip later than the table by',
    unit: 'h',
    format: '0.0',
    scale: 'difference',
    literature: 0,
    farms: 2,
    runs: 0.7,
    runsFactor: 2,
    kinds: { by: 'preparation', spread: 1, factor: 2 },
    assumption: 'latencyOffset',
    sources: ['GRAAF96', 'OKER15', 'CLARIIDPAGE', 'PRACTICE'],
    note:
      'Hours after the table of the preparation. Published strips lie 0.2 to 4.5 h after ' +
      'the handbook table, hence a farm spread of 2 h; the other spreads are chosen here, ' +
      'no source.',
  },
  incubationFactor: {
    key: 'incubationFactor',
    label: 'Incubation, times the table',
    unit: '',
    format: '0.00',
    scale: 'log',
    literature: 1,
    farms: 0.12,
    runs: 0.06,
    runsFactor: 2,
    assumption: 'incubationFactor',
    sources: ['GRAAF96', 'AMPCLARIAS', 'ACEH19'],
    note:
      'Hours taken ÷ hours of the table. Two published durations are 1.10 and 1.11 times ' +
      'the handbook table, hence a farm spread of 12 %; the spread of runs is chosen here, ' +
      'no source.',
  },
  eggShare: {
    key: 'eggShare',
    label: 'Egg weight of body weight',
    unit: 'share',
    format: '0.0%',
    scale: 'log',
    literature: 0.1,
    farms: 0.6,
    runs: 0.3,
    runsFactor: 2,
    kinds: { by: 'month', spread: 0.5, factor: 2 },
    most: 0.3,
    assumption: 'eggShare',
    sources: ['GRAAF95'],
    note:
      'Dry season 1.3 %, rainy season 14.3 %; 10 % is chosen between them and a quarter of ' +
      'their distance on a logarithmic scale is the spread of farms. The other spreads, ' +
      'and the 30 % nothing may pass, are chosen here, no source.',
  },
  eggsPerGram: {
    key: 'eggsPerGram',
    label: 'Eggs in a gram',
    unit: 'per g',
    format: '#,##0',
    scale: 'log',
    literature: 669,
    farms: 0.25,
    runs: 0.15,
    runsFactor: 2,
    assumption: 'eggsPerGram',
    sources: ['DADEBO00', 'AUDU23'],
    note:
      'Mean of 40 females, 435 to 1,176, preserved ovaries; five stripped groups elsewhere ' +
      'gave 692 to 847. A quarter of the range on a logarithmic scale is the spread of ' +
      'farms; the spread of runs is chosen here, no source.',
  },
  ovulating: {
    ...SHARE,
    key: 'ovulating',
    label: 'Injected females that give eggs',
    literature: 0.875,
    farms: 1,
    runs: 0.2,
    assumption: 'ovulating',
    sources: ['BRZUSKA03'],
    note: `87.5 % after a ready-made solution, all after carp pituitary. ${CHOSEN}`,
  },
  fertilisation: {
    ...SHARE,
    key: 'fertilisation',
    label: 'Eggs fertilised',
    literature: 0.836,
    farms: 1,
    runs: 0.3,
    sources: ['WORLDAQ25', 'RURANGWA98', 'AUDU23'],
    note: `83.6 % at the best hour of one trial; 80 % and 98 to 99 % elsewhere. ${CHOSEN}`,
  },
  hatch: {
    ...SHARE,
    key: 'hatch',
    label: 'Eggs that hatch',
    literature: 0.59,
    farms: 0.7,
    runs: 0.3,
    assumption: 'hatch',
    sources: ['GRAAF95', 'TP62'],
    note:
      'Of all eggs set. Rainy season 59 %, dry 28 %, best month of another station 86 %: a ' +
      'quarter of that range is the spread of farms. The spread of runs is chosen here, no ' +
      'source.',
  },
  larvaeToFry: {
    ...SHARE,
    key: 'larvaeToFry',
    label: 'Hatched larvae that become fry',
    literature: 0.6,
    farms: 0.9,
    runs: 0.3,
    sources: ['OKER15', 'CHEP11', 'HYBRIDLARVAE'],
    note: `80 % alive at first feed times 75 % weaned. ${CHOSEN}`,
  },
  frySurvival: {
    ...SHARE,
    key: 'frySurvival',
    label: 'Larvae stocked that become weaned fry',
    literature: 0.75,
    farms: 0.9,
    runs: 0.3,
    assumption: 'frySurvival',
    sources: ['CHEP11', 'HYBRIDLARVAE'],
    note:
      'Below 75 % with sudden dry feed, above 90 % with half live food; 33 % on dry feed ' +
      'alone. About a quarter of 33 to 93 % is the spread of farms; the spread of runs is ' +
      'chosen here, no source.',
  },
  nurserySurvival: {
    ...SHARE,
    key: 'nurserySurvival',
    label: 'Fry that become fingerlings',
    literature: 0.76,
    farms: 0.8,
    runs: 0.3,
    assumption: 'nurserySurvival',
    sources: ['MAKERERE'],
    note: `88 % at 50 per litre, 64 % at 150 per litre. ${CHOSEN}`,
  },
  fryGrowth: {
    key: 'fryGrowth',
    label: 'Growth of larvae and fry',
    unit: '%/d',
    format: '0.0',
    scale: 'log',
    literature: 16.5,
    farms: 0.35,
    runs: 0.15,
    runsFactor: 2,
    assumption: 'fryGrowth',
    sources: ['KAWAMURA17', 'NAJA16', 'HYBRIDLARVAE'],
    note: '16.5 and 17 % a day in ordinary trials, 7.0 % on dry feed alone. Spreads are chosen here, no source.',
  },
  nurseryGrowth: {
    key: 'nurseryGrowth',
    label: 'Growth while nursing',
    unit: '%/d',
    format: '0.0',
    scale: 'log',
    literature: 13,
    farms: 0.3,
    runs: 0.15,
    runsFactor: 2,
    assumption: 'nurseryGrowth',
    sources: ['MAKERERE', 'AJANI15', 'JANSSEN85'],
    note:
      '1 g at 40 to 50 days means 13 to 16 %; 12.5 % a day at 50 per litre, 11.1 % at 150; 8.5 ' +
      '% at 100 in another trial. Spreads ' +
      'are chosen here, no source.',
  },
} as const satisfies Readonly<Record<string, RateSpec>>;

/** What is learned of how much runs differ, not of their mean. */
export const SPREADS = {
  femaleSpread: {
    key: 'femaleSpread',
    label: 'Eggs, spread between females',
    unit: '',
    format: '0.00',
    scale: 'log',
    literature: 0.3,
    farms: Math.LN2,
    runs: 0.3,
    runsFactor: 2,
    most: 2,
    sources: ['PRACTICE'],
    note:
      'Deviation of the logarithm of what females of one run give for their weight, from rows of runs with ' +
      'several females weighed one by one. 0.3, known to a factor of two, is chosen here, no source.',
  },
} as const satisfies Readonly<Record<string, RateSpec>>;

/** Rates that have a mean over runs. */
export type MeanKey = keyof typeof RATES;
export type RateKey = MeanKey | keyof typeof SPREADS;
/**
 * The kind of runs whose hormone no table knows or nobody wrote down; compared with the table of the
 * preparation that is planned with when none is chosen.
 */
export const OWN_HORMONE = 'your hormone';
export const RATE_KEYS = Object.keys(RATES) as readonly MeanKey[];
/** All that a sheet of rates holds, in its order. */
export const ALL_RATE_KEYS: readonly RateKey[] = [
  ...RATE_KEYS,
  ...(Object.keys(SPREADS) as (keyof typeof SPREADS)[]),
];
const SPECS: Readonly<Record<RateKey, RateSpec>> = { ...RATES, ...SPREADS };
export const rateSpec = (key: RateKey): RateSpec => SPECS[key];
