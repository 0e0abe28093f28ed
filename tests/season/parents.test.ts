import { assumed } from '../../shared/families/assumptions';
import { purchasesOf } from '../../shared/season/figures/goods';
import { chooseFemales, firstUse, pairUp, readyMales, restedFemales } from '../../shared/season/parents';
import type { Problem, ProblemFemale } from '../../shared/season/problem';
import { MEAN, safetyOf, shareFor } from '../../shared/season/batches/chance/safety';
import { chooseVats } from '../../shared/season/vats';
import { planBatches } from '../../shared/season/batches';
import { mondayOf } from '../../shared/units/dates';
import { bookOf } from './support/support';

/** Who is stripped, what may be promised and what is bought: each side of every limit, by hand. */
const near = (value: number) => expect.closeTo(value, 9);
const females = (...eggs: readonly number[]): readonly ProblemFemale[] =>
  eggs.map((number, i) => ({ tag: `F${i}`, eggs: number, kilograms: 1, family: '', used: [] }));
const chosen = (eggs: readonly number[], need: number, most = 40, under = false) =>
  chooseFemales(
    females(...eggs),
    eggs.map((_, i) => i),
    need,
    most,
    under,
  );

test.each<readonly [string, readonly number[], number, number, boolean, readonly number[]]>([
  ['the fewest eggs to spare', [100, 60, 50], 105, 9, false, [1, 2]],
  ['exactly enough', [100, 60, 50], 110, 9, false, [1, 2]],
  ['a hair more than enough by rounding', [100, 60, 50], 110 * (1 + 5e-10), 9, false, [1, 2]],
  ['one egg more', [100, 60, 50], 111, 9, false, [0, 2]],
  ['as many as may be stripped', [100, 60, 50], 105, 1, false, [0]],
  ['two at the most', [100, 60, 50, 40], 145, 2, false, [0, 2]],
  ['all together too few: the best', [100, 60, 50], 211, 9, false, [0, 1, 2]],
  ['all together just enough', [100, 60, 50], 210, 9, false, [0, 1, 2]],
  ['of sets that give the same, the smaller', [100, 60, 40], 100, 9, false, [0]],
  ['the most that does not pass the need', [100, 60, 50], 105, 9, true, [0]],
  ['a need that is met exactly is passed', [100, 60, 50], 110, 9, true, [0]],
  ['nothing lies under the need', [100, 60, 50], 45, 9, true, [2]],
])('%s', (_, eggs, need, most, under, wanted) => {
  expect(chosen(eggs, need, most, under)).toEqual(wanted);
});
test('from eleven females on the best givers first, the last exchanged for the smallest that does', () => {
  const ten = [100, 90, 80, 70, 60, 50, 40, 30, 20, 15];
  expect(chosen(ten, 35)).toEqual([8, 9]);
  const eleven = [...ten, 10];
  expect(chosen(eleven, 35)).toEqual([6]);
  expect(chosen(eleven, 101)).toEqual([0, 10]);
  expect(chosen(eleven, 110)).toEqual([0, 10]);
  expect(chosen(eleven, 111)).toEqual([0, 9]);
  expect(chosen(eleven, 195, 2)).toEqual([0, 1]);
  expect(chosen(eleven, 190, 2)).toEqual([0, 1]);
  expect(chosen(eleven, 185, 2)).toEqual([0, 1]);
  expect(chosen(eleven, 175, 2)).toEqual([0, 2]);
});

const problem = (more: Partial<Problem> = {}): Problem =>
  ({
    females: [
      { tag: 'F0', eggs: 9, kilograms: 1, family: 'a', used: [100] },
      { tag: 'F1', eggs: 8, kilograms: 1, family: 'b', used: [] },
      { tag: 'F2', eggs: 7, kilograms: 1, family: '', used: [160] },
    ],
    byEggs: [0, 1, 2],
    males: [
      { tag: 'M0', family: 'a', used: [] },
      { tag: 'M1', family: 'b', used: [100] },
    ],
    restDays: 30,
    femalesPerMale: 2,
    malesSurvive: true,
    ...more,
  }) as Problem;
test('parents rest before and after', () => {
  const rested = (day: number) => restedFemales(problem(), firstUse(problem()), day);
  expect([rested(129), rested(130), rested(131)]).toEqual([
    [1, 2],
    [0, 1, 2],
    [0, 1],
  ]);
  expect([rested(70), rested(71)]).toEqual([
    [0, 1, 2],
    [1, 2],
  ]);
  const ready = (day: number, malesSurvive: boolean) => {
    const one = problem({ malesSurvive });
    return readyMales(one, firstUse(one), day);
  };
  expect([ready(129, true), ready(130, true), ready(130, false)]).toEqual([[0], [0, 1], [0]]);
});
test('no brother meets his sister; a male serves as many as he may, the one that serves already first', () => {
  const pairs = (of: readonly number[], males: readonly number[], more: Partial<Problem> = {}) =>
    pairUp(problem(more), of, males).map(({ female, male }) => `${female}${male}`);
  expect(pairs([0, 1, 2], [0, 1])).toEqual(['01', '10', '20']);
  expect(pairs([0, 2], [0])).toEqual(['20']);
  expect(pairs([1, 2], [0])).toEqual(['10', '20']);
  expect(pairs([1, 2], [0], { femalesPerMale: 1 })).toEqual(['10']);
  expect(pairs([1, 2], [0, 1], { femalesPerMale: 1 })).toEqual(['10', '21']);
});

describe('what may be promised of a batch', () => {
  const sure = { runs: 0, season: 0 };
  const spreads = {
    hatch: sure,
    yolkSurvival: sure,
    frySurvival: sure,
    nurserySurvival: sure,
    eggs: { females: 0, runs: 0, season: 0 },
  };
  const safety = (more: object, own: object = {}) =>
    safetyOf(
      { ...bookOf(), spreads, lost: 0, certainty: 0.8, ...more },
      { ...assumed({}), ovulating: 1, ...own },
    );
  test('without any spread all that is expected', () => {
    const all = safety({});
    expect(all.females.fry).toHaveLength(41);
    expect([all.females.fry[0], all.females.fry[1], all.females.fingerlings[40]]).toEqual([
      0,
      near(1),
      near(1),
    ]);
    expect([all.feeding.fry, all.feeding.fingerlings, all.nursing]).toEqual([near(1), near(1), near(1)]);
  });
  test('where more batches are lost than may miss, what those bring that are not lost', () => {
    expect(safety({ lost: 0.3 }).females.fry[5]).toEqual(near(1));
    expect(safety({ lost: 0.1 }).females.fry[5]).toEqual(near(1));
    expect(safety({ lost: 0.3 }).feeding.fry).toEqual(near(1));
  });
  test('the spread of one stage: the quantile of the certainty, half as rare for water', () => {
    // Close to a bell of mean 0.5 and deviation 0.1: 0.8416 deviations down is missed once in five, 1.2816 once in ten.
    const one = safety(
      { spreads: { ...spreads, frySurvival: { runs: 0.1, season: 0 } } },
      { frySurvival: 0.5 },
    );
    expect(one.females.fry[1]).toBeCloseTo(1 - 0.8416 * 0.2, 1.5);
    expect(one.feeding.fry).toBeCloseTo(1 - 1.2816 * 0.2, 1.5);
    expect(one.feeding.fry).toBeLessThan(one.females.fry[1] ?? NaN);
    expect(one.nursing).toEqual(near(1));
  });
  test('more females are never less sure; those beyond forty count as forty', () => {
    const many = safety(
      { spreads: { ...spreads, eggs: { females: 0.5, runs: 0, season: 0 } } },
      { ovulating: 0.7 },
    );
    const list = many.females.fry;
    expect(list.every((share, n) => n === 0 || share >= (list[n - 1] ?? 0))).toBe(true);
    expect([shareFor(many, 'fry', 40), shareFor(many, 'fry', 99), shareFor(many, 'fry', 1)]).toEqual([
      list[40],
      list[40],
      list[1],
    ]);
    expect(list[40]).toBeGreaterThan(0.8);
    expect(list[1]).toBeLessThan(0.6);
    expect(shareFor(MEAN, 'fry', 3)).toBe(1);
  });
});

test('goods are ordered so many days before they are used, in that week, each week and kind once', () => {
  const book = bookOf({ preparation: 'ready-made solution' });
  const leadDays = { hormone: 20, cysts: 10, feed: 5 };
  const prices = { ...book.prices, hormonePerMillilitre: 3, cystsPerKilogram: 80, feedPerKilogram: 2 };
  const at = book.plannedOn + 100;
  const row = (date: number, cysts: number, dry: number) => ({
    batch: 'B',
    date,
    fish: 1,
    grams: 1,
    cysts,
    dry,
  });
  const bought = purchasesOf({ ...book, leadDays, prices }, [{ injectAt: at + 0.8, hormone: 4 }] as never, [
    row(at + 1, 500, 0),
    row(at + 2, 250, 1000),
    row(at + 30, 0, 2000),
  ]);
  const of = (item: string) => bought.filter((one) => one.item === item);
  expect(of('hormone')).toEqual([
    { week: mondayOf(at - 20), item: 'hormone', unit: 'mL', amount: 4, cost: 12, usedFrom: at },
  ]);
  const cysts = of('cysts');
  expect(cysts.reduce((sum, { amount }) => sum + amount, 0)).toEqual(near(0.75));
  expect(cysts.reduce((sum, { cost }) => sum + cost, 0)).toEqual(near(60));
  expect([cysts[0]?.week, cysts[0]?.usedFrom]).toEqual([mondayOf(at - 10), at]);
  expect(of('dry feed').map(({ week, amount, cost, usedFrom }) => [week, amount, cost, usedFrom])).toEqual([
    [mondayOf(at + 2 - 5), 1, 2, at + 2],
    [mondayOf(at + 30 - 5), 2, 4, at + 30],
  ]);
  const late = purchasesOf({ ...book, leadDays, prices }, [], [row(book.plannedOn + 3, 100, 0)]);
  expect(late.map(({ week }) => week)).toEqual([mondayOf(book.plannedOn)]);
});

test('a vat is not asked for where there is none', () => {
  expect(chooseVats([], [], 1)).toBeUndefined();
});

/** A dead male rests for ever: his rest is no reason to use him. */
test.each([false, true])('males that are gone are in no plan (males give milt again: %s)', (malesSurvive) => {
  const males = bookOf().males.map((male, i) => (i < 6 ? { ...male, goneOn: '2027-01-05' } : male));
  const { batches } = planBatches(bookOf({ malesSurvive, males }), { draws: 0, explains: false });
  expect(batches.map((batch) => [...batch.males])).toEqual([['M7', 'M8']]);
});
