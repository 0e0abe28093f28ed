import type { Assumed } from '../../families/assumptions';
import { larvaeLeft } from '../../families/care/kernels/losses';
import { startOfChain } from '../../families/money/kernels/chain';
import type { BookedOrder, VatStageKey } from '../book/orderBook';

/** What an order asks of a run: how long, what survives, how much water per fish counted out. */
export interface Product {
  readonly rearingDays: number;
  readonly nurseryDays: number;
  /** Survivals in order: hatch, yolk, fry, (nursery,) grading. */
  readonly survivals: readonly number[];
  readonly eggsPerFish: number;
  readonly stages: readonly ProductStage[];
  readonly grams: number;
}
export interface ProductStage {
  readonly key: VatStageKey;
  readonly litresPerFish: number;
  readonly fishPerFish: number;
}

const LEAST_DAYS = 7;
const MOST_REARING = 40;
const MOST_NURSERY = 120;
/** Weights may fall a little short of the wish before another day is added. */
const CLOSE = 0.01;

const daysTo = (from: number, to: number, growth: number): number =>
  growth > 0 ? Math.ceil((100 * Math.log(to / from)) / growth - CLOSE) : Infinity;
const weight = (from: number, growth: number, days: number): number => from * Math.exp((growth * days) / 100);

interface Times {
  readonly rearingDays: number;
  readonly nurseryDays: number;
  readonly grams: number;
}

/** Days of rearing and nursing for the weight ordered, or the sentence that says why not. */
function timesFor(order: Pick<BookedOrder, 'product' | 'grams' | 'name'>, a: Assumed): Times | string {
  const weaned = weight(a.startWeight, a.fryGrowth, a.rearingDays);
  if (order.product === 'fry') {
    const rearingDays =
      order.grams === undefined
        ? a.rearingDays
        : Math.max(LEAST_DAYS, daysTo(a.startWeight, order.grams, a.fryGrowth));
    if (rearingDays > MOST_REARING)
      return `${order.name}: fry of ${order.grams ?? 0} g would take ${rearingDays} days from first feed. Order them as fingerlings, or lighter.`;
    return { rearingDays, nurseryDays: 0, grams: weight(a.startWeight, a.fryGrowth, rearingDays) };
  }
  const nurseryDays =
    order.grams === undefined ? a.nurseryDays : daysTo(weaned, order.grams, a.nurseryGrowth);
  if (nurseryDays < 1)
    return `${order.name}: fingerlings of ${order.grams ?? 0} g are no heavier than weaned fry (${weaned.toPrecision(2)} g). Order them as fry.`;
  if (nurseryDays > MOST_NURSERY)
    return `${order.name}: fingerlings of ${order.grams ?? 0} g would take ${nurseryDays} days of nursing. That is growing out, which is not planned here.`;
  return { rearingDays: a.rearingDays, nurseryDays, grams: weight(weaned, a.nurseryGrowth, nurseryDays) };
}

/**
 * Back-chain of an order: everything per fish counted out, by dividing by each survival.
 * Survival of a stage that is longer or shorter than usual is taken at the rate of its later days.
 */
export function productOf(
  order: Pick<BookedOrder, 'product' | 'grams' | 'name'>,
  a: Assumed,
): Product | string {
  const times = timesFor(order, a);
  if (typeof times === 'string') return times;
  const fry = larvaeLeft(a.frySurvival, a.rearingDays, times.rearingDays);
  const nursery =
    order.product === 'fingerlings' ? [a.nurserySurvival ** (times.nurseryDays / a.nurseryDays)] : [];
  const survivals = [a.hatch, a.yolkSurvival, fry, ...nursery, a.gradingShare * a.arriving];
  const before = (step: number): number => startOfChain(1, survivals.slice(step));
  const stage = (key: VatStageKey, step: number, perLitre: number): ProductStage => ({
    key,
    fishPerFish: before(step),
    litresPerFish: before(step) / perLitre,
  });
  return {
    ...times,
    survivals,
    eggsPerFish: before(0),
    stages: [
      stage('eggs', 0, a.eggsPerLitre),
      stage('fry', 2, a.larvaePerLitre),
      ...(order.product === 'fingerlings' ? [stage('nursing', 3, a.nurseryPerLitre)] : []),
    ],
  };
}
