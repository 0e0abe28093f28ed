import type { FieldName } from '../fields';
import { FAMILIES } from '../meaning/families';
import type { Looked } from './looked';
import { isClaim } from './looked';

const MONEY = new Set<FieldName>([
  'amount',
  'income',
  'expense',
  'priceEach',
  'priceThousand',
  'unitPrice',
  'deposit',
  'paid',
  'due',
  'dueRunning',
  'balance',
]);
/** "Number of fish" beside a mean weight and a ration is how many are fed, beside a harvest how many were put in. */
const BESIDE: Readonly<Partial<Record<FieldName, readonly FieldName[]>>> = {
  fish: ['weight', 'ration', 'feed', 'biomass'],
  biomass: ['ration', 'feed', 'weight', 'fish'],
  customer: ['priceEach', 'unitPrice', 'amount', 'paid', 'receipt', 'due'],
  sold: ['customer', 'priceEach', 'priceThousand', 'amount', 'paid'],
  stocked: ['alive', 'survival', 'stockedAt', 'emptiedAt'],
  femaleAfter: ['female', 'femaleWeight', 'eggWeight', 'stripped'],
  femaleWeight: ['female', 'hormoneVolume', 'eggWeight', 'injected', 'stripped'],
  sampleCount: ['weight', 'sampleWeight', 'fish', 'biomass', 'length'],
  sampleSize: ['sampleGood', 'fertilisedShare', 'eggs', 'eggWeight'],
  gradeCull: ['graded', 'gradeSmall', 'gradeMiddle', 'gradeBig'],
  hormoneVolume: ['femaleWeight', 'injected', 'stripped', 'eggWeight'],
  materialDose: ['ph', 'phAfter', 'alkalinity', 'volume'],
  treatAmount: ['treatRate', 'material', 'minutes'],
  preparation: ['hormoneVolume', 'hormoneDose', 'injected', 'femaleWeight'],
  description: ['income', 'expense', 'balance', 'category'],
  packWeight: ['feedType', 'quantity', 'unitPrice'],
};
/** Days of a spawning are named so only where something else of a spawning stands beside them. */
const SPAWNING_DAYS: ReadonlySet<FieldName> = new Set([
  'injectedOn',
  'strippedOn',
  'hatchedOn',
  'injectedFirst',
]);
const REARING_DAYS: ReadonlySet<FieldName> = new Set(['stockedAt', 'emptiedAt']);
const SALE: readonly FieldName[] = ['customer', 'receipt', 'amount', 'paid', 'priceEach', 'priceThousand'];
/** Beside these a weight is that of the stock, not of a brood fish. */
const REARING: readonly FieldName[] = [
  'fish',
  'feed',
  'feedType',
  'ration',
  'weight',
  'biomass',
  'length',
  'sampleCount',
  'sampleWeight',
  'gradeSmall',
  'gradeBig',
  'graded',
  'stocked',
  'alive',
  'meals',
];
const PACKED: readonly FieldName[] = ['feedType', 'quantity', 'unitPrice', 'description'];
const PUT_IN: ReadonlySet<FieldName> = new Set(['stocked', 'fish', 'alive', 'foodPerFish']);
const OF_BROOD: ReadonlySet<FieldName> = new Set(['femaleWeight', 'maleWeight', 'femaleAfter', 'eggWeight']);
const SPAWNING: readonly FieldName[] = [
  'femaleWeight',
  'hormoneVolume',
  'hormoneDose',
  'doseFirst',
  'injected',
  'stripped',
  'eggWeight',
  'eggs',
  'fertilisedShare',
  'hatched',
  'hatchShare',
  'hatchedAt',
  'latency',
  'preparation',
  'female',
];
const BESIDE_WEIGHS = 0.28;
const beside = (field: FieldName, sure: ReadonlySet<FieldName>): number =>
  BESIDE_WEIGHS * (BESIDE[field] ?? []).filter((one) => sure.has(one)).length;

/** What stands in the table besides: sure fields, and how many there are of each family. */
interface Company {
  readonly sure: ReadonlySet<FieldName>;
  readonly present: ReadonlyMap<string, number>;
  readonly isSpawning: boolean;
  readonly isSale: boolean;
  readonly isRearing: boolean;
  /** Something of a spawning stands there besides weights. */
  readonly isBred: boolean;
}

function companyOf(looked: readonly Looked[]): Company {
  const present = new Map<string, number>();
  const sure = new Set<FieldName>();
  for (const {
    candidates: [best],
  } of looked) {
    if (!best || !isClaim(best)) continue;
    sure.add(best.field);
    if (best.words < 0.7) continue;
    for (const family of FAMILIES.of(best.field)) present.set(family, (present.get(family) ?? 0) + 1);
  }
  return {
    sure,
    present,
    isSpawning: SPAWNING.some((field) => sure.has(field)),
    isSale: SALE.some((field) => sure.has(field)),
    isBred: SPAWNING.some((field) => sure.has(field) && !OF_BROOD.has(field)),
    isRearing: REARING.filter((field) => sure.has(field)).length >= 2,
  };
}

/** What the other columns say for a meaning, or against it. */
function worthOf(
  field: FieldName,
  { sure, present, isSpawning, isSale, isRearing, isBred }: Company,
  isMoneySaid: boolean,
): number {
  const most = Math.max(0, ...FAMILIES.of(field).map((family) => present.get(family) ?? 0));
  let worth = beside(field, sure) + Math.min(1, 0.22 * most);
  if (SPAWNING_DAYS.has(field) && !isSpawning) worth -= 1.6;
  if (REARING_DAYS.has(field) && isSale) worth -= 1.6;
  // Beside pH grams are given to the water, not against a disease.
  if (field === 'treatAmount' && sure.has('ph') && !sure.has('treatRate')) worth -= 1;
  if (field === 'operator' && isSale && !isSpawning && !sure.has('customer')) worth -= 0.6;
  if (OF_BROOD.has(field) && isRearing && !isBred) worth -= 1;
  // The lines of spawnings are runs, whatever their numbers are called.
  if (field === 'run' && isBred && !sure.has('run')) worth += 0.3;
  if (field === 'packWeight' && !PACKED.some((one) => sure.has(one))) worth -= 0.8;
  if (field === 'reason' && (sure.has('income') || sure.has('expense') || sure.has('balance'))) worth -= 1;
  if (PUT_IN.has(field) && isSale && !isRearing) worth -= 0.9;
  if (MONEY.has(field) && most < 2 && !isMoneySaid) worth -= 1;
  return worth;
}

/** Meanings that keep company make each other likelier: buyers beside prices, pH beside grams of soda. */
export function byCompany(looked: readonly Looked[]): void {
  const company = companyOf(looked);
  for (const { candidates, evidence } of looked) {
    for (const one of candidates) one.score += worthOf(one.field, company, evidence.unit?.of === 'money');
    candidates.sort((a, b) => b.score - a.score);
  }
}
