import type { AssumptionKey } from '../families/assumptions';
import type { FieldKey } from './fields';

/** The answers of a plan. The workbook gives every one of them a name and a formula; the two must agree. */
export const RESULT_KEYS = [
  'eggsNeeded',
  'larvaeHatched',
  'larvaeFeeding',
  'fishWeaned',
  'femalesNeeded',
  'malesNeeded',
  'breedingNumber',
  'hormoneEach',
  'hormoneTotal',
  'latencyHours',
  'incubationHours',
  'yolkDays',
  'stripAt',
  'injectAt',
  'checkAt',
  'lateAt',
  'hatchAt',
  'hatchEndAt',
  'firstFeedAt',
  'feedFrom',
  'weanedAt',
  'readyAt',
  'beginOn',
  'vatsHatching',
  'vatsFry',
  'vatsNursing',
  'vatsNeeded',
  'mostByFemales',
  'mostByMales',
  'mostByVats',
  'mostFish',
  'trialDose',
  'vatDose',
  'totalDose',
  'toxicNow',
  'toxicThen',
  'cystsFirst',
  'cystsTotal',
  'feedTotal',
] as const;
export type ResultKey = (typeof RESULT_KEYS)[number];

/** Everything a formula of the plan may name. */
export type NameKey = ResultKey | FieldKey | AssumptionKey;

/** eggsNeeded → eggs_needed, with the suffix of a second plan in the same workbook. */
export const nameOf = (key: NameKey, suffix = ''): string =>
  key.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`) + suffix;

/** Fills {key} in a formula with the names of the workbook. */
export const named = (formula: string, suffix = ''): string =>
  formula.replace(/\{(\w+)\}/g, (_, key: string) => nameOf(key as NameKey, suffix));
