// Long: every table of the book, a column a line.
import type { TableColumn } from './table';
import { col } from './table';
import type { LineGivens, RunLine } from '../../run/lines';
import { DAY_LINES, RUN_GIVEN, RUN_LINES, SHARE_LINES, TASKS } from '../../run/lines';
import type { DayLineKey, RunLineKey, ShareLineKey, TaskKey } from '../../run/lines';

export const WHOLE = '#,##0';
export const MONEY = '#,##0.00';
export const DAY = 'ddd d mmm yy';
export const SHORT_DAY = 'd mmm yy';
export const SHARE = '0.0%';
/** Moments of a batch: the year stands with the day the fish leave. */
export const SHORT = 'd mmm hh:mm';

export const ORDERS = {
  order: col('Order', 8, 'input'),
  /** The only place of a book where a buyer is named. */
  buyer: col('Buyer', 22, 'input'),
  product: col('Product', 11, 'input'),
  number: col('Fish', 9, 'input', WHOLE),
  grams: col('Weight of a fish, g', 9, 'input', '0.00'),
  due: col('Due', 13, 'input', DAY),
  price: col('Price', 8, 'input', '#,##0.00##'),
  breeding: col('For breeding', 9, 'input'),
  cancelled: col('Cancelled', 9, 'input'),
  delivered: col('Handed over', 9, 'cell', WHOLE),
  expected: col('Now expected', 10, 'result', WHOLE),
  promise: col('Promise', 9, 'cell', WHOLE),
  hope: col('Hope for', 9, 'cell', WHOLE),
  certainty: col('Whole order in', 9, 'cell', '0%'),
  verdict: col('Verdict', 15, 'text'),
  sales: col('Sales', 11, 'result', MONEY),
  heavy: col('Heavy enough on', 11, 'cell', SHORT_DAY),
} as const;

export const BATCHES = {
  batch: col('Batch', 7, 'label'),
  state: col('State', 9, 'input'),
  parents: col('Females × males', 21, 'text'),
  measured: col('Water measured, °C', 9, 'blank', '0.0'),
  water: col('Water, °C', 7, 'result', '0.0'),
  inject: col('Inject at', 13, 'result', SHORT),
  look: col('First look', 13, 'cell', SHORT),
  strip: col('Strip at', 13, 'input', SHORT),
  late: col('Not later than', 13, 'cell', SHORT),
  hatchAt: col('First hatch', 13, 'cell', SHORT),
  feed: col('First feed', 13, 'cell', SHORT),
  leaves: col('Last fish leave', 10, 'cell', SHORT_DAY),
  toSet: col('Eggs to set', 10, 'input', WHOLE),
  feeding: col('Larvae feeding', 10, 'cell', WHOLE),
  promised: col('Fish for orders', 10, 'result', WHOLE),
  extra: col('Extra', 9, 'cell', WHOLE),
  change: col('Most new water a day, L', 10, 'cell', WHOLE),
  air: col('Least minutes without air', 9, 'cell', WHOLE),
  net: col('Net, m²', 7, 'cell', '0.00'),
} as const;

export const PAIRS = {
  batch: col('Batch', 7, 'label'),
  female: col('Female', 9, 'label'),
  male: col('Male', 21, 'label'),
  kilograms: col('Weight, kg', 9, 'input', '0.00'),
  dose: col('Dose', 7, 'result', '0.00'),
  inject: col('Planned: inject', 13, 'cell', SHORT),
  injected: col('Injected at', 13, 'blank', SHORT),
  strip: col('Planned: strip', 13, 'cell', SHORT),
  stripped: col('Stripped at', 13, 'blank', SHORT),
  grams: col('Eggs, g', 13, 'blank', '#,##0.0'),
  alive: col('Alive of 100', 13, 'blank', '0'),
  remark: col('Remark', 10, 'blank'),
} as const;

export const EGG_COUNTS = {
  batch: col('Batch', 8, 'label'),
  ph: col('pH of the vats', 8, 'blank', '0.0'),
  alkalinity: col('Alkalinity, meq/L', 9, 'blank', '0.00'),
  grams: col('Eggs stripped, g', 9, 'cell', '#,##0.0'),
  g1: col('Sample 1, g', 8, 'blank', '0.00'),
  g2: col('Sample 2, g', 8, 'blank', '0.00'),
  g3: col('Sample 3, g', 8, 'blank', '0.00'),
  n1: col('Eggs in 1', 9, 'blank', WHOLE),
  n2: col('Eggs in 2', 9, 'blank', WHOLE),
  n3: col('Eggs in 3', 9, 'blank', WHOLE),
  eggs: col('Eggs estimated', 11, 'result', WHOLE),
  low: col('at least', 10, 'cell', WHOLE),
  high: col('at most', 10, 'cell', WHOLE),
  looked: col('Eggs looked at', 9, 'blank', '0'),
  alive: col('Alive', 9, 'blank', '0'),
  fertilised: col('Fertilised', 10, 'result', SHARE),
} as const;

export const FRY_COUNTS = {
  batch: col('Batch', 8, 'label'),
  hatched: col('Larvae hatched', 8, 'blank', WHOLE),
  litres: col('Water of the larvae, L', 9, 'blank', WHOLE),
  ml1: col('Sample 1, mL', 9, 'blank', WHOLE),
  ml2: col('Sample 2, mL', 8, 'blank', WHOLE),
  ml3: col('Sample 3, mL', 8, 'blank', WHOLE),
  l1: col('Larvae in 1', 8, 'blank', WHOLE),
  l2: col('Larvae in 2', 9, 'blank', WHOLE),
  l3: col('Larvae in 3', 9, 'blank', WHOLE),
  larvae: col('Larvae at first feed', 9, 'result', WHOLE),
  low: col('at least', 11, 'cell', WHOLE),
  high: col('at most', 10, 'cell', WHOLE),
  weaned: col('Fry weaned', 10, 'blank', WHOLE),
  weight: col('Weight of one, g', 9, 'blank', '0.000'),
  weighed: col('Weighed on', 9, 'blank', 'd mmm'),
  remark: col('Remark', 10, 'blank'),
} as const;

/** Facts as they happen, one a line: the pane adds to it, planning again reads it. */
export const LOG = {
  at: col('Date and hour', 15, 'blank', 'd mmm yy hh:mm'),
  batch: col('Batch', 8, 'blank'),
  what: col('What', 9, 'blank'),
  number: col('Number', 9, 'blank', WHOLE),
  stage: col('Of what', 8, 'blank'),
  order: col('Order', 16, 'blank'),
  paid: col('Money received', 9, 'blank', MONEY),
  by: col('By', 9, 'blank'),
  note: col('Remark', 20, 'blank'),
} as const;

export const VATS = {
  vat: col('Vat', 16, 'input'),
  litres: col('Water, L', 11, 'input', WHOLE),
  eggs: col('Eggs', 12, 'input'),
  fry: col('Fry', 17, 'input'),
  nursing: col('Nursing', 17, 'input'),
  outFrom: col('Out of use from', 17, 'input', SHORT_DAY),
  outUntil: col('until', 10, 'input', SHORT_DAY),
  days: col('Days taken', 10, 'cell', '0.0'),
} as const;

export const STAYS = {
  vat: col('Vat', 16, 'label'),
  batch: col('Batch', 11, 'label'),
  stage: col('Holds', 12, 'text'),
  from: col('From', 17, 'cell', SHORT),
  to: col('To', 17, 'cell', SHORT),
  clean: col('Clean again', 17, 'cell', SHORT),
  days: col('Days', 10, 'cell', '0.0'),
  fish: col('Fish', 10, 'cell', WHOLE),
  perLitre: col('In a litre', 10, 'cell', '#,##0.0'),
  most: col('At most', 9, 'cell', WHOLE),
  verdict: col('Verdict', 14, 'text'),
} as const;

export const CALENDAR = {
  // Ticked off in the pane: the moment it was done; by hand: a word of the list.
  done: col('Done', 13, 'blank', SHORT),
  date: col('Date', 14, 'cell', DAY),
  hour: col('Hour', 7, 'cell', 'hh:mm'),
  batch: col('Batch', 7, 'label'),
  what: col('What to do', 60, 'text'),
  buyer: col('For whom', 16, 'text'),
  amount: col('How much', 10, 'cell', '#,##0.##'),
  unit: col('Of what', 13, 'text'),
  by: col('By', 9, 'blank'),
} as const;

export const SHOPPING = {
  week: col('Week from', 30, 'cell', DAY),
  until: col('to', 13, 'cell', '[>=900000]"later";d mmm yy'),
  hormone: col('Hormone', 12, 'result', '#,##0.00;-#,##0.00;"–"'),
  cysts: col('Cysts, kg', 12, 'result', '#,##0.000;-#,##0.000;"–"'),
  feed: col('Dry feed, kg', 12, 'result', '#,##0.00;-#,##0.00;"–"'),
  cost: col('Cost', 12, 'cell', '#,##0.00;-#,##0.00;"–"'),
  done: col('Done', 12, 'blank'),
} as const;

export const CASH = {
  week: col('Week from', 30, 'cell', DAY),
  until: col('to', 13, 'cell', '[>=900000]"later";d mmm yy'),
  booked: col('Paid and received', 13, 'cell', MONEY),
  sales: col('Sales to come', 13, 'cell', MONEY),
  goods: col('Goods', 13, 'cell', MONEY),
  runs: col('Batches', 13, 'cell', MONEY),
  vats: col('Vats', 12, 'cell', MONEY),
  rent: col('Rent and wages', 12, 'cell', MONEY),
  left: col('Left', 14, 'result', MONEY),
} as const;

export const BOOKED = {
  date: col('Date', 30, 'blank', DAY),
  amount: col('Amount', 13, 'blank', MONEY),
  batch: col('Batch', 13, 'blank'),
  order: col('Order', 13, 'blank'),
  what: col('What was paid (−) or received', 40, 'blank'),
} as const;

export const FEMALES = {
  female: col('Female', 12, 'input'),
  kilograms: col('Weight, kg', 10, 'input', '0.00'),
  family: col('Family', 14, 'input'),
  lastUsed: col('Last stripped', 13, 'input', SHORT_DAY),
  goneOn: col('Gone on', 13, 'input', SHORT_DAY),
  batches: col('Batches', 9, 'cell', '0'),
} as const;
export const MALES = {
  male: col('Male', 12, 'input'),
  spare: col('', 10, 'text'),
  family: col('Family', 14, 'input'),
  lastUsed: col('Milt taken', 13, 'input', SHORT_DAY),
  goneOn: col('Gone on', 13, 'input', SHORT_DAY),
  batches: col('Batches', 9, 'cell', '0'),
} as const;

/** A column a line or a given of the run, under its label. */
const derived = <K extends string>(
  list: Readonly<Record<K, RunLine | LineGivens>>,
): Readonly<Record<K, TableColumn>> =>
  Object.fromEntries(
    Object.entries<RunLine | LineGivens>(list).map(([key, { label, quantity }]) => [
      key,
      col(label, 14, 'cell', quantity.format),
    ]),
  ) as Record<K, TableColumn>;

/** Given to every line of a batch by the book as a whole, not by its own row. */
export const BOOK_GIVEN = [
  'waterByMonth',
  'eggShares',
  'preparation',
  'material',
  'plannedOn',
  'phWanted',
  'restDays',
  'leadHormone',
  'leadCysts',
  'leadFeed',
] as const satisfies readonly (keyof typeof RUN_GIVEN)[];
type BookGiven = (typeof BOOK_GIVEN)[number];
export type BatchGiven = Exclude<keyof typeof RUN_GIVEN, BookGiven>;
const BATCH_GIVEN = Object.fromEntries(
  Object.entries(RUN_GIVEN).filter(([key]) => !(BOOK_GIVEN as readonly string[]).includes(key)),
) as Readonly<Record<BatchGiven, LineGivens>>;

/** Every figure of every batch. */
export const WORKINGS: Readonly<Record<'batch' | 'isLost' | BatchGiven | RunLineKey, TableColumn>> = {
  batch: col('Batch', 8, 'label'),
  isLost: col('State', 9, 'text'),
  ...derived(BATCH_GIVEN),
  ...derived(RUN_LINES),
};
export type WorkingKey = keyof typeof WORKINGS;

/** Which fish of which batch go to which order. */
export const SHARES: Readonly<
  Record<
    | 'batch'
    | 'order'
    | 'key'
    | 'line'
    | 'orderLine'
    | 'on'
    | 'part'
    | 'stage'
    | 'price'
    | 'wanted'
    | 'open'
    | ShareLineKey
    | 'handOver'
    | 'money'
    | 'fast'
    | 'handAt',
    TableColumn
  >
> = {
  batch: col('Batch', 8, 'label'),
  order: col('Order', 22, 'label'),
  key: col('Batch and order', 22, 'text'),
  line: col('Line of the batch', 9, 'cell', '0'),
  orderLine: col('Line of the order', 9, 'cell', '0'),
  on: col('They leave on', 12, 'cell', SHORT_DAY),
  part: col('Part of the batch', 12, 'cell', '0.0000%'),
  stage: col('Sold as', 9, 'text'),
  price: col('Price', 9, 'cell', MONEY),
  wanted: col('Weight ordered, g', 9, 'cell', '0.00'),
  open: col('Fish still owed', 12, 'cell', WHOLE),
  ...derived(SHARE_LINES),
  handOver: col('To hand over', 12, 'result', WHOLE),
  money: col('Sales to come', 12, 'cell', MONEY),
  fast: col('Last meal', 14, 'cell', SHORT),
  handAt: col('Hand over at', 14, 'cell', SHORT),
};

export const DAYS: Readonly<Record<'batch' | 'line' | 'day' | 'left' | 'today' | DayLineKey, TableColumn>> = {
  batch: col('Batch', 8, 'label'),
  line: col('Line of the batch', 9, 'cell', '0'),
  day: col('Day of feeding', 9, 'cell', '0'),
  left: col('Part that left before', 9, 'cell', '0%'),
  today: col('Of today', 9, 'cell', '0'),
  ...derived(DAY_LINES),
};

export const TIMES: Readonly<Record<'batch' | TaskKey, TableColumn>> = {
  batch: col('Batch', 8, 'label'),
  ...(Object.fromEntries(
    Object.entries(TASKS).map(([key, { at }]) => [key, col(at.label, 13, 'cell', SHORT)]),
  ) as Record<TaskKey, TableColumn>),
};

export const TASK_LIST = {
  batch: col('Batch', 8, 'label'),
  task: col('Task', 12, 'text'),
  order: col('Order', 18, 'text'),
  later: col('Days later', 9, 'cell', '0'),
  line: col('Line of the batch', 9, 'cell', '0'),
  share: col('Line of the share', 9, 'cell', '0'),
  when: col('When', 16, 'cell', SHORT),
  figure: col('Figure', 14, 'text'),
  amount: col('How much', 12, 'cell', '#,##0.00'),
  today: col('Of today', 9, 'cell', '0'),
  tomorrow: col('Of tomorrow', 9, 'cell', '0'),
  late: col('Not ticked', 9, 'cell', '0'),
} as const;

/** What each order was when it was planned, and what became of it. */
export const PROMISES = {
  order: col('Order', 8, 'label'),
  line: col('Line of the order', 9, 'cell', '0'),
  product: col('Product when planned', 12, 'text'),
  number: col('Fish when planned', 12, 'cell', WHOLE),
  grams: col('Weight when planned', 12, 'cell', '0.00'),
  due: col('Due when planned', 13, 'cell', SHORT_DAY),
  planned: col('Expected when planned', 12, 'cell', WHOLE),
  ready: col('Ready on', 13, 'cell', SHORT_DAY),
  heavy: col('Heavy enough on', 13, 'cell', SHORT_DAY),
  lightest: col('Weight on the day', 12, 'cell', '0.00'),
  changed: col('Changed since', 14, 'text'),
} as const;

export const STAY_WORKINGS = {
  litres: col('Water, L', 10, 'cell', WHOLE),
  line: col('Line of the batch', 9, 'cell', '0'),
  begins: col('Begins with', 14, 'text'),
  ends: col('Ends with', 22, 'text'),
  fixedFrom: col('From, as it was', 16, 'cell', SHORT),
  fixedTo: col('To, as it was', 16, 'cell', SHORT),
  today: col('Of today', 9, 'cell', '0'),
} as const;

/** Columns that hold names and remarks of people, in any table: no word of ours, in no language another. */
const NAMES = 'order buyer batch parents female male family vat key by note remark'.split(' ');
const BOOKED_NAMES: ReadonlySet<string> = new Set([...NAMES, 'what']);
const NAME_KEYS: ReadonlySet<string> = new Set(NAMES);
export const nameKeysOf = (of: object): ReadonlySet<string> => (of === BOOKED ? BOOKED_NAMES : NAME_KEYS);
