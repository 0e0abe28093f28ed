import { specificGrowth } from '../../families/growth/kernels/specificGrowth';
import type { RunRecord } from '../../records/schema';
import type { Reader, Seen, Unused } from './reading';
import { counted } from './reading';

/**
 * Fish lighter than this at the start are larvae or fry on live food, heavier ones are being nursed; chosen
 * here, no source.
 */
const NURSING_FROM_GRAMS = 0.05;
/** Beyond this they are grown on, which the plan does not reach; chosen here, no source. */
const GROWN_ON_GRAMS = 5;
/**
 * Lengths of a period that compare with those of the plan (12 and 28 days): half to twice; chosen here, no
 * source.
 */
const PERIODS = { fry: [6, 24], nursery: [14, 56] } as const;

type Age = keyof typeof PERIODS;
const ageOf = (start: number): Age | undefined =>
  start < NURSING_FROM_GRAMS ? 'fry' : start <= GROWN_ON_GRAMS ? 'nursery' : undefined;

const lengthOf = ({ values: v }: RunRecord): number | undefined =>
  v.days?.value ?? (v.stockedAt && v.emptiedAt ? v.emptiedAt.value - v.stockedAt.value : undefined);

function growth(record: RunRecord, age: Age): Seen | Unused | undefined {
  const { values: v } = record;
  const rate = age === 'fry' ? 'fryGrowth' : 'nurseryGrowth';
  const days = lengthOf(record);
  const value =
    v.startWeight && v.endWeight && days !== undefined && days > 0
      ? specificGrowth(v.startWeight.value, v.endWeight.value, days)
      : v.growthRate?.value;
  if (value === undefined) return undefined;
  return value > 0 ? { rate, value } : { rate, because: 'the fish did not grow' };
}

function survival(record: RunRecord, age: Age): Seen | Unused | undefined {
  const { values: v } = record;
  const rate = age === 'fry' ? 'frySurvival' : 'nurserySurvival';
  if (!v.stocked) return undefined;
  const alive =
    v.alive?.value ??
    (v.dead ? v.stocked.value - v.dead.value : v.survival ? v.survival.value * v.stocked.value : undefined);
  if (alive === undefined) return undefined;
  const days = lengthOf(record);
  const [least, most] = PERIODS[age];
  if (days === undefined) return { rate, because: 'the length of the period is not in the record' };
  if (days < least || days > most)
    return {
      rate,
      because: `a period of ${Math.round(days)} days is not like the ${least} to ${most} days compared`,
    };
  return counted(rate, alive, v.stocked.value);
}

/** Growth and survival of stocked fish, by their weight at the start. */
export const ageRates: Reader = (record) => {
  const start = record.values.startWeight?.value;
  if (start === undefined) return [];
  const age = ageOf(start);
  return age === undefined ? [] : [growth(record, age), survival(record, age)].filter((x) => x !== undefined);
};
