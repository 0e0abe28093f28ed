import { ratesWorkbook } from '../../shared/books/learn';
import { figuresFrom, learnRates, ratesFromCells } from '../../shared/learn';
import { livingBook } from '../../shared/books/living';
import { ownFigures, planBatches } from '../../shared/season';
import type { SeasonBatch, SeasonPlan } from '../../shared/season/types';
import { TRUTH, demoFarm } from '../learn/support/demoFarm';
import { bookOf, gridOf } from './support/support';

const preparation = 'ready-made solution';
const own = (runs: number) => {
  const { rates } = learnRates(demoFarm(runs));
  return ownFigures((month) =>
    figuresFrom(rates, month === undefined ? { preparation } : { preparation, month }),
  );
};

const first = ({ batches: [batch] }: SeasonPlan): SeasonBatch => {
  if (!batch) throw new Error('no batch');
  return batch;
};
const QUICK = { draws: 400, explains: false } as const;

test('many runs: figures and spreads of the farm as it was made', () => {
  const { assumptions, spreads } = own(240);
  expect(assumptions.hatch).toBeCloseTo(TRUTH.hatch, 1);
  expect(assumptions.latencyOffset).toBeCloseTo(TRUTH.offset, 0);
  expect(assumptions.incubationFactor).toBeCloseTo(TRUTH.factor, 1);
  // Hatch of a run was drawn from a beta distribution with parameters 5 and 5: deviation √(0.25 ÷ 11) =
  // 0.151.
  expect(spreads.hatch?.runs).toBeGreaterThan(0.151 * 0.85);
  expect(spreads.hatch?.runs).toBeLessThan(0.151 * 1.15);
  expect(spreads.hatch?.season).toBeLessThan(0.03);
  // Egg weight swings by 0.6 sin through the year with 0.25 besides, eggs in a gram by 0.1: √(0.18 + 0.0625 +
  // 0.01) = 0.50.
  expect(spreads.eggs?.runs).toBeGreaterThan(0.35);
  expect(spreads.eggs?.runs).toBeLessThan(0.65);
});

test(
  'egg yields follow the months as the farm was made: 0.1 × exp(0.6 sin), highest ' +
    'three months after April',
  () => {
    const { eggShares = [] } = own(240);
    const made = Array.from(
      { length: 12 },
      (_, i) => 0.1 * Math.exp(0.6 * Math.sin(((i - 3) / 12) * 2 * Math.PI) + 0.03),
    );
    eggShares.forEach((share, i) => {
      expect(Math.abs(Math.log((share ?? NaN) / (made[i] ?? NaN)))).toBeLessThan(0.25);
    });
    expect(eggShares.indexOf(Math.max(...eggShares.map(Number)))).toBeGreaterThanOrEqual(5);
    expect(eggShares.indexOf(Math.max(...eggShares.map(Number)))).toBeLessThanOrEqual(7);
  },
);

test('few runs leave the mean open: what the season shares is wider', () => {
  expect(own(4).spreads.hatch?.season).toBeGreaterThan(2 * (own(240).spreads.hatch?.season ?? NaN));
});

test('no runs, nothing of the farm’s own', () => {
  expect(own(0)).toEqual({ assumptions: {}, spreads: {}, eggShares: undefined });
});

test(
  'from the sheet of rates into a plan: dates, odds and the workbook use them and say ' + 'whose they are',
  () => {
    const [sheet] = ratesWorkbook(learnRates(demoFarm(60))).sheets;
    if (!sheet) throw new Error('no sheet');
    const { rates, leftOut } = ratesFromCells(gridOf(sheet));
    expect(leftOut).toEqual([]);
    const figures = ownFigures((month) =>
      figuresFrom(rates, month === undefined ? { preparation } : { preparation, month }),
    );
    // The same water all year: the nights of the two plans may differ.
    const same = { preparation: 'ready-made solution', temperatures: Array.from({ length: 12 }, () => 27) };
    const usual = planBatches(bookOf(same), QUICK);
    const book = bookOf({ ...same, ...figures });
    const plan = planBatches(book, QUICK);
    // Its fish ripen later: the injection is earlier by that.
    expect(first(plan).latencyHours - first(usual).latencyHours).toBeCloseTo(
      figures.assumptions.latencyOffset ?? NaN,
      6,
    );
    // Its eggs take longer: hatch and what follows come later by that.
    const incubation = (of: SeasonPlan): number => first(of).hatchAt - first(of).stripAt;
    expect(incubation(plan) / incubation(usual)).toBeCloseTo(figures.assumptions.incubationFactor ?? NaN, 6);
    expect(figures.assumptions.incubationFactor).toBeGreaterThan(1.03);
    expect(plan.orders[0]?.range.p10).not.toBe(usual.orders[0]?.range.p10);
    const cells = livingBook(book, plan).sheets.find(({ name }) => name === 'Figures')?.cells ?? {};
    const row =
      Object.entries(cells)
        .find(([, { value }]) => value === 'Eggs that hatch')?.[0]
        .slice(1) ?? '';
    expect([cells[`C${row}`]?.value, cells[`G${row}`]?.value]).toEqual([
      figures.assumptions.hatch,
      'your own',
    ]);
  },
);

test('a wider spread needs more females for the same orders', () => {
  const orders = [{ name: 'Pond club', product: 'fry', number: 10_000, due: '2027-04-10' }];
  const kilograms = (runs: number): number =>
    planBatches(bookOf({ orders, spreads: { hatch: { runs, season: 0.02 } } }), QUICK).batches.reduce(
      (sum, { pairs }) => sum + pairs.reduce((all, pair) => all + pair.kilograms, 0),
      0,
    );
  expect(kilograms(0.3)).toBeGreaterThan(kilograms(0.02));
});
