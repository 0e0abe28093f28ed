import { rngOf } from '../../../maths/rng';
import type { Assumed } from '../../../families/assumptions';
import { shareSpread } from '../../../families/money/odds/shareSpread';
import { quantileOf } from '../../../maths/quantiles';
import type { OrderBook } from '../../book/orderBook';
import { MOST_CERTAIN } from '../../types';
import { eggSpreadOf, seasonShareOf, shareSpreadOf } from '../../figures/spreads';

/**
 * How much less than expected one may promise of a batch at the certainty wanted: shares of the expected
 * number, by product and number of females.
 */
export interface Safety {
  /** Share of the expected fish that a batch of n females brings at least; n from 1, place 0 unused. */
  readonly females: Readonly<Record<ProductKey, readonly number[]>>;
  /** Share of the expected that larvae at first food, and weaned fry, bring at least. */
  readonly feeding: Readonly<Record<ProductKey, number>>;
  readonly nursing: number;
}
export type ProductKey = 'fry' | 'fingerlings';

/**
 * Runs that are lost altogether bound how sure any batch can be: who asks for more is planned for as surely as one may
 * ask to be of the runs that are not lost, and not for nothing at all.
 */
const poorOf = ({ certainty, lost }: OrderBook): number =>
  Math.max(1 - certainty, lost + (1 - lost) * (1 - MOST_CERTAIN));

/** More females than this in one batch have the share of this many. */
const MOST = 40;
const DRAWS = 1200;
const SEED = 77;

export const MEAN: Safety = {
  females: { fry: [], fingerlings: [] },
  feeding: { fry: 1, fingerlings: 1 },
  nursing: 1,
};
/** Share for n females; a batch planned on the mean has 1. */
export const shareFor = (safety: Safety, product: ProductKey, n: number): number => {
  const list = safety.females[product];
  return list.length === 0 ? 1 : (list[Math.min(n, list.length - 1)] ?? 0);
};

const known = new Map<string, Safety>();

/** Drawn batches: for each the share of what is expected, of its stages alone and with 1, 2, … females. */
function draw(book: OrderBook, a: Assumed): Safety {
  const rng = rngOf(SEED);
  const eggs = eggSpreadOf(book);
  const stages = (['hatch', 'yolkSurvival', 'frySurvival', 'nurserySurvival'] as const).map((key) => {
    const { mean, runs, season } = shareSpreadOf(book, a, key);
    const total = Math.hypot(runs, season);
    return {
      at: shareSpread(mean, total),
      mean,
      shared: total > 0 ? season / total : 0,
      own: total > 0 ? runs / total : 0,
      key,
    };
  });
  const bell = (deviation: number, z: number): number => Math.exp(deviation * (z - deviation / 2));
  const lists = { fry: [] as Float64Array[], fingerlings: [] as Float64Array[] };
  for (let n = 0; n <= MOST; n++) {
    lists.fry.push(new Float64Array(DRAWS));
    lists.fingerlings.push(new Float64Array(DRAWS));
  }
  const [feedFry, feedBig, nursing] = [
    new Float64Array(DRAWS),
    new Float64Array(DRAWS),
    new Float64Array(DRAWS),
  ];
  for (let d = 0; d < DRAWS; d++) {
    const common = rng.normal();
    const shares = stages.map(({ at, mean, shared, own, key }) => {
      const z = seasonShareOf(key, common, rng.normal());
      return at(shared * z + own * rng.normal()) / mean;
    });
    const [hatch = 1, yolk = 1, fry = 1, nurse = 1] = shares;
    const seasonEggs = bell(eggs.season, seasonShareOf('eggs', common, rng.normal()));
    const lives = rng.even() < book.lost ? 0 : 1;
    const batch = lives * seasonEggs * bell(eggs.runs, rng.normal()) * hatch * yolk * fry;
    feedFry[d] = fry;
    feedBig[d] = fry * nurse;
    nursing[d] = nurse;
    let sum = 0;
    for (let n = 1; n <= MOST; n++) {
      if (a.ovulating >= 1 || rng.even() < a.ovulating) sum += bell(eggs.females, rng.normal());
      const share = (batch * sum) / (n * a.ovulating);
      (lists.fry[n] ?? feedFry)[d] = share;
      (lists.fingerlings[n] ?? feedBig)[d] = share * nurse;
    }
  }
  const at = (list: Float64Array, poor = poorOf(book)): number => Math.min(1, quantileOf(list.sort(), poor));
  // A vat that is too small spoils an order on top of eggs that are too few: water is given a rarer miss.
  const rare = (1 - book.certainty) / 2;
  // More females never make a batch less sure: dust of the draws is smoothed out.
  const rising = (all: readonly Float64Array[]): number[] => {
    const shares = all.map((list, n) => (n === 0 ? 0 : at(list)));
    shares.forEach((share, n) => (shares[n] = Math.max(share, shares[n - 1] ?? 0)));
    return shares;
  };
  return {
    females: { fry: rising(lists.fry), fingerlings: rising(lists.fingerlings) },
    feeding: { fry: at(feedFry, rare), fingerlings: at(feedBig, rare) },
    nursing: at(nursing, rare),
  };
}

export function safetyOf(book: OrderBook, a: Assumed): Safety {
  const key = JSON.stringify([
    book.certainty,
    book.lost,
    book.spreads,
    a.ovulating,
    a.hatch,
    a.yolkSurvival,
    a.frySurvival,
    a.nurserySurvival,
  ]);
  let safety = known.get(key);
  if (!safety) {
    if (known.size > 16) known.clear();
    known.set(key, (safety = draw(book, a)));
  }
  return safety;
}
