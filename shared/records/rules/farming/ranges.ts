import { TOLERANCES } from '../../../families/timing/kernels/tolerance';
import { PLAUSIBLE } from '../../columns/cells/plausible';
import type { FieldName, NumericField } from '../../fields';
import { fieldSpec, NUMERIC_FIELDS } from '../../fields';
import type { RecordTable } from '../../table';
import type { RowRule, RuleFinding, RuleVerdict } from '../rule';
import { capitalNoun, plain, shown } from '../show';
import { isBeyond } from '../figures/statistics';

const LIMITED = NUMERIC_FIELDS.filter((name) => PLAUSIBLE[name]?.possible !== undefined);
const SHARES = LIMITED.filter((name) => fieldSpec(name).quantity.unit === 'share' && name !== 'eggYield');
const OTHERS = LIMITED.filter((name) => !SHARES.includes(name));
const [OTHERS_SET, SHARES_SET] = [new Set(OTHERS), new Set(SHARES)];

/** Several females are often weighed together. */
const eachOf = (said: RuleFinding, field: NumericField): number =>
  field === 'femaleWeight' && said.num('females') > 1
    ? said.num(field) / said.num('females')
    : said.num(field);

const outside = (said: RuleFinding, fields: ReadonlySet<NumericField>): RuleVerdict[] => {
  const found: RuleVerdict[] = [];
  for (const field of said.given) {
    if (!fields.has(field)) continue;
    const value = eachOf(said, field);
    const limit = PLAUSIBLE[field];
    if (!limit?.possible || Number.isNaN(value) || (value >= limit.possible[0] && value <= limit.possible[1]))
      continue;
    const [low, high] = limit.possible;
    found.push({
      field,
      seen: shown(field, value),
      expected: `${shown(field, low)} to ${shown(field, high)}`,
      sentence: `${capitalNoun(field)} of ${shown(field, value)} cannot be right: ${limit.because ?? ''}.`,
    });
  }
  return found;
};

/** Some value of the table lies outside. Several females weighed together are each in question. */
const mayBeOutside =
  (fields: readonly NumericField[]) =>
  (numbers: RecordTable['numbers']): boolean =>
    fields.some((field) => {
      const [low, high] = PLAUSIBLE[field]?.possible ?? [-Infinity, Infinity];
      if (field === 'femaleWeight' && numbers.females) return true;
      const list = numbers[field];
      return list !== undefined && isBeyond(list, low, high);
    });

/**
 * Counts per gram of African catfish ran from 435 to 1,176 (DADEBO00); a little is left on both sides for
 * other scales and drops of water.
 */
const PER_GRAM = [400, 1250] as const;
/**
 * Stripped eggs weighed 14.3 % of the body in the best season (GRAAF95); twice that is not a spawning of
 * these fish.
 */
const YIELD_MOST = 0.3;

const eggVerdicts = (said: RuleFinding): RuleVerdict[] => {
  const perGram = said.num('eggsPerGram');
  const isOutside = perGram < PER_GRAM[0] || perGram > PER_GRAM[1];
  return isOutside && perGram >= 200 && perGram <= 2000
    ? [
        {
          field: 'eggsPerGram',
          seen: shown('eggsPerGram', perGram),
          expected: '435 to 1,176 per g',
          sentence: `${plain(perGram)} eggs per gram is outside what was counted in African catfish, 435 to 1,176.`,
        },
      ]
    : [];
};

const yieldVerdict = (said: RuleFinding): RuleVerdict | undefined => {
  const [egg, female] = [said.num('eggWeight'), said.num('femaleWeight')];
  const share = egg / (1000 * female);
  return share > YIELD_MOST && Number.isFinite(share)
    ? {
        field: 'eggWeight',
        with: ['femaleWeight'],
        seen: shown('eggWeight', egg),
        expected: `up to about ${shown('eggWeight', Math.round(1000 * female * 0.2))}`,
        severity: share > 0.6 ? 'impossible' : 'unlikely',
        sentence: `${plain(egg)} g of eggs from a female of ${plain(female)} kg is ${plain(100 * share, 3)} % of her body; 14 % is a good season.`,
      }
    : undefined;
};

/**
 * A ready-made solution is given to females at 0.25 to 0.80 mL/kg (READYMADE); other preparations are mixed
 * to other volumes.
 */
const READY_MADE = [0.2, 1] as const;
const ANY = [0.05, 4] as const;
const perKilogram = (said: RuleFinding): RuleVerdict | undefined => {
  const [volume, weight] = [said.num('hormoneVolume'), said.num('femaleWeight')];
  const stated = said.num('hormoneDose');
  const dose = Number.isNaN(stated) ? volume / weight : stated;
  const [low, high] = /ready|gnrh|domperidone/i.test(said.text('preparation')) ? READY_MADE : ANY;
  if (!Number.isFinite(dose) || (dose >= low && dose <= high)) return undefined;
  const isStated = !Number.isNaN(stated);
  return {
    field: isStated ? 'hormoneDose' : 'hormoneVolume',
    ...(isStated ? {} : { with: ['femaleWeight'] as const }),
    seen: `${plain(dose, 3)} mL/kg`,
    expected: `${low} to ${high} mL/kg`,
    sentence: `${plain(dose, 3)} mL of hormone per kg is outside what is given, ${low} to ${high} mL/kg.`,
  };
};

const [eggLimits] = TOLERANCES.filter(
  ({ life, species }) => life === 'eggs' && species.startsWith('Clarias'),
);
const lethal = (said: RuleFinding): RuleVerdict | undefined => {
  const water = said.num('incubationTemperature');
  if (
    !eggLimits ||
    !(water >= 10 && water <= 40) ||
    (water >= eggLimits.lethal[0] && water <= eggLimits.lethal[1])
  )
    return undefined;
  const hatched = Math.max(said.num('hatched') || 0, said.num('hatchShare') || 0);
  return hatched > 0
    ? {
        field: 'incubationTemperature',
        with: ['hatched', 'hatchShare'],
        seen: shown('incubationTemperature', water),
        expected: `${eggLimits.lethal[0]} to ${eggLimits.lethal[1]} °C`,
        sentence: `Eggs hatched at ${plain(water, 3)} °C, which kills them (${eggLimits.says}: alive from ${eggLimits.lethal[0]} to ${eggLimits.lethal[1]} °C).`,
      }
    : undefined;
};

const each = (fields: readonly FieldName[]): FieldName[][] => fields.map((name) => [name]);

export const rangeRules: readonly RowRule[] = [
  {
    id: 'VALUE.RANGE',
    scope: 'row',
    severity: 'impossible',
    title: 'A value beyond belief',
    needs: each(OTHERS),
    check: (said) => outside(said, OTHERS_SET),
    mayFire: mayBeOutside(OTHERS),
    checks: 'Each value against wide limits that no warm-water hatchery passes.',
    why: 'Such a value is a slip of the pen, a wrong unit or a wrong column.',
    sources: ['PRACTICE', 'PROKES15', 'DADEBO00'],
    examples: [
      { record: { ph: 72 }, says: 'cannot be right', because: '7.2 without its point.' },
      { record: { temperature: 47 }, says: 'do not live', because: 'No fish lives at 47 °C.' },
      { record: { ph: 7.2, temperature: 27, femaleWeight: 1.2 }, because: 'All usual.' },
    ],
  },
  {
    id: 'SHARE.RANGE',
    scope: 'row',
    severity: 'impossible',
    title: 'More than 100 %',
    needs: each(SHARES),
    check: (said) => outside(said, SHARES_SET),
    mayFire: mayBeOutside(SHARES),
    checks: 'Shares below 0 or above 100 %.',
    why: 'A part cannot be more than the whole; often the counts behind it are of two different batches.',
    sources: ['DEFINITION'],
    examples: [
      { record: { hatchShare: 1.12 }, says: '112 %', because: 'More hatched than there were.' },
      { record: { hatchShare: 0.62, survival: 1 }, because: 'Both possible.' },
    ],
  },
  {
    id: 'EGGS.PERGRAM',
    scope: 'row',
    severity: 'unlikely',
    title: 'Eggs per gram out of the ordinary',
    needs: each(['eggsPerGram']),
    check: eggVerdicts,
    checks: 'Eggs per gram against the published counts of African catfish.',
    why: 'Wet eggs, a sample that was weighed with its dish, or a count of the wrong sample.',
    sources: ['DADEBO00', 'AUDU23'],
    examples: [
      { record: { eggsPerGram: 310 }, says: '435 to 1,176', because: 'Below every published count.' },
      { record: { eggsPerGram: 692 }, because: 'One of the published counts.' },
    ],
  },
  {
    id: 'EGGS.YIELD',
    scope: 'row',
    severity: 'unlikely',
    title: 'More eggs than she can hold',
    needs: [['eggWeight', 'femaleWeight']],
    check: yieldVerdict,
    checks: 'Egg weight above 30 % of body weight.',
    why: 'Published stripped eggs weighed 1.3 % of the body in the dry and 14.3 % in the rainy season.',
    sources: ['GRAAF95', 'PRACTICE'],
    examples: [
      { record: { eggWeight: 520, femaleWeight: 1.2 }, says: '43.3 %', because: '520 g from 1.2 kg.' },
      { record: { eggWeight: 170, femaleWeight: 1.2 }, because: '14 % of her.' },
    ],
  },
  {
    id: 'DOSE.PERKG',
    scope: 'row',
    severity: 'unlikely',
    title: 'Hormone per kg out of the ordinary',
    needs: [['hormoneDose'], ['hormoneVolume', 'femaleWeight']],
    check: perKilogram,
    checks: 'Volume per kg: 0.2 to 1 mL/kg for a ready-made solution, 0.05 to 4 mL/kg for anything else.',
    why: 'A ready-made solution is given to females at 0.25 to 0.80 mL/kg.',
    sources: ['READYMADE', 'PRACTICE'],
    examples: [
      { record: { femaleWeight: 1, hormoneVolume: 5 }, says: '5 mL', because: '0.5 mL without its point.' },
      {
        record: { femaleWeight: 1, hormoneVolume: 1.4, preparation: 'ready-made solution' },
        says: '1.4 mL',
        because: 'Above what is given of a ready-made solution.',
      },
      { record: { femaleWeight: 1, hormoneVolume: 0.5 }, because: 'The usual dose.' },
    ],
  },
  {
    id: 'TEMPERATURE.LETHAL',
    scope: 'row',
    severity: 'impossible',
    title: 'Hatched where eggs die',
    needs: [
      ['incubationTemperature', 'hatched'],
      ['incubationTemperature', 'hatchShare'],
    ],
    check: lethal,
    checks: 'A hatch at an incubation temperature that is published as deadly for African catfish eggs.',
    why: 'Either the reading is wrong or the eggs were not in that water.',
    sources: ['PROKES15'],
    examples: [
      {
        record: { incubationTemperature: 37, hatchShare: 0.6 },
        says: 'kills them',
        because: 'Above 35.1 °C.',
      },
      { record: { incubationTemperature: 27, hatchShare: 0.6 }, because: 'Near the best temperature.' },
    ],
  },
];
