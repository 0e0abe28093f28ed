import type { RunRecord } from '../../records/schema';
import type { Reader, Seen, Unused } from './reading';
import { counted } from './reading';

/** Eggs looked at where only a share is written down; common practice, no source. */
const USUAL_SAMPLE = 100;

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

/** Of all eggs set. A share hatched is of the fertilised ones where their number is kept. */
function hatch({ values: v }: RunRecord): Seen | Unused | undefined {
  if (v.hatched && v.eggs) return counted('hatch', v.hatched.value, v.eggs.value);
  if (!v.hatchShare) return undefined;
  if (v.fertilised)
    return v.eggs
      ? counted('hatch', v.hatchShare.value * v.fertilised.value, v.eggs.value)
      : { rate: 'hatch', because: 'the number of eggs is not in the record' };
  const n = v.eggs?.value ?? USUAL_SAMPLE;
  return counted('hatch', v.hatchShare.value * n, n);
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
