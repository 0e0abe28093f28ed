import type { RunRecord } from '../records/schema';
import { isAccepted } from '../records/schema';
import { ageRates } from './observe/ages';
import { clockRates } from './observe/clocks';
import { countRates } from './observe/counts';
import { eggRates } from './observe/eggs';
import type { Observation, Reader, Seen, ObserveSettings, SkippedRecord } from './observe/reading';
import type { RateKey } from '../families/learning/rates';
import { rateSpec } from '../families/learning/rates';

export type { Observation, ObserveSettings, SkippedRecord, TemperatureLog } from './observe/reading';

export interface Observed {
  readonly observations: readonly Observation[];
  /** What could not be used although the record says something, with the reason. */
  readonly skipped: readonly SkippedRecord[];
  readonly records: number;
  /** Records left out because the check of records found something in them. */
  readonly refused: number;
}

/**
 * Further from the literature than this many spreads of farms a value was hardly meant in this unit; chosen
 * here, no source.
 */
const FARTHEST = 8;
const shown = (x: number): string => String(Number(x.toPrecision(3))).replace('-', '−');

/** Between which a farm's figure can be meant in the unit of the rate. */
export function limitsOf(rate: RateKey): readonly [number, number] {
  const { scale, literature, farms, most = Infinity } = rateSpec(rate);
  if (scale === 'share') return [0, 1];
  const reach = FARTHEST * farms;
  const [least, greatest] =
    scale === 'log'
      ? [literature * Math.exp(-reach), literature * Math.exp(reach)]
      : [literature - reach, literature + reach];
  return [least, Math.min(most, greatest)];
}

/** A value no farm can have, or nothing. The check of records finds most of them first. */
function beyondBelief({ rate, value }: Seen): string | undefined {
  const { scale, literature, farms, unit } = rateSpec(rate);
  if (value === undefined || scale === 'share') return undefined;
  const distance = scale === 'log' ? Math.log(value / literature) : value - literature;
  return Math.abs(distance) <= FARTHEST * farms
    ? undefined
    : `${shown(value)}${unit && unit !== 'share' ? ` ${unit}` : ''} where ${shown(literature)} is usual: it looks like another unit or a slip`;
}

const READERS: readonly Reader[] = [clockRates, eggRates, countRates, ageRates];

/**
 * Accepted records → one observation per rate and run. Nothing is corrected: what does not fit is named and
 * left out.
 */
export function observe(records: readonly RunRecord[], settings: ObserveSettings = {}): Observed {
  const accepted = records.filter(isAccepted);
  const observations: Observation[] = [];
  const skipped: SkippedRecord[] = [];
  // Only a farm that writes down its failures says anything about them.
  const isFailureKept = accepted.some((r) => r.values.eggWeight?.value === 0 || r.values.eggs?.value === 0);
  for (const record of accepted)
    for (const read of READERS)
      for (const got of read(record, { ...settings, isFailureKept }))
        if ('because' in got) skipped.push({ ...got, record });
        else {
          const because = beyondBelief(got);
          if (because) skipped.push({ rate: got.rate, because, record });
          else observations.push({ ...got, record });
        }
  return { observations, skipped, records: accepted.length, refused: records.length - accepted.length };
}
