import { within } from '../../base/steps';
import { planBatchesSteps } from '../batches';
import type { OrderBook } from '../book/orderBook';
import type { SeasonPlan } from '../types';

/** As many as may be stripped of one kind: a wish beyond it is no longer one run. */
const MORE = 30;
const DRAWS = 800;
const NINE_IN_TEN = 0.9;

const femalesIn = ({ batches }: SeasonPlan): number =>
  batches.reduce((sum, { pairs }) => sum + pairs.length, 0);

/**
 * Females to inject so that nine runs in ten bring the whole order, were there enough of them and of males;
 * undefined where no number makes it so sure (the water, the hours, lost runs).
 */
export function* femalesForNineSteps(
  book: OrderBook,
  plan: SeasonPlan,
): Generator<number, number | undefined> {
  if (plan.canBeMet && (plan.orders[0]?.certainty ?? 0) >= NINE_IN_TEN) return femalesIn(plan);
  const kilograms = book.females[0]?.kilograms ?? 1;
  const spare = Array.from({ length: MORE }, (_, i) => i);
  const ample: OrderBook = {
    ...book,
    certainty: NINE_IN_TEN,
    females: [...book.females, ...spare.map((i) => ({ tag: `more ${i}`, kilograms }))],
    males: [...book.males, ...spare.map((i) => ({ tag: `other ${i}` }))],
    staff: { ...book.staff, femalesPerDay: Math.max(book.staff.femalesPerDay, MORE) },
  };
  const sure = yield* within(planBatchesSteps(ample, { draws: DRAWS, explains: false }), 0, 1);
  const near = 0.02;
  return (sure.orders[0]?.certainty ?? 0) >= NINE_IN_TEN - near ? femalesIn(sure) : undefined;
}
