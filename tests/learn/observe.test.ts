import type { RunRecord } from '../../shared/records/schema';
import { RunRecordSchema } from '../../shared/records/schema';
import { observe } from '../../shared/learn/observe';
import { counted } from '../../shared/learn/observe/reading';
import type { ObserveSettings } from '../../shared/learn/observe';
import { demoFarm, record } from './support/demoFarm';
import type { Plain } from './support/demoFarm';

const seen = (plain: Plain, settings?: ObserveSettings) =>
  observe([record(5, plain)], settings).observations.map(
    ({ rate, kind, value, k, n }) =>
      JSON.parse(JSON.stringify({ rate, kind, value, k, n })) as {
        rate: string;
        kind?: string | number;
        value?: number;
        k?: number;
        n?: number;
      },
  );
const reasons = (plain: Plain, settings?: ObserveSettings) =>
  observe([record(5, plain)], settings).skipped.map(({ rate, because }) => `${rate}: ${because}`);

test('the invented records are records', () => {
  for (const one of demoFarm(3)) expect(() => RunRecordSchema.parse(one)).not.toThrow();
});

describe('latency', () => {
  const INJECTED = 46000.875;
  test('hours after the table of the preparation, at the temperature of the run', () => {
    expect(
      seen({
        injected: INJECTED,
        stripped: INJECTED + 13 / 24,
        temperature: 25,
        preparation: 'Handbook pituitary',
      }),
    ).toEqual([{ rate: 'latencyOffset', kind: 'handbook pituitary', value: expect.closeTo(2, 9) as number }]);
  });
  test('an alias is understood, a written latency counts before the clock times', () => {
    expect(seen({ latency: 12, temperature: 26, preparation: 'pituitary extract' })[0]).toMatchObject({
      kind: 'carp pituitary',
      // Middle of 13.5 h at 23 °C and 745 min at 26 °C, as warmth over 15.4 °C.
      value: expect.closeTo(12 - (13.5 * 7.6 + (745 / 60) * 10.6) / 2 / 10.6, 9) as number,
    });
  });
  test.each([{}, { preparation: 'moon dust' }])(
    '%j: your hormone, against the ready-made solution',
    (said) => {
      // The middle of 613 min at 26.0 °C and 12 h at 26.5 °C, as warmth over 15.4 °C.
      const table = ((613 / 60) * 10.6 + 12 * 11.1) / 2 / 10.6;
      expect(seen({ latency: 14, temperature: 26, ...said })).toEqual([
        { rate: 'latencyOffset', kind: 'your hormone', value: expect.closeTo(14 - table, 9) as number },
      ]);
      expect(reasons({ latency: 14, temperature: 26, ...said })).toEqual([]);
    },
  );
  test('a preparation named once for the farm', () => {
    expect(seen({ latency: 12, temperature: 25 }, { preparation: 'handbook pituitary' })[0]).toMatchObject({
      value: 1,
    });
  });
  test.each([
    [{ latency: 12, preparation: 'pituitary' }, 'the water temperature is not in the record'],
    [{ latency: 12, temperature: 34, preparation: 'pituitary' }, '20 to 33 °C'],
  ] as const)('%j: %s', (plain, because) => {
    expect(reasons(plain)[0]).toContain(because);
  });
  test('a temperature log takes the place of the mean: 4 h at 27 °C, the rest at 24 °C', () => {
    // 4/9 of the stage in 4 h, 5/9 of 12 h after that: the table says 10.667 h. The fall is made within a
    // second.
    const log = {
      times: [46000, 46000 + 4 / 24, 46000 + 4 / 24 + 1e-5, 46000.4, 46000.8],
      temperatures: [27, 27, 24, 24, 24],
    };
    const [one] = seen(
      { injected: 46000, stripped: 46000.5, temperature: 29, preparation: 'handbook pituitary' },
      { log },
    );
    expect(one?.value).toBeCloseTo(12 - 10.667, 2);
  });
  test('a log of other days is not used', () => {
    const log = { times: [45000, 45001], temperatures: [27, 27] };
    expect(
      seen(
        { injected: 46000, stripped: 46000.5, temperature: 25, preparation: 'handbook pituitary' },
        { log },
      )[0]?.value,
    ).toBeCloseTo(1, 9);
  });
});

describe('the other rates', () => {
  test.each([
    [
      'incubation ÷ table',
      { incubationHours: 33, incubationTemperature: 25 },
      { rate: 'incubationFactor', value: 33 / 30 },
    ],
    [
      'incubation from the strip on',
      { stripped: 46000, hatchedAt: 46001, temperature: 26 },
      // The table at 26 °C: the rate a third of the way from 30 h at 25 to 24.25 h at 28 °C.
      { rate: 'incubationFactor', value: 24 * (1 / 30 + (1 / 24.25 - 1 / 30) / 3) },
    ],
    [
      'egg weight ÷ body weight, in its month',
      { date: 46092, eggWeight: 120, femaleWeight: 1.2 },
      { rate: 'eggShare', kind: 3, value: 0.1 },
    ],
    [
      'eggs per gram from eggs and weight',
      { eggs: 70_000, eggWeight: 100 },
      { rate: 'eggsPerGram', value: 700 },
    ],
    [
      'fertilised in a sample',
      { sampleGood: 160, sampleSize: 200 },
      { rate: 'fertilisation', k: 160, n: 200 },
    ],
    [
      'a share fertilised alone is taken as 100 eggs',
      { fertilisedShare: 0.8 },
      { rate: 'fertilisation', k: 80, n: 100 },
    ],
    ['hatched of all eggs', { hatched: 40_000, eggs: 80_000 }, { rate: 'hatch', k: 40_000, n: 80_000 }],
    ['fry of hatched', { fry: 20_000, hatched: 40_000 }, { rate: 'larvaeToFry', k: 20_000, n: 40_000 }],
    [
      'fingerlings of fry',
      { fingerlings: 15_000, fry: 20_000 },
      { rate: 'nurserySurvival', k: 15_000, n: 20_000 },
    ],
    [
      'larvae stocked',
      { startWeight: 0.01, stocked: 1000, alive: 700, days: 12 },
      { rate: 'frySurvival', k: 700, n: 1000 },
    ],
    [
      'fry stocked, dead counted',
      { startWeight: 0.1, stocked: 1000, dead: 300, days: 28 },
      { rate: 'nurserySurvival', k: 700, n: 1000 },
    ],
    [
      'growth of fry',
      { startWeight: 0.01, endWeight: 0.02, days: 10 },
      { rate: 'fryGrowth', value: 10 * Math.LN2 },
    ],
    [
      'growth while nursing',
      { startWeight: 0.1, endWeight: 0.8, stockedAt: 46000, emptiedAt: 46020 },
      { rate: 'nurseryGrowth', value: 15 * Math.LN2 },
    ],
  ] as const)('%s', (_what, plain, wanted) => {
    const found = seen(plain).find(({ rate }) => rate === wanted.rate);
    expect(found).toBeDefined();
    for (const [key, value] of Object.entries(wanted))
      expect(found?.[key as 'value']).toEqual(typeof value === 'number' ? expect.closeTo(value, 9) : value);
  });

  test('incubation over a temperature log: water at 25 °C takes 30 h by the table, whatever its mean was said to be', () => {
    const log = {
      times: Array.from({ length: 21 }, (_, i) => 46000 + 0.1 * i),
      temperatures: Array.from({ length: 21 }, () => 25),
    };
    const found = seen({ stripped: 46000, hatchedAt: 46000 + 33 / 24, temperature: 28 }, { log });
    expect(found.find(({ rate }) => rate === 'incubationFactor')?.value).toBeCloseTo(33 / 30, 6);
  });

  test.each([
    ['more out than in', { hatched: 90_000, eggs: 80_000 }, 'hatch: more came out than went in'],
    ['no date', { eggWeight: 120, femaleWeight: 1.2 }, 'eggShare: the record has no date, so no month'],
    [
      'a long period',
      { startWeight: 0.1, stocked: 1000, alive: 700, days: 200 },
      'nurserySurvival: a period of 200 days is not like the 14 to 56 days compared',
    ],
    ['shrunk', { startWeight: 0.1, endWeight: 0.08, days: 10 }, 'nurseryGrowth: the fish did not grow'],
    [
      'hatched before fertilised',
      { fertilisedAt: 46001, hatchedAt: 46000, temperature: 25 },
      'incubationFactor: the hatch is not after the fertilising',
    ],
  ] as const)('%s is left out and said', (_what, plain, because) => {
    expect(reasons(plain)).toContain(because);
    expect(seen(plain).map(({ rate }) => rate)).not.toContain(because.split(':')[0]);
  });

  test.each([
    [{ eggsPerGram: 7.1 }, 'eggsPerGram: 7.1 per g where 669 is usual: it looks like another unit or a slip'],
    [
      { latency: 40, temperature: 25, preparation: 'handbook pituitary' },
      'latencyOffset: 29 h where 0 is usual: it looks like another unit or a slip',
    ],
    [
      { incubationHours: 3, incubationTemperature: 25 },
      'incubationFactor: 0.1 where 1 is usual: it looks like another unit or a slip',
    ],
  ] as const)('%j is beyond belief', (plain, because) => {
    expect(reasons(plain)).toEqual([because]);
    expect(seen(plain)).toEqual([]);
  });

  test('grown-on fish and an empty record say nothing', () => {
    expect(seen({ startWeight: 50, endWeight: 80, days: 30, stocked: 100, alive: 90 })).toEqual([]);
    expect(seen({})).toEqual([]);
  });

  test('females that gave eggs count only where failures are written down', () => {
    const gave = (row: number, eggWeight: number): RunRecord =>
      record(row, { date: 46000, injected: 46000.875, eggWeight, femaleWeight: 1 });
    expect(
      observe([gave(5, 90), gave(6, 0)])
        .observations.filter(({ rate }) => rate === 'ovulating')
        .map(({ k, n }) => [k, n]),
    ).toEqual([
      [1, 1],
      [0, 1],
    ]);
    const onlyGood = observe([gave(5, 90), gave(6, 80)]);
    expect(onlyGood.observations.some(({ rate }) => rate === 'ovulating')).toBe(false);
    expect(onlyGood.skipped[0]?.because).toContain('failures seem not to be written down');
  });
});

describe('a share hatched', () => {
  const hatchOf = (plain: Plain, hatchBase?: 'eggs' | 'fertilised') => {
    const { observations, skipped } = observe([{ ...record(5, plain), ...(hatchBase ? { hatchBase } : {}) }]);
    const got = observations.find(({ rate }) => rate === 'hatch');
    return got ? (got.k ?? NaN) / (got.n ?? NaN) : skipped.find(({ rate }) => rate === 'hatch')?.because;
  };
  test('is not learned while nothing says of what', () => {
    const unsaid = 'the book does not say whether the hatch is a share of all eggs or of the fertilised eggs';
    expect(hatchOf({ hatchShare: 0.7 })).toBe(unsaid);
    expect(hatchOf({ hatchShare: 0.7, fertilised: 64_000, eggs: 80_000 })).toBe(unsaid);
  });
  test('of all eggs as it stands; of the fertilised times their part: 70 % of 80 % is 56 %', () => {
    expect(hatchOf({ hatchShare: 0.7 }, 'eggs')).toBe(0.7);
    expect(hatchOf({ hatchShare: 0.7, fertilisedShare: 0.8 }, 'fertilised')).toBeCloseTo(0.56, 9);
    expect(hatchOf({ hatchShare: 0.7, sampleGood: 160, sampleSize: 200 }, 'fertilised')).toBeCloseTo(0.56, 9);
    expect(hatchOf({ hatchShare: 0.5, fertilised: 60_000, eggs: 80_000 }, 'fertilised')).toBe(0.375);
    expect(hatchOf({ hatchShare: 0.7 }, 'fertilised')).toContain(
      'how many were fertilised is not in the record',
    );
  });
  test('counts go before any share', () => {
    expect(hatchOf({ hatchShare: 0.7, hatched: 40_000, eggs: 80_000 }, 'fertilised')).toBe(0.5);
  });
});

// Chosen limits of the ages and periods that are compared: each side of every one.
describe('which fish are fry, which are nursed, and how long', () => {
  const ratesOf = (plain: Plain): readonly string[] => seen(plain).map(({ rate }) => rate);
  const stocked = { stocked: 1000, alive: 700 };
  test.each<readonly [number, readonly string[]]>([
    [0.0499, ['fryGrowth']],
    [0.05, ['nurseryGrowth']],
    [5, ['nurseryGrowth']],
    [5.01, []],
  ])('%f g at the start', (startWeight, rates) => {
    expect(ratesOf({ startWeight, endWeight: 2 * startWeight, days: 12 })).toEqual(rates);
  });
  test.each<readonly [number, number, readonly string[]]>([
    [0.01, 5.9, []],
    [0.01, 6, ['frySurvival']],
    [0.01, 24, ['frySurvival']],
    [0.01, 24.1, []],
    [0.1, 13.9, []],
    [0.1, 14, ['nurserySurvival']],
    [0.1, 56, ['nurserySurvival']],
    [0.1, 56.1, []],
  ])('%f g for %f days', (startWeight, days, rates) => {
    expect(ratesOf({ startWeight, days, ...stocked })).toEqual(rates);
  });
  test('who lives: counted, then the dead, then a share; none of them says nothing', () => {
    const living = (plain: Plain) => seen({ startWeight: 0.1, days: 28, stocked: 1000, ...plain })[0]?.k;
    expect(living({ alive: 700, dead: 200, survival: 0.5 })).toBe(700);
    expect(living({ dead: 200, survival: 0.5 })).toBe(800);
    expect(living({ survival: 0.5 })).toBe(500);
    expect(living({})).toBeUndefined();
    expect(reasons({ startWeight: 0.1, stocked: 1000, alive: 700 })).toEqual([
      'nurserySurvival: the length of the period is not in the record',
    ]);
  });
  test('growth over days that are given, or as it was written', () => {
    expect(seen({ startWeight: 0.1, growthRate: 9 })).toMatchObject([{ rate: 'nurseryGrowth', value: 9 }]);
    expect(reasons({ startWeight: 0.1, growthRate: 0 })).toEqual(['nurseryGrowth: the fish did not grow']);
    expect(seen({ startWeight: 0.1, endWeight: 0.2, days: 0 })).toEqual([]);
    expect(seen({ startWeight: 0.1, endWeight: 0.2, days: 0, growthRate: 9 })).toMatchObject([{ value: 9 }]);
  });
});

describe('a share counted', () => {
  test.each<readonly [number, number, unknown]>([
    [0, 1, { k: 0, n: 1 }],
    [0, 0.9, 'nothing was counted'],
    [1, 1e9, { k: 1, n: 1e9 }],
    [1, 1.01e9, 'nothing was counted'],
    [1, NaN, 'nothing was counted'],
    [-1, 10, 'more came out than went in'],
    [10, 10, { k: 10, n: 10 }],
    [11, 10, 'more came out than went in'],
    [2.4, 9.6, { k: 2, n: 10 }],
  ])('%f of %f', (k, n, wanted) => {
    const { because, ...pair } = counted('hatch', k, n) as { because?: string; k?: number; n?: number };
    expect(because ?? pair).toEqual(
      typeof wanted === 'string' ? wanted : { rate: 'hatch', ...(wanted as object) },
    );
  });
});

test('records with findings are not learned from', () => {
  const { observations, refused, records } = observe([
    record(5, { eggs: 70_000, eggWeight: 100 }, ['eggs-per-gram']),
    record(6, { eggs: 71_000, eggWeight: 100 }),
  ]);
  expect([observations.length, refused, records]).toEqual([1, 1, 1]);
});
