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
} as const satisfies Readonly<Record<string, FieldSpec>>;

export type FieldName = keyof typeof FIELDS;
export const FIELD_NAMES = Object.keys(FIELDS) as readonly FieldName[];
export const fieldSpec = (name: FieldName): FieldSpec => FIELDS[name];
/** Kinds are told apart at run time by `fieldSpec(name).kind`. */
export type NumericField = Exclude<FieldName, TextField>;
export type TextField = (typeof TEXT_FIELDS)[number];
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
] as const satisfies readonly FieldName[];
export const isTextField = (name: FieldName): name is TextField => fieldSpec(name).kind === 'text';
export const NUMERIC_FIELDS = FIELD_NAMES.filter((name): name is NumericField => !isTextField(name));
