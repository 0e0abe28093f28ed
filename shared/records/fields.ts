import type { Quantity } from '../units/quantities';
import {
  celsius,
  count,
  day,
  days,
  gram,
  fishGram,
  hours,
  kilogram,
  litre,
  meqPerLitre,
  mgPerLitre,
  mlPerKg,
  millilitre,
  moment,
  percentPerDay,
  perGram,
  pH,
  ratio,
  share,
  text,
} from '../units/quantities';

/**
 * What a record can say. Every number is held in the unit of its quantity; a share is 0..1; dates and times
 * are serials.
 */
export interface FieldSpec {
  readonly kind: 'number' | 'moment' | 'text';
  readonly quantity: Quantity;
  /** As a sentence names it: "the number of eggs". */
  readonly noun: string;
  /** A number of animals or eggs: whole, never negative. */
  readonly isCount?: true;
  /** Read off an instrument or counted anew for every row, so that long runs of one value mean copying. */
  readonly isMeasured?: true;
  /** Said on a logarithmic scale when rows are compared: it spreads by factors, not by steps. */
  readonly isScaled?: true;
}

type Flags = Pick<FieldSpec, 'isCount' | 'isMeasured' | 'isScaled'>;
const number = (quantity: Quantity, noun: string, flags: Flags = {}): FieldSpec => ({
  kind: 'number',
  quantity,
  noun,
  ...flags,
});
const counted = (noun: string): FieldSpec =>
  number(count, noun, { isCount: true, isMeasured: true, isScaled: true });
const words = (noun: string): FieldSpec => ({ kind: 'text', quantity: text, noun });
const when = (noun: string, quantity: Quantity = moment): FieldSpec => ({ kind: 'moment', quantity, noun });
const weighed = { isMeasured: true, isScaled: true } as const;

export const FIELDS = {
  run: words('run'),
  date: when('date', day),
  species: words('species'),
  female: words('female'),
  male: words('male'),
  operator: words('operator'),
  preparation: words('hormone preparation'),
  vat: words('vat'),
  material: words('product given'),
  note: words('note'),

  femaleWeight: number(kilogram, 'female weight', weighed),
  hormoneDose: number(mlPerKg, 'hormone dose per kg'),
  hormoneVolume: number(millilitre, 'hormone volume', { isScaled: true }),
  injected: when('injection time'),
  stripped: when('strip time'),
  /** Water from injection to strip, or of the day in a daily log. */
  temperature: number(celsius, 'water temperature', { isMeasured: true }),
  latency: number(hours, 'latency'),

  eggWeight: number(gram, 'egg weight', weighed),
  eggsPerGram: number(perGram, 'eggs per gram', weighed),
  eggs: counted('number of eggs'),
  /** Stripped egg weight as a share of body weight. */
  eggYield: number(share, 'egg yield', { isScaled: true }),

  fertilisedAt: when('fertilisation time'),
  sampleSize: number(count, 'eggs looked at', { isCount: true }),
  sampleGood: number(count, 'fertilised in the sample', { isCount: true }),
  fertilised: counted('number fertilised'),
  fertilisedShare: number(share, 'share fertilised', { isMeasured: true }),

  hatchedAt: when('hatch time'),
  incubationTemperature: number(celsius, 'incubation temperature', { isMeasured: true }),
  incubationHours: number(hours, 'incubation time'),
  hatched: counted('number hatched'),
  /** Of the fertilised eggs, or of all eggs where no number fertilised is kept. */
  hatchShare: number(share, 'share hatched', { isMeasured: true }),
  feedingAt: when('first feed'),

  fry: counted('number of fry'),
  fingerlings: counted('number of fingerlings'),
  stocked: counted('number stocked'),
  alive: counted('number alive'),
  dead: number(count, 'number dead', { isCount: true }),
  /** Of the number before it: fry of hatched, fingerlings of fry, alive of stocked. */
  survival: number(share, 'survival', { isMeasured: true }),

  stockedAt: when('stocking date'),
  emptiedAt: when('end date'),
  startWeight: number(fishGram, 'weight at the start', weighed),
  endWeight: number(fishGram, 'weight at the end', weighed),
  days: number(days, 'days'),
  growthRate: number(percentPerDay, 'growth rate'),
  fish: counted('number of fish'),
  weight: number(fishGram, 'mean weight', weighed),
  /** Of the day beside `fish` and `weight`, of the whole period beside `startWeight` and `endWeight`. */
  feed: number(gram, 'feed given', weighed),
  ration: number(share, 'ration'),
  conversion: number(ratio, 'feed conversion'),

  ph: number(pH, 'pH', { isMeasured: true }),
  phAfter: number(pH, 'pH after the dose', { isMeasured: true }),
  materialDose: number(gram, 'dose of the product', { isScaled: true }),
  volume: number(litre, 'water volume', { isScaled: true }),
  alkalinity: number(meqPerLitre, 'alkalinity'),
  oxygen: number(mgPerLitre, 'dissolved oxygen', { isMeasured: true }),
  vatsInUse: number(count, 'vats in use', { isCount: true }),
  vatsOwned: number(count, 'vats owned', { isCount: true }),
  serial: words('line number'),
  receipt: words('receipt number'),
  month: words('month'),
  week: words('week'),
  sex: words('sex'),
  origin: words('origin'),
  status: words('state'),
  customer: words('buyer'),
  category: words('kind of entry'),
  description: words('what it was'),
  reason: words('reason'),
  feedType: words('kind of feed'),
  size: words('size'),
  clock: when('time of day'),
  startTime: when('start time'),
  endTime: when('end time'),
  minutes: number(hours, 'time taken'),

  maleWeight: number(kilogram, 'male weight', weighed),
  femaleAfter: number(kilogram, 'female weight after stripping', weighed),
  females: number(count, 'number of females', { isCount: true }),
  males: number(count, 'number of males', { isCount: true }),
  doseFirst: number(millilitre, 'first dose', { isScaled: true }),
  doseSecond: number(millilitre, 'second dose', { isScaled: true }),
  rateFirst: number(mlPerKg, 'first dose per kg'),
  rateSecond: number(mlPerKg, 'second dose per kg'),
  injectedOn: when('injection date', day),
  injectedFirst: when('time of the first injection'),
  strippedOn: when('strip date', day),
  hatchedOn: when('hatch date', day),
  degreeHours: number(ratio, 'degree-hours', { isScaled: true }),
  eggVolume: number(millilitre, 'egg volume', weighed),
  eggsPerMl: number(ratio, 'eggs per millilitre', weighed),
  eggsDead: number(count, 'dead eggs', { isCount: true, isScaled: true }),

  temperatureLow: number(celsius, 'morning water temperature', { isMeasured: true }),
  temperatureHigh: number(celsius, 'afternoon water temperature', { isMeasured: true }),
  ammonia: number(mgPerLitre, 'ammonia'),
  nitrite: number(mgPerLitre, 'nitrite'),
  nitrate: number(mgPerLitre, 'nitrate'),
  hardness: number(mgPerLitre, 'hardness'),
  salinity: number(ratio, 'salt in the water'),
  treatRate: number(ratio, 'strength of the treatment'),
  treatAmount: number(gram, 'amount of the treatment', { isScaled: true }),

  opening: counted('number at the start'),
  movedIn: number(count, 'number moved in', { isCount: true }),
  movedOut: number(count, 'number moved out', { isCount: true }),
  sold: number(count, 'number sold', { isCount: true, isScaled: true }),
  closing: counted('number left'),
  deadTotal: number(count, 'deaths in all', { isCount: true }),
  deadRunning: number(count, 'deaths up to this day', { isCount: true }),
  sampleCount: number(count, 'fish in the sample', { isCount: true }),
  sampleWeight: number(gram, 'weight of the sample', weighed),
  length: number(ratio, 'length', { isMeasured: true }),
  biomass: number(kilogram, 'biomass', weighed),
  feedTotal: number(gram, 'feed in all', { isScaled: true }),
  meals: number(count, 'meals a day'),
  density: number(ratio, 'density', { isScaled: true }),
  graded: counted('number graded'),
  gradeSmall: number(count, 'small fish', { isCount: true }),
  gradeMiddle: number(count, 'middle-sized fish', { isCount: true }),
  gradeBig: number(count, 'big fish', { isCount: true }),
  gradeCull: number(count, 'fish put out', { isCount: true }),

  priceEach: number(ratio, 'price of one', { isScaled: true }),
  priceThousand: number(ratio, 'price of a thousand', { isScaled: true }),
  unitPrice: number(ratio, 'price of a unit', { isScaled: true }),
  quantity: number(ratio, 'quantity', { isScaled: true }),
  amount: number(ratio, 'money for the sale', { isScaled: true }),
  deposit: number(ratio, 'deposit', { isScaled: true }),
  paid: number(ratio, 'money paid', { isScaled: true }),
  due: number(ratio, 'money owed', { isScaled: true }),
  dueRunning: number(ratio, 'money owed in all', { isScaled: true }),
  income: number(ratio, 'money in', { isScaled: true }),
  expense: number(ratio, 'money out', { isScaled: true }),
  balance: number(ratio, 'money in hand', { isScaled: true }),
  deliveryDate: when('delivery date', day),
  packWeight: number(kilogram, 'weight of a bag'),
  foodPerFish: number(ratio, 'food per larva'),
} as const satisfies Readonly<Record<string, FieldSpec>>;

export type FieldName = keyof typeof FIELDS;
export const FIELD_NAMES = Object.keys(FIELDS) as readonly FieldName[];
export const fieldSpec = (name: FieldName): FieldSpec => FIELDS[name];
/** Kinds are told apart at run time by `fieldSpec(name).kind`. */
export type NumericField = Exclude<FieldName, RecordText>;
export type RecordText = (typeof TEXT_FIELDS)[number];
export const TEXT_FIELDS = [
  'run',
  'species',
  'female',
  'male',
  'operator',
  'preparation',
  'vat',
  'material',
  'note',
  'serial',
  'receipt',
  'month',
  'week',
  'sex',
  'origin',
  'status',
  'customer',
  'category',
  'description',
  'reason',
  'feedType',
  'size',
] as const satisfies readonly FieldName[];
export const isTextField = (name: FieldName): name is RecordText => fieldSpec(name).kind === 'text';
export const NUMERIC_FIELDS = FIELD_NAMES.filter((name): name is NumericField => !isTextField(name));
