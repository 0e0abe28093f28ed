import type { RunRecord, RunValues } from '../../../shared/records/schema';
import type { NumericField, RecordText } from '../../../shared/records/fields';
import { Chance } from './farms';

/** Values of a record as plain numbers and words; cells are made up from the row. */
export type Plain = Partial<Record<NumericField, number>> & Partial<Record<RecordText, string>>;
export const record = (row: number, plain: Plain, findings: readonly string[] = []): RunRecord => ({
  sheet: 'Runs',
  row,
  findings,
  values: Object.fromEntries(
    Object.entries(plain).map(([field, value], i) => [
      field,
      { value, sheet: 'Runs', cell: `${String.fromCharCode(65 + (i % 26))}${row}` },
    ]),
  ) as RunValues,
});

/** True figures of the invented farm. */
export const TRUTH = {
  offset: 1.5,
  factor: 1.08,
  perGram: 720,
  hatch: 0.5,
  larvaeToFry: 0.55,
  fryGrowth: 13,
} as const;
/** Ready-made solution: the middle of 613 min at 26.0 °C and 12 h at 26.5 °C, as warmth over 15.4 °C. */
const WARMTH = ((613 / 60) * 10.6 + 12 * 11.1) / 2;
const HOURS_AT = new Map([25, 26, 27].map((water) => [water, WARMTH / (water - 15.4)]));
/** 30 h at 25 and 24.25 h at 28 °C, the rate in a straight line between. */
const HATCH_AT = new Map(
  [25, 26, 27].map((water) => [water, 1 / (1 / 30 + ((1 / 24.25 - 1 / 30) * (water - 25)) / 3)]),
);
/** 1 January 2024 as a serial. */
const FIRST_DAY = 45292;

/**
 * A farm of our own invention: two runs a month, six females and three males, yields that swing with the
 * rains.
 */
export function demoFarm(runs: number, seed = 5): RunRecord[] {
  const chance = new Chance(seed);
  return Array.from({ length: runs }, (_, i) => {
    const day = FIRST_DAY + 15 * i + 0.875;
    const month = Math.floor(((15 * i) % 365) / 30.4);
    const water = 25 + Math.floor(chance.next() * 3);
    const weight = 0.8 + chance.next();
    const eggShare = 0.1 * Math.exp(0.6 * Math.sin(((month - 3) / 12) * 2 * Math.PI) + 0.25 * chance.bell());
    const eggWeight = Math.round(eggShare * weight * 1000);
    const perGram = Math.round(TRUTH.perGram * Math.exp(0.1 * chance.bell()));
    const eggs = eggWeight * perGram;
    const stripped = day + ((HOURS_AT.get(water) ?? NaN) + TRUTH.offset + 0.5 * chance.bell()) / 24;
    const hatched = Math.round(eggs * chance.beta(TRUTH.hatch * 10, (1 - TRUTH.hatch) * 10));
    const good = chance.binomial(200, chance.beta(8, 2));
    return record(i + 5, {
      run: `R${i + 1}`,
      female: `F${1 + Math.floor(chance.next() * 6)}`,
      male: `M${1 + Math.floor(chance.next() * 3)}`,
      preparation: 'ready-made solution',
      injected: day,
      stripped,
      temperature: water,
      femaleWeight: weight,
      hormoneDose: 0.5,
      eggWeight,
      eggsPerGram: perGram,
      eggs,
      sampleSize: 200,
      sampleGood: good,
      hatched,
      hatchedAt:
        stripped + ((HATCH_AT.get(water) ?? NaN) * TRUTH.factor * Math.exp(0.04 * chance.bell())) / 24,
      fry: Math.round(hatched * chance.beta(TRUTH.larvaeToFry * 8, (1 - TRUTH.larvaeToFry) * 8)),
      startWeight: 0.01,
      endWeight: 0.01 * Math.exp((TRUTH.fryGrowth * Math.exp(0.1 * chance.bell()) * 12) / 100),
      days: 12,
    });
  });
}
