import { assumed } from '../../../shared/families/assumptions';
import type { OrderBook } from '../../../shared/season';
import { planBatches } from '../../../shared/season/batches';
import type { SeasonPlan } from '../../../shared/season/types';
import { bookOf } from '../../season/support/support';
import { percent, quote } from '../../support/figures';

/**
 * Seasons drawn by a simulation of its own, from what the book says varies: its own generator (mulberry, from
 * memory), normals by Box and Muller, beta shares by two gamma numbers (Marsaglia and Tsang 2000, textbook).
 * Run and season deviations are added as beta numbers of the sum of both variances, moved together by a normal
 * copula, as the order book defines them; eggs and hatch share half of the season.
 */
function generator(seed: number): () => number {
  let a = seed;
  return () => {
    a = (a + 0x6d2b79f5) | 0;
    let t = Math.imul(a ^ (a >>> 15), 1 | a);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}
const SHARES = ['hatch', 'yolkSurvival', 'frySurvival', 'nurserySurvival'] as const;
const TOGETHER = { eggs: 0.5, hatch: 0.5, yolkSurvival: 0.3, frySurvival: 0.2, nurserySurvival: 0.2 };

/** Quantiles of a beta distribution from two hundred thousand sorted numbers of two gammas. */
function betaTable(mean: number, sd: number, even: () => number, normal: () => number): number[] {
  const size = (mean * (1 - mean)) / (sd * sd) - 1;
  const gamma = (shape: number): number => {
    if (shape < 1) return gamma(shape + 1) * even() ** (1 / shape);
    const d = shape - 1 / 3;
    for (;;) {
      const x = normal();
      const v = (1 + x / Math.sqrt(9 * d)) ** 3;
      if (v > 0 && Math.log(even()) < 0.5 * x * x + d - d * v + d * Math.log(v)) return d * v;
    }
  };
  return Array.from({ length: 50_000 }, () => {
    const [x, y] = [gamma(mean * size), gamma((1 - mean) * size)];
    return x / (x + y);
  }).sort((x, y) => x - y);
}
/** Distribution function of the normal (Zelen and Severo 1964, five terms, textbook). */
function below(z: number): number {
  const t = 1 / (1 + 0.2316419 * Math.abs(z));
  const tail =
    (Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI)) *
    t *
    (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  return z > 0 ? 1 - tail : tail;
}

function metIn(book: OrderBook, plan: SeasonPlan, seasons: number, seed: number): Map<string, number> {
  const even = generator(seed);
  const normal = (): number => Math.sqrt(-2 * Math.log(1 - even())) * Math.cos(2 * Math.PI * even());
  const a = assumed(book.assumptions);
  const runs = (m: number): number => 0.3 * Math.sqrt(m * (1 - m));
  const season = (m: number): number => 0.2 * Math.sqrt(m * (1 - m));
  const tables = SHARES.map((key) =>
    betaTable(a[key], Math.hypot(runs(a[key]), season(a[key])), even, normal),
  );
  const met = new Map(plan.orders.map(({ order }) => [order.name, 0]));
  const due = [...plan.orders].sort((x, y) => x.order.due - y.order.due);
  const vat = new Map(book.vats.map(({ name, litres }) => [name, litres]));
  const litres = (batch: string, stage: string): number =>
    plan.stays
      .filter((s) => s.batch === batch && s.stage === stage)
      .reduce((sum, s) => sum + (vat.get(s.vat) ?? 0), 0);
  for (let i = 0; i < seasons; i++) {
    const common = normal();
    const shared = (key: keyof typeof TOGETHER): number =>
      Math.sqrt(TOGETHER[key]) * common + Math.sqrt(1 - TOGETHER[key]) * normal();
    const z = SHARES.map(shared);
    const bright = Math.exp(0.2 * shared('eggs') - 0.02);
    const there = new Map(
      plan.batches.map((b) => {
        const [hatch = 0, yolk = 0, fry = 0, nursery = 0] = tables.map((table, k) => {
          const total = Math.hypot(0.3, 0.2);
          const p = below((0.2 / total) * (z[k] ?? 0) + (0.3 / total) * normal());
          return table[Math.min(table.length - 1, Math.floor(p * table.length))] ?? 0;
        });
        let eggs = 0;
        for (const { kilograms } of b.pairs)
          if (even() < a.ovulating)
            eggs += kilograms * 1000 * a.eggShare * a.eggsPerGram * Math.exp(0.3 * normal() - 0.045);
        eggs = Math.min(
          eggs * bright * Math.exp(0.15 * normal() - 0.01125),
          litres(b.name, 'eggs') * a.eggsPerLitre,
        );
        const larvae =
          even() < book.lost ? 0 : Math.min(eggs * hatch * yolk, litres(b.name, 'fry') * a.larvaePerLitre);
        return [
          b.name,
          { larvae, nursing: (litres(b.name, 'nursing') * a.nurseryPerLitre) / fry, fry, nursery },
        ];
      }),
    );
    for (const { order, batches } of due) {
      let need = order.number;
      for (const name of batches) {
        const b = there.get(name);
        if (!b) continue;
        const isNursed = order.product === 'fingerlings';
        const each = b.fry * a.gradingShare * (isNursed ? b.nursery : 1);
        const larvae = Math.min(b.larvae, isNursed ? b.nursing : Infinity, need / each);
        b.larvae -= larvae;
        if (isNursed) b.nursing -= larvae;
        need -= larvae * each;
      }
      if (need < 0.5) met.set(order.name, (met.get(order.name) ?? 0) + 1);
    }
  }
  return met;
}

test('orders called 80 % (76 to 84) are met in 76 to 84 % of seasons that another simulation draws', () => {
  const rich = {
    females: Array.from({ length: 60 }, (_, i) => ({ tag: `F${i}`, kilograms: 0.9 + 0.05 * (i % 10) })),
    males: Array.from({ length: 60 }, (_, i) => ({ tag: `M${i}` })),
    vats: Array.from({ length: 24 }, (_, i) => ({ name: `v${i}`, litres: 1000 })),
  };
  const rows: { called: number; met: number }[] = [];
  const SEASONS = 4000;
  for (let seed = 0; seed < 12; seed++) {
    const orders = Array.from({ length: 5 }, (_, i) => ({
      name: `o${i}`,
      product: (i + seed) % 2 === 0 ? 'fry' : 'fingerlings',
      number: 4000 + 3700 * ((seed * 5 + i * 7) % 9),
      due: `2027-0${4 + i}-${10 + seed}`,
    }));
    const book = bookOf({ ...rich, orders, certainty: 0.8 });
    const plan = planBatches(book, { draws: 4000, explains: false });
    const met = metIn(book, plan, SEASONS, 100 + seed);
    for (const { order, certainty } of plan.orders)
      rows.push({ called: certainty, met: (met.get(order.name) ?? 0) / SEASONS });
  }
  const eighty = rows.filter(({ called }) => called >= 0.76 && called <= 0.84);
  const mean = eighty.reduce((sum, { met }) => sum + met, 0) / eighty.length;
  const worst = Math.max(...rows.map(({ called, met }) => Math.abs(called - met)));
  console.log(
    `${eighty.length} of ${rows.length} orders called 80 %: met in ${mean.toFixed(3)}; worst difference ${worst.toFixed(3)}`,
  );
  quote(
    'season.called80',
    percent(mean),
    'Simulated seasons that brought the whole of an order called 80 % sure',
  );
  expect(eighty.length).toBeGreaterThan(10);
  expect(mean).toBeGreaterThan(0.78);
  expect(mean).toBeLessThan(0.82);
  for (const { called, met } of rows) expect(Math.abs(called - met)).toBeLessThan(0.04);
}, 900_000);
