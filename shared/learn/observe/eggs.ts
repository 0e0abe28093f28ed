import type { RunRecord } from '../../records/schema';
import { gramsFromKilograms } from '../../units/convert';
import type { Reader, Seen, Unused } from './reading';
import { monthOf } from './reading';

function yieldOf(record: RunRecord): Seen | Unused | undefined {
  const { values: v } = record;
  const share =
    v.eggYield?.value ??
    (v.eggWeight && v.femaleWeight ? v.eggWeight.value / gramsFromKilograms(v.femaleWeight.value) : 0);
  // A female that gave none counts among those that did not ovulate, not as a yield of nothing.
  if (!(share > 0 && share < 1)) return undefined;
  const kind = monthOf(record);
  return kind === undefined
    ? { rate: 'eggShare', because: 'the record has no date, so no month' }
    : { rate: 'eggShare', kind, value: share };
}

function perGram({ values: v }: RunRecord): Seen | undefined {
  const value = v.eggsPerGram?.value ?? (v.eggs && v.eggWeight ? v.eggs.value / v.eggWeight.value : 0);
  return value > 0 && Number.isFinite(value) ? { rate: 'eggsPerGram', value } : undefined;
}

function gave({ values: v }: RunRecord, isFailureKept: boolean): Seen | Unused | undefined {
  const eggs = v.eggWeight ?? v.eggs;
  if (!eggs || !(v.injected ?? v.hormoneVolume ?? v.hormoneDose)) return undefined;
  if (!isFailureKept)
    return {
      rate: 'ovulating',
      because: 'no record says that a female gave no eggs, so failures seem not to be written down',
    };
  return { rate: 'ovulating', k: eggs.value > 0 ? 1 : 0, n: 1 };
}

/** Egg yield, eggs in a gram, and females that gave eggs. */
export const eggRates: Reader = (record, { isFailureKept }) =>
  [yieldOf(record), perGram(record), gave(record, isFailureKept)].filter((x) => x !== undefined);
