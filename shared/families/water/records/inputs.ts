// Long: records of one kind of question, one after the other; each stands alone.
import { meqFromMgCaCO3 } from '../../../units/convert';
import {
  celsius,
  count,
  meqPerLitre,
  mgPerLitre,
  mgPerLitreCaCO3,
  partsPerMillion,
  share,
} from '../../../units/quantities';
import type { CellError } from '../../../base/values';
import { isError, noSolution, outside, refuse } from '../../../base/values';
import type { Constants } from '../carbonate/constants';
import { AIR_CO2_PPM, constantsAt, pressureOfCO2 } from '../carbonate/constants';
import type { Water } from '../carbonate/carbonate';
import type { Air, Unreachable } from '../carbonate/dose';
import type { Material, MaterialName } from '../carbonate/materials';
import { MATERIAL_NAMES, MATERIALS, raisesPH } from '../carbonate/materials';
import type { Background, DissolvedUnit } from '../carbonate/readings';
import {
  airedWater,
  ionicStrengthFrom,
  LOWEST_PH_FOR_CARBON,
  waterFromAlkalinity,
  waterFromCO2,
} from '../carbonate/readings';
import { choice, num } from '../../../functions/params';

/** The arguments that describe a water and a product, said once for every function that takes them. */

const MMOL_CO2_PER_MG = 1 / 44.01;
export const mmolFromMgCO2 = (mg: number): number => mg * MMOL_CO2_PER_MG;
export const mgFromMmolCO2 = (mmol: number): number => mmol / MMOL_CO2_PER_MG;

export const temperatureParam = num(celsius, {
  min: 0,
  max: 40,
  default: 25,
  doc: 'Water temperature. 25 when left out.',
});
export const alkalinityParam = num(meqPerLitre, {
  min: -5,
  max: 20,
  optional: true,
  doc:
    'Alkalinity from a kit, meq/L (1 meq/L = 50 mg/L CaCO3 = 2.8 dKH). Left out: the ' +
    'water is taken as well aerated, its carbon dioxide that of the air.',
});
export const carbonDioxideParam = num(mgPerLitre, {
  min: 0,
  max: 400,
  optional: true,
  doc:
    'Dissolved carbon dioxide if measured, mg/L. It stands in for the alkalinity, and is ' +
    'needed below pH 5.2.',
});
export const materialParam = choice(MATERIAL_NAMES, {
  default: 'soda ash',
  doc:
    'Product. "washing soda" is the crystals with ten waters, "soda ash monohydrate" old ' +
    'powder that drew water; acids count as pure acid, set purity to the strength of ' +
    'yours.',
  aliases: {
    'sodium carbonate': 'soda ash',
    Na2CO3: 'soda ash',
    'sodium bicarbonate': 'baking soda',
    bicarbonate: 'baking soda',
    NaHCO3: 'baking soda',
    limestone: 'agricultural lime',
    aglime: 'agricultural lime',
    CaCO3: 'agricultural lime',
    'slaked lime': 'hydrated lime',
    'Ca(OH)2': 'hydrated lime',
    'quick lime': 'quicklime',
    'burnt lime': 'quicklime',
    CaO: 'quicklime',
    'sodium hydroxide': 'caustic soda',
    NaOH: 'caustic soda',
    HCl: 'hydrochloric acid',
    'sulphuric acid': 'sulfuric acid',
    H2SO4: 'sulfuric acid',
    CO2: 'carbon dioxide',
    'soda ash decahydrate': 'washing soda',
    'soda crystals': 'washing soda',
  },
});
export const purityParam = num(share, {
  above: 0,
  max: 1,
  default: 1,
  doc:
    'Share of the product that is the pure chemical; for agricultural lime its ' +
    'neutralising value. 1 when left out.',
});
export const modeParam = choice(['closed', 'open'] as const, {
  default: 'closed',
  doc:
    '"closed" is right after mixing, before any gas is lost or taken up; "open" is the ' +
    'end, in balance with the air.',
  aliases: { now: 'closed', mixed: 'closed', aired: 'open', aerated: 'open', air: 'open' },
});
/** As above; left out, the aired end is meant. */
export const airedModeParam = choice(['closed', 'open'] as const, {
  default: 'open',
  doc:
    '"open" is the end, in balance with the air, and what a vat is dosed for; "closed" is right after mixing, ' +
    'before any gas is lost or taken up.',
  aliases: { now: 'closed', mixed: 'closed', aired: 'open', aerated: 'open', air: 'open' },
});
export const hardnessParam = num(mgPerLitreCaCO3, {
  min: 0,
  max: 1000,
  default: 0,
  doc: 'Total hardness; it matters above pH 8. 0 when left out.',
});
export const dissolvedParam = num(count, {
  min: 0,
  max: 20000,
  default: 0,
  doc: 'Dissolved salts, in the unit of the next argument; it matters in salted water.',
});
export const dissolvedInParam = choice(['µS/cm', 'mg/L TDS', 'g/L salt'] as const, {
  default: 'µS/cm',
  doc: 'Unit of dissolved. For salted water give g/L salt.',
  aliases: {
    'us/cm': 'µS/cm',
    'μS/cm': 'µS/cm',
    EC: 'µS/cm',
    conductivity: 'µS/cm',
    TDS: 'mg/L TDS',
    ppm: 'mg/L TDS',
    salt: 'g/L salt',
    'g/L': 'g/L salt',
  },
});
export const airParam = num(partsPerMillion, {
  min: 100,
  max: 20000,
  default: AIR_CO2_PPM,
  doc:
    'Carbon dioxide in the air over the water: about 420 outdoors, 600 to 1000 in a ' +
    'shed, more where badly aired.',
});

export interface Readings {
  readonly ph: number;
  readonly alkalinity: number | undefined;
  readonly carbonDioxide: number | undefined;
  readonly temperature: number;
  readonly hardness: number;
  readonly dissolved: number;
  readonly dissolvedIn: DissolvedUnit;
  readonly airCarbonDioxide: number;
}
export interface Known {
  readonly k: Constants;
  readonly water: Water;
  readonly back: Background;
}

export const SALT_LIMIT = 0.5;
const tooSalty = (): CellError =>
  outside(
    `dissolved: more salt than the method holds for (ionic strength ${SALT_LIMIT}, about 29 g/L of salt).`,
  );

export const backgroundOf = (
  r: Pick<Readings, 'temperature' | 'hardness' | 'dissolved' | 'dissolvedIn'> & { readonly ph?: number },
): Background | CellError => {
  const ionicStrength = ionicStrengthFrom(r.dissolved, r.dissolvedIn, r.ph);
  return ionicStrength > SALT_LIMIT
    ? tooSalty()
    : { temperature: r.temperature, calcium: meqFromMgCaCO3(r.hardness) / 2, ionicStrength };
};

const impossible = (ph: number, alkalinity: number, isTooMuch: boolean): CellError =>
  refuse(
    isTooMuch
      ? `alkalinity: ${alkalinity} meq/L cannot be at pH ${ph}: it would need more carbon dioxide than water holds. Check the unit (50 mg/L CaCO3 is 1 meq/L) and the pH meter.`
      : `alkalinity: ${alkalinity} meq/L cannot be at pH ${ph}: the water would hold less than no carbon. Check both readings, or leave the alkalinity out.`,
  );

/**
 * The water behind the readings: from CO2, from alkalinity, or taken as aired; or the sentence that says why
 * it cannot be.
 */
export const waterBehind = (r: Readings, needsCarbon: boolean): Known | CellError => {
  const back = backgroundOf(r);
  if (isError(back)) return back;
  const k = constantsAt(r.temperature);
  if (r.carbonDioxide !== undefined)
    return { k, back, water: waterFromCO2(k, back, r.ph, mmolFromMgCO2(r.carbonDioxide)) };
  if (r.alkalinity === undefined) return { k, back, water: airedWater(k, back, r.ph, r.airCarbonDioxide) };
  if (needsCarbon && r.ph < LOWEST_PH_FOR_CARBON)
    return outside(
      `ph: below pH ${LOWEST_PH_FOR_CARBON} the carbon dioxide cannot be worked out from pH and alkalinity. Give carbonDioxide, leave the alkalinity out for aerated water, or dose a little and give both readings to BUFFER.NEXT.`,
    );
  const water = waterFromAlkalinity(k, back, r.ph, r.alkalinity);
  return typeof water === 'string'
    ? impossible(r.ph, r.alkalinity, water === 'too much alkalinity')
    : { k, back, water };
};

export const airOf = (mode: 'closed' | 'open', ppm: number): Air =>
  mode === 'closed' ? 'closed' : pressureOfCO2(ppm);

export const materialOf = (name: MaterialName): Material => MATERIALS[name];

/** Grams of product for mmol/L of the pure chemical. */
export const gramsOf = (material: Material, moles: number, volume: number, purity: number): number =>
  (moles * material.molarMass * volume) / 1000 / purity;
export const molesOf = (material: Material, grams: number, volume: number, purity: number): number =>
  (grams * purity * 1000) / material.molarMass / volume;

const to2 = (x: number): string => String(Math.round(x * 100) / 100);

/** Why a target cannot be had, and what to do instead. */
export const unreachable = (
  why: Unreachable,
  name: MaterialName,
  target: number,
  mode: 'closed' | 'open',
): CellError => {
  const isBase = raisesPH(materialOf(name));
  switch (why.reason) {
    case 'already past':
      if (mode === 'closed')
        return refuse(
          isBase
            ? `target: pH ${to2(target)} is below the present pH ${to2(why.ph)}, and ${name} only raises pH. Use an acid or carbon dioxide, or exchange water.`
            : `target: pH ${to2(target)} is above the present pH ${to2(why.ph)}, and ${name} only lowers pH. Use soda ash, baking soda or lime.`,
        );
      return noSolution(
        `Cannot be reached, because in balance with the air this water comes to pH ${to2(why.ph)} by itself, past the target ${to2(target)}. It needs no ${name}: aerate it and measure again.`,
      );
    case 'leaves':
      return noSolution(
        'Cannot be reached, because carbon dioxide leaves again when the water is aired. Use ' +
          'an acid for a lasting fall.',
      );
    case 'saturated':
      return noSolution(
        `Cannot be reached, because ${name} stops dissolving in this water at pH ${to2(why.ph)} (calcite saturation). Use soda ash or baking soda.`,
      );
    case 'never':
      return noSolution(
        name === 'baking soda'
          ? `Cannot be reached, because baking soda draws water towards about pH 8.3 and not to ${to2(target)} here, however much is used. Use soda ash.`
          : `Cannot be reached with ${name}: no sensible dose gives pH ${to2(target)} in this water.`,
      );
  }
};
