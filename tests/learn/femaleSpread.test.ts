import { estimateBetween, varianceParts } from '../../shared/families/learning/kernels/betweenFemales';
import { rateSpec } from '../../shared/families/learning/rates';
import { ratesWorkbook } from '../../shared/books/learn';
import { femalesByRun } from '../../shared/learn/observe/females';
import { femaleSpreadOf, learnRates, rateOf, ratesFromCells } from '../../shared/learn';
import type { RunRecord } from '../../shared/records/schema';
import { ownFigures } from '../../shared/season';
import { gridOf } from '../season/support/support';
import type { Plain } from './support/demoFarm';
import { record } from './support/demoFarm';
import { Chance } from './support/farms';

/** Runs of several females whose eggs differ by so much, and the runs by so much besides. */
function farm(spread: number, runs: number, females: number, more: Plain = {}): RunRecord[] {
  const chance = new Chance(31);
  return Array.from({ length: runs }, (_, r) => {
    const run = 0.4 * chance.bell();
    return Array.from({ length: females }, (_f, f) =>
      record(5 + r * females + f, {
        run: `R${r}`,
        date: 45_300 + 20 * r,
        female: `F${f}`,
        femaleWeight: 1,
        eggWeight: 100 * Math.exp(run + spread * chance.bell()),
        ...more,
      }),
    );
  }).flat();
}
const withoutWeight = ({ values, ...one }: RunRecord): RunRecord => ({
  ...one,
  values: Object.fromEntries(Object.entries(values).filter(([field]) => field !== 'femaleWeight')),
});
const SPEC = rateSpec('femaleSpread');
const learned = (records: readonly RunRecord[]) => estimateBetween(SPEC, femalesByRun(records));

test.each([
  [0.15, 40],
  [0.3, 40],
  [0.6, 40],
])('the spread between females of a made farm, %s, is found again whatever the runs do', (spread, runs) => {
  const rate = learned(farm(spread, runs, 4));
  expect(rate.runs).toBe(runs);
  expect(Math.abs(Math.log(rate.value / spread))).toBeLessThan(0.15);
  expect(rate.low).toBeLessThan(spread);
  expect(rate.high).toBeGreaterThan(spread);
});

test('females weighed together say nothing of one of them; one weighed alone does', () => {
  expect(femalesByRun(farm(0.3, 5, 3, { females: 2 }))).toEqual([]);
  expect(femalesByRun(farm(0.3, 5, 3, { females: 1 }))).toEqual(femalesByRun(farm(0.3, 5, 3)));
  expect(femalesByRun(farm(0.3, 5, 3)).map((run) => run.length)).toEqual([3, 3, 3, 3, 3]);
});

test('eggs in a gram belong to it where every row of a run says them', () => {
  const rows = farm(0.2, 40, 4).map((one, i) => ({
    ...one,
    values: { ...one.values, eggsPerGram: { ...one.values.eggWeight, value: i % 2 ? 500 : 900 } },
  })) as RunRecord[];
  // Two equally frequent values apart by ln(900 ÷ 500) deviate from their mean by half of that, beside 0.2; of four
  // rows two are of each kind, so that the mean square within runs is 4 ÷ 3 of it.
  const made = Math.hypot(0.2, (Math.log(900 / 500) / 2) * Math.sqrt(4 / 3));
  expect(Math.abs(Math.log(learned(rows).value / made))).toBeLessThan(0.15);
});

test.each([
  ['one female a run', farm(0.6, 20, 1)],
  ['females weighed together', farm(0.6, 20, 3, { females: 3 })],
  ['one weighing written in every row', farm(0.6, 20, 3, { eggWeight: 130 })],
  ['no weight of the female', farm(0.6, 20, 3).map(withoutWeight)],
])('%s say nothing: the usual spread stays, and says so', (_what, rows) => {
  expect(learned(rows)).toMatchObject({ runs: 0, ownWeight: 0 });
  expect(learned(rows).value).toBeCloseTo(SPEC.literature, 3);
});

test('farms drawn as believed beforehand: 95 % intervals hold the truth in 93 to 97 of a hundred', () => {
  const chance = new Chance(7);
  const [farms, spec] = [1000, SPEC];
  let held = 0;
  for (let i = 0; i < farms; i++) {
    const truth = spec.literature * Math.exp(Math.log(spec.runsFactor) * chance.bell());
    const runs = Array.from({ length: 1 + (i % 5) }, () =>
      Array.from({ length: 2 + (i % 3) }, () => 3 + truth * chance.bell()),
    );
    const { low, high } = estimateBetween(spec, runs);
    if (low <= truth && truth <= high) held++;
  }
  expect(held / farms).toBeGreaterThan(0.93);
  expect(held / farms).toBeLessThan(0.97);
});

test('parts of the variance of made groups of unequal size, on average, as they were made', () => {
  const chance = new Chance(11);
  const [times, made] = [400, { within: 0.09, between: 0.04 }];
  let [within, between] = [0, 0];
  for (let i = 0; i < times; i++) {
    const groups = Array.from({ length: 12 }, (_, g) => {
      const run = Math.sqrt(made.between) * chance.bell();
      return Array.from({ length: 2 + (g % 4) }, () => run + Math.sqrt(made.within) * chance.bell());
    });
    const parts = varianceParts(groups);
    within += parts.within / times;
    between += parts.between / times;
  }
  expect(Math.abs(within / made.within - 1)).toBeLessThan(0.05);
  // Never below 0: a little above on average.
  expect(between / made.between).toBeGreaterThan(0.93);
  expect(between / made.between).toBeLessThan(1.12);
});

test('by way of the sheet of rates into the odds of a season', () => {
  const rates = learnRates(farm(0.6, 12, 4));
  const [sheet] = ratesWorkbook(rates).sheets;
  if (!sheet) throw new Error('no sheet');
  const { rates: read, leftOut } = ratesFromCells(gridOf(sheet));
  expect(leftOut).toEqual([]);
  const spread = femaleSpreadOf(read);
  expect(spread).toBeCloseTo(rateOf(rates, 'femaleSpread')?.value ?? NaN, 3);
  expect(ownFigures(() => ({}), spread).spreads.eggs?.females).toBe(spread);
  expect(ownFigures(() => ({}), femaleSpreadOf(learnRates([]).rates)).spreads.eggs).toBeUndefined();
});

test('where eggs of a gram were counted, small eggs make a female give more', () => {
  const both = (eggsPerGram: number, other: number) =>
    femalesByRun(
      [eggsPerGram, other].map((count, f) =>
        record(5 + f, {
          run: 'R1',
          date: 45_300,
          female: `F${f}`,
          femaleWeight: 1,
          eggWeight: 100,
          eggsPerGram: count,
        }),
      ),
    )[0]?.map((x) => Math.exp(x));
  const [more = NaN, less = NaN] = both(800, 600) ?? [];
  expect(more).toBeCloseTo(80, 6);
  expect(less).toBeCloseTo(60, 6);
});

test('a female that gave nothing was not ready: she tells nothing of how females differ', () => {
  const gave = (grams: readonly number[]) =>
    femalesByRun(
      grams.map((eggWeight, f) =>
        record(5 + f, { run: 'R1', date: 45_300, female: `F${f}`, femaleWeight: 1, eggWeight }),
      ),
    ).map((run) => run.length);
  expect(gave([100, 120, 0])).toEqual([2]);
  expect(gave([100, 120, 90])).toEqual([3]);
});
