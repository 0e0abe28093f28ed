import type { SheetFunction } from '../../functions/define';
import { cashWeeksFunction, profitSwings } from './records/cash';
import { chainEnd, chainStart } from './records/chain';
import {
  breakEvenNumberFunction,
  breakEvenPriceFunction,
  costPerFishFunction,
  marginShare,
  profitRatiosFunction,
} from './records/money';
import { femalesForCertainty, orderCertainty, seasonOdds } from './records/odds';

export const moneyFunctions: readonly SheetFunction[] = [
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
