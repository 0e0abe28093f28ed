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
  readonly caution: 'SODA_ASH' | 'LIME' | 'ACID' | 'CAUSTIC' | 'NONE';
  /** Grams of the pure product a litre of water takes up near 20 °C (handbook values, from memory). */
  readonly soluble: number;
}

const material = (
  molarMass: number,
  equivalents: number,
  carbon: number,
  ions: Partial<Material>,
  caution: Material['caution'],
  soluble = Infinity,
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
  soluble,
  ...ions,
});

export const MATERIALS = {
  'soda ash': material(105.988, 2, 1, { sodium: 2 }, 'SODA_ASH', 215),
  'soda ash monohydrate': material(124.003, 2, 1, { sodium: 2 }, 'SODA_ASH', 250),
  'washing soda': material(286.141, 2, 1, { sodium: 2 }, 'SODA_ASH', 580),
  'baking soda': material(84.007, 1, 1, { sodium: 1 }, 'NONE', 96),
  'agricultural lime': material(100.087, 2, 1, { calcium: 1, stopsAtCalcite: true }, 'NONE'),
  'hydrated lime': material(74.093, 2, 0, { calcium: 1 }, 'LIME', 1.65),
  quicklime: material(56.077, 2, 0, { calcium: 1 }, 'LIME', 1.25),
  'caustic soda': material(39.997, 1, 0, { sodium: 1 }, 'CAUSTIC', 1000),
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

/** Limes and caustic soda burn gills before they mix: never into water that holds fish or eggs. */
export const harmsFish = (name: MaterialName): boolean =>
  MATERIALS[name].caution === 'LIME' || MATERIALS[name].caution === 'CAUSTIC';

/** Grams of a product that dissolve in litres of water; Infinity where no dose can pass it. */
export const solubleGrams = (name: MaterialName, volume: number, purity: number): number =>
  (MATERIALS[name].soluble * volume) / purity;

/** Keys of the cautions that go with one product, and with fish in the water. */
export const cautionKeys = (name: MaterialName, isStocked: boolean): readonly string[] => [
  ...(MATERIALS[name].caution === 'NONE' ? [] : [MATERIALS[name].caution]),
  ...(isStocked ? ['AMMONIA'] : []),
];
