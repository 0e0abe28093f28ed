import type { RunRecord } from '../../records/schema';
import type { Reader, Seen, Unused } from './reading';
import { counted } from './reading';

/** Eggs looked at where only a share is written down; common practice, no source. */
const USUAL_SAMPLE = 100;
const BASE_UNSAID =
  'the book does not say whether the hatch is a share of all eggs or of the fertilised eggs';

function fertilisation({ values: v }: RunRecord): Seen | Unused | undefined {
  if (v.sampleSize && v.sampleGood) return counted('fertilisation', v.sampleGood.value, v.sampleSize.value);
  if (v.fertilised && v.eggs) return counted('fertilisation', v.fertilised.value, v.eggs.value);
  return v.fertilisedShare
    ? counted(
        'fertilisation',
        v.fertilisedShare.value * (v.sampleSize?.value ?? USUAL_SAMPLE),
        v.sampleSize?.value ?? USUAL_SAMPLE,
      )
    : undefined;
}

/** Part of the eggs that were fertilised, as far as the record says it. */
const fertilisedPart = (record: RunRecord): number | undefined => {
  const seen = fertilisation(record);
  return seen && 'k' in seen && seen.k !== undefined && seen.n !== undefined ? seen.k / seen.n : undefined;
};

/**
 * Of all eggs set. A share hatched is taken over where the book or the user says of what; never assumed: 70 %
 * of the fertilised eggs is 56 % of all eggs where 80 % are fertilised.
 */
function hatch(record: RunRecord): Seen | Unused | undefined {
  const { values: v, hatchBase } = record;
  const rate = 'hatch';
  if (v.hatched && v.eggs) return counted(rate, v.hatched.value, v.eggs.value);
  if (!v.hatchShare) return undefined;
  const n = v.eggs?.value ?? USUAL_SAMPLE;
  if (hatchBase === 'eggs') return counted(rate, v.hatchShare.value * n, n);
  if (hatchBase === undefined) return { rate, because: BASE_UNSAID };
  const fertilised = fertilisedPart(record);
  return fertilised === undefined
    ? {
        rate,
        because:
          'the hatch is a share of the fertilised eggs, and how many were fertilised is not in the record',
      }
    : counted(rate, v.hatchShare.value * fertilised * n, n);
}

const stage = (
  rate: 'larvaeToFry' | 'nurserySurvival',
  from: number | undefined,
  to: number | undefined,
): Seen | Unused | undefined =>
  from === undefined || to === undefined ? undefined : counted(rate, to, from);

export const countRates: Reader = (record) => {
  const { values: v } = record;
  return [
    fertilisation(record),
    hatch(record),
    stage('larvaeToFry', v.hatched?.value, v.fry?.value),
    stage('nurserySurvival', v.fry?.value, v.fingerlings?.value),
  ].filter((x) => x !== undefined);
};
