import type { CellError } from '../../../base/values';
import { refuse } from '../../../base/values';
import type { MaterialName } from '../carbonate/materials';
import { harmsFish, solubleGrams } from '../carbonate/materials';

/** What no function gives, whatever the numbers say. */

/** Limes and caustic soda burn gills before they mix. */
export const neverWithFish = (material: MaterialName): CellError =>
  refuse(
    `material: never put ${material} into water that holds fish or eggs. Use baking soda or soda ash, in steps of 0.3 pH.`,
  );

export interface Use {
  readonly material: MaterialName;
  readonly grams: number;
  readonly volume: number;
  readonly purity: number;
  readonly stocked?: boolean;
}

/** Why a product cannot be used like this, or nothing. */
export const misuse = ({ material, grams, volume, purity, stocked = false }: Use): CellError | undefined => {
  if (stocked && harmsFish(material)) return neverWithFish(material);
  const most = solubleGrams(material, volume, purity);
  return grams > most
    ? refuse(
        `dose: ${Number(grams.toPrecision(3))} g of ${material} is more than dissolves in ${volume} L of water (about ${Number(most.toPrecision(2))} g). Check grams, litres and product.`,
      )
    : undefined;
};
