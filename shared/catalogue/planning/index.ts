import type { SheetFunction } from '../define';
import { cashWeeksFunction, profitSwings } from './cash';
import { chainEnd, chainStart } from './chain';
import {
  breakEvenNumberFunction,
  breakEvenPriceFunction,
  costPerFishFunction,
  marginShare,
  profitRatiosFunction,
} from './money';
import { femalesForCertainty, orderCertainty, seasonOdds } from './odds';

export const planningFunctions: readonly SheetFunction[] = [
  chainStart,
  chainEnd,
  seasonOdds,
  orderCertainty,
  femalesForCertainty,
  costPerFishFunction,
  breakEvenPriceFunction,
  breakEvenNumberFunction,
  marginShare,
  profitRatiosFunction,
  cashWeeksFunction,
  profitSwings,
];
