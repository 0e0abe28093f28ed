import { LivingPages } from '../../shared/books/living';
import { planBatches } from '../../shared/season/batches';
import { evaluate } from '../../shared/catalogue/calculation';
import { isGrid } from '../../shared/base/values';
import { rngOf } from '../../shared/maths/rng';
import { BOOK, bookOf } from '../season/support';

/** The tool's own functions, asked about the plan's own numbers. */
const ask = (formula: string): unknown => {
  const got = evaluate(formula);
  return isGrid(got) ? got[0]?.[0] : got;
};
const books = Array.from({ length: 12 }, (_, i) => i + 1).map((seed) => {
  const chance = rngOf(seed);
  return bookOf({
    orders: BOOK.orders.map((order, i) => ({
      ...order,
      product: chance.even() < 0.5 ? 'fry' : 'fingerlings',
      number: Math.round(1000 + 20_000 * chance.even()),
      due: 46_455 + 40 * i + Math.round(20 * chance.even()),
    })),
    temperatures: BOOK.temperatures.map(() => 24 + 5 * chance.even()),
    preparation: 'ready-made solution',
  });
});

describe.each(books.map((book, i) => [i + 1, book] as const))('book %i', (_seed, book) => {
  const plan = planBatches(book, { draws: 100, explains: false });
  const pages = new LivingPages(book, plan);

  test('the strip lies in the window, and the check of the records finds nothing in the hours', () => {
    for (const batch of plan.batches) {
      const of = pages.reader(batch);
      expect(of.number('look')).toBeLessThanOrEqual(batch.stripAt + 1e-6);
      expect(of.number('late')).toBeGreaterThanOrEqual(batch.stripAt - 1e-6);
      const [inject, water] = [of.number('inject'), of.number('water')];
      expect(ask(`=SPAWN.CHECK.LATENCY(${inject},${batch.stripAt},${water},"${book.preparation}")`)).toBe(
        'ok',
      );
      expect(ask(`=SPAWN.CHECK.HATCHTIME(${batch.stripAt},${of.number('hatchAt')},${water})`)).toBe('ok');
    }
  });

  test('fed fish weigh what growth says, and eat what the daily feed says', () => {
    const a = pages.assumed;
    for (const batch of plan.batches) {
      const day = pages.day(batch, 8);
      expect(day.number('gramsNow')).toBeCloseTo(
        Number(ask(`=SPAWN.GROWTH.WEIGHT(${a.startWeight},${a.fryGrowth},8)`)),
        9,
      );
      const [fish, grams, ration] = [day.number('fishNow'), day.number('gramsNow'), day.number('ration')];
      if (ration > 0 && fish > 0)
        expect(day.number('dry')).toBeCloseTo(
          Number(ask(`=SPAWN.FEED.DAILY(${fish},${grams},${ration})`)),
          6,
        );
    }
  });

  test('nobody is handed more than ordered, and nothing before it is ready', () => {
    for (const { order } of plan.orders) {
      const fish = plan.allocations
        .filter((share) => share.order === order.name)
        .reduce((sum, share) => sum + share.fish, 0);
      expect(fish).toBeLessThanOrEqual(order.number + 1e-6);
    }
    for (const share of plan.allocations)
      expect(pages.share(share)?.number('latestStrip')).toBeLessThanOrEqual(share.on + 1e-6);
  });
});
