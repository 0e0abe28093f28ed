import { celsiusFromFahrenheit, fahrenheitFromCelsius } from '../../../units/convert';
import type { FieldName, NumericField } from '../../fields';
import { assess, slipVerdict } from '../assess';
import type { SlipKind } from '../explain';
import { fieldsOf, RELATIONS } from './relations';
import type { RecordExample, RowRule, RuleFinding, RuleVerdict } from '../rule';
import { capitalNoun, plain, shown } from '../show';
import { isBeyond } from './statistics';

const NEEDS: readonly (readonly FieldName[])[] = RELATIONS.map(fieldsOf);

interface Words {
  readonly title: string;
  readonly checks: string;
  readonly why: string;
  readonly sources: readonly string[];
  readonly examples: readonly RecordExample[];
}
const slipRule = (id: string, kind: SlipKind, words: Words): RowRule => ({
  id,
  scope: 'row',
  severity: 'impossible',
  needs: NEEDS,
  ...words,
  check: (said) => {
    const faults = assess(said);
    if (faults.length === 0) return undefined;
    return faults.filter(({ slip }) => slip?.kind === kind).flatMap((one) => slipVerdict(one) ?? []);
  },
});

const CONTEXT = { eggWeight: 150, eggsPerGram: 700, eggs: 105_000 };

const WATER_FIELDS = ['temperature', 'incubationTemperature'] as const satisfies readonly NumericField[];
/** A reading in °F of water that fish live in; below it, it could be a hot day in °C. */
const FAHRENHEIT = [55, 105] as const;
/** A reading in °C in a column kept in °F. */
const CELSIUS = [15, 40] as const;
export const isFahrenheit = (value: number): boolean => value >= FAHRENHEIT[0] && value <= FAHRENHEIT[1];
const NONE = new Float64Array(0);

const fahrenheit = (said: RuleFinding): RuleVerdict[] =>
  WATER_FIELDS.flatMap((field) => {
    const value = said.num(field);
    const celsius = celsiusFromFahrenheit(value);
    if (isFahrenheit(value))
      return [
        {
          field,
          seen: shown(field, value),
          expected: `${plain(celsius, 3)} °C`,
          proposal: `${plain(celsius, 3)} °C`,
          sentence: `${capitalNoun(field)} of ${plain(value)} looks like °F: that is ${plain(celsius, 3)} °C.`,
        },
      ];
    // A °C reading in a column that is kept in °F arrives here as below zero.
    const meant = fahrenheitFromCelsius(value);
    return meant >= CELSIUS[0] && meant <= CELSIUS[1]
      ? [
          {
            field,
            seen: `${plain(meant, 3)} °F`,
            expected: `${plain(meant, 3)} °C`,
            proposal: `${plain(meant, 3)} °C`,
            sentence: `${capitalNoun(field)} of ${plain(meant, 3)} in a column kept in °F looks like °C.`,
          },
        ]
      : [];
  });

export const slipRules: readonly RowRule[] = [
  slipRule('SLIP.TEN', 'ten', {
    title: 'A decimal point in the wrong place',
    checks:
      'A value that breaks what follows from it, and fits when taken ten or a hundred ' +
      'times smaller or larger.',
    why: 'A point left out or set wrong is the commonest slip of all.',
    sources: ['PRACTICE'],
    examples: [
      {
        record: { ...CONTEXT, eggs: 1_050_000 },
        says: 'ten times too much',
        because: '150 g × 700 is 105,000.',
      },
      { record: CONTEXT, because: 'Nothing is broken.' },
    ],
  }),
  slipRule('SLIP.THOUSAND', 'thousand', {
    title: 'Grams and kilograms mixed',
    checks:
      'A value that breaks what follows from it, and fits when taken a thousand times smaller or larger.',
    why: 'One row in grams in a column of kilograms moves every figure made from it a thousandfold.',
    sources: ['PRACTICE'],
    examples: [
      {
        record: { fish: 1000, weight: 2, ration: 0.05, feed: 0.1 },
        says: 'a thousand times too little',
        because: '100 g written as 0.1 (kg).',
      },
      { record: { fish: 1000, weight: 2, ration: 0.05, feed: 100 }, because: 'Nothing is broken.' },
    ],
  }),
  slipRule('SLIP.POUND', 'pound', {
    title: 'Pounds in a column of kilograms',
    checks: 'A weight that breaks what follows from it, and fits when read as pounds.',
    why: 'A scale set to pounds doubles the hormone she is given.',
    sources: ['PRACTICE'],
    examples: [
      {
        record: { femaleWeight: 3.31, hormoneDose: 0.5, hormoneVolume: 0.75 },
        says: 'pounds',
        because: '3.31 lb is 1.5 kg, and 1.5 kg × 0.5 mL/kg is 0.75 mL.',
      },
      { record: { femaleWeight: 1.5, hormoneDose: 0.5, hormoneVolume: 0.75 }, because: 'Nothing is broken.' },
    ],
  }),
  slipRule('SLIP.DIGITS', 'digits', {
    title: 'Two digits swapped',
    checks: 'A value that breaks what follows from it, and fits when two neighbouring digits are swapped.',
    why: 'Swapped digits look like any other number; only what follows from it gives it away.',
    sources: ['PRACTICE'],
    examples: [
      {
        record: { eggWeight: 134, eggsPerGram: 712, eggs: 59_408 },
        says: 'two digits swapped',
        because: '134 g × 712 is 95,408; 59,408 has 9 and 5 swapped.',
      },
      { record: { eggWeight: 134, eggsPerGram: 712, eggs: 95_408 }, because: 'Nothing is broken.' },
    ],
  }),
  {
    id: 'SLIP.FAHRENHEIT',
    scope: 'row',
    severity: 'impossible',
    title: '°F and °C mixed',
    needs: WATER_FIELDS.map((field) => [field]),
    sources: ['PRACTICE'],
    checks: 'Water temperatures from 55 to 105, which only °F can mean, and °C readings in a column of °F.',
    why: 'A thermometer set to °F makes every time worked out from it wrong.',
    check: fahrenheit,
    mayFire: (numbers) =>
      // Exactly the lower bound is judged too.
      WATER_FIELDS.some((name) =>
        isBeyond(numbers[name] ?? NONE, celsiusFromFahrenheit(CELSIUS[1]) + 1e-9, FAHRENHEIT[0] - 1e-9),
      ),
    examples: [
      { record: { temperature: 79 }, says: '26.1 °C', because: '79 °F.' },
      { record: { incubationTemperature: 82.4 }, says: '28 °C', because: '82.4 °F.' },
      { record: { temperature: 27 }, because: 'A usual temperature.' },
    ],
  },
];
