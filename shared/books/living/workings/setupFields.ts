import { FIRST_DAY, LAST_DAY } from '../../../units/dates';
import { MATERIALS, PREPARATIONS } from '../../../run/fields';
import { MOST_CERTAIN } from '../../../season/types';

/**
 * What the sheet Setup asks, once: written, checked and read back by it. `path` leads to the entry of the
 * order book.
 */
export interface SetupField {
  readonly key: string;
  readonly path: readonly [string] | readonly [string, string];
  readonly label: string;
  readonly kind:
    'text' | 'number' | 'whole' | 'date' | 'clock' | 'share' | 'choice' | 'yesNo' | 'dates' | 'weekdays';
  readonly unit: string;
  readonly min?: number;
  readonly max?: number;
  readonly choices?: readonly string[];
  readonly format?: string;
  /** The sheets follow it at once; the rest counts when the season is planned again. */
  readonly isLive?: boolean;
}

const days = (
  key: string,
  path: SetupField['path'],
  label: string,
  max: number,
  isLive = false,
): SetupField => ({ key, path, label, kind: 'whole', unit: 'd', min: 0, max, format: '0', isLive });
const clock = (key: string, label: string): SetupField => ({
  key,
  path: ['staff', key],
  label,
  kind: 'clock',
  unit: '',
  min: 0,
  max: 1,
  format: '[hh]:mm',
});
const price = (key: string, label: string, unit = ''): SetupField => ({
  key,
  path: ['prices', key],
  label,
  kind: 'number',
  unit,
  min: 0,
  max: 1e9,
  format: '#,##0.00##',
  isLive: true,
});

export const SETUP_FIELDS: readonly SetupField[] = [
  { key: 'hatchery', path: ['hatchery'], label: 'Hatchery', kind: 'text', unit: '', isLive: true },
  {
    key: 'plannedOn',
    path: ['plannedOn'],
    label: 'Planned on',
    kind: 'date',
    unit: '',
    min: FIRST_DAY,
    max: LAST_DAY,
    format: 'ddd d mmm yyyy',
  },
  {
    key: 'preparation',
    path: ['preparation'],
    label: 'Hormone preparation',
    kind: 'choice',
    unit: '',
    choices: PREPARATIONS,
    isLive: true,
  },
  clock('stripFrom', 'Stripping from'),
  clock('stripTo', 'Stripping until'),
  clock('injectFrom', 'Injecting from'),
  clock('injectTo', 'Injecting until'),
  { key: 'weekdays', path: ['staff', 'weekdays'], label: 'Days people strip on', kind: 'weekdays', unit: '' },
  { key: 'daysOff', path: ['staff', 'daysOff'], label: 'Days off', kind: 'dates', unit: '2027-04-02, …' },
  {
    key: 'femalesPerDay',
    path: ['staff', 'femalesPerDay'],
    label: 'Females that can be stripped in a day',
    kind: 'whole',
    unit: 'females',
    min: 1,
    max: 200,
    format: '0',
  },
  days('restDays', ['restDays'], 'Rest of a female', 730, true),
  {
    key: 'malesSurvive',
    path: ['malesSurvive'],
    label: 'Males live on after giving milt',
    kind: 'yesNo',
    unit: '',
  },
  days('cleaningDays', ['cleaningDays'], 'Cleaning and refilling a vat', 60, true),
  days('holdDays', ['holdDays'], 'Days fish may wait for their buyer', 60),
  days('leadHormone', ['leadDays', 'hormone'], 'Delivery of hormone', 180, true),
  days('leadCysts', ['leadDays', 'cysts'], 'Delivery of cysts', 180, true),
  days('leadFeed', ['leadDays', 'feed'], 'Delivery of feed', 180, true),
  {
    key: 'spare',
    path: ['spare'],
    label: 'Spare planned on top',
    kind: 'share',
    unit: '',
    min: 0,
    max: 3,
    format: '0%',
  },
  {
    key: 'certainty',
    path: ['certainty'],
    label: 'How sure it must be',
    kind: 'share',
    unit: '',
    min: 0.5,
    max: MOST_CERTAIN,
    format: '0%',
  },
  {
    key: 'lost',
    path: ['lost'],
    label: 'Runs lost altogether',
    kind: 'share',
    unit: '',
    min: 0,
    max: 0.9,
    format: '0%',
  },
  {
    key: 'leastParents',
    path: ['leastParents'],
    label: 'Parents that must count, for brood fish',
    kind: 'number',
    unit: 'parents',
    min: 0,
    max: 1000,
    format: '0',
  },
  {
    key: 'seed',
    path: ['seed'],
    label: 'Seed of the odds',
    kind: 'whole',
    unit: '',
    min: 0,
    max: 4294967295,
    format: '0',
  },
  {
    key: 'ph',
    path: ['water', 'ph'],
    label: 'pH of the water the vats are filled with',
    kind: 'number',
    unit: 'pH',
    min: 3,
    max: 11,
    format: '0.0',
    isLive: true,
  },
  {
    key: 'phWanted',
    path: ['water', 'phWanted'],
    label: 'pH wanted',
    kind: 'number',
    unit: 'pH',
    min: 5,
    max: 9,
    format: '0.0',
    isLive: true,
  },
  {
    key: 'alkalinity',
    path: ['water', 'alkalinity'],
    label: 'Its alkalinity, if measured',
    kind: 'number',
    unit: 'meq/L',
    min: 0,
    max: 20,
    format: '0.00',
    isLive: true,
  },
  {
    key: 'material',
    path: ['water', 'material'],
    label: 'What raises the pH',
    kind: 'choice',
    unit: '',
    choices: MATERIALS,
    isLive: true,
  },
];

export const PRICE_FIELDS: readonly SetupField[] = [
  price('cystsPerKilogram', 'Cysts', 'a kg'),
  price('feedPerKilogram', 'Dry feed', 'a kg'),
  price('hormonePerMillilitre', 'Hormone', 'a mL (mg, IU)'),
  price('male', 'A male that is used up'),
  price('perRun', 'Wages and other costs of a run'),
  price('perVatDay', 'Water and power of a vat for a day'),
  price('perMonth', 'Rent, wages and wear of a month'),
  {
    key: 'atHand',
    path: ['prices', 'atHand'],
    label: 'Money at hand',
    kind: 'number',
    unit: '',
    min: -1e12,
    max: 1e12,
    format: '#,##0.00',
    isLive: true,
  },
];
