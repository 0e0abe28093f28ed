import { assess, inconsistency } from '../assess';
import { fieldsOf, RELATIONS } from './relations';
import type { RecordExample, RowRule, Severity } from '../rule';

interface Words {
  readonly id: string;
  readonly title: string;
  readonly checks: string;
  readonly why: string;
  readonly sources: readonly string[];
  readonly severity?: Severity;
  readonly examples: readonly RecordExample[];
}

const rule = ({ id, severity = 'impossible', ...words }: Words): RowRule => ({
  id,
  severity,
  scope: 'row',
  ...words,
  needs: RELATIONS.filter((one) => one.rule === id).map(fieldsOf),
  check: (said) => {
    const faults = assess(said);
    if (faults.length === 0) return undefined;
    return faults
      .filter((one) => one.relation.rule === id && !one.slip)
      .map((one) => inconsistency(one, said));
  },
});

/**
 * Numbers that must follow from others in the same record. A slip that explains the difference is reported by
 * the rules of slips instead.
 */
export const consistencyRules: readonly RowRule[] = [
  rule({
    id: 'EGGS.PRODUCT',
    title: 'Eggs do not follow from weight and count',
    checks: 'The number of eggs against egg weight × eggs per gram, to 1.5 %.',
    why: 'The number is worked out from the two; when it differs, one of the three was changed or mistyped.',
    sources: ['ROSE537', 'DEFINITION'],
    examples: [
      {
        record: { eggWeight: 150, eggsPerGram: 700, eggs: 81_000 },
        says: '105,000',
        because: '150 g × 700 per g is 105,000.',
      },
      { record: { eggWeight: 150, eggsPerGram: 700, eggs: 105_000 }, because: 'Follows exactly.' },
      { record: { eggWeight: 150, eggsPerGram: 700, eggs: 104_000 }, because: 'Within rounding.' },
    ],
  }),
  rule({
    id: 'EGGS.YIELDSHARE',
    title: 'Egg yield does not follow from the weights',
    checks: 'Egg yield against egg weight ÷ body weight.',
    why: 'The yield is worked out from the two weights.',
    sources: ['DEFINITION'],
    examples: [
      {
        record: { eggWeight: 130, femaleWeight: 1, eggYield: 0.17 },
        says: '13 %',
        because: '130 g of 1 kg.',
      },
      { record: { eggWeight: 130, femaleWeight: 1, eggYield: 0.13 }, because: 'Follows.' },
    ],
  }),
  rule({
    id: 'SHARE.COUNTS',
    title: 'A percentage does not follow from its counts',
    checks:
      'Fertilised, hatched and surviving shares against the counts they come from, to the whole percent.',
    why: 'A share is one count divided by another; when it is not, one of the three is wrong.',
    sources: ['DEFINITION'],
    examples: [
      {
        record: { sampleSize: 100, sampleGood: 71, fertilisedShare: 0.86 },
        says: '71 %',
        because: '71 of 100.',
      },
      {
        record: { hatched: 30_000, fertilised: 60_000, eggs: 80_000, hatchShare: 0.375 },
        because: 'Of all eggs, as some keep it.',
      },
      {
        record: { hatched: 30_000, fertilised: 60_000, eggs: 80_000, hatchShare: 0.61 },
        says: 'hatched',
        because: 'Neither 50 nor 37.5 %.',
      },
    ],
  }),
  rule({
    id: 'DOSE.VOLUME',
    title: 'Hormone volume does not follow from weight and dose',
    checks: 'Volume injected against body weight × dose per kg.',
    why: 'Too little does not ovulate her, too much is wasted or harms.',
    sources: ['READYMADE', 'DEFINITION'],
    examples: [
      {
        record: { femaleWeight: 1.2, hormoneDose: 0.5, hormoneVolume: 0.95 },
        says: '0.6 mL',
        because: '1.2 kg × 0.5 mL/kg.',
      },
      { record: { femaleWeight: 1.2, hormoneDose: 0.5, hormoneVolume: 0.6 }, because: 'Follows.' },
    ],
  }),
  rule({
    id: 'LATENCY.STATED',
    title: 'Latency does not follow from the times',
    checks: 'The latency written down against strip time − injection time.',
    why: 'The times say how long it was.',
    sources: ['DEFINITION'],
    examples: [
      {
        record: { injected: 46_000.875, stripped: 46_001.3333, latency: 13.5 },
        says: '11 h',
        because: 'From 21:00 to 08:00.',
      },
      { record: { injected: 46_000.875, stripped: 46_001.3333, latency: 11 }, because: 'Follows.' },
    ],
  }),
  rule({
    id: 'HATCH.STATED',
    title: 'Incubation time does not follow from the times',
    checks: 'The incubation hours written down against hatch time − fertilisation time.',
    why: 'The times say how long it was.',
    sources: ['DEFINITION'],
    examples: [
      {
        record: { fertilisedAt: 46_001, hatchedAt: 46_002, incubationHours: 31 },
        says: '24 h',
        because: 'A day apart.',
      },
      { record: { fertilisedAt: 46_001, hatchedAt: 46_002, incubationHours: 24 }, because: 'Follows.' },
    ],
  }),
  rule({
    id: 'DAYS.STATED',
    title: 'Days do not follow from the dates',
    checks: 'The days written down against end date − stocking date, one day either way.',
    why: 'The dates say how long it was; whether the first day counts is left open.',
    sources: ['DEFINITION'],
    examples: [
      {
        record: { stockedAt: 46_000, emptiedAt: 46_030, days: 36 },
        says: '30 d',
        because: 'Thirty days apart.',
      },
      { record: { stockedAt: 46_000, emptiedAt: 46_030, days: 31 }, because: 'Both ends counted.' },
    ],
  }),
  rule({
    id: 'FEED.STATED',
    title: 'Feed does not follow from number, weight and ration',
    checks: 'Feed given against fish × mean weight × ration, to 12 %.',
    why: 'Feed worked out on an old weight or number starves the fish or fouls the water.',
    sources: ['DEFINITION'],
    severity: 'unlikely',
    examples: [
      {
        record: { fish: 1000, weight: 2, ration: 0.05, feed: 160 },
        says: '100 g',
        because: '1,000 × 2 g × 5 %.',
      },
      { record: { fish: 1000, weight: 2, ration: 0.05, feed: 105 }, because: 'Rounded up a little.' },
    ],
  }),
  rule({
    id: 'GROWTH.STATED',
    title: 'Growth rate does not follow from the weights',
    checks: 'The growth rate written down against 100 × ln(end ÷ start) ÷ days.',
    why: 'A growth rate worked out in another way cannot be compared with any other.',
    sources: ['RICKER79'],
    examples: [
      {
        record: { startWeight: 50, endWeight: 100, days: 10, growthRate: 10 },
        says: '6.931',
        because: 'Doubling in ten days is 6.931 % per day, not 100 % ÷ 10.',
      },
      { record: { startWeight: 50, endWeight: 100, days: 10, growthRate: 6.93 }, because: 'Follows.' },
    ],
  }),
  rule({
    id: 'FCR.STATED',
    title: 'Feed conversion does not follow from feed and gain',
    checks: 'Feed conversion against feed ÷ (end − start weight of the batch).',
    why:
      'Counting the final weight as gain, or the stocked number as harvested, makes it ' +
      'look better than it is.',
    sources: ['DEFINITION'],
    examples: [
      {
        record: { feed: 12_000, stocked: 1000, startWeight: 5, alive: 1000, endWeight: 15, conversion: 0.8 },
        says: '1.2',
        because: '12 kg for a gain of 10 kg; 0.8 is feed ÷ final weight.',
      },
      {
        record: { feed: 12_000, stocked: 1000, startWeight: 5, alive: 1000, endWeight: 15, conversion: 1.2 },
        because: 'Follows.',
      },
    ],
  }),
];
