import { findFunction } from '../catalogue';
import type { NamedParam } from '../functions/define';

/**
 * The questions of the dosing sheet, once: the pane draws them, the sheet prints them. What is allowed stands
 * in the catalogue, in the argument each question fills.
 */
export interface DosingField {
  readonly key: DosingKey;
  readonly label: string;
  readonly unit: string;
  readonly hint: string;
  /** The catalogue argument it fills: function, argument. */
  readonly fills: readonly [string, string];
  readonly initial: string | number | null;
  readonly isRequired: boolean;
  /** Asked of everyone, of who keeps fish in the vat, or of who knows more. */
  readonly part: 'first' | 'fish' | 'more';
  readonly format?: string;
  /** Words a person chooses from: what is meant, and how it is said. */
  readonly choices?: readonly (readonly [value: string, said: string])[];
}

export const DOSING_KEYS = [
  'volume',
  'material',
  'purity',
  'spoon',
  'temperature',
  'target',
  'stocked',
  'ammonia',
  'alkalinity',
  'kit',
  'bottom',
  'top',
  'origin',
  'meter',
] as const;
export type DosingKey = (typeof DOSING_KEYS)[number];

export const YES = 'yes';
export const NO = 'no';

export const paramOf = ([id, name]: readonly [string, string]): NamedParam | undefined =>
  findFunction(`SPAWN.${id}`)?.params.find((param) => param.name === name);

/** Caustic soda burns worse than any of these and gives no second chance: it is left out here. */
const OFFERED = [
  'soda ash',
  'soda ash monohydrate',
  'washing soda',
  'baking soda',
  'hydrated lime',
  'quicklime',
] as const;
/** Products that must not go into water that holds fish. */
export const LIMES: readonly string[] = ['hydrated lime', 'quicklime'];

const same = (words: readonly string[]): readonly (readonly [string, string])[] =>
  words.map((word) => [word, word] as const);

const field = (
  key: DosingKey,
  rest: Omit<DosingField, 'key' | 'unit' | 'initial' | 'isRequired' | 'part'> & Partial<DosingField>,
): DosingField => ({ key, unit: '', initial: null, isRequired: false, part: 'first', ...rest });

export const DOSING_FIELDS: readonly DosingField[] = [
  field('volume', {
    label: 'Water in the vat',
    unit: 'L',
    fills: ['BUFFER.NEXT', 'volume'],
    isRequired: true,
    format: '#,##0',
    hint: 'As filled now, not the size on the label.',
  }),
  field('material', {
    label: 'Product',
    fills: ['BUFFER.NEXT', 'material'],
    initial: 'soda ash',
    isRequired: true,
    choices: same(OFFERED),
    hint: 'What the bag says. Baking soda is weaker and gentler.',
  }),
  field('purity', {
    label: 'Purity',
    unit: '%',
    fills: ['BUFFER.NEXT', 'purity'],
    initial: 1,
    format: '0%',
    hint: 'On the bag; 100 when it says nothing.',
  }),
  field('spoon', {
    label: 'Your spoon holds',
    unit: 'g',
    fills: ['BUFFER.NEXT', 'spoon'],
    format: '0.0',
    hint: 'Weigh ten level spoons, divide by ten. Empty: grams only.',
  }),
  field('temperature', {
    label: 'Water temperature',
    unit: '°C',
    fills: ['BUFFER.NEXT', 'temperature'],
    isRequired: true,
    format: '0.0',
    hint: 'Measured in the vat.',
  }),
  field('target', {
    label: 'pH wanted',
    fills: ['BUFFER.NEXT', 'target'],
    initial: 7,
    isRequired: true,
    format: '0.0',
    hint: 'Near 7 suits most fresh-water fish.',
  }),
  field('stocked', {
    label: 'Fish, eggs or larvae in the vat?',
    fills: ['BUFFER.NEXT', 'stocked'],
    isRequired: true,
    choices: [
      [NO, 'no, water only'],
      [YES, 'yes'],
    ],
    hint: 'With fish the steps are smaller and ammonia comes first.',
  }),
  field('ammonia', {
    label: 'Total ammonia',
    unit: 'mg/L N',
    fills: ['AMMONIA.RISE', 'total'],
    part: 'fish',
    format: '0.00',
    hint: 'From a kit, before the first dose.',
  }),
  field('alkalinity', {
    label: 'Alkalinity from a kit',
    fills: ['ALKALINITY.CONVERT', 'amount'],
    part: 'more',
    format: '0.0',
    hint: 'Of the water before any product. Empty: not measured.',
  }),
  field('kit', {
    label: 'The kit counts in',
    fills: ['ALKALINITY.CONVERT', 'from'],
    initial: '°d',
    part: 'more',
    isRequired: true,
    choices: [
      ['°d', '°d (dKH)'],
      ['mg/L CaCO3', 'mg/L CaCO3 (ppm)'],
      ['meq/L', 'meq/L'],
    ],
    hint: 'Printed on the kit.',
  }),
  field('bottom', {
    label: 'Window from pH',
    fills: ['BUFFER.NEXT', 'bottom'],
    initial: 6.5,
    part: 'more',
    isRequired: true,
    format: '0.0',
    hint: 'Lowest pH that will do.',
  }),
  field('top', {
    label: 'Window up to pH',
    fills: ['BUFFER.NEXT', 'top'],
    initial: 7.5,
    part: 'more',
    isRequired: true,
    format: '0.0',
    hint: 'Not to be passed.',
  }),
  field('origin', {
    label: 'Where the water comes from',
    fills: ['BUFFER.NEXT', 'origin'],
    initial: 'unknown',
    part: 'more',
    isRequired: true,
    choices: [
      ['unknown', 'not sure'],
      ['well', 'well or borehole'],
      ['aerated', 'aerated for an hour'],
      ['peat', 'brown as tea: peat, leaves'],
    ],
    hint: 'Well water holds much carbon dioxide and takes more; brown water holds acids of its own.',
  }),
  field('meter', {
    label: 'pH is read with',
    fills: ['BUFFER.NEXT', 'meter'],
    initial: 'good',
    isRequired: true,
    choices: [
      ['good', 'meter, two decimals'],
      ['cheap', 'meter, one decimal'],
      ['strips', 'paper strips'],
    ],
    hint: 'Calibrated today.',
  }),
];

const byKey = new Map(DOSING_FIELDS.map((one) => [one.key, one]));
export const dosingField = (key: DosingKey): DosingField => {
  const found = byKey.get(key);
  if (!found) throw new Error(`no question ${key}`);
  return found;
};

/** How a chosen word is said to a person. */
export const saidAs = (key: DosingKey, value: string): string =>
  dosingField(key).choices?.find(([one]) => one === value)?.[1] ?? value;
