import type { FieldName } from '../../fields';
import { FAMILIES } from '../../meaning/families';
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
const BOX: readonly FieldName[] = ['income', 'expense', 'balance'];
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

type Fields = ReadonlySet<FieldName>;
const only = (...fields: FieldName[]): Fields => new Set(fields);
/** What the company of a column says against a meaning, or for it. */
const SAYS: readonly {
  readonly fields: Fields;
  readonly when: (company: Company) => boolean;
  readonly worth: number;
}[] = [
  { fields: SPAWNING_DAYS, when: ({ isSpawning }) => !isSpawning, worth: -1.6 },
  { fields: REARING_DAYS, when: ({ isSale }) => isSale, worth: -1.6 },
  // Beside pH grams are given to the water, not against a disease.
  { fields: only('treatAmount'), when: ({ sure }) => sure.has('ph') && !sure.has('treatRate'), worth: -1 },
  {
    fields: only('operator'),
    when: ({ sure, isSale, isSpawning }) => isSale && !isSpawning && !sure.has('customer'),
    worth: -0.6,
  },
  { fields: OF_BROOD, when: ({ isRearing, isBred }) => isRearing && !isBred, worth: -1 },
  // The lines of spawnings are runs, whatever their numbers are called.
  { fields: only('run'), when: ({ sure, isBred }) => isBred && !sure.has('run'), worth: 0.3 },
  { fields: only('packWeight'), when: ({ sure }) => !PACKED.some((one) => sure.has(one)), worth: -0.8 },
  { fields: only('reason'), when: ({ sure }) => BOX.some((one) => sure.has(one)), worth: -1 },
  // What is kept of a spawning is counted as eggs, larvae and fry.
  {
    fields: only('alive', 'fish', 'opening', 'closing'),
    when: ({ isBred, isRearing, sure }) => isBred && !isRearing && sure.has('eggs'),
    worth: -1.2,
  },
  {
    fields: only('sampleGood'),
    when: ({ sure }) => !sure.has('sampleSize') && !sure.has('sampleCount'),
    worth: -0.6,
  },
  // Who bought is no origin of fish and no female.
  { fields: only('origin', 'female', 'note'), when: ({ isSale, isBred }) => isSale && !isBred, worth: -0.8 },
  // Beside a strength and a time grams are given against a disease.
  {
    fields: only('materialDose'),
    when: ({ sure }) => (sure.has('treatRate') || sure.has('minutes')) && !sure.has('ph'),
    worth: -1.2,
  },
  // A day in is a day in only beside a day out, and the fish that are fed are those of the day.
  { fields: only('stockedAt'), when: ({ sure }) => sure.has('emptiedAt') || sure.has('endWeight'), worth: 1 },
  {
    fields: only('fish'),
    when: ({ sure }) => sure.has('weight') && (sure.has('ration') || sure.has('feed')),
    worth: 1,
  },
  // Among spawnings a share of body weight is eggs, not feed.
  { fields: only('ration'), when: ({ isBred, isRearing }) => isBred && !isRearing, worth: -1 },
  { fields: PUT_IN, when: ({ isSale, isRearing }) => isSale && !isRearing, worth: -0.9 },
];

/** What the other columns say for a meaning, or against it. */
function worthOf(field: FieldName, company: Company, isMoneySaid: boolean): number {
  const most = Math.max(0, ...FAMILIES.of(field).map((family) => company.present.get(family) ?? 0));
  let worth = beside(field, company.sure) + Math.min(1, 0.22 * most);
  for (const one of SAYS) if (one.fields.has(field) && one.when(company)) worth += one.worth;
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
