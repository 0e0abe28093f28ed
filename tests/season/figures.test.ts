import { assumed } from '../../shared/families/assumptions';
import type { Assumed } from '../../shared/families/assumptions';
import { hoursAt } from '../../shared/families/timing/kernels/rateCurve';
import { INCUBATION_PROFILES } from '../../shared/families/timing/kernels/incubationProfiles';
import type { Profile } from '../../shared/families/timing/kernels/profile';
import { clockOn, stagesFor, temperatureOn } from '../../shared/season/figures/clock';
import { assumedOf } from '../../shared/season/figures/growth';
import { feedingOf, hormoneFor, hormoneUnit } from '../../shared/season/figures/goods';
import { productOf } from '../../shared/season/figures/product';
import {
  eggSpreadOf,
  seasonShareOf,
  shareSpreadOf,
  usualShareSpread,
} from '../../shared/season/figures/spreads';
import { addStay, chooseVats, isFree, removeRun } from '../../shared/season/vats';
import type { Stay } from '../../shared/season/vats';
import type { ProblemVat } from '../../shared/season/problem';
import { serialOfDay } from '../../shared/units/dates';
import { bookOf } from './support/support';

/** The numbers a season is planned with, each by hand: a case on each side of every limit. */
const near = (value: number) => expect.closeTo(value, 9);
const USUAL = assumed({});

describe('how much seasons and runs vary', () => {
  test('the usual spread: three tenths and two tenths of the widest there can be', () => {
    expect(usualShareSpread(0.5)).toEqual({ mean: 0.5, runs: near(0.15), season: near(0.1) });
    expect(usualShareSpread(0.2)).toEqual({ mean: 0.2, runs: near(0.12), season: near(0.08) });
    expect(eggSpreadOf({ spreads: {} })).toEqual({ females: 0.3, runs: 0.15, season: 0.2 });
  });
  test('an own spread is cut at 0.95 of the widest, in its proportions', () => {
    const cut = (runs: number, season: number) =>
      shareSpreadOf({ spreads: { hatch: { runs, season } } }, { ...USUAL, hatch: 0.5 }, 'hatch');
    expect(cut(0.28, 0.37)).toEqual({ mean: 0.5, runs: near(0.28), season: near(0.37) });
    expect(cut(0.3, 0.4)).toEqual({ mean: 0.5, runs: near(0.285), season: near(0.38) });
    expect(cut(0, 0)).toEqual({ mean: 0.5, runs: 0, season: 0 });
    expect(cut(0, 0.2)).toEqual({ mean: 0.5, runs: 0, season: 0.2 });
  });
  test.each([
    ['eggs', 0.5],
    ['hatch', 0.5],
    ['yolkSurvival', 0.3],
    ['frySurvival', 0.2],
    ['nurserySurvival', 0.2],
  ] as const)('of the deviation of %s this part is shared by the season: %f', (key, part) => {
    expect(seasonShareOf(key, 1, 0)).toEqual(near(Math.sqrt(part)));
    expect(seasonShareOf(key, 0, 1)).toEqual(near(Math.sqrt(1 - part)));
  });
});

describe('days for a weight', () => {
  // 2 mg at first food, 20 % a day for twelve days, then 8 % a day.
  const A: Assumed = {
    ...USUAL,
    startWeight: 0.002,
    fryGrowth: 20,
    rearingDays: 12,
    nurseryGrowth: 8,
    nurseryDays: 28,
  };
  const grown = (percent: number): number => 0.002 * Math.exp(percent / 100);
  const of = (product: 'fry' | 'fingerlings', grams?: number) => productOf({ product, grams, name: 'A' }, A);
  test.each([
    ['fry', undefined, 12, 0],
    ['fry', grown(240), 12, 0],
    ['fry', grown(20 * 12.0098), 12, 0],
    ['fry', grown(20 * 12.0102), 13, 0],
    ['fry', grown(139), 7, 0],
    ['fry', grown(20), 7, 0],
    ['fry', grown(141), 8, 0],
    ['fry', grown(800), 40, 0],
    ['fingerlings', undefined, 12, 28],
    ['fingerlings', grown(240 + 8), 12, 1],
    ['fingerlings', grown(240 + 8 * 14), 12, 14],
    ['fingerlings', grown(240 + 8 * 120), 12, 120],
  ] as const)('%s of %f g: %i days of rearing, %i of nursing', (product, grams, rearingDays, nurseryDays) => {
    expect(of(product, grams)).toMatchObject({ rearingDays, nurseryDays });
  });
  test.each([
    ['fry', grown(801), 'would take 41 days'],
    ['fingerlings', grown(240), 'no heavier than weaned fry (0.022 g)'],
    ['fingerlings', grown(240 + 8 * 120.1), 'would take 121 days of nursing'],
  ] as const)('%s of %f g: %s', (product, grams, says) => {
    expect(of(product, grams)).toContain(says);
  });
  test('weights, survivals and water, from the fish counted out back', () => {
    const a = {
      ...A,
      hatch: 0.5,
      yolkSurvival: 0.9,
      frySurvival: 0.75,
      nurserySurvival: 0.8,
      gradingShare: 0.9,
      arriving: 0.98,
      eggsPerLitre: 200,
      larvaePerLitre: 50,
      nurseryPerLitre: 2,
    };
    const product = productOf({ product: 'fingerlings', grams: grown(240 + 8 * 14), name: 'A' }, a);
    if (typeof product === 'string') throw new Error(product);
    const graded = 1 / (0.9 * 0.98);
    const weaned = graded / 0.8 ** 0.5;
    const feeding = weaned / 0.75;
    const eggs = feeding / 0.45;
    expect(product.grams).toEqual(near(grown(352)));
    expect(product.survivals.map((part) => part)).toEqual([0.5, 0.9, 0.75, near(0.8 ** 0.5), near(0.882)]);
    expect(product.eggsPerFish).toEqual(near(eggs));
    expect(product.stages).toEqual([
      { key: 'eggs', fishPerFish: near(eggs), litresPerFish: near(eggs / 200) },
      { key: 'fry', fishPerFish: near(feeding), litresPerFish: near(feeding / 50) },
      { key: 'nursing', fishPerFish: near(weaned), litresPerFish: near(weaned / 2) },
    ]);
    const fry = productOf({ product: 'fry', grams: grown(139), name: 'A' }, a);
    expect(
      typeof fry === 'string' ? [] : [fry.grams, fry.survivals[2], fry.stages.length, fry.survivals.length],
    ).toEqual([
      near(grown(140)),
      // Seven days die like 15.4 later ones, twelve like 20.4.
      near(0.75 ** (15.4 / 20.4)),
      2,
      4,
    ]);
  });
  test('a weighing: the start from which fish that always grew as now would weigh the same', () => {
    const own = assumedOf(A, { feedFrom: 46_500, weighed: { grams: grown(6 * 32.1), on: 46_506 } as never });
    // 32.1 % a day is half way from 20 to the 44.2 of plenty: growth from then on half way to 11.7.
    expect(own.fryGrowth).toEqual(near(15.85));
    expect(own.startWeight).toEqual(near(grown(6 * (32.1 - 15.85))));
    expect(assumedOf(A, { feedFrom: 46_500 })).toBe(A);
    expect(assumedOf(A, { feedFrom: 46_500, weighed: { grams: 0.01, on: 46_502 } as never })).toBe(A);
  });
  test('what is fed: a line a day until the fish leave', () => {
    const product = productOf({ product: 'fry', name: 'A' }, A);
    if (typeof product === 'string') throw new Error(product);
    const rows = feedingOf({ feedFrom: 46_500, feeding: 1000, due: 46_503 }, product, A);
    expect(rows.map(({ date }) => date)).toEqual([46_500, 46_501, 46_502]);
    expect(rows.map(({ fish }) => fish)).toEqual([
      1000,
      near(1000 * A.frySurvival ** (4.6 / 20.4)),
      near(1000 * A.frySurvival ** (7.2 / 20.4)),
    ]);
    expect(rows[2]?.grams).toEqual(near(grown(40)));
    expect(feedingOf({ feedFrom: 46_500, feeding: 1000, due: 46_499 }, product, A)).toEqual([]);
  });
  test('hormone: a ready-made solution by the figure, others by their own dose', () => {
    const book = bookOf({ preparation: 'ready-made solution' });
    expect([hormoneFor(book, { ...A, hormoneDose: 0.6 }, 5), hormoneUnit(book)]).toEqual([3, 'mL']);
    const glands = bookOf({ preparation: 'own-species pituitary' });
    expect(hormoneFor(glands, { ...A, hormoneDose: 0.6 }, 5)).not.toBe(3);
    expect(hormoneUnit(glands)).not.toBe('mL');
  });
});

describe('the clock of a run', () => {
  const WATER = [11, 12, 15, 18, 22, 26, 28, 27, 25, 21, 16, 13];
  const at = (month: number, day: number, hour = 12) =>
    temperatureOn(WATER, serialOfDay(2027, month, day) + hour / 24);
  test('water passes through the value of a month in its middle, at midnight of the 16th', () => {
    expect(at(4, 16, 0)).toBe(18);
    expect(at(4, 16, 12)).toEqual(near(18 + 4 * (0.5 / 30)));
    expect(at(4, 15, 12)).toEqual(near(18 - 3 * (0.5 / 30)));
    expect(at(1, 31, 23)).toEqual(near(11.5));
    expect(at(1, 1, 0)).toEqual(near(12));
    expect(at(12, 31, 23)).toEqual(near(12));
    expect(
      temperatureOn([...WATER.slice(0, 4), null, ...WATER.slice(5)], serialOfDay(2027, 4, 20)),
    ).toBeNaN();
    expect(temperatureOn([...WATER.slice(0, 4), null, ...WATER.slice(5)], serialOfDay(2027, 4, 10))).toEqual(
      near(18 - 3 * (6 / 30)),
    );
  });
  const DAY = serialOfDay(2027, 4, 14);
  const stages = stagesFor('ready-made solution');
  const clock = (staff: object = {}, own: object = {}) => {
    const { staff: usual } = bookOf();
    return clockOn(
      {
        staff: {
          ...usual,
          weekdays: [1, 2, 3, 4, 5, 6, 7],
          daysOff: [],
          stripFrom: 7,
          stripTo: 20,
          injectFrom: 0,
          injectTo: 24,
          ...staff,
        },
        temperatures: new Array<number>(12).fill(26),
      },
      stages,
      { latencyOffset: 0, incubationFactor: 1, ...own },
      DAY,
    );
  };
  test('hours follow each other', () => {
    const run = clock({}, { latencyOffset: 1, incubationFactor: 1.5 });
    if (typeof run === 'string') throw new Error(run);
    const plain = clock();
    if (typeof plain === 'string') throw new Error(plain);
    const incubation = hoursAt(
      (INCUBATION_PROFILES.find(({ name }) => name === 'African catfish') as Profile).curve,
      26,
    );
    expect(run.latencyHours).toEqual(near(plain.latencyHours + 1));
    expect([run.stripAt, run.injectAt]).toEqual([
      near(DAY + 7 / 24),
      near(DAY + 7 / 24 - run.latencyHours / 24),
    ]);
    expect(24 * (plain.hatchAt - plain.stripAt)).toEqual(expect.closeTo(incubation, 6));
    expect(24 * (run.hatchAt - run.stripAt)).toEqual(expect.closeTo(1.5 * incubation, 6));
    expect((run.hatchEndAt - run.stripAt) / (plain.hatchEndAt - plain.stripAt)).toBeCloseTo(1.5, 6);
    expect(run.firstFeedAt - run.hatchAt).toBeCloseTo(plain.firstFeedAt - plain.hatchAt, 6);
    expect(run.feedFrom).toBe(Math.floor(run.firstFeedAt + 0.5));
    expect(run.checkAt < run.stripAt && run.stripAt < run.lateAt).toBe(true);
  });
  test('the first half hour at which strip and injection both fall into their hours', () => {
    const plain = clock();
    if (typeof plain === 'string') throw new Error(plain);
    const injected = (((7 - plain.latencyHours) % 24) + 24) % 24;
    const from = (hour: number) => {
      const run = clock({ injectFrom: hour });
      return typeof run === 'string' ? run : Math.round(48 * (run.stripAt - DAY)) / 2;
    };
    expect([from(injected), from(injected + 0.01), from(injected + 0.5), from(injected + 0.51)]).toEqual([
      7, 7.5, 7.5, 8,
    ]);
    expect(clock({ injectTo: injected - 0.01, injectFrom: injected - 0.2 })).toBe('hours');
    const exact = clock({ injectTo: injected, injectFrom: injected - 0.2 });
    expect(typeof exact === 'string' ? exact : exact.stripAt).toEqual(near(DAY + 7 / 24));
    const late = clock({ stripTo: 7.5, injectFrom: injected + 0.5, injectTo: injected + 0.5 });
    expect(typeof late).toBe('object');
    expect(clock({ stripTo: 7.4, injectFrom: injected + 0.5, injectTo: injected + 0.5 })).toBe('hours');
  });
  test('days off', () => {
    // 14 April 2027 is a Wednesday.
    expect(clock({ weekdays: [1, 2, 4, 5, 6, 7] })).toBe('day off');
    expect(typeof clock({ weekdays: [3] })).toBe('object');
    expect(clock({ daysOff: [DAY] })).toBe('day off');
    expect(typeof clock({ daysOff: [DAY + 1] })).toBe('object');
  });
});

describe('vats', () => {
  const STAYS: Stay[] = [
    { from: 10, to: 20, run: 1 },
    { from: 25, to: 30, run: 2 },
  ];
  // Two days of cleaning on each side of another run.
  test.each([
    [0, 8, 3, true],
    [0, 8.1, 3, false],
    [0, 10, 1, true],
    [0, 10.1, 1, false],
    [20, 23, 1, true],
    [21.9, 22.5, 3, false],
    [22, 23, 3, true],
    [22, 23.1, 3, false],
    [30, 40, 2, true],
    [31.9, 40, 3, false],
    [32, 40, 3, true],
    [12, 13, 1, false],
    [5, 50, 3, false],
    [9.9999999, 20, 3, false],
    [22 - 5e-7, 23 + 5e-7, 3, true],
    [22 - 5e-6, 23, 3, false],
    [22, 23 + 5e-6, 3, false],
  ])('from %f to %f for run %i: %s', (from, to, run, free) => {
    expect(isFree(STAYS, from, to, run, 2)).toBe(free);
  });
  test('stays are kept in order, and go with their run', () => {
    const stays = [...STAYS];
    addStay(stays, { from: 22, to: 23, run: 3 });
    addStay(stays, { from: 1, to: 2, run: 1 });
    expect(stays.map(({ from }) => from)).toEqual([1, 10, 22, 25]);
    const occupancy = [stays];
    removeRun(occupancy, 1);
    expect(stays.map(({ from }) => from)).toEqual([22, 25]);
  });
  const vats = (...sizes: readonly (number | readonly [number, number])[]) =>
    sizes.map(
      (size) =>
        (typeof size === 'number'
          ? { litres: size, holds: 7 }
          : { litres: size[0], holds: size[1] }) as ProblemVat,
    );
  const chosen = (of: readonly ProblemVat[], litres: number) =>
    chooseVats(
      of,
      of.map((_, i) => i),
      litres,
    );
  test('the least water that suffices, then the fewest vats, then those that can do least else', () => {
    expect(chosen(vats(500, 300, 200), 500)).toEqual([0]);
    expect(chosen(vats(500, 300, 200), 510)).toEqual([0, 2]);
    expect(chosen(vats(1000, 300, 200), 450)).toEqual([1, 2]);
    expect(chosen(vats([500, 7], [500, 1], [500, 3]), 500)).toEqual([1]);
    expect(chosen(vats([500, 7], [500, 6], [500, 4]), 500)).toEqual([2]);
    expect(chosen(vats(500, 300), 800)).toEqual([0, 1]);
    expect(chosen(vats(500, 300), 800.1)).toBeUndefined();
    expect(chosen(vats(500, 300), 800 * (1 + 5e-10))).toEqual([0, 1]);
  });
  test('with many free vats the largest first, the last exchanged for the smallest that does', () => {
    const nine = vats(100, 100, 100, 100, 100, 100, 100, 60, 45);
    const ten = vats(100, 100, 100, 100, 100, 100, 100, 100, 60, 45);
    expect(chosen(nine, 105)).toEqual([7, 8]);
    expect(chosen(ten, 105)).toEqual([0, 9]);
    expect(chosen(ten, 150)).toEqual([0, 8]);
    expect(chosen(ten, 965)).toBeUndefined();
  });
});
