// Long: one table: each role with its words, units and range.
import type { FieldName } from '../fields';

/** What a unit measures: a unit of another class rules a meaning out. */
export type UnitClass =
  | 'mass'
  | 'volume'
  | 'temperature'
  | 'share'
  | 'span'
  | 'length'
  | 'money'
  | 'count'
  | 'perMass'
  | 'massPerMass'
  | 'concentration'
  | 'perGram'
  | 'perVolume'
  | 'units'
  | 'perDay';

export interface Role {
  /** Words of the table that may name it, each with how readily. */
  readonly concepts: Readonly<Record<string, number>>;
  /** Classes of the units it may have; left out, it has none. */
  readonly units?: readonly UnitClass[];
  /** Usual middle of a column in the field's own unit, where nothing else says it. */
  readonly usual?: readonly [number, number];
  /** Its numbers are whole. */
  readonly isWhole?: true;
  /** Words in the cells of a neutral result. */
  readonly is: string | readonly string[];
}

const COUNT = { units: ['count'], isWhole: true } as const;
const MONEY = { units: ['money', 'count'], usual: [1, 1e9] } as const;
const DOSE_CLASSES = ['volume', 'mass', 'units', 'count'] as const;
const RATE_CLASSES = ['perMass', 'massPerMass'] as const;
const WARM = { units: ['temperature'], usual: [18, 35] } as const;
const SHARE = { units: ['share'], usual: [0.02, 1] } as const;
const CLOCK_OR_DATE = (stage: string): readonly string[] => [
  `${stage}_time`,
  `${stage}_datetime`,
  `${stage}_date`,
];

export const ROLES: Readonly<Record<FieldName, Role>> = {
  run: { concepts: { run: 1, serial: 0.3 }, is: ['run_no', 'batch'] },
  date: {
    concepts: { date: 1, week: 0.4, injection_time: 0.35, stocking_date: 0.4, strip_time: 0.2, month: 0.3 },
    is: ['date', 'inject_date'],
  },
  species: { concepts: { species: 1 }, is: 'species' },
  female: { concepts: { female_id: 1, run: 0.1 }, is: ['female_tag', 'fish_tag'] },
  male: { concepts: { male_id: 1 }, is: 'male_tag' },
  operator: { concepts: { person: 1 }, is: 'staff' },
  preparation: { concepts: { hormone_name: 1, hormone_volume: 0.4 }, is: 'hormone' },
  vat: { concepts: { tank: 1, substrate: 0.3 }, is: 'tank' },
  material: {
    concepts: {
      buffer_material: 1,
      treatment: 0.9,
      other_treatments: 0.8,
      salt_bath: 0.5,
      permanganate: 0.5,
      formalin: 0.5,
      soda_ash: 0.5,
      baking_soda: 0.5,
      agricultural_lime: 0.5,
    },
    is: ['treatment', 'buffer'],
  },
  note: { concepts: { remarks: 1, weather: 0.7, sex_ratio: 0.3 }, is: 'notes' },

  femaleWeight: {
    concepts: { female_weight: 1, body_weight: 0.8, mean_weight: 0.25 },
    units: ['mass'],
    is: ['female_weight', 'fish_weight'],
  },
  hormoneDose: {
    concepts: { hormone_dose_per_kg: 1, hormone_volume: 0.5 },
    units: RATE_CLASSES,
    is: 'dose_rate',
  },
  hormoneVolume: {
    concepts: { hormone_volume: 1, hormone_dose_per_kg: 0.5, hormone_name: 0.5, grams_given: 0.3 },
    units: DOSE_CLASSES,
    is: 'hormone_dose',
  },
  injected: {
    concepts: { injection_time: 1, injection_time_2: 0.95, hormone_name: 0.3 },
    is: CLOCK_OR_DATE('inject').concat(['inject2_time']).slice(0, 3),
  },
  stripped: { concepts: { strip_time: 1 }, is: CLOCK_OR_DATE('strip') },
  temperature: { concepts: { water_temperature: 1 }, ...WARM, is: 'water_temp' },
  latency: { concepts: { latency: 1 }, units: ['span'], is: 'latency_h' },

  eggWeight: { concepts: { egg_weight: 1, egg_number: 0.6 }, units: ['mass'], is: 'egg_weight' },
  eggsPerGram: {
    concepts: { eggs_per_gram: 1 },
    units: ['perGram', 'count'],
    isWhole: true,
    is: 'eggs_per_g',
  },
  eggs: { concepts: { egg_number: 1 }, ...COUNT, is: 'eggs_total' },
  eggYield: { concepts: { relative_fecundity: 0.9 }, units: ['share'], is: 'egg_share' },
  fertilisedAt: { concepts: { fertilisation_time: 1 }, is: 'fert_time' },
  sampleSize: {
    concepts: { sample_count: 1, egg_number: 0.3 },
    ...COUNT,
    usual: [20, 2000],
    is: 'fert_checked',
  },
  sampleGood: {
    concepts: { fertilised_count: 0.95, alive_count: 0.4 },
    ...COUNT,
    usual: [5, 2000],
    is: 'fert_good',
  },
  fertilised: { concepts: { fertilised_count: 0.95 }, ...COUNT, usual: [500, 1e7], is: 'fertilised' },
  fertilisedShare: { concepts: { fertilised_share: 1, fertilised_count: 0.7 }, ...SHARE, is: 'fert_pct' },
  hatchedAt: { concepts: { hatch_time: 1 }, is: CLOCK_OR_DATE('hatch') },
  incubationTemperature: { concepts: { water_temperature: 0.6 }, ...WARM, is: 'water_temp' },
  incubationHours: { concepts: { incubation_hours: 1 }, units: ['span'], is: 'incub_h' },
  hatched: { concepts: { larvae_count: 1, hatched_count: 1, hatched_share: 0.4 }, ...COUNT, is: 'larvae' },
  hatchShare: { concepts: { hatched_share: 1, hatched_count: 0.6 }, ...SHARE, is: 'hatch_pct' },
  feedingAt: { concepts: { first_feeding: 1 }, is: 'first_feeding' },
  fry: { concepts: { fry_count: 1, stocked_number: 0.2 }, ...COUNT, is: 'fry' },
  fingerlings: { concepts: { fingerling_count: 1, juvenile_count: 0.8 }, ...COUNT, is: 'fingerlings' },
  stocked: { concepts: { stocked_number: 1, stock_in: 0.7 }, ...COUNT, is: ['stocked', 'moved_in'] },
  alive: { concepts: { alive_count: 1, harvest: 0.6 }, ...COUNT, is: ['alive', 'closing', 'fish_n'] },
  dead: {
    concepts: { mortality_daily: 1, mortality_cumulative: 0.3 },
    ...COUNT,
    usual: [0, 1e5],
    is: 'deaths',
  },
  survival: { concepts: { survival: 1 }, ...SHARE, is: 'survival_pct' },
  stockedAt: { concepts: { stocking_date: 1 }, is: 'stocked_date' },
  emptiedAt: { concepts: { end_date: 1 }, is: 'end_date' },
  startWeight: { concepts: { initial_weight: 1 }, units: ['mass'], is: ['start_weight', 'mean_weight'] },
  endWeight: { concepts: { final_weight: 1 }, units: ['mass'], is: ['end_weight', 'mean_weight'] },
  days: { concepts: { day_number: 1 }, units: ['span', 'count'], is: 'age_days' },
  growthRate: {
    concepts: { growth_rate: 1, weight_gain: 0.6 },
    units: ['share', 'perDay', 'mass'],
    is: 'growth',
  },
  fish: {
    concepts: {
      alive_count: 0.9,
      stocked_number: 0.8,
      opening_stock: 0.4,
      fry_count: 0.4,
      fingerling_count: 0.4,
    },
    ...COUNT,
    is: ['fish_n', 'fry'],
  },
  weight: {
    concepts: { mean_weight: 1, body_weight: 0.7 },
    units: ['mass'],
    is: ['mean_weight', 'fish_weight'],
  },
  feed: {
    concepts: { feed_amount: 1, live_food: 0.5, artemia_cysts: 0.6 },
    units: ['mass', 'volume', 'count'],
    is: ['feed', 'feed_week'],
  },
  ration: {
    concepts: { feeding_rate: 1, feed_amount: 0.3 },
    units: ['share'],
    usual: [0.003, 0.5],
    is: 'feed_pct',
  },
  conversion: { concepts: { fcr: 1 }, is: 'fcr' },
  ph: { concepts: { ph_before: 1, ph_target: 0.2 }, usual: [4, 9.8], is: 'ph_before' },
  phAfter: { concepts: { ph_after: 1, ph_target: 0.5 }, usual: [5, 10], is: 'ph_after' },
  materialDose: {
    concepts: {
      grams_given: 1,
      soda_ash: 0.9,
      baking_soda: 0.95,
      agricultural_lime: 0.9,
      hydrated_lime: 0.9,
      quicklime: 0.9,
      buffer_material: 0.85,
      treatment: 0.4,
      amount: 0.7,
    },
    units: ['mass'],
    is: ['buffer', 'treat_amount'],
  },
  volume: { concepts: { volume_litres: 1 }, units: ['volume'], is: 'volume' },
  alkalinity: { concepts: { alkalinity: 1 }, units: ['concentration'], is: 'alkalinity' },
  oxygen: { concepts: { oxygen: 1 }, units: ['concentration'], is: 'do' },
  vatsInUse: { concepts: {}, units: ['count'], isWhole: true, is: 'vats_used' },
  vatsOwned: { concepts: {}, units: ['count'], isWhole: true, is: 'vats_owned' },

  serial: { concepts: { serial: 1.1 }, is: 'serial' },
  receipt: { concepts: { receipt: 1 }, is: 'receipt' },
  month: { concepts: { month: 1, date: 0.3 }, is: 'month' },
  week: { concepts: { week: 1 }, is: 'week' },
  sex: { concepts: { sex: 1 }, is: 'sex' },
  origin: { concepts: { origin: 1, supplier: 0.8 }, is: 'origin' },
  status: { concepts: { status: 1 }, is: 'status' },
  customer: { concepts: { person: 0.6, buyer: 1, supplier: 0.5 }, is: 'customer' },
  category: { concepts: { category: 1 }, is: 'category' },
  description: { concepts: { description: 1, remarks: 0.3 }, is: 'description' },
  reason: { concepts: { reason: 1 }, is: 'reason' },
  feedType: {
    concepts: { feed_type: 1, feed_size: 0.9, live_food: 0.6 },
    units: ['length'],
    is: 'feed_type',
  },
  size: { concepts: { size_grade: 1, length: 0.5 }, units: ['length', 'mass'], is: 'size_sold' },
  clock: { concepts: { time: 1 }, is: 'time' },
  startTime: { concepts: { start_time: 1 }, is: 'start_time' },
  endTime: { concepts: { end_time: 1 }, is: 'end_time' },
  minutes: { concepts: { exposure_minutes: 1 }, units: ['span'], usual: [0.01, 48], is: 'minutes' },
  maleWeight: {
    concepts: { male_weight: 1, body_weight: 0.3 },
    units: ['mass'],
    usual: [0.2, 10],
    is: 'male_weight',
  },
  femaleAfter: {
    concepts: { final_weight: 0.3, female_weight: 0.7, body_weight: 0.55, mean_weight: 0.4 },
    units: ['mass'],
    usual: [0.2, 10],
    is: 'female_weight_after',
  },
  females: { concepts: { n_females: 1 }, ...COUNT, usual: [1, 60], is: 'n_females' },
  males: { concepts: { n_males: 1 }, ...COUNT, usual: [1, 60], is: 'n_males' },
  doseFirst: { concepts: { injection_time_1: 0.6 }, units: DOSE_CLASSES, is: 'dose1' },
  doseSecond: { concepts: { injection_time_2: 0.6 }, units: DOSE_CLASSES, is: 'dose2' },
  rateFirst: { concepts: { injection_time_1: 0.5 }, units: RATE_CLASSES, is: 'dose1_rate' },
  rateSecond: { concepts: { injection_time_2: 0.5 }, units: RATE_CLASSES, is: 'dose2_rate' },
  injectedOn: { concepts: { injection_time: 0.9 }, is: 'inject_date' },
  injectedFirst: { concepts: { injection_time_1: 1 }, is: ['inject1_time', 'inject1_datetime'] },
  strippedOn: { concepts: { strip_time: 0.9 }, is: 'strip_date' },
  hatchedOn: { concepts: { hatch_time: 0.9 }, is: 'hatch_date' },
  degreeHours: { concepts: { degree_hours: 1 }, usual: [100, 3000], is: 'degree_hours' },
  eggVolume: {
    concepts: { egg_number: 0.4, egg_weight: 0.5 },
    units: ['volume'],
    usual: [5, 5000],
    is: 'egg_volume',
  },
  eggsPerMl: {
    concepts: { eggs_per_gram: 0.6 },
    units: ['perVolume'],
    isWhole: true,
    usual: [100, 2000],
    is: 'eggs_per_ml',
  },
  eggsDead: { concepts: { white_eggs: 1 }, units: ['count', 'share'], is: 'eggs_dead' },
  temperatureLow: { concepts: { water_temperature: 0.85 }, ...WARM, is: 'water_temp_min' },
  temperatureHigh: { concepts: { water_temperature: 0.84 }, ...WARM, is: 'water_temp_max' },
  ammonia: { concepts: { ammonia: 1 }, units: ['concentration'], usual: [0.005, 10], is: 'ammonia' },
  nitrite: { concepts: { nitrite: 1 }, units: ['concentration'], usual: [0.005, 10], is: 'nitrite' },
  nitrate: { concepts: { nitrate: 1 }, units: ['concentration'], is: 'nitrate' },
  hardness: { concepts: { hardness: 1 }, units: ['concentration'], is: 'hardness' },
  salinity: { concepts: { salinity: 1 }, units: ['concentration', 'share'], is: 'salinity' },
  treatRate: {
    concepts: { treatment: 0.5, hormone_dose_per_kg: 0.6, density: 0.2 },
    units: ['concentration', 'share'],
    is: 'treat_rate',
  },
  treatAmount: {
    concepts: { grams_given: 0.9, amount: 0.75, treatment: 0.5 },
    units: ['mass', 'volume'],
    usual: [0.5, 1e5],
    is: ['treat_amount', 'buffer'],
  },
  opening: {
    concepts: { opening_stock: 1, alive_count: 0.6, carried_forward_row: 0.5 },
    ...COUNT,
    is: 'opening',
  },
  movedIn: { concepts: { stock_in: 0.9, transferred: 0.8 }, ...COUNT, is: ['moved_in', 'stocked'] },
  movedOut: { concepts: { stock_out: 0.9, transferred: 0.8 }, ...COUNT, is: 'moved_out' },
  sold: {
    concepts: { sold_number: 1, quantity: 0.5, stock_out: 0.4, stocked_number: 0.45, alive_count: 0.45 },
    ...COUNT,
    is: ['sold', 'qty_sold'],
  },
  closing: { concepts: { closing_stock: 1, balance: 0.6, alive_count: 0.6 }, ...COUNT, is: 'closing' },
  deadTotal: {
    concepts: { mortality_cumulative: 0.6, total_row: 0.4, mortality_daily: 0.5 },
    ...COUNT,
    is: ['deaths_total', 'deaths'],
  },
  deadRunning: { concepts: { mortality_cumulative: 1 }, ...COUNT, is: 'deaths_running' },
  sampleCount: { concepts: { sample_count: 0.95 }, ...COUNT, usual: [5, 500], is: 'sample_n' },
  sampleWeight: { concepts: { sample_weight: 1 }, units: ['mass'], is: 'sample_weight' },
  length: { concepts: { length: 1 }, units: ['length'], is: ['mean_length', 'fish_length', 'size_sold'] },
  biomass: { concepts: { biomass: 1, harvest: 0.4, sold_weight: 0.4 }, units: ['mass'], is: 'biomass' },
  feedTotal: {
    concepts: { feed_total: 1, feed_amount: 0.6, total_row: 0.35 },
    units: ['mass'],
    is: ['feed_total', 'feed_week'],
  },
  meals: { concepts: { meals: 1 }, units: ['count'], usual: [1, 12], is: 'meals' },
  density: { concepts: { density: 1 }, units: ['perVolume', 'count'], is: 'density' },
  graded: { concepts: { graded_number: 1, total_row: 0.3 }, ...COUNT, is: 'graded_total' },
  gradeSmall: { concepts: { size_grade: 0.3 }, ...COUNT, is: 'grade_small' },
  gradeMiddle: { concepts: { size_grade: 0.3 }, ...COUNT, is: 'grade_mid' },
  gradeBig: { concepts: { big_fish: 1, size_grade: 0.3 }, ...COUNT, is: 'grade_big' },
  gradeCull: { concepts: { deformed: 1 }, ...COUNT, is: 'grade_cull' },
  priceEach: { concepts: { price: 1, unit_price: 0.7 }, ...MONEY, is: ['price_each', 'unit_price'] },
  priceThousand: {
    concepts: { price: 0.9, unit_price: 0.8 },
    ...MONEY,
    is: ['price_thousand', 'unit_price'],
  },
  unitPrice: { concepts: { unit_price: 1, price: 0.85 }, ...MONEY, is: ['unit_price', 'price_each'] },
  quantity: {
    concepts: { quantity: 1, stock_in: 0.3, sold_number: 0.3 },
    units: ['count', 'mass', 'volume'],
    is: ['qty', 'qty_sold'],
  },
  amount: { concepts: { amount: 1, cost: 0.6, price: 0.3, total_row: 0.35 }, ...MONEY, is: 'amount' },
  deposit: { concepts: { deposit: 0.9 }, ...MONEY, is: 'deposit' },
  paid: { concepts: { paid: 1, deposit: 0.85 }, ...MONEY, is: 'paid' },
  due: { concepts: { due: 1, balance: 1 }, ...MONEY, usual: [0, 1e9], is: 'due' },
  dueRunning: { concepts: { due_running: 1, due: 0.4, balance: 0.5 }, ...MONEY, is: 'due_running' },
  income: { concepts: { income: 1, stock_in: 0.4, amount: 0.3 }, ...MONEY, is: 'income' },
  expense: { concepts: { expense: 1, cost: 0.8, stock_out: 0.4 }, ...MONEY, is: 'expense' },
  balance: { concepts: { balance: 0.95, profit: 0.6, closing_stock: 0.3 }, ...MONEY, is: 'balance' },
  deliveryDate: { concepts: { delivery_date: 1, date: 0.6, end_date: 0.2 }, is: 'delivery_date' },
  packWeight: {
    concepts: { pack_weight: 1, body_weight: 0.2 },
    units: ['mass'],
    usual: [0.1, 60],
    is: 'pack_weight',
  },
  foodPerFish: { concepts: { food_per_fish: 1 }, is: 'food_per_fish' },
};
