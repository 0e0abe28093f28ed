/**
 * Break-even of a run or a season.
 *
 * price = (fixed/fish + variable per fish)/(1 − margin); number = (fixed + profit)/(price − variable per
 * fish). In: money, fish, share of sales. Out: money per fish, fish (not rounded). NaN where each fish sold
 * loses money. Source: DEFINITION; ALAWODE. Example: 104,705 fixed and 237,919.90 for 15,451.6 fish → 22.174
 * a fish.
 */
export const breakEvenPrice = (fixed: number, variablePerFish: number, fish: number, margin = 0): number =>
  (fixed / fish + variablePerFish) / (1 - margin);

export const breakEvenNumber = (fixed: number, variablePerFish: number, price: number, profit = 0): number =>
  price > variablePerFish ? (fixed + profit) / (price - variablePerFish) : NaN;

export const costPerFish = (costs: readonly number[], fish: number): number =>
  costs.reduce((sum, c) => sum + c, 0) / fish;
