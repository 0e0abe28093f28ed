// Long: the questions of the form, one record each.
import { FIRST_DAY, LAST_DAY } from '../../units/dates';
import { DEFAULT_PREPARATION } from '../../families/preparations';
import { MATERIALS, PREPARATIONS, PRODUCTS } from '../../run/fields';
import { MOST_CERTAIN } from '../types';

/**
 * The questions about one order, once: the pane draws them, the schema checks them. Five groups are asked;
 * the rest has a usual answer that can be opened and changed.
 */
export const FIVE_GROUPS = ['How many', 'Of what', 'By what day', 'With what', 'How warm'] as const;

interface Asked<K extends string> {
  readonly key: K;
  readonly label: string;
  readonly group: (typeof FIVE_GROUPS)[number] | 'Order' | 'Water' | 'Work';
  readonly hint: string;
  readonly unit: string;
  /** May be left empty; what is done then stands in the hint. */
  readonly isOptional?: boolean;
}
export interface FormText<K extends string = string> extends Asked<K> {
  readonly kind: 'text';
  readonly longest: number;
  readonly initial: string;
}
export interface FormNumber<K extends string = string> extends Asked<K> {
  /** hour: 0 to 23.99, shown as a clock time. date: an Excel serial. */
  readonly kind: 'number' | 'whole' | 'date' | 'hour';
  readonly min: number;
  readonly max: number;
  readonly format: string;
  readonly initial?: number;
  /** Stands in until the question is answered, so that an answer can grow from the first; common practice. */
  readonly usual?: number;
  readonly usualWords?: string;
}
export interface ChoiceField<K extends string = string, C extends string = string> extends Asked<K> {
  readonly kind: 'choice';
  readonly choices: readonly C[];
  readonly initial: C;
}
export type PlanField = FormText | FormNumber | ChoiceField;

export const PLAN_FIELDS = {
  wanted: {
    key: 'wanted',
    label: 'Fish wanted',
    group: 'How many',
    kind: 'whole',
    unit: 'fish',
    min: 1,
    max: 5_000_000,
    format: '#,##0',
    hint: 'Number counted out to the buyer.',
  },
  product: {
    key: 'product',
    label: 'What is sold',
    group: 'Of what',
    kind: 'choice',
    unit: '',
    choices: PRODUCTS,
    initial: 'fry',
    hint: 'Fry leave after weaning, fingerlings after some weeks of nursing.',
  },
  wantedOn: {
    key: 'wantedOn',
    label: 'Wanted on',
    group: 'By what day',
    kind: 'date',
    unit: 'date',
    min: FIRST_DAY,
    max: LAST_DAY,
    format: 'ddd d mmm yyyy',
    hint: 'The morning of this day the fish must be ready.',
  },
  females: {
    key: 'females',
    label: 'Ripe females you have',
    group: 'With what',
    kind: 'whole',
    unit: 'females',
    min: 0,
    max: 500,
    format: '#,##0',
    usual: 20,
    usualWords: 'enough females',
    hint: 'Swollen belly, eggs run at a light press.',
  },
  femaleWeight: {
    key: 'femaleWeight',
    label: 'Mean weight of a female',
    group: 'With what',
    kind: 'number',
    unit: 'kg',
    min: 0.1,
    max: 15,
    format: '0.00',
    usual: 1,
    usualWords: 'females of 1 kg',
    hint: 'Weigh them: eggs and hormone follow the weight.',
  },
  males: {
    key: 'males',
    label: 'Males you have',
    group: 'With what',
    kind: 'whole',
    unit: 'males',
    min: 0,
    max: 500,
    format: '#,##0',
    usual: 20,
    usualWords: 'enough males',
    hint: 'Catfish males give their milt once.',
  },
  vats: {
    key: 'vats',
    label: 'Vats you have',
    group: 'With what',
    kind: 'whole',
    unit: 'vats',
    min: 0,
    max: 500,
    format: '#,##0',
    usual: 20,
    usualWords: 'enough vats',
    hint: 'Free for this run from fertilising to sale.',
  },
  vatLitres: {
    key: 'vatLitres',
    label: 'Water in one vat',
    group: 'With what',
    kind: 'number',
    unit: 'L',
    min: 10,
    max: 200_000,
    format: '#,##0',
    usual: 1000,
    usualWords: 'vats of 1,000 L',
    hint: 'Filled as you use it.',
  },
  temperature: {
    key: 'temperature',
    label: 'Water temperature',
    group: 'How warm',
    kind: 'number',
    unit: '°C',
    min: 10,
    max: 40,
    format: '0.0',
    usual: 27,
    usualWords: 'water of 27 °C',
    hint: 'At night, where the eggs lie. It moves every clock time.',
  },
  hatchery: {
    key: 'hatchery',
    label: 'Hatchery',
    group: 'Order',
    kind: 'text',
    unit: '',
    longest: 60,
    initial: 'My hatchery',
    hint: 'Printed on every page.',
  },
  buyer: {
    key: 'buyer',
    label: 'Buyer',
    group: 'Order',
    kind: 'text',
    unit: '',
    longest: 60,
    initial: 'The buyer',
    hint: 'A name for the order in the book.',
  },
  grams: {
    key: 'grams',
    label: 'Weight of a fish wanted',
    group: 'Order',
    kind: 'number',
    unit: 'g',
    min: 0.005,
    max: 100,
    format: '0.00',
    isOptional: true,
    hint: 'Empty: what the usual days of rearing give.',
  },
  price: {
    key: 'price',
    label: 'Price of a fish',
    group: 'Order',
    kind: 'number',
    unit: '',
    min: 0,
    max: 1e9,
    format: '0.00',
    isOptional: true,
    hint: 'In your money.',
  },
  certainty: {
    key: 'certainty',
    label: 'How sure it must be',
    group: 'Order',
    kind: 'number',
    unit: '%',
    min: 50,
    max: 100 * MOST_CERTAIN,
    format: '0',
    initial: 80,
    hint: 'Of a hundred such runs, so many must bring the whole order. It sizes females and water.',
  },
  plannedOn: {
    key: 'plannedOn',
    label: 'Planned on',
    group: 'Order',
    kind: 'date',
    unit: 'date',
    min: FIRST_DAY,
    max: LAST_DAY,
    format: 'ddd d mmm yyyy',
    hint: 'Today: nothing is planned before it.',
  },
  ph: {
    key: 'ph',
    label: 'pH of the water now',
    group: 'Water',
    kind: 'number',
    unit: 'pH',
    min: 3,
    max: 11,
    format: '0.0',
    isOptional: true,
    hint: 'After an hour of air, when the reading has stopped moving. Empty: no dose is worked out.',
  },
  phWanted: {
    key: 'phWanted',
    label: 'pH you want',
    group: 'Water',
    kind: 'number',
    unit: 'pH',
    min: 5,
    max: 8,
    format: '0.0',
    initial: 7,
    hint: 'Near 7 is safe; above 8 ammonia turns toxic.',
  },
  alkalinity: {
    key: 'alkalinity',
    label: 'Alkalinity',
    group: 'Water',
    kind: 'number',
    unit: 'meq/L',
    min: 0,
    max: 20,
    format: '0.00',
    isOptional: true,
    hint: 'From a drop test. Empty: not measured, so treat the dose as a first guess.',
  },
  material: {
    key: 'material',
    label: 'What raises the pH',
    group: 'Water',
    kind: 'choice',
    unit: '',
    choices: MATERIALS,
    initial: 'soda ash',
    hint: 'Goggles and gloves; dissolve it in a bucket first.',
  },
  preparation: {
    key: 'preparation',
    label: 'Hormone preparation',
    group: 'Work',
    kind: 'choice',
    unit: '',
    choices: PREPARATIONS,
    initial: DEFAULT_PREPARATION,
    hint: 'Each has its own waiting time. Ask a vet; local rules come first.',
  },
  stripHour: {
    key: 'stripHour',
    label: 'Strip at',
    group: 'Work',
    kind: 'hour',
    unit: 'clock',
    min: 0,
    max: 23.99,
    format: 'hh:mm',
    initial: 8,
    hint: 'When people are there. The injection hour follows from it.',
  },
  leadHormone: {
    key: 'leadHormone',
    label: 'Hormone and cysts come within',
    group: 'Work',
    kind: 'whole',
    unit: 'd',
    min: 0,
    max: 180,
    format: '0',
    initial: 14,
    hint: 'Days from ordering; 0 when they are on the shelf.',
  },
  leadFeed: {
    key: 'leadFeed',
    label: 'Dry feed comes within',
    group: 'Work',
    kind: 'whole',
    unit: 'd',
    min: 0,
    max: 180,
    format: '0',
    initial: 7,
    hint: 'Days from ordering; 0 when it is on the shelf.',
  },
} as const satisfies Record<string, PlanField>;

export type FieldKey = keyof typeof PLAN_FIELDS;
export const planFieldList: readonly PlanField[] = Object.values(PLAN_FIELDS);
/** The five questions, in the order they are asked. */
export const firstFields = planFieldList.filter(({ group }) =>
  (FIVE_GROUPS as readonly string[]).includes(group),
);
export const otherFields = planFieldList.filter((field) => !firstFields.includes(field));
