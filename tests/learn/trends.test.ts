import fc from 'fast-check';
import { controlChart } from '../../shared/families/learning/kernels/controlChart';
import { trendsOf } from '../../shared/learn/trends';
import { demoFarm, record } from './support/demoFarm';
import { Chance } from './support/farms';
import '../support/printed';

describe('control chart', () => {
  test('consistency: σz and limits worked out by hand', () => {
    // p̄ 0.5, σ 0.05; z = 2, −2, 2, −2 …: moving range 4, σz 4/1.128, limits 0.5 ± 0.15·3.546.
    const { sigmaZ, points, centre } = controlChart(
      [60, 40, 60, 40, 60, 40, 60, 40],
      Array.from({ length: 8 }, () => 100),
    );
    expect(centre).toBe(0.5);
    expect(sigmaZ).toAgreeWithPrinted('3.546');
    expect(points[0]?.low).toBe(0);
    expect(points[0]?.chanceHigh).toAgreeWithPrinted('0.65');
  });

  test('limits never closer than chance, as with values copied down', () => {
    const { sigmaZ, points } = controlChart(
      Array.from({ length: 10 }, () => 50),
      Array.from({ length: 10 }, () => 100),
    );
    expect(sigmaZ).toBe(0);
    expect(points[0]).toMatchObject({
      low: points[0]?.chanceLow,
      high: points[0]?.chanceHigh,
      signal: undefined,
    });
  });

  test('a run that failed, and nine in a row', () => {
    const calm = [52, 48, 51, 49, 50, 53, 47, 50, 51, 49];
    expect(
      controlChart(
        [...calm, 5],
        [...calm, 5].map(() => 100),
      ).points.at(-1)?.signal,
    ).toBe('below the limits');
    const shifted = [...calm, ...calm.map((k) => k + 8)].map((k) => ({ k, n: 100 }));
    const { points } = controlChart(
      shifted.map(({ k }) => k),
      shifted.map(({ n }) => n),
    );
    expect(points.map(({ signal }) => signal).filter(Boolean)).toContain('nine in a row above');
  });

  test('seven runs have no limits', () => {
    const { hasLimits, points } = controlChart(
      [1, 2, 3, 4, 5, 6, 90],
      Array.from({ length: 7 }, () => 100),
    );
    expect(hasLimits).toBe(false);
    expect(points.every(({ signal, low }) => signal === undefined && Number.isNaN(low))).toBe(true);
  });

  test('all or none hatched: no limits to leave', () => {
    for (const k of [0, 50])
      expect(
        controlChart(
          Array.from({ length: 9 }, () => k),
          Array.from({ length: 9 }, () => 50),
        ).points.every(({ signal }) => signal === undefined),
      ).toBe(true);
  });

  test('simulated: steady farms whose runs vary are seldom called odd', () => {
    const chance = new Chance(77);
    let odd = 0;
    for (let farm = 0; farm < 400; farm++) {
      const k = Array.from({ length: 25 }, () => chance.binomial(200, chance.beta(12, 8)));
      odd += controlChart(
        k,
        k.map(() => 200),
      ).points.filter(({ signal }) => signal).length;
    }
    const share = odd / (400 * 25);
    process.stdout.write(
      `Control limits: ${(100 * share).toFixed(2)} % of runs of steady farms signalled (p chart alone would signal many more)\n`,
    );
    expect(share).toBeLessThan(0.015);
  });

  test('property: limits hold the centre', () => {
    const run = fc
      .integer({ min: 1, max: 300 })
      .chain((n) => fc.integer({ min: 0, max: n }).map((k) => ({ k, n })));
    fc.assert(
      fc.property(fc.array(run, { minLength: 8, maxLength: 40 }), (runs) => {
        const { centre, points } = controlChart(
          runs.map(({ k }) => k),
          runs.map(({ n }) => n),
        );
        return points.every(
          ({ low, high, chanceLow, chanceHigh }) =>
            low <= chanceLow && chanceLow <= centre && centre <= chanceHigh && chanceHigh <= high,
        );
      }),
      { seed: 3, numRuns: 200 },
    );
  });
});

describe('trends', () => {
  const trends = trendsOf(demoFarm(40));

  test('four views, each run in one group', () => {
    expect(trends.views.map(({ by }) => by)).toEqual(['female', 'male', 'temperature', 'month']);
    for (const { groups, without } of trends.views)
      expect(groups.reduce((sum, g) => sum + g.runs, 0) + without).toBe(40);
  });

  test('expected leans on the farm: less far out than what was counted', () => {
    const farm = trends.chart.centre;
    for (const { groups } of trends.views)
      for (const g of groups.filter(({ share }) => Math.abs(share - farm) > 0.15))
        expect(Math.abs(g.expected - farm)).toBeLessThan(Math.abs(g.share - farm));
  });

  test('a poor female comes last', () => {
    const rows = Array.from({ length: 12 }, (_, i) =>
      record(i + 5, {
        date: 46000 + i,
        female: i % 3 === 0 ? 'F9' : `F${i % 3}`,
        eggs: 1000,
        hatched: i % 3 === 0 ? 150 + i : 600 + 10 * i,
      }),
    );
    expect(trendsOf(rows).views[0]?.groups.at(-1)?.name).toBe('F9');
  });

  test('temperatures in degrees, months in the order of the year', () => {
    expect(trends.views[2]?.groups.map(({ name }) => name)).toEqual([
      '25 to 26 °C',
      '26 to 27 °C',
      '27 to 28 °C',
    ]);
    expect(trends.views[3]?.groups[0]?.name).toBe('January');
    expect(trends.views[3]?.groups.at(-1)?.name).toBe('December');
  });

  test('in order of time, whatever the order of the rows', () => {
    const turned = trendsOf([...demoFarm(40)].reverse());
    expect(turned.points.map(({ name }) => name)).toEqual(trends.points.map(({ name }) => name));
  });

  test('records that do not say it are counted', () => {
    expect(trendsOf([record(5, { eggs: 100, hatched: 50 })]).views.map(({ without }) => without)).toEqual([
      1, 1, 1, 1,
    ]);
  });

  test('rows of one run are one point of time, but each female stands for herself', () => {
    const rows = Array.from({ length: 6 }, (_, i) =>
      record(i + 5, {
        run: `R${i % 2}`,
        date: 46000 + (i % 2),
        female: `F${i}`,
        temperature: 26,
        eggs: 1000,
        hatched: 400 + i,
      }),
    );
    const { points, views } = trendsOf(rows);
    expect(points.map(({ k, n }) => [k, n])).toEqual([
      [1206, 3000],
      [1209, 3000],
    ]);
    expect(views.map(({ groups }) => groups.reduce((sum, g) => sum + g.runs, 0))).toEqual([6, 0, 2, 2]);
  });

  test('fertilisation as well', () => {
    expect(trendsOf(demoFarm(10), 'fertilisation').points).toHaveLength(10);
  });

  test('no records: empty, no fault', () => {
    expect(trendsOf([]).points).toEqual([]);
  });
});
