/**
 * Dry Artemia cysts to hatch for one day of live food.
 *
 * cysts g = larvae × nauplii per larva / (nauplii per gram × share of the nauplii that is caught at harvest).
 * Source: DEFINITION (nauplii per gram: ASEM13). Example: 50,000 larvae × 100 / 230,600 → 21.68 g; at 80 %
 * harvest 27.1 g.
 */
export const cystsNeeded = (
  larvae: number,
  naupliiPerLarva: number,
  naupliiPerGram: number,
  harvest: number,
): number => (larvae * naupliiPerLarva) / (naupliiPerGram * harvest);
