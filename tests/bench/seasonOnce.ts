import { isoDateOfSerial, serialOfIsoDate } from '../../shared/units/dates';
/**
 * Run by season.ts in a plain Node process, as the shipped bundle runs: times of season plans and
 * odds, as JSON lines.
 */
import type { OrderBook } from '../../shared/season';
import { planSeasonBook } from '../../shared/season';
import { simulateSeason } from '../../shared/families/money/odds/simulate';
import { problemOf } from '../../shared/season/problem';
import { chainOf } from '../../shared/season/seasonOdds';
import { solve } from '../../shared/season/solve';
import { BOOK, bookOf } from '../season/support';

const START = serialOfIsoDate(BOOK.plannedOn) ?? NaN;
const season = (orders: number, number: number, vats: number, females: number): OrderBook =>
  bookOf({
    orders: Array.from({ length: orders }, (_, i) => ({
      name: `order ${i + 1}`,
      product: i % 3 === 0 ? 'fry' : 'fingerlings',
      number: number + 500 * (i % 7),
      due: isoDateOfSerial(START + 60 + Math.floor((300 * i) / orders)),
      price: 0.1 + (i % 3) / 100,
    })),
    vats: Array.from({ length: vats }, (_, i) => ({ name: `Vat ${i + 1}`, litres: 500 + 250 * (i % 5) })),
    females: Array.from({ length: females }, (_, i) => ({
      tag: `F${i + 1}`,
      kilograms: 0.8 + 0.05 * (i % 20),
      family: `line ${i % 5}`,
    })),
    males: Array.from({ length: females }, (_, i) => ({ tag: `M${i + 1}`, family: `line ${i % 5}` })),
  });

const best = (runs: number, work: () => unknown): number => {
  let least = Infinity;
  for (let i = 0; i < runs; i++) {
    const from = performance.now();
    work();
    least = Math.min(least, performance.now() - from);
  }
  return least;
};
const say = (id: string, ms: number, about: object): void => {
  console.log(JSON.stringify({ id, ms, ...about }));
};

const met = season(40, 15_000, 24, 60);
const plan = planSeasonBook(met, { draws: 0 });
say(
  '40 runs that can be met',
  best(6, () => planSeasonBook(met, { draws: 0 })),
  { runs: plan.runs.length, met: plan.canBeMet },
);

const short = season(40, 40_000, 12, 30);
const lacking = planSeasonBook(short, { draws: 0 });
say(
  '40 runs that cannot be met',
  best(4, () => planSeasonBook(short, { draws: 0 })),
  { runs: lacking.runs.length, met: lacking.canBeMet },
);

const { problem, assumed } = problemOf(met);
const chain = chainOf(met, problem, assumed, solve(problem).runs);
say(
  '10,000 draws of 40 runs',
  best(3, () => simulateSeason(chain, 10_000, 1)),
  { runs: chain.runs.length, met: true },
);

const thousand = season(1000, 5000, 30, 100);
const from = performance.now();
const many = planSeasonBook(thousand);
say('1,000 orders', performance.now() - from, { runs: many.runs.length, met: many.canBeMet });
