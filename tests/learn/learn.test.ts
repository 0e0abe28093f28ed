import { learnRates, rateOf } from '../../shared/learn/learn';
import { RATE_KEYS, rateSpec } from '../../shared/families/learning/rates';
import { ratesToAssumptions, ratesToFigures } from '../../shared/learn/toAssumptions';
import { ASSUMPTIONS, assumptionSchema } from '../../shared/families/assumptions';
import { demoFarm, record, TRUTH } from './support/demoFarm';

const farm = learnRates(demoFarm(30));
const nothing = learnRates([]);

test('the invented farm is found again', () => {
  for (const [key, truth] of [
    ['incubationFactor', TRUTH.factor],
    ['eggsPerGram', TRUTH.perGram],
    ['hatch', TRUTH.hatch],
    ['larvaeToFry', TRUTH.larvaeToFry],
    ['fryGrowth', TRUTH.fryGrowth],
  ] as const) {
    const rate = rateOf(farm, key);
    expect(rate?.runs).toBe(30);
    expect(rate?.low).toBeLessThanOrEqual(truth);
    expect(rate?.high).toBeGreaterThanOrEqual(truth);
  }
});

test('no records: every rate is the literature, and says so', () => {
  for (const key of RATE_KEYS) {
    const rate = rateOf(nothing, key);
    expect(rate).toMatchObject({ value: rateSpec(key).literature, runs: 0, ownWeight: 0 });
    expect(
      (rate?.low ?? NaN) < rateSpec(key).literature && rateSpec(key).literature < (rate?.high ?? NaN),
    ).toBe(true);
  }
  expect(ratesToAssumptions(nothing)).toEqual({});
});

test('the same records give the same answer, in any order', () => {
  const once = learnRates(demoFarm(6));
  expect(learnRates(demoFarm(6))).toEqual(once);
  const turned = learnRates([...demoFarm(6)].reverse());
  for (const rate of once.rates)
    expect(rateOf(turned, rate.key, rate.kind)?.value).toBeCloseTo(rate.value, 6);
});

test('females of one run are one run, not as many', () => {
  const rows = (run: (i: number) => string) =>
    Array.from({ length: 12 }, (_, i) =>
      record(i + 5, { run: run(i), hatched: 300 + 40 * Math.floor(i / 4), eggs: 1000 }),
    );
  const apart = rateOf(learnRates(rows((i) => `R${i}`)), 'hatch');
  const together = rateOf(learnRates(rows((i) => `R${Math.floor(i / 4)}`)), 'hatch');
  expect([apart?.runs, together?.runs]).toEqual([12, 3]);
  expect((together?.high ?? 0) - (together?.low ?? 0)).toBeGreaterThan(
    1.5 * ((apart?.high ?? 0) - (apart?.low ?? 0)),
  );
});

test('rows of one date belong together where runs have no name', () => {
  const rows = [46000, 46000.4, 46007].map((date, i) => record(i + 5, { date, hatched: 500, eggs: 1000 }));
  expect(rateOf(learnRates(rows), 'hatch')?.runs).toBe(2);
});

describe('figures of the plan', () => {
  test('only what own runs speak of, within what the plan accepts', () => {
    const own = ratesToAssumptions(farm, { month: 7 });
    expect(Object.keys(own).sort()).toEqual([
      'eggShare',
      'eggsPerGram',
      'fryGrowth',
      'frySurvival',
      'hatch',
      'incubationFactor',
      'latencyOffset',
      'yolkSurvival',
    ]);
    expect(assumptionSchema.safeParse(own).success).toBe(true);
  });

  test('the month moves the egg yield, the preparation used most the latency', () => {
    expect(ratesToAssumptions(farm, { month: 7 }).eggShare).toBeGreaterThan(
      1.5 * (ratesToAssumptions(farm, { month: 1 }).eggShare ?? Infinity),
    );
    expect(ratesToAssumptions(farm).latencyOffset).toBe(
      ratesToAssumptions(farm, { preparation: 'ready-made solution' }).latencyOffset,
    );
  });

  test('yolk and rearing together give the share of larvae that became fry', () => {
    const { yolkSurvival = 0, frySurvival = 0 } = ratesToAssumptions(farm);
    expect(yolkSurvival * frySurvival).toBeCloseTo(rateOf(farm, 'larvaeToFry')?.value ?? NaN, 3);
    expect(Math.log(yolkSurvival) / Math.log(frySurvival)).toBeCloseTo(
      Math.log(ASSUMPTIONS.yolkSurvival.planned) / Math.log(ASSUMPTIONS.frySurvival.planned),
      2,
    );
  });

  test('ends are those of the next run', () => {
    const hatch = rateOf(farm, 'hatch');
    expect(ratesToFigures(farm).hatch).toMatchObject({
      low: Number(hatch?.nextLow.toPrecision(4)),
      high: Number(hatch?.nextHigh.toPrecision(4)),
      runs: 30,
    });
  });

  test('a figure beyond what the plan allows is cut to it', () => {
    const odd = learnRates(
      Array.from({ length: 20 }, (_, i) =>
        record(i + 5, { latency: 25, temperature: 25, preparation: 'pituitary', run: `R${i}` }),
      ),
    );
    expect(ratesToAssumptions(odd).latencyOffset).toBe(ASSUMPTIONS.latencyOffset.max);
  });
});

test('no egg yield beyond what a fish can carry, however few the runs', () => {
  const one = learnRates(demoFarm(1)).rates.filter(({ key }) => key === 'eggShare');
  expect(one).toHaveLength(13);
  for (const { value, high, nextHigh, low } of one) {
    expect(Math.max(value, high, nextHigh)).toBeLessThanOrEqual(0.3);
    expect(low).toBeLessThan(value);
  }
});

test('reasons are added up', () => {
  const { unused } = learnRates([
    record(5, { latency: 12, preparation: 'pituitary' }),
    record(6, { latency: 13, preparation: 'pituitary' }),
  ]);
  expect(unused).toEqual([
    { rate: 'latencyOffset', because: 'the water temperature is not in the record', count: 2 },
  ]);
});

test('a hormone without a table: its hours go to plans with the default table, to no other preparation', () => {
  const runs = (preparation?: string) =>
    Array.from({ length: 8 }, (_, i) =>
      record(i + 5, { run: `R${i}`, latency: 14, temperature: 26, ...(preparation ? { preparation } : {}) }),
    );
  const own = learnRates(runs());
  const rate = rateOf(own, 'latencyOffset', 'your hormone');
  // 14 h where the table says 10.92 h: the middle of 613 min at 26.0 °C and 12 h at 26.5 °C as warmth.
  expect(rate).toMatchObject({
    runs: 8,
    label: 'Strip later than the table by, your hormone (against the table of the ready-made solution)',
  });
  expect(rate?.value).toBeGreaterThan(2);
  const offset = (preparation?: string, rates = own) =>
    ratesToAssumptions(rates, preparation ? { preparation } : {}).latencyOffset;
  expect([offset(), offset('ready-made solution')]).toEqual(
    Array(2).fill(Number(rate?.value.toPrecision(4))),
  );
  expect(offset('carp pituitary')).toBeUndefined();
  const both = learnRates([...runs(), ...runs('carp pituitary').map((one) => ({ ...one, sheet: 'Other' }))]);
  expect(offset('carp pituitary', both)).toBeDefined();
});
