/**
 * What people put into water to move its pH. Molar masses from standard atomic weights; `equivalents` of
 * alkalinity and `carbon` per mole; what else comes along, per mole. Grams of product = moles × molarMass /
 * purity.
 */
export interface Material {
  readonly molarMass: number;
  readonly equivalents: number;
  readonly carbon: number;
  readonly sodium: number;
  readonly calcium: number;
  readonly chloride: number;
  readonly sulfate: number;
  /** Dissolves only until the water is saturated with calcite. */
  readonly stopsAtCalcite: boolean;
  readonly caution: 'SODA_ASH' | 'LIME' | 'ACID' | 'NONE';
}

const material = (
  molarMass: number,
  equivalents: number,
  carbon: number,
  ions: Partial<Material>,
  caution: Material['caution'],
): Material => ({
  molarMass,
  equivalents,
  carbon,
  sodium: 0,
  calcium: 0,
  chloride: 0,
  sulfate: 0,
  stopsAtCalcite: false,
  caution,
  ...ions,
});

export const MATERIALS = {
  'soda ash': material(105.988, 2, 1, { sodium: 2 }, 'SODA_ASH'),
  'soda ash monohydrate': material(124.003, 2, 1, { sodium: 2 }, 'SODA_ASH'),
  'washing soda': material(286.141, 2, 1, { sodium: 2 }, 'SODA_ASH'),
  'baking soda': material(84.007, 1, 1, { sodium: 1 }, 'NONE'),
  'agricultural lime': material(100.087, 2, 1, { calcium: 1, stopsAtCalcite: true }, 'NONE'),
  'hydrated lime': material(74.093, 2, 0, { calcium: 1 }, 'LIME'),
  quicklime: material(56.077, 2, 0, { calcium: 1 }, 'LIME'),
  'caustic soda': material(39.997, 1, 0, { sodium: 1 }, 'ACID'),
  'hydrochloric acid': material(36.461, -1, 0, { chloride: 1 }, 'ACID'),
  'sulfuric acid': material(98.079, -2, 0, { sulfate: 1 }, 'ACID'),
  'carbon dioxide': material(44.01, 0, 1, {}, 'NONE'),
} as const satisfies Readonly<Record<string, Material>>;

export type MaterialName = keyof typeof MATERIALS;
export const MATERIAL_NAMES = Object.keys(MATERIALS) as readonly MaterialName[];

/** Raises pH, or lowers it. */
export const raisesPH = ({ equivalents }: Material): boolean => equivalents > 0;

/** Alkalinity one gram of the product brings, meq. */
export const meqPerGram = ({ molarMass, equivalents }: Material, purity: number): number =>
  (1000 * equivalents * purity) / molarMass;
