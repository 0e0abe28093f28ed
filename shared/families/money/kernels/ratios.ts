export interface ProfitRatios {
  readonly profit: number;
  /** Profit ÷ sales. */
  readonly margin: number;
  /** Profit ÷ costs. */
  readonly onCost: number;
  /** Sales ÷ costs. */
  readonly benefitCost: number;
}

/**
 * Profit under its four names, which publications mix: a "profitability" of 0.54 beside a "benefit-cost
 * ratio" of 1.54 is the same. In: sales and costs. Out: money and ratios. Source: DEFINITION; ALAWODE.
 * Example: 154 and 100 → 54, 0.351, 0.54, 1.54.
 */
export const profitRatios = (sales: number, costs: number): ProfitRatios => ({
  profit: sales - costs,
  margin: (sales - costs) / sales,
  onCost: (sales - costs) / costs,
  benefitCost: sales / costs,
});
