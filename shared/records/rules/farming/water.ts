import { constantsAt, AIR_CO2_PPM } from '../../../families/water/carbonate/constants';
import { doseTo, afterDose } from '../../../families/water/carbonate/dose';
import type { MaterialName } from '../../../families/water/carbonate/materials';
import { MATERIALS } from '../../../families/water/carbonate/materials';
import {
  airedWater,
  LOWEST_PH_FOR_CARBON,
  waterFromAlkalinity,
  waterFromCO2,
} from '../../../families/water/carbonate/readings';
import type { Water } from '../../../families/water/carbonate/carbonate';
import type { RowRule, RuleFinding, RuleVerdict } from '../rule';
import { plain } from '../show';

/** A meter that was read before it settled is off by this (common practice, no source). */
const METER = 0.3;
/** Airing alone moves pH by this much and more; smaller rises prove nothing. */
const LEAST_RISE = 0.8;
/** mmol/L: about 60 mg/L, as much carbon dioxide as a borehole brings. */
const RICH_CO2 = 60 / 44.01;
const TEMPERATURE = 26;

/** In place of a product that no column and no heading names. */
export const UNSAID = 'not said';
const materialOf = (text: string): MaterialName => {
  const word = text.toLowerCase();
  if (/baking|bicarb|nahco/.test(word)) return 'baking soda';
  if (/hydrated|slaked|ca\(oh\)/.test(word)) return 'hydrated lime';
  if (/quick|burnt|cao\b/.test(word)) return 'quicklime';
  if (/agri|limestone|caco3|chalk/.test(word)) return 'agricultural lime';
  return /hcl|hydrochl|muriatic/.test(word)
    ? 'hydrochloric acid'
    : /sul(f|ph)uric/.test(word)
      ? 'sulfuric acid'
      : 'soda ash';
};

const remembered = new Map<string, number>();
const MOST_REMEMBERED = 20_000;
const once = (key: string, compute: () => number): number => {
  let value = remembered.get(key);
  if (value === undefined) {
    if (remembered.size > MOST_REMEMBERED) remembered.clear();
    remembered.set(key, (value = compute()));
  }
  return value;
};

const k = constantsAt(TEMPERATURE);
const back = { temperature: TEMPERATURE, calcium: 0, ionicStrength: 0 };

/**
 * Least mmol/L that could have made the rise: in water with no more carbon dioxide than the air gives, and
 * before any more comes in.
 */
const leastDose = (material: MaterialName, ph: number, after: number): number =>
  once(`least ${material} ${ph} ${after}`, () => {
    const got = doseTo(k, airedWater(k, back, ph, AIR_CO2_PPM), MATERIALS[material], after, 'closed');
    return typeof got === 'number' ? got : 0;
  });
/** pH after a dose in water as rich in carbon dioxide as water comes: no water moves less. */
const leastRise = (material: MaterialName, ph: number, moles: number): number =>
  once(`rise ${material} ${ph} ${moles.toPrecision(2)}`, () => {
    const state = afterDose(
      k,
      waterFromCO2(k, back, ph, RICH_CO2),
      MATERIALS[material],
      Number(moles.toPrecision(2)),
      'closed',
    ).state;
    return state.ph;
  });
/** pH after a dose in water of a known alkalinity, freshly mixed and aired. */
const known = (water: Water, material: MaterialName, moles: number): readonly [number, number] => {
  const fresh = afterDose(k, water, MATERIALS[material], moles, 'closed').state.ph;
  const aired = afterDose(k, water, MATERIALS[material], moles, AIR_CO2_PPM * 1e-6).state.ph;
  return [Math.min(fresh, aired), Math.max(fresh, aired)];
};

const down = (x: number): number => Math.floor(x * 5) / 5;
const up = (x: number): number => Math.ceil(x * 5) / 5;

function phVerdict(said: RuleFinding): RuleVerdict | undefined {
  const [ph, after, dose, volume] = [
    said.num('ph'),
    said.num('phAfter'),
    said.num('materialDose'),
    said.num('volume'),
  ];
  if (!(ph >= 3 && ph <= 11 && after >= 3 && after <= 12 && dose > 0 && volume > 0)) return undefined;
  const name = materialOf(said.text('material'));
  const material = MATERIALS[name];
  const raises = material.equivalents > 0;
  const base = { field: 'phAfter', with: ['ph', 'materialDose', 'volume'], seen: plain(after, 3) } as const;
  if ((after - ph) * (raises ? 1 : -1) < -METER)
    return {
      ...base,
      expected: raises ? `above ${plain(ph, 3)}` : `below ${plain(ph, 3)}`,
      sentence: `${name} ${raises ? 'raises' : 'lowers'} pH, yet it went from ${plain(ph, 3)} to ${plain(after, 3)}.`,
    };
  const moles = (1000 * dose) / (material.molarMass * volume);
  const alkalinity = said.num('alkalinity');
  if (alkalinity > 0 && ph >= LOWEST_PH_FOR_CARBON)
    return byAlkalinity(base, name, ph, after, alkalinity, moles);
  // Where nobody says what was given, only too little of the strongest is sure.
  const isUnsaid = said.text('material') === UNSAID;
  return raises ? byBounds(base, name, ph, after, moles, isUnsaid) : undefined;
}

type Base = Pick<RuleVerdict, 'field' | 'with' | 'seen'>;

function byAlkalinity(
  base: Base,
  name: MaterialName,
  ph: number,
  after: number,
  alkalinity: number,
  moles: number,
): RuleVerdict | undefined {
  const water = waterFromAlkalinity(k, back, ph, alkalinity);
  if (typeof water === 'string') return undefined;
  const [low, high] = known(water, name, moles);
  if (after >= low - 2 * METER && after <= high + 2 * METER) return undefined;
  return {
    ...base,
    expected: `${plain(low, 3)} to ${plain(high, 3)}`,
    sentence: `That dose of ${name} in water of ${plain(alkalinity, 3)} meq/L cannot give pH ${plain(after, 3)}: ${plain(low, 3)} freshly mixed or aired to ${plain(high, 3)} would follow.`,
  };
}

function byBounds(
  base: Base,
  name: MaterialName,
  ph: number,
  after: number,
  moles: number,
  isUnsaid: boolean,
): RuleVerdict | undefined {
  // Rounded so that every bound errs on the side of believing the record.
  const least = leastDose(name, up(ph), down(after - METER));
  if (after - ph > LEAST_RISE && moles < 0.4 * least)
    return {
      ...base,
      expected: `a rise of less than ${plain(after - ph, 2)}`,
      sentence: `So little ${name} cannot lift pH from ${plain(ph, 3)} to ${plain(after, 3)}: even the softest water needs ${plain(least / moles, 2)} times as much. Volume, dose or a reading is wrong.`,
    };
  if (isUnsaid) return undefined;
  const rich = leastRise(name, down(ph), moles);
  return after < rich - 1.5 * METER - 0.2
    ? {
        ...base,
        expected: `${plain(rich, 3)} or more`,
        sentence: `So much ${name} must lift pH from ${plain(ph, 3)} to at least ${plain(rich, 3)}, even in water full of carbon dioxide; ${plain(after, 3)} was read. Volume, dose or a reading is wrong.`,
      }
    : undefined;
}

export const waterRules: readonly RowRule[] = [
  {
    id: 'PH.DOSE',
    scope: 'row',
    severity: 'unlikely',
    title: 'A pH change the dose cannot have made',
    needs: [['ph', 'phAfter', 'materialDose', 'volume']],
    check: phVerdict,
    checks:
      'pH before and after against what the dose can do: in the least and the most ' +
      'buffered water, or in water of the alkalinity given. Soda ash is taken when no ' +
      'product is named.',
    why: 'pH read before it settled, grams for kilograms, or a volume that was guessed.',
    sources: ['PLBU82', 'PHREEQC', 'NOAACO2', 'PRACTICE'],
    examples: [
      {
        record: { ph: 6.2, phAfter: 7.4, materialDose: 0.05, volume: 1000 },
        says: 'So little soda ash',
        because: '0.05 g in 1000 L.',
      },
      {
        record: { ph: 5, phAfter: 6, materialDose: 500, volume: 1000 },
        says: 'So much soda ash',
        because: 'Half a kilogram in 1000 L.',
      },
      {
        record: { ph: 6.5, phAfter: 5.9, materialDose: 10, volume: 1000 },
        says: 'raises pH',
        because: 'A base cannot lower pH.',
      },
      {
        record: { ph: 6, phAfter: 7, materialDose: 14.9, volume: 1000, alkalinity: 0.1 },
        because: 'What the carbonate system gives.',
      },
      {
        record: { ph: 6, phAfter: 9.6, materialDose: 14.9, volume: 1000, alkalinity: 0.1 },
        says: 'cannot give pH 9.6',
        because: '7.0 to 7.9 would follow.',
      },
      {
        record: { ph: 4.6, phAfter: 7, materialDose: 5, volume: 1000 },
        because: 'The field rule, 5 g in 1000 L.',
      },
    ],
  },
];
