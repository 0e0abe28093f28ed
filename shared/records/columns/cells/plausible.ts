import type { NumericField } from '../../fields';

/**
 * What the middle of a column usually is, to recognise it and its unit, and what a single value cannot be.
 * `usual` is judgement (common practice, no source) unless a key is named; `possible` is where a value stops
 * being believable, with its reason.
 */
export interface Plausible {
  readonly usual: readonly [number, number];
  readonly possible?: readonly [number, number];
  readonly because?: string;
  readonly source?: string;
}

const SHARE = {
  possible: [0, 1] as const,
  because: 'a part cannot be more than the whole',
  source: 'DEFINITION',
};
const WATER = {
  usual: [18, 33] as const,
  possible: [10, 40] as const,
  because: 'warm-water fish and their eggs do not live through it',
  source: 'PROKES15',
};

export const PLAUSIBLE: Readonly<Partial<Record<NumericField, Plausible>>> = {
  femaleWeight: {
    usual: [0.25, 8],
    possible: [0.05, 25],
    because: 'no brood fish of these kinds weighs that',
    source: 'PRACTICE',
  },
  hormoneDose: {
    usual: [0.1, 2],
    possible: [0, 20],
    because: 'no preparation is given in such a volume per kg',
    source: 'PRACTICE',
  },
  hormoneVolume: {
    usual: [0.1, 15],
    possible: [0, 100],
    because: 'no fish is given such a volume',
    source: 'PRACTICE',
  },
  temperature: WATER,
  incubationTemperature: WATER,
  latency: {
    usual: [5, 30],
    possible: [2, 60],
    because: 'no warm-water fish ovulates after such a time',
    source: 'PRACTICE',
  },
  eggWeight: {
    usual: [5, 1500],
    possible: [0, 5000],
    because: 'no female of these kinds gives so much',
    source: 'PRACTICE',
  },
  eggsPerGram: {
    usual: [350, 1300],
    possible: [200, 2000],
    because: 'counts of African catfish run from 435 to 1,176 per gram',
    source: 'DADEBO00',
  },
  eggs: { usual: [1000, 1e6], possible: [0, 2e7], because: 'no spawning gives so many', source: 'PRACTICE' },
  eggYield: {
    usual: [0.005, 0.3],
    possible: [0, 0.45],
    because: 'no female is so much egg',
    source: 'PRACTICE',
  },
  fertilisedShare: { usual: [0.2, 1], ...SHARE },
  hatchShare: { usual: [0.05, 1], ...SHARE },
  survival: { usual: [0.02, 1], ...SHARE },
  ration: { usual: [0.005, 0.4], ...SHARE },
  sampleSize: { usual: [20, 2000] },
  sampleGood: { usual: [5, 2000] },
  fertilised: { usual: [500, 1e6] },
  hatched: { usual: [200, 1e6] },
  fry: { usual: [100, 1e6] },
  fingerlings: { usual: [50, 1e6] },
  stocked: { usual: [50, 1e6] },
  alive: { usual: [20, 1e6] },
  dead: { usual: [0, 1e5] },
  fish: { usual: [20, 1e6] },
  incubationHours: {
    usual: [12, 80],
    possible: [8, 240],
    because: 'no warm-water eggs hatch after such a time',
    source: 'PRACTICE',
  },
  startWeight: {
    usual: [0.001, 300],
    possible: [0, 30_000],
    because: 'no fish of these kinds weighs that',
    source: 'PRACTICE',
  },
  endWeight: {
    usual: [0.005, 3000],
    possible: [0, 30_000],
    because: 'no fish of these kinds weighs that',
    source: 'PRACTICE',
  },
  weight: {
    usual: [0.002, 3000],
    possible: [0, 30_000],
    because: 'no fish of these kinds weighs that',
    source: 'PRACTICE',
  },
  days: { usual: [1, 300], possible: [0, 1500], because: 'no batch is kept so long', source: 'PRACTICE' },
  growthRate: { usual: [0.5, 60] },
  feed: { usual: [1, 500_000] },
  conversion: { usual: [0.6, 4] },
  ph: {
    usual: [4, 9.8],
    possible: [2, 12],
    because: 'no water that fish are put into has that pH',
    source: 'PRACTICE',
  },
  phAfter: {
    usual: [5, 10],
    possible: [2, 12.5],
    because: 'no water that fish are put into has that pH',
    source: 'PRACTICE',
  },
  materialDose: { usual: [0.5, 100_000] },
  volume: { usual: [20, 200_000] },
  alkalinity: {
    usual: [0.02, 8],
    possible: [0, 20],
    because: 'fresh water does not hold so much',
    source: 'PRACTICE',
  },
  oxygen: {
    usual: [1.5, 14],
    possible: [0, 30],
    because: 'water gives off oxygen long before',
    source: 'PRACTICE',
  },
  vatsInUse: { usual: [1, 200] },
  vatsOwned: { usual: [1, 500] },
};

/**
 * How well the middle of a column sits in the usual range: 1 inside, falling to 0 at ten times beyond either
 * end.
 */
export function fitOfMiddle(field: NumericField, middle: number): number {
  const range = PLAUSIBLE[field]?.usual;
  if (!range) return 0.5;
  const [low, high] = range;
  if (middle >= low && middle <= high) return 1;
  if (!(middle > 0)) return 0;
  return Math.max(0, 1 - Math.abs(Math.log10(middle < low ? low / middle : middle / high)));
}

export const isPossible = (field: NumericField, value: number): boolean => {
  const range = PLAUSIBLE[field]?.possible;
  return !range || (value >= range[0] && value <= range[1]);
};
