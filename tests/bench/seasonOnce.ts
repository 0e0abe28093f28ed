import { isoDateOfSerial, serialOfIsoDate } from '../../shared/units/dates';
/**
 * Run by season.ts in a plain Node process, as the shipped bundle runs: times of season plans and
 * odds, as JSON lines.
 */
import type { OrderBook } from '../../shared/season';
import { livingBook } from '../../shared/books/living';
import { planBatches } from '../../shared/season/batches';
import { BOOK, bookOf } from '../season/support/support';

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

/** Processor time, the least of a few. */
const best = (runs: number, work: () => unknown): number => {
  let least = Infinity;
  for (let i = 0; i < runs; i++) {
    const from = process.cpuUsage().user;
    work();
    least = Math.min(least, (process.cpuUsage().user - from) / 1000);
  }
  return least;
};
const say = (id: string, ms: number, about: object): void => {
  console.log(JSON.stringify({ id, ms, ...about }));
};

const met = season(60, 15_000, 40, 160);
const plan = planBatches(met);
say(
  'forty batches',
  best(8, () => planBatches(met)),
  { batches: plan.batches.length, met: plan.canBeMet },
);
say(
  'forty batches, the workbook',
  best(3, () => livingBook(met, { ...plan })),
  {},
);

const short = season(40, 40_000, 12, 30);
const lacking = planBatches(short);
say(
  'what binds',
  best(8, () => planBatches(short)),
  { batches: lacking.batches.length, met: lacking.canBeMet },
);

const thousand = season(1000, 500, 30, 100);
const many = planBatches(thousand);
say(
  '1,000 orders',
  best(1, () => planBatches(thousand)),
  { batches: many.batches.length, met: many.canBeMet },
);
