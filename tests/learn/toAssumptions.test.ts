import { ASSUMPTIONS } from '../../shared/families/assumptions';
import { DEFAULT_PREPARATION } from '../../shared/families/preparations';
import { figuresFrom } from '../../shared/learn';
import { OWN_HORMONE } from '../../shared/families/learning/rates';
import type { PlannedRate } from '../../shared/learn/toAssumptions';
import { femaleSpreadOf, latencyOffsetsOf } from '../../shared/learn/toAssumptions';

/** Which of a farm's rates a plan takes: each rule with a case on either side, by hand. */
const rate = (key: PlannedRate['key'], value: number, more: Partial<PlannedRate> = {}): PlannedRate => ({
  key,
  kind: undefined,
  value,
  low: value * 0.9,
  high: value * 1.1,
  nextLow: value * 0.8,
  nextHigh: value * 1.2,
  runs: 5,
  ...more,
});
const valueOf = (
  rates: readonly PlannedRate[],
  key: 'eggShare' | 'latencyOffset' | 'hatch',
  planned: Parameters<typeof figuresFrom>[1] = {},
): number | undefined => figuresFrom(rates, planned)[key]?.value;

test('a rate goes over as it is: its mean with its ends, the next run with its own', () => {
  expect(figuresFrom([rate('hatch', 0.5)])).toEqual({
    hatch: { value: 0.5, low: 0.4, high: 0.6, meanLow: 0.45, meanHigh: 0.55, runs: 5 },
  });
});
test('four digits, and within what a plan lets anyone type', () => {
  const { min, max } = ASSUMPTIONS.hatch;
  expect(valueOf([rate('hatch', 0.123456)], 'hatch')).toBe(0.1235);
  expect(figuresFrom([rate('hatch', 0.95)]).hatch).toMatchObject({ value: 0.95, high: max, meanHigh: max });
  expect(figuresFrom([rate('hatch', min / 2)]).hatch).toMatchObject({ value: min, low: min });
});
test('only what own runs, or the user, speak of', () => {
  expect(valueOf([rate('hatch', 0.5, { runs: 0 })], 'hatch')).toBeUndefined();
  expect(valueOf([rate('hatch', 0.5, { runs: 1 })], 'hatch')).toBe(0.5);
  expect(valueOf([rate('hatch', 0.5, { runs: 0, isTyped: true })], 'hatch')).toBe(0.5);
});

describe('a rate of its month', () => {
  const rates = [
    rate('eggsPerGram', 700),
    rate('eggShare', 0.1),
    rate('eggShare', 0.15, { kind: 7, runs: 2 }),
    rate('eggShare', 0.05, { kind: 1, runs: 0 }),
  ];
  test.each<readonly [number | undefined, number]>([
    [undefined, 0.1],
    [7, 0.15],
    // No run in this month, but the farm's other months speak.
    [1, 0.05],
    // A month without a line of its own: the farm as a whole.
    [3, 0.1],
  ])('month %s', (month, wanted) => {
    expect(valueOf(rates, 'eggShare', month === undefined ? {} : { month })).toBe(wanted);
  });
});

describe('the offset of the strip, by preparation', () => {
  const whole = rate('latencyOffset', 1);
  const carp = rate('latencyOffset', 2, { kind: 'carp pituitary', runs: 3 });
  const more = rate('latencyOffset', 3, { kind: 'handbook pituitary', runs: 4 });
  const own = rate('latencyOffset', -2, { kind: OWN_HORMONE, runs: 2 });
  const hatch = rate('hatch', 0.5, { kind: 'carp pituitary', runs: 99 });
  const offset = (rates: readonly PlannedRate[], preparation?: string) =>
    valueOf(rates, 'latencyOffset', preparation === undefined ? {} : { preparation });
  test('named in the plan: its own, and the whole farm where no run names it', () => {
    expect(offset([whole, carp, more], 'carp pituitary')).toBe(2);
    expect(offset([whole, carp, more], 'other pituitary')).toBe(1);
  });
  test('not named: the one used most, whatever was counted for other rates', () => {
    expect(offset([hatch, whole, carp, more])).toBe(3);
    expect(offset([whole, { ...carp, runs: 4 }, more])).toBe(2);
    expect(offset([whole])).toBe(1);
  });
  test('the ready-made solution takes what was learned of a hormone without a table', () => {
    expect(offset([whole, own], DEFAULT_PREPARATION)).toBe(-2);
    expect(offset([whole, { ...own, runs: 0 }], DEFAULT_PREPARATION)).toBe(1);
    const named = rate('latencyOffset', 4, { kind: DEFAULT_PREPARATION });
    expect(offset([whole, own, named], DEFAULT_PREPARATION)).toBe(4);
  });
  test('another preparation takes nothing of it, unless a run names that one', () => {
    expect(offset([whole, own], 'carp pituitary')).toBeUndefined();
    expect(offset([whole, own, carp], 'carp pituitary')).toBe(2);
    expect(offset([whole, { ...own, runs: 0 }], 'carp pituitary')).toBe(1);
    // Other rates know no such table.
    expect(valueOf([rate('hatch', 0.5), whole, own], 'hatch', { preparation: 'carp pituitary' })).toBe(0.5);
  });
  test('offsets for the check of records', () => {
    expect(latencyOffsetsOf([])).toBeUndefined();
    expect(latencyOffsetsOf([rate('hatch', 0.5), { ...whole, runs: 0 }])).toBeUndefined();
    expect(latencyOffsetsOf([whole])).toEqual({ whole: 1, by: {} });
    expect(latencyOffsetsOf([hatch, { ...whole, runs: 0 }, carp, { ...more, runs: 0 }])).toEqual({
      whole: 1,
      by: { 'carp pituitary': 2 },
    });
    expect(latencyOffsetsOf([carp])).toEqual({ whole: 0, by: { 'carp pituitary': 2 } });
  });
});

test('larvae to fry is split in two steps that give it together', () => {
  const { yolkSurvival, frySurvival } = figuresFrom([rate('larvaeToFry', 0.3)]);
  expect((yolkSurvival?.value ?? 0) * (frySurvival?.value ?? 0)).toBeCloseTo(0.3, 3);
  expect((yolkSurvival?.low ?? 0) * (frySurvival?.low ?? 0)).toBeCloseTo(0.24, 3);
  const [yolk, fry] = [ASSUMPTIONS.yolkSurvival.planned, ASSUMPTIONS.frySurvival.planned];
  // One power for both.
  expect(Math.log(yolkSurvival?.value ?? 0) / Math.log(yolk)).toBeCloseTo(
    Math.log(frySurvival?.value ?? 0) / Math.log(fry),
    2,
  );
  expect(figuresFrom([rate('larvaeToFry', 0.3, { runs: 0 })])).toEqual({});
});
test('how females of one run differ', () => {
  expect(femaleSpreadOf([rate('femaleSpread', 0.23456)])).toBe(0.2346);
  expect(femaleSpreadOf([rate('femaleSpread', 0.2, { runs: 0 })])).toBeUndefined();
  expect(femaleSpreadOf([rate('hatch', 0.2)])).toBeUndefined();
});
