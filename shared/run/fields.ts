import { DEFAULT_PREPARATION, PREPARATION_NAMES } from '../families/preparations';

/**
 * The questions of the plan form, once: the pane draws them, the schema checks them, the workbook prints
 * them.
 */
interface Asked<K extends string> {
  readonly key: K;
  readonly label: string;
  readonly group: 'Order' | 'Brood fish' | 'Vats' | 'Water' | 'Staff';
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
}
export interface ChoiceField<K extends string = string, C extends string = string> extends Asked<K> {
  readonly kind: 'choice';
  readonly choices: readonly C[];
  readonly initial: C;
}
export type PlanField = FormText | FormNumber | ChoiceField;

/** 1 January 2000 and 31 December 2099 as Excel serials. */
export const FIRST_DAY = 36526;
export const LAST_DAY = 73050;

export const PRODUCTS = ['fry', 'fingerlings'] as const;
/** Every preparation of the list. */
export const PREPARATIONS = PREPARATION_NAMES;
export const MATERIALS = ['soda ash', 'baking soda'] as const;

export const PLAN_FIELDS = {
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
  product: {
    key: 'product',
    label: 'What is sold',
    group: 'Order',
    kind: 'choice',
    unit: '',
    choices: PRODUCTS,
    initial: 'fry',
    hint: 'Fry leave after weaning, fingerlings after some weeks of nursing.',
  },
  wanted: {
    key: 'wanted',
    label: 'Fish wanted',
    group: 'Order',
    kind: 'whole',
    unit: 'fish',
    min: 1,
    max: 5_000_000,
    format: '#,##0',
    hint: 'Number counted out to the buyer.',
  },
  wantedOn: {
    key: 'wantedOn',
    label: 'Wanted on',
    group: 'Order',
    kind: 'date',
    unit: 'date',
    min: FIRST_DAY,
    max: LAST_DAY,
    format: 'ddd d mmm yyyy',
    hint: 'The morning of this day the fish must be ready.',
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
    isOptional: true,
    hint: 'Today. Empty: nobody checks whether there is still time.',
  },
  females: {
    key: 'females',
    label: 'Ripe females you have',
    group: 'Brood fish',
    kind: 'whole',
    unit: 'females',
    min: 0,
    max: 500,
    format: '#,##0',
    hint: 'Swollen belly, eggs run at a light press.',
  },
  femaleWeight: {
    key: 'femaleWeight',
    label: 'Mean weight of a female',
    group: 'Brood fish',
    kind: 'number',
    unit: 'kg',
    min: 0.1,
    max: 15,
    format: '0.00',
    hint: 'Weigh them: eggs and hormone follow the weight.',
  },
  males: {
    key: 'males',
    label: 'Males you have',
    group: 'Brood fish',
    kind: 'whole',
    unit: 'males',
    min: 0,
    max: 500,
    format: '#,##0',
    hint: 'Catfish males give their milt once.',
  },
  vats: {
    key: 'vats',
    label: 'Vats you have',
    group: 'Vats',
    kind: 'whole',
    unit: 'vats',
    min: 0,
    max: 500,
    format: '#,##0',
    hint: 'Free for this run from fertilising to sale.',
  },
  vatLitres: {
    key: 'vatLitres',
    label: 'Water in one vat',
    group: 'Vats',
    kind: 'number',
    unit: 'L',
    min: 10,
    max: 200_000,
    format: '#,##0',
    hint: 'Filled as you use it.',
  },
  temperature: {
    key: 'temperature',
    label: 'Water temperature',
    group: 'Water',
    kind: 'number',
    unit: '°C',
    min: 22.9,
    max: 30,
    format: '0.0',
    initial: 27,
    hint: 'At night, where the eggs lie. It moves every clock time.',
  },
  ph: {
    key: 'ph',
    label: 'pH of the water now',
    group: 'Water',
    kind: 'number',
    unit: 'pH',
    min: 3,
    max: 10,
    format: '0.0',
    hint: 'After the reading has stopped moving.',
  },
  phWanted: {
    key: 'phWanted',
    label: 'pH you want',
    group: 'Water',
    kind: 'number',
    unit: 'pH',
    min: 6,
    max: 8.5,
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
    group: 'Staff',
    kind: 'choice',
    unit: '',
    choices: PREPARATIONS,
    initial: DEFAULT_PREPARATION,
    hint: 'Each has its own waiting time. Ask a vet; local rules come first.',
  },
  stripHour: {
    key: 'stripHour',
    label: 'Strip at',
    group: 'Staff',
    kind: 'hour',
    unit: 'clock',
    min: 0,
    max: 23.99,
    format: 'hh:mm',
    initial: 8,
    hint: 'When people are there. The injection hour follows from it.',
  },
} as const satisfies Record<string, PlanField>;

export type FieldKey = keyof typeof PLAN_FIELDS;
export const planFieldList: readonly PlanField[] = Object.values(PLAN_FIELDS);
