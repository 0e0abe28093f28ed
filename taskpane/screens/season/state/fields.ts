import { MATERIALS, PREPARATIONS, PRODUCTS } from '../../../../shared/run/fields';
import { MONTH_NAMES } from '../../../../shared/units/dates';

/**
 * One question of the season form that has one answer. The path is where the answer stands in an order book;
 * the order book checks it.
 */
export interface SeasonField {
  readonly path: string;
  readonly label: string;
  readonly unit?: string;
  readonly kind: 'number' | 'whole' | 'share' | 'date' | 'hour' | 'choice' | 'yesNo' | 'text';
  readonly choices?: readonly string[];
  /** What is taken when the field stays empty; it stands in the field from the start. */
  readonly initial?: string;
  readonly isNeeded?: boolean;
  readonly hint?: string;
}
export interface SeasonGroup {
  readonly title: string;
  readonly fields: readonly SeasonField[];
}

const money = (path: string, label: string, unit = ''): SeasonField => ({
  path: `prices.${path}`,
  label,
  unit,
  kind: 'number',
  initial: '0',
});

export const HATCHERY: readonly SeasonField[] = [
  {
    path: 'hatchery',
    label: 'Hatchery',
    kind: 'text',
    initial: 'My hatchery',
    hint: 'Stands on every sheet.',
  },
  {
    path: 'plannedOn',
    label: 'Planned on',
    kind: 'date',
    isNeeded: true,
    hint: 'Nothing is planned before it.',
  },
  {
    path: 'certainty',
    label: 'How sure it must be',
    kind: 'share',
    initial: '80 %',
    hint: 'Share of seasons that bring an order: 50 % to 99 %. Surer takes more females and water.',
  },
];

export const WATER_BY_MONTH: readonly SeasonField[] = MONTH_NAMES.map((label, i) => ({
  path: `temperatures.${i}`,
  label,
  kind: 'number',
}));

export const STAFF: readonly SeasonField[] = [
  {
    path: 'staff.stripFrom',
    label: 'Stripping from',
    kind: 'hour',
    initial: '06:00',
    hint: 'Hours people are there to strip.',
  },
  {
    path: 'staff.stripTo',
    label: 'Stripping until',
    kind: 'hour',
    initial: '20:00',
    hint: '24:00 is midnight.',
  },
  {
    path: 'staff.injectFrom',
    label: 'Injecting from',
    kind: 'hour',
    initial: '00:00',
    hint: 'Injections often fall at night.',
  },
  {
    path: 'staff.injectTo',
    label: 'Injecting until',
    kind: 'hour',
    initial: '24:00',
    hint: '24:00 is midnight.',
  },
  {
    path: 'staff.femalesPerDay',
    label: 'Females stripped in a day',
    kind: 'whole',
    initial: '10',
    hint: 'At most, with the hands you have.',
  },
];

/** Folded away: their usual values do for a first plan. */
export const USUAL_GROUPS: readonly SeasonGroup[] = [
  {
    title: 'Fish and vats: rest, cleaning, waiting',
    fields: [
      {
        path: 'preparation',
        label: 'Hormone preparation',
        kind: 'choice',
        choices: PREPARATIONS,
        initial: 'ready-made solution',
        hint: 'Each has its own waiting time. Ask a vet; local rules come first.',
      },
      {
        path: 'restDays',
        label: 'Rest of a female',
        unit: 'd',
        kind: 'whole',
        initial: '90',
        hint: 'Before she is stripped again.',
      },
      {
        path: 'malesSurvive',
        label: 'Males live on',
        kind: 'yesNo',
        choices: ['no', 'yes'],
        initial: 'no',
        hint: 'Catfish males give milt once.',
      },
      {
        path: 'cleaningDays',
        label: 'Cleaning and refilling a vat',
        unit: 'd',
        kind: 'whole',
        initial: '2',
        hint: 'Between two runs.',
      },
      {
        path: 'holdDays',
        label: 'Days fish may wait',
        unit: 'd',
        kind: 'whole',
        initial: '5',
        hint: 'Ready, and not yet fetched.',
      },
      {
        path: 'spare',
        label: 'Spare',
        kind: 'number',
        initial: '0',
        hint: '0.2 plans a fifth more than was ordered.',
      },
      {
        path: 'lost',
        label: 'Runs lost altogether',
        kind: 'number',
        initial: '0.03',
        hint: 'Power, pump, disease: 0.03 is 3 of 100.',
      },
      {
        path: 'leastParents',
        label: 'Parents that must count',
        kind: 'number',
        initial: '50',
        hint: 'For orders of future brood fish.',
      },
    ],
  },
  {
    title: 'Days until goods arrive',
    fields: [
      { path: 'leadDays.hormone', label: 'Hormone', unit: 'd', kind: 'whole', initial: '14' },
      { path: 'leadDays.cysts', label: 'Cysts', unit: 'd', kind: 'whole', initial: '14' },
      { path: 'leadDays.feed', label: 'Feed', unit: 'd', kind: 'whole', initial: '7' },
    ],
  },
  {
    title: 'Prices',
    fields: [
      money('cystsPerKilogram', 'Cysts', 'a kg'),
      money('feedPerKilogram', 'Dry feed', 'a kg'),
      money('hormonePerMillilitre', 'Hormone', 'a mL'),
      money('male', 'A male that is used up'),
      money('perRun', 'Wages and other costs', 'a run'),
      money('perVatDay', 'Water and power', 'a vat and day'),
      money('perMonth', 'Rent, wages and wear', 'a month'),
      money('atHand', 'Money at hand'),
    ],
  },
  {
    title: 'Water the vats are filled with',
    fields: [
      { path: 'water.ph', label: 'pH now', kind: 'number', hint: 'May stay empty.' },
      { path: 'water.phWanted', label: 'pH wanted', kind: 'number', initial: '7' },
      {
        path: 'water.alkalinity',
        label: 'Alkalinity',
        unit: 'meq/L',
        kind: 'number',
        hint: 'May stay empty.',
      },
      {
        path: 'water.material',
        label: 'What raises the pH',
        kind: 'choice',
        choices: MATERIALS,
        initial: 'soda ash',
        hint: 'Goggles and gloves; dissolve it in a bucket first.',
      },
    ],
  },
];

export const SEASON_FIELDS: readonly SeasonField[] = [
  ...HATCHERY,
  ...WATER_BY_MONTH,
  ...STAFF,
  ...USUAL_GROUPS.flatMap(({ fields }) => fields),
];
export const idOfPath = (path: string): string => `season-${path.replaceAll('.', '-')}`;

/** The questions of one order, in the order they are asked. */
export const ORDER_FIELDS = {
  name: { label: 'Buyer', kind: 'text', isNeeded: true },
  product: { label: 'Fish', kind: 'choice', choices: PRODUCTS, isNeeded: true },
  number: { label: 'Number', kind: 'whole', isNeeded: true },
  due: { label: 'Due on', kind: 'date', isNeeded: true },
  grams: { label: 'Weight of a fish', unit: 'g', kind: 'number' },
  price: { label: 'Price of a fish', kind: 'number' },
} as const satisfies Record<string, Omit<SeasonField, 'path'>>;
export type OrderKey = keyof typeof ORDER_FIELDS;
export const ORDER_KEYS = Object.keys(ORDER_FIELDS) as readonly OrderKey[];
